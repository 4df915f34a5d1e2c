// Checks that word what the bench found. The bench decides; a file here says it in the trade's words and offers a remedy.

import type { Problem, Reason } from "../bench/trace.ts";
import type { Fix, TextEdit } from "../findings/finding.ts";
import type { Act } from "../model/act.ts";
import { nameFrom } from "../model/named-inside.ts";
import type { ThingIndex } from "../model/model.ts";
import type { Answer, BenchContext, Check } from "./check.ts";

type Facts = Pick<Check, "code" | "title" | "severity" | "why" | "fails" | "mended" | "source">;

export interface Wording extends Facts {
  /** One reason as a clause that may follow a colon: "Lid is in front of it". */
  readonly reason: (reason: Reason, context: BenchContext) => string;
  /** What goes before the colon; "Lid cannot come off" if not said. "" for none. */
  readonly subject?: (problem: Problem, context: BenchContext) => string;
  /** What goes behind the colon, where the first reason alone would leave something out. */
  readonly first?: (problem: Problem, context: BenchContext) => string;
  readonly fixes?: (problem: Problem, context: BenchContext) => readonly Fix[];
  readonly severityOf?: (problem: Problem) => Check["severity"];
  readonly answer?: (problem: Problem, context: BenchContext) => Answer | undefined;
}

/** A check whose finding is one problem of the bench: subject, first reason, and all reasons with their places as the chain of facts. */
export function benchCheck(wording: Wording): Check {
  const { reason, subject, first: lead, fixes, severityOf, answer, ...facts } = wording;
  return {
    ...facts,
    reason,
    problem(problem, context) {
      const before = (subject ?? cannot)(problem, context),
        first = lead?.(problem, context) ?? reason(problem.reasons[0]!, context);
      const severity = severityOf?.(problem);
      return {
        at: problem.at,
        says: capital(before === "" ? first : `${before}: ${first}`),
        because: problem.reasons.flatMap((r) => [context.because(r), ...chainOf(r, context)]),
        fixes: fixes?.(problem, context) ?? [],
        answer: answer?.(problem, context),
        ...(severity === undefined || severity === "off" ? {} : { severity }),
      };
    },
  };
}

/** "Casing cannot come off", by the verb of the act that was refused. */
export function cannot(problem: Problem, context: BenchContext): string {
  const thing = problem.reasons[0]?.thing ?? problem.about[0],
    named = problem.about[0] ?? thing;
  if (named === undefined) return "";
  return `${context.name(named)} ${cannotWords[problem.act?.verb ?? ""] ?? "cannot be worked on"}`;
}

const cannotWords: Readonly<Record<string, string>> = {
  remove: "cannot come off",
  lift: "cannot be lifted off",
  undo: "cannot be undone",
  loosen: "cannot be loosened",
  "back-out": "cannot be backed out",
  slide: "cannot be slid aside",
  swing: "cannot be swung aside",
  open: "cannot be opened",
  drain: "cannot be drained",
  recover: "cannot be recovered",
  fit: "cannot go on",
  tighten: "cannot be tightened",
  press: "cannot be pressed on",
  mark: "cannot be marked",
  fill: "cannot be filled",
};

/** The chain from the thing to the base, one link a tie. */
function chainOf(reason: Reason, context: BenchContext): { says: string; at?: BenchContext["model"]["at"] }[] {
  const links: { says: string; at?: BenchContext["model"]["at"] }[] = [],
    { chain } = reason;
  for (let i = 1; i + 1 < chain.length; i += 2) {
    const tie = context.model.things[chain[i]!]!;
    if (tie.is !== "tie" || reason.by.includes(tie.index)) continue;
    links.push({
      says: `${context.name(chain[i - 1]!)} is joined to ${context.name(chain[i + 1]!)} by ${context.name(tie.index)}`,
      at: tie.at,
    });
  }
  return links;
}

export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** "a", "a and b", "a, b and c". */
export function listed(items: readonly string[], last = "and"): string {
  return items.length < 2 ? items.join("") : `${items.slice(0, -1).join(", ")} ${last} ${items[items.length - 1]}`;
}

/** Of what was left out together: the first with its clause, the others by name. */
export function firstAndOthers({ reasons, rule }: Problem, context: BenchContext): string {
  const [first, ...rest] = reasons,
    others = [...new Set(rest.map(({ thing, by }) => thing ?? by[0]))].filter((one) => one !== first!.thing),
    names = others.flatMap((one) => (one === undefined ? [] : [context.name(one)]));
  const says = context.because({ ...first!, rule }).says;
  return names.length === 0 ? says : `${says}; left out with it: ${few(names)}`;
}

/** All of a few, the first five of many. */
export const few = (names: readonly string[]): string =>
  names.length > 6 ? `${names.slice(0, 5).join(", ")} and ${names.length - 5} more` : listed(names);

/** "2 of 4 Lid screws", or the name alone for one. */
export function stillIn(reason: Reason, context: BenchContext): string {
  return listed(
    reason.by.map((thing, i) => {
      const of = context.model.things[thing]!,
        left = reason.left[i] ?? 0;
      return of.is === "tie" && of.count > 1 ? `${left} of ${of.count} ${context.name(thing)}` : context.name(thing);
    }),
  );
}

/** A new line before the act, indented as it is. Undefined where the act does not open its line. */
function lineBefore(act: Act, text: string, context: BenchContext): TextEdit | undefined {
  const source = context.project.files.get(act.at.file)?.text;
  if (source === undefined) return undefined;
  const start = source.lastIndexOf("\n", act.at.start - 1) + 1,
    indent = source.slice(start, act.at.start);
  return {
    file: act.at.file,
    start: act.at.start,
    end: act.at.start,
    text: /^\s*$/.test(indent) ? `${text}\n${indent}` : `${text}  `,
  };
}

/** Name of a thing as this act may write it; undefined for a thing of a unit around. */
export function written(thing: ThingIndex, problem: Problem, context: BenchContext): string | undefined {
  const of = context.model.things[thing]!;
  return nameFrom(problem.around?.prefix ?? "", of);
}

/** Offers lines to put before the act. They are the author's to check, so never certain. */
export function insertFix(
  problem: Problem,
  context: BenchContext,
  title: string,
  lines: readonly (string | undefined)[],
): readonly Fix[] {
  if (!problem.act || lines.length === 0 || lines.some((line) => line === undefined)) return [];
  const source = context.project.files.get(problem.act.at.file)?.text ?? "";
  const lineStart = source.lastIndexOf("\n", problem.act.at.start - 1) + 1,
    indent = /^\s*/.exec(source.slice(lineStart, problem.act.at.start))?.[0] ?? "";
  const edit = lineBefore(problem.act, lines.join(`\n${indent}`), context);
  return edit ? [{ title, edits: [edit], certain: false }] : [];
}

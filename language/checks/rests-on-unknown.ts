// What the bench finds after a line that could not be read, or that speaks of an unknown name, rests on a guess: the line may have undone the very screw that
// still holds. Such reasons are left out, so that one mistake is said once. Reasons of hazard, lifting and falling never are.

import type { Performance, Problem, Reason } from "../bench/trace.ts";
import type { Span } from "../findings/finding.ts";
import type { Model, ThingIndex } from "../model/model.ts";
import type { Declaration, Project, SourceFile } from "../names/project.ts";
import { eachItem, type Item } from "../syntax/index.ts";
import { isKindOf, precautions } from "../tables/index.ts";
import type { Settings } from "../world/settings.ts";
import { allowsOf } from "./allow.ts";
import { callsIn } from "./calls-in.ts";
import type { Due } from "./due-names.ts";
import { doubledIn } from "./doubled-names.ts";
import { lostHeads, type LostHead } from "./lost-heads.ts";
import { lostThing } from "./lost-thing.ts";
import { nearestName } from "./near-names.ts";
import { unitOfProcedure } from "./space-of-names.ts";
import { unattached } from "./unattached.ts";
import { tiesOfNothing } from "./ties-of-nothing.ts";
import { surveyOf, type Unknown } from "./survey-of-names.ts";

/** Names that the bench takes no notice of: what is wrong with them changes nothing that it performs. */
const noMatter: ReadonlySet<Due> = new Set<Due>([
  "tool",
  "stores",
  "role",
  "table",
  "hazard type",
  "kind",
  "kind or thing",
  "any",
]);
const code = "names/unknown";

/** `from` is the offset that doubt begins at; what the refit and the end of the procedure show is in doubt wherever it stands. */
interface Doubt {
  readonly file: string;
  readonly start: number;
  readonly end: number;
  readonly from: number;
}

/**
 * Takes from a problem of the bench the reasons that rest on a name that nothing has: what is left of it, or undefined;
 * `performance` is the one that it was found in. A refused act
 * is one problem with all its reasons, so a hazard that stands among them is kept and then speaks first. Where the unknown name
 * itself is not reported as an error, nothing is taken.
 */
export function withoutDoubt(
  project: Project,
  settings: Settings,
): (problem: Problem, performance?: Pick<Performance, "model" | "procedure">) => Problem | undefined {
  const asked = settings.severity[code],
    doubts = asked === undefined || asked === "error" ? doubtsOf(project) : [];
  return (problem, performance) => {
    if (doubts.length === 0) return problem;
    const { at } = problem,
      isIn = (place: Span, doubt: Doubt): boolean =>
        doubt.file === place.file && place.start >= doubt.start && place.end <= doubt.end,
      doubtful = ({ rule }: Reason): boolean => {
        if (rule === "sequence/falls" || !/^(?:sequence|removal|refit)\//.test(rule)) return false;
        const isLater = !rule.startsWith("sequence/");
        return doubts.some(
          (doubt) =>
            (isIn(at, doubt) && (isLater || problem.rule === "sequence/task" || at.start >= doubt.from)) ||
            // What the end of a procedure misses may be said in another one, which took it off.
            (isLater && performance !== undefined && isIn(performance.procedure.whole, doubt)),
        );
      };
    const reasons = problem.reasons.filter((reason) => !doubtful(reason)),
      [first] = reasons;
    return reasons.length === problem.reasons.length ? problem : first && { ...problem, rule: first.rule, reasons };
  };
}

/**
 * The unknown name of a procedure, or of the hazard itself, or the misspelt precaution that may have been the one that is missing: what is said of the
 * precaution is then a reason of that finding, an error as well, and is never left out.
 */
export function unknownCalls(
  project: Project,
  settings: Settings,
): (problem: Problem, model: Model) => Span | undefined {
  const asked = settings.severity[code];
  if (asked !== undefined && asked !== "error") return () => undefined;
  const holders: Span[] = [];
  const found = [...project.files.values()].flatMap((file) => {
    if (allowsOf(file).some((allow) => allow.code === code)) return [];
    const calls = surveyOf(project, file).unknown.filter(({ due, is }) => is === undefined && callDue.has(due)),
      misspelt = file.tree.errors.flatMap(({ start, end, fix }) =>
        fix?.edits.length === 1 && isKindOf(precautions, fix.edits[0]!.text)
          ? [{ start, end, due: undefined, kind: fix.edits[0]!.text }]
          : [],
      );
    // Precautions may stand in a block whose first line could not be read.
    const unread: { start: number; end: number; due: undefined; kind: undefined }[] = [];
    eachItem(file.tree.items, (item) => {
      const error = item.broken && item.block ? file.tree.errors.find((one) => isInHead(file, item, one)) : undefined;
      if (item.broken && holding.has(item.entry?.word ?? "")) {
        const { tokens } = file.tree.scan,
          from = tokens[item.first]!.startOffset,
          to = tokens[item.last]!.endOffset! + 1,
          own = file.tree.errors.find((one) => one.start >= from && one.end <= to);
        if (own) holders.push({ file: file.path, start: own.start, end: own.end });
      }
      if (error) unread.push({ start: error.start, end: error.end, due: undefined, kind: undefined });
    });
    const held = file.tree.errors.filter(({ fix }) => fix?.edits.length === 1 && holding.has(fix.edits[0]!.text));
    holders.push(...held.map(({ start, end }) => ({ file: file.path, start, end })));
    return [...calls, ...misspelt, ...unread].flatMap((call) => {
      const { tokens } = file.tree.scan,
        item = file.declarations.find(
          (one) =>
            one.word === "procedure" &&
            tokens[one.item.first]!.startOffset <= call.start &&
            tokens[one.item.last]!.endOffset! >= call.start,
        )?.item;
      const end = item && tokens[item.last]!.endOffset! + 1;
      return end === undefined
        ? []
        : [
            {
              at: { file: file.path, start: call.start, end: call.end },
              end,
              hazard: call.due === "hazard" ? (nearestName(call.text, call.candidates) ?? "") : undefined,
              kind: "kind" in call ? call.kind : undefined,
              isLost: "candidates" in call && isLostStep(call),
            },
          ];
    });
  });
  const heads = [...project.files.values()].flatMap(lostHeads);
  return ({ at, reasons }, model) => {
    // What nothing holds is off before it is taken off, and stays where it hides others.
    const loose = unattached(project, model).find((parts) =>
      reasons.every(({ rule, thing, by, words }) =>
        parts.some(({ index }) =>
          rule === "sequence/blocked"
            ? by.includes(index) || (thing === index && words.includes("comes along"))
            : rule === "sequence/already-undone" && thing === index,
        ),
      ),
    );
    if (loose) return loose[0].at;
    // What falls may have hung on the one thing of this unit that nothing declares.
    if (reasons.every(({ rule }) => rule === "sequence/falls"))
      return holders.findLast((one) => one.file === at.file && one.start < at.start) ?? lostThing(project, model);
    // What hides a part that comes along may have come along too, by the fastener that nothing declares.
    if (reasons.every(({ rule, words }) => rule === "sequence/blocked" && words.includes("comes along")))
      return lostTie(project, model, heads);
    const hazards = reasons.map(({ rule, by, thing }) =>
      rule === "hazard/not-yet" ? by[0] : rule === "hazard/order" ? thing : undefined,
    );
    if (hazards.some((hazard) => hazard === undefined)) return undefined;
    // What springs or pressure push is held by nothing where nothing says what its fasteners hold.
    const isPush = (hazard: ThingIndex): boolean =>
      model.hazards.some((one) => one.index === hazard && one.pushes.length > 0);
    if (hazards.every((hazard) => isPush(hazard!)))
      return tiesOfNothing(project, model)[0]?.at ?? lostTie(project, model, heads);
    return found.find(
      (call) =>
        call.at.file === at.file &&
        // A task stands before the name in it.
        (at.start > call.at.start || at.end >= call.at.end || call.isLost) &&
        at.end <= call.end &&
        (call.kind === undefined || reasons.every(({ words }) => words.includes(call.kind!))) &&
        (call.hazard === undefined || hazards.every((hazard) => model.things[hazard!]!.declared === call.hazard)),
    )?.at;
  };
}

/** What may be a fastener or joint of this unit: a block that lost its first line, or the one thing that nothing declares. */
const lostTie = (project: Project, model: Model, heads: readonly LostHead[]): Span | undefined =>
  heads.find((head) => isTieWord(head.item?.entry?.word))?.at ?? lostThing(project, model);

/** Words that take a weight. */
const holding: ReadonlySet<string> = new Set(["support", "hold", "lift"]);

/** The error stands in the line that opens the block. */
function isInHead({ tree }: SourceFile, { first, block }: Item, error: Place): boolean {
  const { tokens } = tree.scan;
  return error.start >= tokens[first]!.startOffset && error.end <= tokens[block!.first]!.startOffset;
}

const isTieWord = (word: string | undefined): boolean => word === "fastener" || word === "joint";

const callDue: ReadonlySet<Due> = new Set<Due>(["procedure", "procedure or step", "step", "condition", "hazard"]);

interface Place {
  readonly start: number;
  readonly end: number;
}
const stepDue: ReadonlySet<Due> = new Set<Due>(["step", "condition"]);
/** A step or a reading like no other name: the step is missing as a whole, and may have stood anywhere before. */
const isLostStep = ({ due, is, text, candidates }: Unknown): boolean =>
  stepDue.has(due) && is === undefined && nearestName(text, candidates) === undefined;

/** What the bench stumbles over in a file: unknown names, unless the author has them allowed, doubled ones, and lines that could not be read. */
function unknownIn(project: Project, file: SourceFile): readonly (Place | Unknown)[] {
  const unknown = surveyOf(project, file).unknown.filter((one) => !noMatter.has(one.due)),
    isAllowed = unknown.length > 0 && allowsOf(file).some((allow) => allow.code === code);
  return [...(isAllowed ? [] : unknown), ...file.tree.errors, ...doubledIn(file)].sort((a, b) => a.start - b.start);
}

interface Doubtful {
  readonly declaration: Declaration;
  readonly file: string;
  readonly start: number;
  readonly end: number;
  /** The unit that it is for and the procedures that it calls, as its own file sees them: other files may use the same names. */
  readonly unit: Declaration | undefined;
  readonly calls: readonly Declaration[];
  from: number | undefined;
}

function doubtsOf(project: Project): Doubt[] {
  const procedures: Doubtful[] = [],
    doubtfulUnits = new Set<Declaration>(),
    unknownOf = new Map([...project.files.values()].map((file) => [file, unknownIn(project, file)]));
  if ([...unknownOf.values()].every((unknown) => unknown.length === 0)) return [];
  for (const [file, unknown] of unknownOf) {
    const seen = project.seen(file.path);
    const named = (id: string, word: Declaration["word"]): Declaration | undefined =>
      seen.get(id)?.find((d) => d.word === word);
    for (const declaration of file.declarations) {
      const { word, item } = declaration,
        { tokens } = file.tree.scan,
        start = tokens[item.first]!.startOffset,
        end = tokens[item.last]!.endOffset! + 1;
      const first = unknown.find((one) => one.start >= start && one.end <= end);
      if (word === "unit" && first) doubtfulUnits.add(declaration);
      if (word !== "procedure") continue;
      const calls = [...callsIn(tokens, item)].flatMap((id) => named(id, "procedure") ?? []);
      procedures.push({
        declaration,
        file: file.path,
        start,
        end,
        unit: named(unitOfProcedure(file, item) ?? "", "unit"),
        calls,
        from:
          first && unknown.some((one) => "due" in one && one.start >= start && one.end <= end && isLostStep(one))
            ? start
            : first?.start,
      });
    }
  }
  for (const one of procedures) if (one.unit && doubtfulUnits.has(one.unit)) one.from = one.start;
  // Who calls or needs a procedure in doubt is in doubt too.
  for (let changed = true; changed;) {
    changed = false;
    const doubtful = new Set(procedures.filter((one) => one.from !== undefined).map((one) => one.declaration));
    for (const one of procedures) {
      if (one.from !== undefined || !one.calls.some((call) => doubtful.has(call))) continue;
      one.from = one.start;
      changed = true;
    }
  }
  return procedures.flatMap(({ file, start, end, from }) => (from === undefined ? [] : [{ file, start, end, from }]));
}

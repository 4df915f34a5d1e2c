// Runs every check over a project, its models and its performances, and makes one finding of one mistake.

import { agreed } from "./agreement.ts";
import { gravestFirst } from "./gravest-first.ts";
import { allowedIn } from "./allow.ts";
import { hiddenByAllow } from "./allowed-once.ts";
import { unreadIn } from "./read-whole.ts";
import type { Performance, Problem, Reason } from "../bench/trace.ts";
import { declaredProblems } from "../bench/declared.ts";
import type { Because, Finding, Span } from "../findings/finding.ts";
import { kept } from "../model/kept.ts";
import type { Model, ThingIndex } from "../model/model.ts";
import type { SourceFile } from "../names/project.ts";
import type { BenchContext, Check, CheckContext, Draft, Say } from "./check.ts";
import { ringsIn } from "./rings.ts";
import { severityOf } from "./severity.ts";
import type { Settings } from "../world/settings.ts";
import { lostHeadAround } from "./lost-heads.ts";
import { faultOf } from "./rests-on-fault.ts";
import { unknownCalls, withoutDoubt } from "./rests-on-unknown.ts";
import { sameSlip } from "./same-slip.ts";

interface InTheWay {
  readonly unit: string;
  /** Found on the bench of a unit around it. */
  readonly isInside: boolean;
  /** Their ids, as that unit itself calls them. */
  readonly things: ReadonlySet<string>;
}

/** A finding on its way: what the merge has to know beside it. */
export interface Raw extends Finding {
  /** Build that it was found in; undefined where it does not depend on one. */
  readonly build: string | undefined;
  readonly unit: string;
  /** What it is about, as the author calls it, for pieces that share a line; and by id, for what several procedures miss. */
  readonly who: string;
  readonly about: readonly string[];
  /** What the bench missed, in one text for equal lacks, and the procedures that it performed on the way: of related procedures it is one mistake. */
  readonly lack: { readonly what: ReadonlySet<string>; readonly performed: ReadonlySet<string> } | undefined;
  /** What is in whose way, where it is nothing else: on the bench of the unit that they belong to they are so too. */
  readonly inTheWay: InTheWay | undefined;
  /** The declaration that it finds something missing in: what is said there speaks for it. */
  readonly restsOn: Span | undefined;
  readonly answer?: Draft["answer"];
  readonly within?: Draft["within"];
}

export interface CheckTable {
  readonly all: readonly Check[];
  /** Those that speak of a file, of a model, of a performance: most wait for what the bench finds and speak of none. */
  readonly ofFile: readonly Asked<"file">[];
  readonly ofModel: readonly Asked<"model">[];
  /** Of a model too, but by what stands in any file. */
  readonly ofModelAmongAll: readonly Asked<"model">[];
  readonly ofPerformance: readonly Asked<"performance">[];
  byCode(code: string): Check | undefined;
}

type Asked<Of extends "file" | "model" | "performance"> = Check & Required<Pick<Check, Of>>;
const asks =
  <Of extends "file" | "model" | "performance">(of: Of) =>
  (check: Check): check is Asked<Of> =>
    check[of] !== undefined;

export function checkTable(all: readonly Check[]): CheckTable {
  const codes = new Map(all.map((check) => [check.code, check]));
  return {
    all,
    ofFile: all.filter(asks("file")),
    ofModel: all.filter(asks("model")).filter(({ asksAllFiles }) => asksAllFiles !== true),
    ofModelAmongAll: all.filter(asks("model")).filter(({ asksAllFiles }) => asksAllFiles === true),
    ofPerformance: all.filter(asks("performance")),
    byCode: (code) => codes.get(code),
  };
}

export function benchContext(table: CheckTable, base: CheckContext, model: Model): BenchContext {
  const context: BenchContext = {
    ...base,
    model,
    name: (thing) => model.things[thing]?.name ?? "",
    because: (reason: Reason): Because => {
      const says = table.byCode(reason.rule)?.reason?.(reason, context) ?? reason.words.join(" ");
      return reason.at ? { says, at: reason.at } : { says };
    },
  };
  return context;
}

function finish(
  check: Check,
  draft: Draft,
  settings: Settings,
  of: {
    build: string | undefined;
    unit: string;
    who?: string;
    about?: readonly string[];
    lack?: Raw["lack"];
    inTheWay?: Raw["inTheWay"];
    restsOn?: Span | undefined;
  },
): Raw | undefined {
  const severity = severityOf(check, settings, draft.severity);
  if (severity === "off") return undefined;
  return {
    code: check.code,
    severity,
    says: draft.says,
    at: draft.at,
    because: draft.because ?? [],
    fixes: draft.fixes ?? [],
    builds: [],
    ...(draft.tag === undefined ? {} : { tag: draft.tag }),
    build: of.build,
    unit: of.unit,
    who: of.who ?? "",
    about: of.about ?? [],
    lack: of.lack,
    inTheWay: of.inTheWay,
    restsOn: of.restsOn,
    ...(draft.answer === undefined ? {} : { answer: draft.answer }),
    ...(draft.within === undefined ? {} : { within: draft.within }),
  };
}

/** Asks one check after the other; `take` is told which of them said it. */
function ask<One extends Check>(
  checks: readonly One[],
  one: (check: One, say: Say) => void,
  take: (check: One, draft: Draft) => void,
): void {
  let asked: One;
  const say = (draft: Draft): void => take(asked, draft);
  for (asked of checks) one(asked, say);
}

export function checkFile(table: CheckTable, file: SourceFile, context: CheckContext): Raw[] {
  const found: Raw[] = [];
  for (const error of file.tree.errors) {
    const at: Span = { file: file.path, start: error.start, end: error.end };
    const fixes = error.fix
      ? [
          {
            title: error.fix.title,
            certain: error.fix.certain,
            edits: error.fix.edits.map((edit) => ({ file: file.path, ...edit })),
          },
        ]
      : [];
    found.push({
      code: error.code,
      severity: "error",
      says: error.says,
      at,
      because: [],
      fixes,
      builds: [],
      build: undefined,
      unit: "",
      who: "",
      about: [],
      lack: undefined,
      inTheWay: undefined,
      restsOn: undefined,
    });
  }
  ask(
    table.ofFile,
    (check, say) => check.file(file, say, context),
    (check, draft) => push(found, finish(check, draft, context.settings, { build: undefined, unit: "" })),
  );
  return found;
}

export function checkModel(table: CheckTable, model: Model, context: CheckContext): Raw[] {
  const found: Raw[] = [],
    bench = benchContext(table, context, model);
  for (const problem of declaredProblems(model)) push(found, wordProblem(table, problem, bench, context.settings));
  pushOfModel(found, table.ofModel, model, bench);
  return found;
}

/** What `checkModel` leaves out, since it may change with any file. */
export function checkModelAmongAll(table: CheckTable, model: Model, context: CheckContext): Raw[] {
  const found: Raw[] = [];
  pushOfModel(found, table.ofModelAmongAll, model, benchContext(table, context, model));
  return found;
}

function pushOfModel(found: Raw[], checks: readonly Asked<"model">[], model: Model, bench: BenchContext): void {
  const { build, unit } = model;
  ask(
    checks,
    (check, say) => check.model(model, say, bench),
    (check, draft) => push(found, finish(check, agreed(draft, model), bench.settings, { build, unit })),
  );
}

export function checkPerformance(table: CheckTable, performance: Performance, context: CheckContext): Raw[] {
  const found: Raw[] = [],
    bench = benchContext(table, context, performance.model);
  const { left, callOf } = doubtsOf(context);
  const { files } = context.project;
  for (const problem of [...performance.problems, ...hiddenByAllow(performance, allowedIn(files))]) {
    const doubtless = left(problem, performance),
      certain = doubtless && withoutRings(doubtless, performance.model, context.settings),
      remains = certain && gravestFirst(certain, performance.model);
    if (!remains) continue;
    const raw = wordProblem(table, remains, bench, context.settings, performance),
      within =
        callOf(remains, performance.model) ??
        sameSlip(remains, performance) ??
        lostHeadAround(context.project, remains.at) ??
        faultOf(context.project, remains, performance);
    push(found, raw && within ? { ...raw, within } : raw);
  }
  const { model } = performance,
    { build, unit } = model;
  ask(
    table.ofPerformance,
    (check, say) => check.performance(performance, say, bench),
    (check, draft) => push(found, finish(check, agreed(draft, model), context.settings, { build, unit })),
  );
  return found;
}

/** Of two things that are each behind the other, that ring is said; that the one is in front of the other is the same again. */
function withoutRings(problem: Problem, model: Model, settings: Settings): Problem | undefined {
  const rings = settings.severity["sequence/cycle"] === "off" ? [] : ringsIn(model);
  if (rings.length === 0) return problem;
  const reasons = problem.reasons.filter(
      ({ rule, thing, by }) =>
        rule !== "sequence/blocked" ||
        thing === undefined ||
        !rings.some((ring) => ring.includes(thing) && by.every((one) => ring.includes(one))),
    ),
    [first] = reasons;
  return reasons.length === problem.reasons.length ? problem : first && { ...problem, rule: first.rule, reasons };
}

interface Doubts {
  readonly left: ReturnType<typeof withoutDoubt>;
  readonly callOf: ReturnType<typeof unknownCalls>;
}
const doubts = kept<CheckContext["project"], Map<Settings, Doubts>>();

/** What unknown names cast doubt on; worked out once a project. */
function doubtsOf({ project, settings }: CheckContext): Doubts {
  const known = doubts(project, () => new Map());
  let left = known.get(settings);
  if (!left)
    known.set(settings, (left = { left: withoutDoubt(project, settings), callOf: unknownCalls(project, settings) }));
  return left;
}

/** Procedures performed in it, called and needed ones too. */
const performed = kept<Performance, ReadonlySet<string>>();
function performedIn(performance: Performance): ReadonlySet<string> {
  return performed(performance, () => {
    const { procedure } = performance,
      acts = [...performance.strip, ...performance.written],
      needs = procedure.needs.flatMap((need) => need.names.map((name) => name.text));
    return new Set([procedure.id, ...needs, ...acts.map(({ around }) => around.procedure.id)]);
  });
}

/** What a refused act lacked; undefined where it is no such thing. */
function lackOf(problem: Problem, context: BenchContext): ReadonlySet<string> | undefined {
  // By declaration: a part of a unit inside has another name in the unit around it.
  const idOf = (thing: ThingIndex): string => {
    const { at, piece } = context.model.things[thing]!;
    return `${at.file} ${at.start} ${piece}`;
  };
  const lacks = problem.reasons.map(({ rule, thing, by, words }) => {
    const ids = (rule === "hazard/order" && thing !== undefined ? [thing] : by).map(idOf).join();
    switch (rule) {
      case "sequence/still-held":
      case "sequence/blocked":
      case "sequence/fluid-aboard":
        return `open ${ids}`;
      case "hazard/not-yet":
        return `precautions ${ids} ${words.join()}`;
      case "hazard/order":
        return words[0] === "before"
          ? `precautions ${ids} ${words.slice(1).join()}`
          : `declared ${ids} ${words.join()}`;
      case "hazard/proof-out-of-reach":
        return `open ${ids}`;
      // Too many in the one build are too few in the other.
      case "sequence/over-count":
        return thing === undefined ? undefined : `open ${idOf(thing)}`;
      case "refit/mark-unmade":
        return `mark ${context.model.unit} ${words[0] ?? ""}`;
      case "removal/missing":
      case "removal/never-undone":
      case "removal/old-stays":
        return thing === undefined ? undefined : `open ${idOf(thing)}`;
      default:
        return undefined;
    }
  });
  return lacks.every((lack) => lack !== undefined) ? new Set(lacks) : undefined;
}

function wordProblem(
  table: CheckTable,
  problem: Problem,
  context: BenchContext,
  settings: Settings,
  performance?: Performance,
): Raw | undefined {
  const check = table.byCode(problem.rule);
  if (!check?.problem) throw new Error(`no check words ${problem.rule}`);
  const what = performance && lackOf(problem, context),
    [reason] = problem.reasons;
  const undeclared =
    reason?.rule === "hazard/order" && reason.words[0] === "undeclared" && reason.thing !== undefined
      ? context.model.things[reason.thing]!.whole
      : undefined;
  const declared =
    problem.phase === "declared" && reason?.thing !== undefined
      ? context.model.things[reason.thing]!.whole
      : undeclared;
  const within = declared && unreadIn(context.project, declared),
    draft = agreed(check.problem(problem, context), context.model);
  const things = problem.about.map((thing) => context.model.things[thing]!);
  return finish(check, within ? { ...draft, within } : draft, settings, {
    build: context.model.build,
    unit: context.model.unit,
    who: things[0] ? things[0].name : "",
    about:
      things.length > 0
        ? things.map((t) => `${context.model.unit} ${t.id}`)
        : problem.reasons.flatMap((r) => r.words.slice(0, 1)),
    lack: performance === undefined || what === undefined ? undefined : { what, performed: performedIn(performance) },
    inTheWay: inTheWayOf(problem, context.model),
    restsOn: undeclared,
  });
}

/** Things of one unit that are in each other's way while it is worked on as a whole: of a unit inside, where all of them are within it. */
function inTheWayOf({ reasons, about }: Problem, { parts, things, unit }: Model): InTheWay | undefined {
  if (!reasons.every(({ rule }) => rule === "sequence/blocked" || rule === "sequence/still-held")) return undefined;
  const all = reasons
      .flatMap(({ thing, by }) => (thing === undefined ? by : [thing, ...by]))
      .map((thing) => things[thing]!.id),
    inside = parts.find((part) => part.unit !== undefined && all.every((id) => `${id}/`.startsWith(`${part.id}/`)));
  return {
    unit: inside?.unit ?? unit,
    isInside: inside !== undefined,
    // On its own bench what was to come off as well: around it that may be what is in the way.
    things: new Set(
      inside ? all.map((id) => id.slice(inside.id.length + 1)) : [...all, ...about.map((thing) => things[thing]!.id)],
    ),
  };
}

function push<T>(list: T[], one: T | undefined): void {
  if (one !== undefined) list.push(one);
}

// The bench at work: the state, and what performing has left behind so far. Every act goes through functions that take it first;
// they replace `state` by a new value and never change one in place.

import type { Act, Name } from "../model/act.ts";
import type { Model, ThingIndex } from "../model/model.ts";
import { atPiece } from "../model/named-inside.ts";
import type { Span } from "../findings/finding.ts";
import { machineOf, type Machine } from "./machine.ts";
import { A_DOUBT, NEVER, type State } from "./state.ts";
import type { Trail } from "./stages.ts";
import type { ReasonFacts } from "./how.ts";
import { joinsSlip, noteAstray, noteNever, type Slip } from "./slips.ts";
import type {
  Around,
  Event,
  EventKind,
  Performed,
  Problem,
  Reason,
  RefitNote,
  StepRun,
  TurnedInside,
} from "./trace.ts";
import { at, set } from "./vector.ts";

export interface Bench {
  readonly model: Model;
  readonly machine: Machine;
  state: State;
  phase: "strip" | "refit";
  /** The refit is ours: turns are put in, marks are lined up by themselves. */
  computed: boolean;
  /** Facts that were assumed are not reported, but the acts go on. */
  quiet: boolean;
  /** Steps are done a second time (`repeat from`), with what was done the first time: readings are good, and a step is the same one. */
  again: readonly Performed[] | undefined;
  readonly problems: Problem[];
  /** Halves of slips that wait for their other half. */
  readonly slips: Slip[];
  /** Things of which it was said that they are done twice. */
  readonly doubled: Set<ThingIndex>;
  readonly events: Event[];
  readonly performed: Performed[];
  readonly notes: RefitNote[];
  /** Procedures performed so far, called or needed. */
  readonly calls: Set<string>;
  /** Those being performed now, outermost first; undefined before the first. A procedure never calls itself. */
  calling: readonly string[] | undefined;
  /** Marks lined up in the refit, by label. */
  readonly aligned: Set<string>;
  /** Where a mark was made, or a temporary thing was put on: the line to blame. */
  readonly marksAt: Map<string, Span>;
  readonly putAt: Map<string, Span>;
  /** Where a precaution was taken on the way back, by its number; those of the strip have an event. */
  readonly takenAt: Map<number, Span>;
  /** Where a tie was left finger-tight on the way back. */
  readonly fingerTightAt: Map<ThingIndex, Span>;
  /** Ids that the rest of a written refit will still fit. */
  willFit: ReadonlySet<ThingIndex>;
  /** What a written refit is built up on (`base X`): parts go to its sub-assembly first. */
  builtOn: readonly ThingIndex[];
  /** Tie -> stage of tightening reached. */
  readonly stages: Map<ThingIndex, number>;
  /** Part -> the step in which it came to where it is now (what came along may be named there). */
  readonly metIn: Map<ThingIndex, StepRun | undefined>;
  /** Fitted in the computed way back by a line that names it, and the step of that line. */
  readonly fittedIn: Map<ThingIndex, StepRun | undefined>;
  /** Part of several -> how many went back on. */
  readonly partial: Map<ThingIndex, number>;
  /** Turns of the unit with a part that nothing, or one piece alone, held. */
  readonly turnedLoose: { readonly act: Act; readonly around: Around; readonly reason: Reason }[];
  /** The line of the call being performed. */
  callAt: Span | undefined;
  /** The position that the unit was last turned to for a computed act. */
  turnedTo: string | undefined;
  /** The part that is a unit of its own and was last turned for a computed act. */
  turnedInside: TurnedInside | undefined;
  steps: number;
  /** Keeps the bench between the entries of procedures; undefined where nobody goes on from there. */
  trail: Trail | undefined;
  /** Counts what is done. */
  readonly work: Work;
}

/** How much was performed: for those who have to know that nothing was done twice. */
export interface Work {
  /** Acts of authors, and lines of the computed way back. */
  acts: number;
}

export function benchOf(model: Model, state: State, work: Work = { acts: 0 }): Bench {
  return {
    model,
    machine: machineOf(model),
    state,
    phase: "strip",
    computed: false,
    quiet: false,
    again: undefined,
    problems: [],
    slips: [],
    doubled: new Set(),
    events: [],
    performed: [],
    notes: [],
    calls: new Set(),
    calling: undefined,
    aligned: new Set(),
    marksAt: new Map(),
    putAt: new Map(),
    takenAt: new Map(),
    fingerTightAt: new Map(),
    willFit: new Set(),
    builtOn: [],
    stages: new Map(),
    metIn: new Map(),
    fittedIn: new Map(),
    partial: new Map(),
    turnedLoose: [],
    callAt: undefined,
    turnedTo: undefined,
    turnedInside: undefined,
    steps: 0,
    trail: undefined,
    work,
  };
}

/** Prefix of the names that a procedure done on this part speaks of: those inside it where it is a unit, else those around it. */
export function prefixInside(model: Model, part: ThingIndex | undefined, around: Around): string {
  const thing = part === undefined ? undefined : model.things[part];
  return thing !== undefined && model.scopes.has(`${thing.id}/`) ? `${thing.id}/` : around.prefix;
}

/** A name of the text as things: inside `repeat for` the piece at hand goes before the whole. Unknown names stand for nothing. */
export function resolveName(bench: Bench, name: string, around: Around): readonly ThingIndex[] {
  const scope = bench.model.scopes.get(around.prefix);
  if (!scope) return [];
  for (let k = around.pieces.length - 1; k >= 0; k--) {
    const one = atPiece(scope, name, around.pieces[k]!);
    if (one) return one;
  }
  return scope.get(name) ?? [];
}

export function resolve(bench: Bench, names: readonly Name[], around: Around): readonly ThingIndex[] {
  if (names.length === 1) return resolveName(bench, names[0]!.text, around);
  const things: ThingIndex[] = [];
  for (const name of names) things.push(...resolveName(bench, name.text, around));
  return things;
}

// --- problems ----------------------------------------------------------------------------------------------------------------

/** Why an act could not be done, and what is then taken as done so that the rest can be judged. */
export interface Obstacle {
  readonly reason: Reason;
  readonly assume: (() => void) | undefined;
}

const none: readonly never[] = [];
/** What most acts meet. */
export const noObstacles: readonly Obstacle[] = none;

export function reasonOf<Rule extends string>(rule: Rule, of: ReasonFacts<Rule>): Reason {
  return {
    rule,
    thing: of.thing,
    by: of.by ?? none,
    left: of.left ?? none,
    words: of.words ?? none,
    numbers: of.numbers ?? none,
    at: of.at,
    chain: of.chain ?? none,
  };
}

/** Reports what is amiss without stopping anything. */
export function report(
  bench: Bench,
  at: Span,
  about: readonly ThingIndex[],
  reasons: readonly Reason[],
  act?: Act,
  around?: Around,
): void {
  if (bench.quiet) return;
  bench.problems.push({ rule: reasons[0]!.rule, phase: bench.phase, act, around, at, about, reasons });
}

/** One refused act, one problem with all its reasons; then what it lacked is taken as done, and its own end is not judged again. */
export function refuse(
  bench: Bench,
  act: Act,
  around: Around,
  thing: ThingIndex,
  obstacles: readonly Obstacle[],
): void {
  if (obstacles.length === 0) return;
  const about = [
    thing,
    ...obstacles.flatMap((o) => [...(o.reason.thing === undefined ? [] : [o.reason.thing]), ...o.reason.by]),
  ];
  const reasons = obstacles.map((o) => o.reason);
  if (!joinsSlip(bench, around, reasons) && !joinsSameLack(bench, reasons, around)) {
    report(bench, act.at, about, reasons, act, around);
    if (!bench.quiet) {
      const problem = bench.problems[bench.problems.length - 1]!;
      noteNever(bench, around, problem);
      noteAstray(bench, around, thing, problem);
    }
  }
  for (const obstacle of obstacles) obstacle.assume?.();
  assume(bench, thing, A_DOUBT);
}

/**
 * The same precaution forgotten for several hazards of one procedure is one line forgotten, and so is what was never taken off and is
 * fitted part by part in one step: said at the first, with all of them. Hazards of which no line so far has taken any precaution are one
 * lack: what is missing is the step that does it.
 */
export function joinsSameLack(bench: Bench, reasons: readonly Reason[], around: Around): boolean {
  if (joinsWhole(bench, reasons) || joinsWrongHazard(bench, reasons)) return true;
  const isBare = ({ by }: Reason): boolean =>
    !bench.events.some(({ kind, assumed, thing }) => kind === "stands" && !assumed && thing === by[0]);
  const lack = (list: readonly Reason[]): string => {
    const isAll = list.every((reason) => reason.rule === "hazard/not-yet" && isBare(reason));
    const kinds = list.map(({ rule, words }) => {
      if (rule === "refit/impossible" && words[0] === "already on") return words[0];
      return rule === "hazard/not-yet"
        ? isAll
          ? "precautions"
          : words.join()
        : rule === "hazard/order" && words[0] === "before"
          ? words.slice(1).join()
          : undefined;
    });
    return kinds.every((kind) => kind !== undefined && kind === kinds[0]) ? `${kinds[0]}` : "";
  };
  const lacking = lack(reasons);
  return (
    lacking !== "" &&
    joins(
      bench,
      reasons,
      (p) =>
        p.phase === bench.phase &&
        p.act !== undefined &&
        lack(p.reasons) === lacking &&
        (lacking !== "already on" || p.around?.step === around.step),
    )
  );
}

/** A precaution taken of a hazard that declares none such, and missed by another one: one wrong name. */
function joinsWrongHazard(bench: Bench, reasons: readonly Reason[]): boolean {
  const kind = reasons[0]!.words[0];
  if (!reasons.every(({ rule, words }) => rule === "hazard/not-yet" && words.length === 1 && words[0] === kind))
    return false;
  return joins(
    bench,
    reasons,
    ({ phase, reasons: [first] }) =>
      phase === bench.phase &&
      first!.rule === "hazard/order" &&
      first!.words[0] === "undeclared" &&
      first!.words[1] === kind,
  );
}

/**
 * A way back, or a strip that has taken something apart: what begins with fitting is a half that others do, and says nothing of a machine
 * that is whole.
 */
export const isPuttingBack = (bench: Bench): boolean => bench.phase === "refit" || wholeSoFar(bench).length === 0;

/** The words of a reason for what is on already where nothing at all was taken off before. */
export const wholeSoFar = (bench: Bench): readonly string[] =>
  bench.events.some(({ kind, assumed }) => !assumed && (kind === "off" || kind === "out" || kind === "aside"))
    ? none
    : [WHOLE];
const WHOLE = "nothing apart";

/**
 * A way back that began at a whole machine lacks the procedure that took it apart: what of it cannot go on since nobody took it off, and
 * what was never marked, is that one lack, said at the first.
 */
export function joinsWhole(bench: Bench, reasons: readonly Reason[]): boolean {
  const isOn = (thing: ThingIndex | undefined): boolean =>
    thing === undefined ||
    !bench.events.some(
      ({ kind, assumed, things, moved }) =>
        !assumed && (kind === "off" || kind === "out") && (things.includes(thing) || moved.includes(thing)),
    );
  return (
    reasons.every(({ rule, thing }) => (rule === "refit/impossible" || rule === "refit/mark-unmade") && isOn(thing)) &&
    joins(bench, reasons, (p) => p.phase === "refit" && p.reasons[0]!.words[1] === WHOLE)
  );
}

/** These reasons go to the problem that this is true of, where there is one: one mistake, said once. */
export function joins(bench: Bench, reasons: readonly Reason[], is: (problem: Problem) => boolean): boolean {
  const i = bench.quiet ? -1 : bench.problems.findIndex(is),
    first = bench.problems[i];
  if (!first) return false;
  bench.problems[i] = { ...first, reasons: [...first.reasons, ...reasons] };
  return true;
}

// --- assumptions -------------------------------------------------------------------------------------------------------------

export function assume(bench: Bench, thing: ThingIndex, fact: number): void {
  const s = bench.state,
    had = at(s.assumed, thing);
  if ((had & fact) === fact) return;
  bench.state = { ...s, assumed: set(s.assumed, thing, had | fact), assumptions: s.assumptions + (had === 0 ? 1 : 0) };
}

export function forget(bench: Bench, thing: ThingIndex, fact: number): void {
  const s = bench.state;
  if (s.assumptions === 0) return;
  const had = at(s.assumed, thing),
    left = had & ~fact;
  if (left === had) return;
  bench.state = { ...s, assumed: set(s.assumed, thing, left), assumptions: s.assumptions - (left === 0 ? 1 : 0) };
}

export function isAssumed(bench: Bench, thing: ThingIndex, fact: number): boolean {
  return bench.state.assumptions > 0 && (at(bench.state.assumed, thing) & fact) !== 0;
}

// --- events ------------------------------------------------------------------------------------------------------------------

export interface EventFacts {
  readonly things?: readonly ThingIndex[];
  readonly count?: number;
  readonly moved?: readonly ThingIndex[];
  readonly from?: number;
  readonly precautions?: readonly number[];
  readonly hazards?: readonly ThingIndex[];
  readonly assumed?: boolean;
}

/** Notes what happened; the caller then changes the state. Returns its number. */
export function happen(
  bench: Bench,
  kind: EventKind,
  thing: ThingIndex,
  act: Act,
  around: Around,
  needs: Iterable<number>,
  of: EventFacts = {},
): number {
  const index = bench.events.length,
    list: number[] = [];
  for (const need of needs) if (need >= 0 && !list.includes(need)) list.push(need);
  if (around.bench !== undefined && around.bench >= 0 && !list.includes(around.bench)) list.push(around.bench);
  bench.events.push({
    index,
    kind,
    thing,
    things: of.things ?? [thing],
    count: of.count ?? 1,
    act,
    around,
    needs: list,
    moved: of.moved ?? none,
    from: of.from ?? 0,
    before: bench.state,
    precautions: of.precautions ?? none,
    hazards: of.hazards ?? none,
    assumed: of.assumed ?? false,
  });
  return index;
}

export const eventOf = (bench: Bench, index: number): Event | undefined =>
  index > NEVER ? bench.events[index] : undefined;

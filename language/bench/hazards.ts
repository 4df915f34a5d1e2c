// Hazards on the bench: what a touch asks for, precautions that stand and lapse, proofs and what ends them. It never clears
// anything: a precaution that stands is a fact about what was done, not about what is left.

import type { Act } from "../model/act.ts";
import type { Hazard, ThingIndex, Tie } from "../model/model.ts";
import { hazardKinds, kindIn, precautions as kinds } from "../tables/index.ts";
import { isAside } from "./access.ts";
import {
  assume,
  forget,
  happen,
  isAssumed,
  noObstacles,
  reasonOf,
  refuse,
  report,
  type Bench,
  type Obstacle,
} from "./bench.ts";
import { actsUnderPower, hangsBy, isPart, isTie, tieOf } from "./machine.ts";
import { A_AWAY, A_DOUBT, A_HAZARD, A_OUT, A_SLACK, LAPSED, NEVER, TIGHT } from "./state.ts";
import { holds, lumpOf, partingOf, together } from "./ties.ts";
import type { Around, Reason } from "./trace.ts";
import { at, set, type Vector } from "./vector.ts";

const isProof = (kind: string): boolean => kindIn(kinds, kind)?.isProof === true;
const isWeight = (hazard: Hazard): boolean => kindIn(hazardKinds, hazard.kind)?.isWeight === true;
const stands = (standing: Vector, precaution: number): boolean => at(standing, precaution) !== 0;

/** Touching these things: the precautions that must stand first, and do not. Notes the events that made the others stand. */
export function touch(
  bench: Bench,
  things: readonly ThingIndex[],
  act: Act,
  around: Around,
  needs: Set<number>,
  hazards: Set<ThingIndex>,
  ignored: (hazard: Hazard) => boolean = () => false,
): readonly Obstacle[] {
  const { machine } = bench;
  if (!isAnyOf(things, machine.isHazardous)) return noObstacles;
  const obstacles: Obstacle[] = [];
  const due = new Map<Hazard, number>(); // hazard -> how many of its precautions, from the first
  for (const thing of things) {
    for (const hazard of machine.hazardsOn[thing] ?? [])
      if (!due.has(hazard) && !ignored(hazard)) due.set(hazard, hazard.precautions.length);
    if (isTie(bench.model, thing))
      for (const hazard of pushedBy(bench, tieOf(bench.model, thing)))
        if (!due.has(hazard)) due.set(hazard, hazard.precautions.length);
  }
  // What a precaution is behind has to be opened before it can be done: only those before it are due.
  for (const thing of things)
    for (const { hazard, before } of machine.guarded[thing] ?? [])
      if (!ignored(hazard)) due.set(hazard, Math.min(before, due.get(hazard) ?? before));
  for (const [hazard, count] of due) {
    hazards.add(hazard.index);
    const missing: number[] = [];
    for (let k = 0; k < count; k++) {
      const precaution = hazard.precautions[k]!,
        by = at(bench.state.standing, precaution.number);
      if (by === 0) missing.push(precaution.number);
      else if (by > 0) needs.add(by - 1);
    }
    if (missing.length === 0 || isAssumed(bench, hazard.index, A_HAZARD)) continue;
    const lapsed = (at(bench.state.flags, hazard.index) & LAPSED) !== 0;
    const thing = things.find((t) => hazard.on.includes(t)) ?? things[0];
    obstacles.push({
      reason: reasonOf(lapsed ? "hazard/lapsed" : "hazard/not-yet", {
        thing,
        by: [hazard.index],
        words: missing.map((n) => bench.model.precautions[n]!.kind),
        numbers: missing,
        at: hazard.at,
      }),
      assume: () => assumeStanding(bench, hazard, missing, act, around),
    });
  }
  return obstacles;
}

function isAnyOf(things: readonly ThingIndex[], is: readonly boolean[]): boolean {
  for (const thing of things) if (is[thing]) return true;
  return false;
}

/** What rides along with the parts that are moved is not touched, but its weight is moved with theirs. */
export function weightAlong(
  bench: Bench,
  along: readonly ThingIndex[],
  act: Act,
  around: Around,
  needs: Set<number>,
  hazards: Set<ThingIndex>,
): readonly Obstacle[] {
  return touch(bench, along, act, around, needs, hazards, (hazard) => !isWeight(hazard));
}

/** What a touch rests on: the events that made the precautions stand, and the hazards concerned. */
export interface Touched {
  readonly needs: ReadonlySet<number>;
  readonly hazards: readonly ThingIndex[];
}

/**
 * Hands on things by an act that neither takes them apart nor puts them together: refused like any touch while a precaution is
 * missing, and for what else stands `before` it. What guards against a weight is not asked for: nothing is let go or moved, and `support` is how a weight is taken.
 */
export function handsOn(
  bench: Bench,
  act: Act,
  things: readonly ThingIndex[],
  around: Around,
  before: (thing: ThingIndex) => readonly Obstacle[] = () => [],
): Touched {
  const needs = new Set<number>(),
    hazards = new Set<ThingIndex>();
  for (const thing of things)
    refuse(bench, act, around, thing, [
      ...before(thing),
      ...touch(bench, [thing], act, around, needs, hazards, isWeight),
    ]);
  return { needs, hazards: [...hazards] };
}

/** Taken as done, so that the rest is judged: the refit takes them away again. */
function assumeStanding(bench: Bench, hazard: Hazard, missing: readonly number[], act: Act, around: Around): void {
  let standing = bench.state.standing;
  for (const number of missing) {
    const event =
      bench.phase === "strip"
        ? happen(bench, "stands", hazard.index, act, around, [], {
            precautions: [number],
            hazards: [hazard.index],
            assumed: true,
          })
        : NEVER;
    standing = set(standing, number, event === NEVER ? -1 : event + 1);
  }
  bench.state = { ...bench.state, standing };
  assume(bench, hazard.index, A_HAZARD);
}

/** Hazards that throw a part whose last tie this is. */
function pushedBy(bench: Bench, tie: Tie): Hazard[] {
  const found: Hazard[] = [];
  for (const part of [...tie.lowers, ...tie.uppers]) {
    const hazards = bench.machine.pushedBy[part]!;
    if (hazards.length === 0) continue;
    const others = bench.machine.tiesOf[part]!.some(
      (t) =>
        t.index !== tie.index &&
        !t.passing &&
        holds(bench.model, bench.state, t.index) &&
        at(bench.state.slack, t.index) === TIGHT,
    );
    if (!others) found.push(...hazards);
  }
  return found;
}

/** `lock-out H`, `prove-dead H` …: the precaution stands from here on. */
export function stand(bench: Bench, act: Act, thing: ThingIndex, around: Around): void {
  const hazard = bench.model.things[thing];
  if (hazard?.is !== "hazard") return;
  const k = hazard.precautions.findIndex((p) => p.kind === act.verb);
  if (k < 0)
    return report(
      bench,
      act.at,
      [thing],
      [reasonOf("hazard/order", { thing, words: ["undeclared", act.verb], at: hazard.at })],
      act,
      around,
    );
  const { model, state: s } = bench,
    precaution = hazard.precautions[k]!,
    needs = new Set<number>(),
    obstacles: Obstacle[] = [];
  const missing = hazard.precautions.slice(0, k).filter((p) => !stands(s.standing, p.number));
  if (missing.length > 0 && !isAssumed(bench, thing, A_HAZARD)) {
    obstacles.push({
      reason: reasonOf("hazard/order", {
        thing,
        words: ["before", ...missing.map((p) => p.kind)],
        numbers: missing.map((p) => p.number),
        at: hazard.at,
      }),
      assume: undefined,
    });
  }
  const base = model.base[0];
  const shut = precaution.behind.find((b) =>
    isPart(model, b)
      ? base !== undefined && together(s, b, base) && !isAside(s, b) && !isAssumed(bench, b, A_AWAY)
      : isTie(model, b) && holds(model, s, b) && !isAssumed(bench, b, A_OUT | A_SLACK | A_AWAY),
  );
  if (shut !== undefined) {
    obstacles.push({
      reason: reasonOf("hazard/proof-out-of-reach", { thing, by: [shut], words: [act.verb], at: precaution.at }),
      assume: () => assume(bench, shut, A_AWAY),
    });
  }
  for (const b of precaution.behind)
    if (isPart(model, b) && base !== undefined) {
      const parting = partingOf(s, b, base);
      if (parting !== NEVER) needs.add(parting);
    }
  for (const b of precaution.behind)
    if (isTie(model, b)) for (const by of [at(s.outBy, b), at(s.slackBy, b)]) if (by !== NEVER) needs.add(by);
  // Taken once more while it stands: what rests on it rests on the first time, which alone is taken back.
  for (const p of hazard.precautions.slice(0, k + 1)) {
    const by = at(s.standing, p.number);
    if (by > 0) needs.add(by - 1);
  }
  refuse(bench, act, around, thing, obstacles);
  if (missing.length > 0)
    assumeStanding(
      bench,
      hazard,
      missing.map((p) => p.number),
      act,
      around,
    );
  const event =
    bench.phase === "strip"
      ? happen(bench, "stands", thing, act, around, needs, { precautions: [precaution.number], hazards: [thing] })
      : NEVER;
  if (event === NEVER) bench.takenAt.set(precaution.number, act.at);
  bench.state = {
    ...bench.state,
    standing: set(bench.state.standing, precaution.number, event === NEVER ? -1 : event + 1),
  };
}

/** `restore H`: a powered test between; all its precautions lapse, also those only assumed. Under power every guard is on. */
export function restore(bench: Bench, act: Act, thing: ThingIndex, around: Around): void {
  const hazard = bench.model.things[thing];
  if (hazard?.is !== "hazard") return;
  const standing = hazard.precautions.filter((p) => stands(bench.state.standing, p.number)).map((p) => p.number);
  if (standing.length === 0 && !bench.computed)
    return report(
      bench,
      act.at,
      [thing],
      [reasonOf("hazard/lapsed", { thing, words: ["nothing stands"], at: hazard.at })],
      act,
      around,
    );
  proofBefore(bench, hazard, standing, act, around);
  guardsOn(bench, hazard, act, around);
  lapse(bench, hazard, standing, act, around);
  forget(bench, thing, A_HAZARD);
}

/** Power is given back that was taken away, and the proof that belongs between was never made: what was done there was done without. */
function proofBefore(bench: Bench, hazard: Hazard, standing: readonly number[], act: Act, around: Around): void {
  const missing = hazard.precautions.filter((p) => isProof(p.kind) && !standing.includes(p.number));
  if (missing.length === 0 || standing.length === 0 || isAssumed(bench, hazard.index, A_HAZARD)) return;
  report(
    bench,
    act.at,
    [hazard.index],
    [
      reasonOf("hazard/order", {
        thing: hazard.index,
        words: ["before", ...missing.map((p) => p.kind)],
        numbers: missing.map((p) => p.number),
        at: hazard.at,
      }),
    ],
    act,
    around,
  );
}

function lapse(bench: Bench, hazard: Hazard, standing: readonly number[], act: Act, around: Around): void {
  if (bench.phase === "strip" && standing.length > 0)
    happen(bench, "lapses", hazard.index, act, around, [], { precautions: standing, hazards: [hazard.index] });
  let next = bench.state.standing;
  for (const number of standing) next = set(next, number, 0);
  bench.state = {
    ...bench.state,
    standing: next,
    flags: set(bench.state.flags, hazard.index, at(bench.state.flags, hazard.index) | LAPSED),
  };
}

/** Under power every guard is on: in its place, and held there. */
function guardsOn(bench: Bench, hazard: Hazard, act: Act, around: Around): void {
  if (!actsUnderPower(hazard)) return;
  const { machine, state } = bench,
    base = bench.model.base[0];
  if (base === undefined) return;
  const reasons: Reason[] = [];
  for (const { index, at: declared } of machine.guards) {
    if (isAssumed(bench, index, A_AWAY)) continue;
    const isOff = lumpOf(state, index) !== lumpOf(state, base) || isAside(state, index);
    if (!isOff && !isLoose(bench, index)) continue;
    reasons.push(
      reasonOf("hazard/guard-off", {
        thing: hazard.index,
        by: [index],
        words: isOff ? [] : ["held by nothing"],
        at: declared,
      }),
    );
  }
  if (reasons.length === 0) return;
  // That its screws are not back in is the same slip.
  for (const { by, words } of reasons)
    if (words.length > 0) for (const tie of hangsBy(machine, by[0]!)) assume(bench, tie.index, A_DOUBT);
  report(bench, act.at, [hazard.index, ...reasons.flatMap(({ by }) => by)], joined(reasons), act, around);
}

/** All guards that are off are one reason, and so are all that lie in their place with nothing to hold them. */
function joined(reasons: readonly Reason[]): Reason[] {
  return [true, false].flatMap((isOff) => {
    const of = reasons.filter(({ words }) => (words.length === 0) === isOff);
    return of.length === 0 ? [] : [{ ...of[0]!, by: of.flatMap(({ by }) => by) }];
  });
}

/** It hangs by what is undone by an act of its own, and all of that is out or backed out. */
function isLoose(bench: Bench, part: ThingIndex): boolean {
  const ties = hangsBy(bench.machine, part);
  return ties.length > 0 && !ties.some((tie) => holds(bench.model, bench.state, tie.index));
}

/** A generator that is turned, or freed to turn, feeds its leads: what was proved is no longer so. */
export function turned(bench: Bench, parts: readonly ThingIndex[], act: Act, around: Around): void {
  for (const hazard of bench.model.hazards) {
    if (hazard.source !== "generator") continue;
    const proofs = hazard.precautions
      .filter((p) => isProof(p.kind) && stands(bench.state.standing, p.number))
      .map((p) => p.number);
    if (proofs.length === 0 || !parts.some((part) => drives(bench, part, hazard))) continue;
    lapse(bench, hazard, proofs, act, around);
  }
}

/** Turning this part turns the generator: it is one of the things that the hazard is on or pushes, or hangs together with one. */
function drives(bench: Bench, part: ThingIndex, hazard: Hazard): boolean {
  if (hazard.on.includes(part) || hazard.pushes.includes(part)) return true;
  const concerned = new Set<ThingIndex>();
  for (const thing of [...hazard.on, ...hazard.pushes]) {
    if (isPart(bench.model, thing)) concerned.add(thing);
    else if (isTie(bench.model, thing))
      for (const p of [...tieOf(bench.model, thing).lowers, ...tieOf(bench.model, thing).uppers]) concerned.add(p);
  }
  if (!isPart(bench.model, part)) return false;
  if (concerned.has(part)) return true;
  return bench.machine.edges[part]!.some(
    (e) => concerned.has(e.to) && !bench.machine.isBase(e.to) && together(bench.state, part, e.to),
  );
}

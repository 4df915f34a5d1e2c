// The end must be the start, or what `leaves` says. What is missing stands at the first act of the step whose strip took it off.

import type { Span } from "../findings/finding.ts";
import type { ThingIndex } from "../model/model.ts";
import { precautions as kinds, kindIn } from "../tables/index.ts";
import { isUnknown } from "./access.ts";
import { isAssumed, reasonOf, report, type Bench } from "./bench.ts";
import { isPart, isTie, partOf, tieOf } from "./machine.ts";
import {
  A_DOUBT,
  A_DRAINED,
  A_HAZARD,
  ASIDE,
  CAPPED,
  DRAINED,
  FINGER_TIGHT,
  NEVER,
  ON_BASE,
  TIGHT,
  type State,
} from "./state.ts";
import { joinsSlip } from "./slips.ts";
import type { Leaves } from "./leaves.ts";
import { lumpOf } from "./ties.ts";
import { staysOff, staysOpen } from "./refit/inverse.ts";
import { togetherAtLast } from "./refit/sub-assemblies.ts";
import type { Event, Promised, StepRun } from "./trace.ts";
import { at } from "./vector.ts";

/** By which it came off for good, each time: what the strip puts back and takes off once more went there by either. */
function lastPartings(events: readonly Event[], thing: ThingIndex): number[] {
  const found: number[] = [];
  let last = -1;
  for (const { kind, things, moved, index } of events) {
    if (kind === "off" && things.includes(thing)) last = index;
    if (kind !== "met" || !moved.includes(thing) || last < 0) continue;
    found.push(last);
    last = -1;
  }
  return last < 0 ? found : [...found, last];
}

const allTogether = (): boolean => true;

/** What is promised of the end; asked when the strip is done, by what came off what. */
export function leavesOf(bench: Bench, promised: readonly Promised[]): Leaves {
  const of = (is: string): ThingIndex[] => promised.flatMap((one) => (one.is === is ? one.things : []));
  const out = new Map<ThingIndex, number | undefined>();
  for (const { leave, is, things } of promised)
    if (is === "out") for (const thing of things) out.set(thing, leave.count);
  const turned = promised.find(({ is }) => is === "turned")?.leave.names[0]?.text;
  const off = new Set(of("off")),
    partings = new Set([...off].flatMap((thing) => lastPartings(bench.events, thing)));
  return {
    off,
    partings,
    together:
      off.size === 0
        ? allTogether
        : togetherAtLast(bench.model, bench.events, bench.state, ({ index }) => partings.has(index)),
    out,
    fingerTight: new Set(of("finger-tight")),
    drained: new Set(of("drained")),
    turned,
  };
}

/** `wayBack`: the position that the unit was in before what comes after the way back, for which it is turned where that needs it. */
export function judgeEnd(
  bench: Bench,
  start: State,
  leaves: Leaves,
  blame: Span,
  wayBack: string = bench.state.position,
): void {
  const missing = partsMissing(bench, start, leaves, blame);
  tiesMissing(bench, start, leaves, missing, blame);
  for (const fluid of bench.model.fluids) {
    const drained = (s: State): boolean => (at(s.flags, fluid.index) & DRAINED) !== 0;
    if (
      !drained(bench.state) ||
      drained(start) ||
      leaves.drained.has(fluid.index) ||
      !fluid.filled ||
      isAssumed(bench, fluid.index, A_DRAINED)
    )
      continue;
    say(bench, "refit/fluid-short", fluid.index, placeOf(bench, at(bench.state.drainedBy, fluid.index), blame), []);
  }
  precautionsLeft(bench, start, leaves, blame);
  for (const [part, count] of bench.partial) {
    const all = partOf(bench.model, part).count;
    if (count < all)
      say(bench, "refit/missing", part, placeOf(bench, at(bench.state.offBy, part), blame), ["some"], [count, all]);
  }
  for (const [name, { on }] of bench.state.temporaries) {
    if (start.temporaries.has(name) || !bench.putAt.has(name) || takenTooEarly(bench, name)) continue;
    report(bench, bench.putAt.get(name) ?? blame, on, [
      reasonOf("refit/temporary-left", { by: on, words: [name], at: bench.model.temporaries.get(name)?.at }),
    ]);
  }
  const due = leaves.turned ?? start.position;
  if (!bench.computed && ![wayBack, bench.state.position].some((position) => position === due || position === "?"))
    report(bench, blame, [], [reasonOf("refit/position", { words: [bench.state.position, due] })]);
  marksUnused(bench, missing);
}

/** It was to be taken off before it was put on: two lines the wrong way round, and that is said where it was taken off. */
export const takenTooEarly = (bench: Bench, temporary: string): boolean =>
  bench.problems.some(({ reasons }) =>
    reasons.some(({ words: [what, name] }) => what === "not put" && name === temporary),
  );

function say(
  bench: Bench,
  rule: string,
  thing: ThingIndex,
  where: Span,
  words: readonly string[],
  numbers: readonly number[] = [],
): void {
  const reasons = [reasonOf(rule, { thing, words, numbers, at: bench.model.things[thing]!.at })];
  if (!joinsSlip(bench, undefined, reasons)) report(bench, where, [thing], reasons);
}

const isDoubtful = (bench: Bench, thing: ThingIndex): boolean =>
  isUnknown(bench, thing) || isAssumed(bench, thing, A_DOUBT);

/** The first act of the step that the event belongs to. */
function placeOf(bench: Bench, index: number, otherwise: Span): Span {
  const event = bench.events[index];
  return event ? firstOfStep(bench, event) : otherwise;
}

function firstOfStep(bench: Bench, event: Event): Span {
  const step: StepRun | undefined = event.around.step;
  if (!step) return event.act.at;
  return bench.events.find((e) => e.around.step === step)?.act.at ?? event.act.at;
}

function partsMissing(bench: Bench, start: State, leaves: Leaves, blame: Span): Set<ThingIndex> {
  const { model, state: s } = bench,
    missing = new Set<ThingIndex>(),
    told = new Set<number>();
  for (const part of model.parts) {
    const lump = lumpOf(s, part.index);
    if (lump === ON_BASE) continue;
    // One that came off before all that is known here has no event.
    const carrier = s.carriers.get(lump)?.carrier,
      event = bench.events[lump - 1];
    if (carrier === undefined || leaves.off.has(carrier) || lumpOf(start, carrier) !== ON_BASE) continue;
    missing.add(part.index);
    if (told.has(lump)) continue;
    told.add(lump);
    if (isDoubtful(bench, carrier)) continue;
    if (event) say(bench, "refit/missing", carrier, firstOfStep(bench, event), ["off"]);
    else say(bench, "refit/missing", carrier, blame, ["still off"]);
  }
  return missing;
}

function tiesMissing(bench: Bench, start: State, leaves: Leaves, missing: ReadonlySet<ThingIndex>, blame: Span): void {
  const { model, state: s } = bench;
  for (const tie of model.ties) {
    const index = tie.index,
      out = at(s.out, index),
      slack = at(s.slack, index);
    if (out === 0 && slack === TIGHT) continue;
    if (isDoubtful(bench, index) || staysOff(model, index, leaves)) continue;
    if (out > at(start.out, index)) {
      const promised = leaves.out.has(index) ? (leaves.out.get(index) ?? tie.count) : 0;
      const event = bench.events[at(s.outBy, index)];
      if (out > promised && !event?.assumed && ![...tie.lowers, ...tie.uppers].some((p) => missing.has(p))) {
        say(bench, "refit/missing", index, event ? firstOfStep(bench, event) : blame, ["out"], [out, tie.count]);
      }
    }
    if (
      slack !== TIGHT &&
      at(start.slack, index) === TIGHT &&
      !leaves.fingerTight.has(index) &&
      !leaves.out.has(index)
    ) {
      const stage = bench.stages.get(index),
        how =
          slack !== FINGER_TIGHT
            ? "loose"
            : stage === undefined
              ? "finger-tight"
              : `at stage ${stage} of ${tie.stages.length}`;
      const where = how === "finger-tight" ? bench.fingerTightAt.get(index) : undefined;
      say(bench, "refit/missing", index, where ?? bench.events[at(s.slackBy, index)]?.act.at ?? blame, [how]);
    }
  }
  for (const part of model.parts) {
    const flag = (state: State, bit: number): boolean => (at(state.flags, part.index) & bit) !== 0;
    if (flag(s, ASIDE) && !flag(start, ASIDE) && !missing.has(part.index) && !isDoubtful(bench, part.index)) {
      say(bench, "refit/missing", part.index, bench.events[at(s.asideBy, part.index)]?.act.at ?? blame, ["aside"]);
    }
  }
  for (const thing of model.things) {
    if (
      (at(s.flags, thing.index) & CAPPED) === 0 ||
      (at(start.flags, thing.index) & CAPPED) !== 0 ||
      (thing.is === "tie" && isTie(model, thing.index) && tieOf(model, thing.index).oneWay)
    )
      continue;
    const event = bench.events.find((e) => e.kind === "capped" && e.thing === thing.index);
    say(bench, "refit/temporary-left", thing.index, event?.act.at ?? blame, ["cap"]);
  }
}

/** What stands and would have to be taken away; a proof or a discharge is nothing that stays in place. */
function precautionsLeft(bench: Bench, start: State, leaves: Leaves, blame: Span): void {
  for (const hazard of bench.model.hazards) {
    if (isAssumed(bench, hazard.index, A_HAZARD) || staysOpen(bench.model, hazard.index, leaves)) continue;
    const left = hazard.precautions.filter(
      (p) =>
        at(bench.state.standing, p.number) !== 0 &&
        at(start.standing, p.number) === 0 &&
        (p.back !== "" || kindIn(kinds, p.kind)?.back !== undefined),
    );
    if (left.length === 0) continue;
    const { number } = left[0]!,
      by = at(bench.state.standing, number),
      where = by > 0 ? placeOf(bench, by - 1, blame) : (bench.takenAt.get(number) ?? blame);
    say(bench, "refit/missing", hazard.index, where, ["stands", ...left.map((p) => p.kind)]);
  }
}

/** A procedure that builds up again says itself what it lines up, and is judged by that. */
const isBuiltUpApart = ({ model }: Bench): boolean =>
  [...model.procedures.values()].some(({ aims }) => aims.some(({ is }) => is === "all-in"));

function marksUnused(bench: Bench, missing: ReadonlySet<ThingIndex>): void {
  for (const [label, where] of bench.marksAt) {
    const things = bench.state.marks.get(label)?.things;
    // A computed way back lines up what meets; a mark on one thing alone meets nothing.
    if (bench.computed && (things?.length !== 1 || isBuiltUpApart(bench))) continue;
    if (
      !things ||
      bench.aligned.has(label) ||
      !things.some((t) => at(isPart(bench.model, t) ? bench.state.lumpBy : bench.state.outBy, t) !== NEVER)
    )
      continue;
    if (things.some((t) => missing.has(t) || isDoubtful(bench, t))) continue;
    report(bench, where, things, [
      reasonOf("refit/mark-unused", { words: [label, bench.computed ? "alone" : "never"], by: things, at: where }),
    ]);
  }
}

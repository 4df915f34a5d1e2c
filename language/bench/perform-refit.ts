// The computed refit performed, line by line, by the same rules as the strip read forward.

import type { Act } from "../model/act.ts";
import type { ThingIndex } from "../model/model.ts";
import { kindIn, precautions as kinds } from "../tables/index.ts";
import { judgeAbsent } from "./absent.ts";
import { moveAside, moveBack } from "./aside.ts";
import { resolve, type Bench } from "./bench.ts";
import { cap, fill } from "./fluids.ts";
import { fit } from "./fit.ts";
import { grip, release, support } from "./hold.ts";
import { isTie } from "./machine.ts";
import { make } from "./make.ts";
import { perform } from "./perform.ts";
import { plainAct } from "./plain-act.ts";
import { remove } from "./remove.ts";
import type { RefitOp, RefitOrder, RefitPerformed } from "./trace.ts";
import { undo } from "./undo.ts";
import { set } from "./vector.ts";

export function performRefit(bench: Bench, order: RefitOrder, line: readonly number[] = order.line): RefitPerformed[] {
  bench.phase = "refit";
  bench.computed = true;
  const fits = new Set<ThingIndex>();
  for (const { event, things } of order.ops) {
    for (const thing of event?.things ?? things) fits.add(thing);
    for (const thing of event?.moved ?? nothing) fits.add(thing);
  }
  bench.willFit = fits;
  const done: RefitPerformed[] = [];
  for (const number of line) {
    const op = order.ops[number]!,
      before = bench.state,
      acts = bench.performed.length;
    bench.turnedTo = undefined;
    bench.turnedInside = undefined;
    performOp(bench, op);
    done.push({
      op,
      handled: handledSince(bench, acts),
      turn: bench.turnedTo,
      turnInside: bench.turnedInside,
      before,
      after: bench.state,
    });
  }
  return done;
}

/** What the acts from this one on have handled: most lines of the way back are no acts of an author. */
const handledSince = ({ performed }: Bench, from: number): readonly ThingIndex[] =>
  performed.length === from ? nothing : performed.slice(from).flatMap(({ handled }) => handled);
const nothing: readonly ThingIndex[] = [];

function performOp(bench: Bench, op: RefitOp): void {
  const { event, around } = op,
    thing = op.things[0];
  if (op.verb !== "written") bench.work.acts++; // what is written is counted as the act that it is
  if (!event) {
    if (op.act) perform(bench, op.act, around);
    return;
  }
  if (thing === undefined) return;
  if (op.act) judgeAbsent(bench, op.act, around);
  const written = op.act,
    as = (verb: string, more: Partial<Act> = {}): Act =>
      written ? { ...written, verb, names: [], ...more } : plainAct(verb, event.act, more);
  if (written?.verb === "fit" && written.count === undefined)
    for (const one of resolve(bench, written.names, around)) bench.fittedIn.set(one, around.step);
  switch (op.verb) {
    case "fit":
      if (isTie(bench.model, thing))
        return make(bench, as("fit", { count: op.count, fingerTight: written?.fingerTight ?? false }), thing, around);
      return fit(
        bench,
        as("fit", { count: undefined }),
        carrierOf(bench, op),
        around,
        written ? resolve(bench, written.on, around) : [],
        event,
      );
    case "finger-tighten":
      return make(bench, as("fit", { count: op.count, fingerTight: true }), thing, around);
    case "tighten":
      return make(bench, as("tighten"), thing, around);
    case "back":
      return moveBack(bench, as("slide", { back: true }), thing, around);
    case "aside":
      return moveAside(bench, as("slide"), thing, around);
    case "fill":
      return fill(bench, as("fill"), thing, around);
    case "cap":
    case "uncap":
      return cap(bench, as(op.verb), thing, around);
    case "undo":
      return undo(bench, as("undo", { count: op.count }), [thing], around);
    case "remove":
      return remove(bench, as("remove"), [thing], around);
    case "hold":
      return grip(bench, as("hold"), thing, around);
    case "support":
      return support(bench, as("support"), thing, around);
    case "release":
      return release(bench, as("release"), thing, around);
    case "lift":
      // With a lock off, what was proved behind it is proved no more.
      return setStanding(bench, [...event.precautions, ...proofsOf(bench, thing)], 0);
    case "stand":
      return setStanding(bench, event.precautions, -1);
    case "written":
      return perform(bench, written!, around);
  }
}

/** Of things that came off together the one that the others hung on. */
function carrierOf(bench: Bench, op: RefitOp): ThingIndex {
  return bench.state.carriers.get(op.event!.index + 1)?.carrier ?? op.things[0]!;
}

const proofsOf = ({ model }: Bench, hazard: ThingIndex): number[] =>
  model.precautions
    .filter((one) => one.hazard === hazard && kindIn(kinds, one.kind)?.isProof === true)
    .map(({ number }) => number);

function setStanding(bench: Bench, precautions: readonly number[], value: number): void {
  let { standing } = bench.state;
  for (const number of precautions) standing = set(standing, number, value);
  bench.state = { ...bench.state, standing };
}

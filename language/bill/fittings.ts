// What goes on or in during the way back, and how many of each: from the computed refit, or from the acts of a written one.

import type { Around, Performance, RefitOp } from "../bench/trace.ts";
import { openedInPassing } from "../bench/filler.ts";
import type { State } from "../bench/state.ts";
import { at } from "../bench/vector.ts";
import type { Span } from "../findings/finding.ts";
import type { Part, ThingIndex, Tie } from "../model/model.ts";

export interface Fitting {
  readonly thing: ThingIndex;
  /** Pieces of it: 4 of the screws; a joint is one, or as many as it declares. */
  readonly count: number;
  readonly around: Around;
  readonly at: Span;
}

/** In the order of doing. A thing that is fitted twice (a trial assembly) stands there twice. */
export function fittings(performance: Performance): readonly Fitting[] {
  const found: Fitting[] = [];
  for (const { op, before } of performance.refit) {
    found.push(...ofOp(performance, op));
    if (op.verb === "fill" || (op.verb === "written" && op.act?.verb === "fill"))
      found.push(...closedAfterFill(performance, op.things, before, op));
  }
  for (const { act, around, things, before } of performance.written) {
    if (act.verb === "fill") found.push(...closedAfterFill(performance, things, before, { around, at: act.at }));
    if (act.verb !== "fit" && act.verb !== "press") continue;
    for (const thing of things)
      found.push({ thing, count: act.count ?? countOf(performance, thing), around, at: act.at });
  }
  return found;
}

/** What a fill opens in passing it closes again: with a new washer, where that is due. */
function closedAfterFill(
  { model }: Performance,
  things: readonly ThingIndex[],
  before: State,
  { around, at: place }: Pick<Fitting, "around" | "at">,
): Fitting[] {
  return things.flatMap((thing) => {
    const fluid = model.things[thing];
    return fluid?.is !== "fluid"
      ? []
      : openedInPassing(model, before, fluid).map((tie) => ({ thing: tie.index, count: tie.count, around, at: place }));
  });
}

function ofOp(performance: Performance, op: RefitOp): Fitting[] {
  const { event, act, around, at: place } = op;
  if (op.verb === "written") {
    if (act?.verb !== "fit" && act?.verb !== "press") return [];
    return op.things.map((thing) => ({ thing, count: act.count ?? countOf(performance, thing), around, at: place }));
  }
  if (op.verb !== "fit" && op.verb !== "finger-tighten") return [];
  if (event?.kind === "out") return [{ thing: event.thing, count: op.count, around, at: place }];
  if (event?.kind === "off")
    return event.things.map((thing) => ({
      thing,
      count: event.things.length === 1 ? piecesOff(performance, event.thing, event.count) : countOf(performance, thing),
      around,
      at: place,
    }));
  return op.things.map((thing) => ({ thing, count: op.count, around, at: place }));
}

const itemOf = (performance: Performance, thing: ThingIndex): Part | Tie | undefined => {
  const item = performance.model.things[thing];
  return item?.is === "part" || item?.is === "tie" ? item : undefined;
};

const countOf = (performance: Performance, thing: ThingIndex): number => itemOf(performance, thing)?.count ?? 1;

/** A removal that says no number takes all of them. */
const piecesOff = (performance: Performance, thing: ThingIndex, said: number): number =>
  Math.max(said, said > 1 ? said : countOf(performance, thing));

/** Joints that let go in passing and are made again on the way back, each with the line of the refit that makes it. */
export function jointsMade(performance: Performance): readonly Fitting[] {
  const { model } = performance,
    found: Fitting[] = [],
    passing = model.ties.filter((tie) => tie.passing && tie.lowers.length > 0 && tie.uppers.length > 0);
  if (passing.length === 0) return found;
  const steps = [
    ...performance.refit.map(({ op, before, after }) => ({ around: op.around, at: op.at, before, after })),
    ...performance.written.map(({ act, around, before, after }) => ({ around, at: act.at, before, after })),
  ];
  for (const { around, at: place, before, after } of steps) {
    if (before.lump === after.lump) continue;
    const isMade = (lump: typeof before.lump, tie: Tie): boolean =>
      tie.lowers.every((low) => tie.uppers.some((up) => at(lump, low) === at(lump, up)));
    for (const tie of passing)
      if (!isMade(before.lump, tie) && isMade(after.lump, tie))
        found.push({ thing: tie.index, count: tie.count, around, at: place });
  }
  return found;
}

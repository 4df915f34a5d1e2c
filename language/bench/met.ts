// Which hazards of a unit a procedure meets: for lists of what it asks for. It errs to the side of too many, since a hazard that is left
// out is not laid out for; and none that is not met is gone: it is on the unit all the same, and printed apart.

import type { ThingIndex } from "../model/model.ts";
import { hazardKinds, kindIn } from "../tables/index.ts";
import type { Placement } from "./placement.ts";
import type { Performance } from "./trace.ts";
import { at } from "./vector.ts";

/**
 * Met is what stands before one of its acts, what an act names, ties or opens on the way to a precaution or thrown parts, what a precaution
 * stands against from the start, and what is on nothing in particular. A test mostly runs the unit: it meets every energy of it.
 */
export function hazardsMet(performance: Performance, placement: Placement): ReadonlySet<ThingIndex> {
  const { model, strip, refit, written, finish, events, start } = performance,
    acts = [...strip, ...written, ...finish],
    told = new Set(
      [placement.strip, placement.refit, placement.written, placement.finish].flat().flatMap(({ hazards }) => hazards),
    ),
    near = new Set([
      ...acts.flatMap(({ things }) => things),
      ...refit.flatMap(({ op }) => op.things),
      ...events.flatMap(({ things }) => things),
    ]),
    isRun = acts.some(({ act }) => act.verb === "test") || refit.some(({ op }) => op.act?.verb === "test");
  // Whoever works on a fastener has his hands at what it ties.
  for (const { index, lowers, uppers, seat } of model.ties)
    if (near.has(index)) for (const part of [...lowers, ...uppers, seat ?? index]) near.add(part);
  const met = new Set<ThingIndex>();
  for (const { index, kind, on, pushes, precautions } of model.hazards) {
    const of = kindIn(hazardKinds, kind);
    if (
      told.has(index) ||
      on.length === 0 ||
      (isRun && of?.needsProof === true) ||
      // A weight is met by what moves it alone.
      (of?.isWeight !== true && [...on, ...pushes].some((thing) => near.has(thing))) ||
      precautions.some(({ number, behind }) => at(start.standing, number) !== 0 || behind.some((one) => near.has(one)))
    )
      met.add(index);
  }
  return met;
}

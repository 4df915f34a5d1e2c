// Acts that handle a thing without changing what holds it: hands or tools are on it all the same.

import type { Act, Name } from "../model/act.ts";
import type { Model, ThingIndex } from "../model/model.ts";
import { actKind } from "../tables/index.ts";

const nothing: readonly ThingIndex[] = [];

/** The things that such an act handles: those that it is done on, else those that it names. None for any other act. */
export function handledBy(
  act: Act,
  things: readonly ThingIndex[],
  resolve: (names: readonly Name[]) => readonly ThingIndex[],
): readonly ThingIndex[] {
  if (!actKind(act.verb).touches) return nothing;
  return act.on.length > 0 ? resolve(act.on) : things;
}

/**
 * Marks, work and setting cannot be done past something in front. A reading or a coat often can, at an edge or through a bore: a published
 * procedure seals a hub's face with its outer bearing on (tests/procedures/rear-hub.strip).
 */
export const cannotReachPast = (act: Act): boolean => act.verb === "mark" || act.verb === "work" || act.verb === "set";

/** The plugs that filling opens and closes again in passing. Bleeding is done under pressure mostly, and is no touch. */
export function openedBy(model: Model, verb: string, things: readonly ThingIndex[]): readonly ThingIndex[] {
  if (verb !== "fill") return nothing;
  return things.flatMap((thing) => {
    const fluid = model.things[thing];
    return fluid?.is === "fluid" ? fluid.fillsAt : [];
  });
}

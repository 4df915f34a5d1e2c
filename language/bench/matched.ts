// What belongs together though it is declared apart: a race with its cone, a piston with its bore, a pair of gears.

import { kept } from "../model/kept.ts";
import type { Model, Part, ThingIndex } from "../model/model.ts";

/** By part: all of its set, itself among them, in the order of the model. A part that is matched with nothing has none. */
export const matchedSets = (model: Model): ReadonlyMap<ThingIndex, readonly Part[]> => sets(model, () => setsOf(model));
const sets = kept<Model, ReadonlyMap<ThingIndex, readonly Part[]>>();

/** Said once, on whichever of them: what is matched with the same one is one set. */
function setsOf(model: Model): ReadonlyMap<ThingIndex, readonly Part[]> {
  const found = new Map<ThingIndex, readonly Part[]>();
  for (const part of model.parts) {
    if (part.matched.length === 0) continue;
    const members = new Set([part.index, ...part.matched].flatMap((one) => found.get(one) ?? model.parts[one]!));
    if (members.size < 2) continue;
    const all = [...members].sort((a, b) => a.index - b.index);
    for (const one of all) found.set(one.index, all);
  }
  return found;
}

// What would hang on a holder at that moment: the parts named and all that comes with them, as the bench sees it.

import { benchOf } from "../../bench/bench.ts";
import { lookAt } from "../../bench/removal.ts";
import type { State } from "../../bench/state.ts";
import type { Model, ThingIndex } from "../../model/model.ts";

/** Things that are no parts are left out; without a state the parts alone. */
export function hangingOn(
  model: Model,
  things: readonly ThingIndex[],
  state: State | undefined,
): readonly ThingIndex[] {
  const parts = things.filter((thing) => model.things[thing]?.is === "part");
  if (!state) return parts;
  const bench = benchOf(model, state),
    hanging = new Set(parts),
    isBase = new Set(model.base);
  // The base stays where it is: nothing comes along with it.
  for (const part of parts)
    if (!isBase.has(part)) for (const one of lookAt(bench, [part], state).moved) hanging.add(one);
  return [...hanging];
}

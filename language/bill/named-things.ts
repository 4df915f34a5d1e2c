// The things that a name stands for at a place of a procedure: by the scope of its unit part and the pieces at hand.

import { kept } from "../model/kept.ts";
import type { Around } from "../bench/trace.ts";
import { benchOf, resolve } from "../bench/bench.ts";
import { startState } from "../bench/state.ts";
import type { Name } from "../model/act.ts";
import type { Model, ThingIndex } from "../model/model.ts";

/** Names that stand for nothing are left out: they have a finding of their own. */
export function namedThings(model: Model, names: readonly Name[], around: Around): readonly ThingIndex[] {
  return names.length === 0 ? [] : resolve(benchFor(model), names, around);
}

/** Resolving a name asks the model alone; a bench of it is made once. */
const benches = kept<Model, ReturnType<typeof benchOf>>();
const benchFor = (model: Model): ReturnType<typeof benchOf> => benches(model, () => benchOf(model, startState(model)));

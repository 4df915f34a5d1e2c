// What a strip leaves to the order of its way back.

import type { Name } from "../../model/act.ts";
import type { BlockEntry, Model, Procedure, ThingIndex } from "../../model/model.ts";
import type { State } from "../state.ts";
import type { Around, Event, RefitNote } from "../trace.ts";

export interface Stripped {
  readonly model: Model;
  readonly events: readonly Event[];
  readonly notes: readonly RefitNote[];
  readonly stripEnd: State;
  readonly procedures: ReadonlyMap<string, Procedure>;
  readonly resolve: (names: readonly Name[], around: Around) => readonly ThingIndex[];
  readonly conditionHolds: (entry: BlockEntry, around: Around) => boolean;
}

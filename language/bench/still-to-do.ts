// Acts with a count when a step is done a second time (`repeat from`): they mean the same pieces.

import type { Act } from "../model/act.ts";
import type { ThingIndex } from "../model/model.ts";
import type { Bench } from "./bench.ts";
import type { Around, Performed } from "./trace.ts";
import { at } from "./vector.ts";

/**
 * How many of this thing an act with a count still has to do when it is done again: `undo 2 of X` means the same two. Those that are out
 * already are nothing to do, those that were put in again are undone again. Undefined: as it is written.
 */
export function stillToDo(bench: Bench, act: Act, thing: ThingIndex, around: Around): number | undefined {
  if (!bench.again || act.count === undefined) return undefined;
  const first = bench.again.find((one) => isSameLine(one, act, around) && one.things.includes(thing));
  if (!first) return undefined;
  const then = at(first.after.out, thing),
    more = then - at(bench.state.out, thing);
  if (act.verb === "undo" || act.verb === "remove") return Math.max(0, more);
  return act.verb === "fit" && bench.model.things[thing]?.is === "tie" ? Math.max(0, -more) : undefined;
}
const isSameLine = (one: Performed, act: Act, { pieces, prefix }: Around): boolean =>
  one.act.at.start === act.at.start &&
  one.act.at.file === act.at.file &&
  one.around.prefix === prefix &&
  one.around.pieces.join() === pieces.join();

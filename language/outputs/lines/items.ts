// The things of a line with their counts, for tables and JSON.

import type { ThingIndex } from "../../model/model.ts";
import { thingOf, type LineContext } from "./context.ts";
import type { LineItem } from "./line.ts";

/** @param count pieces in this act; undefined where the act takes all of each. */
export function itemsOf(
  context: LineContext,
  things: readonly ThingIndex[],
  count: number | undefined,
): readonly LineItem[] {
  return things.map((index) => {
    const thing = thingOf(context, index),
      fresh = context.fresh.get(index)?.grade;
    const common = { id: thing.id, name: thing.name };
    switch (thing.is) {
      case "part":
        return {
          ...common,
          is: "part",
          count: thing.countUnknown ? undefined : (count ?? thing.count),
          of: thing.countUnknown ? undefined : thing.count,
          fresh,
        };
      case "tie":
        return {
          ...common,
          is: thing.fastener ? "fastener" : "joint",
          count: thing.countUnknown ? undefined : (count ?? thing.count),
          of: thing.countUnknown ? undefined : thing.count,
          fresh,
        };
      case "fluid":
      case "hazard":
        return { ...common, is: thing.is, count: undefined, of: undefined, fresh: undefined };
    }
  });
}

// A line of the way back that puts back some pieces of a part, while another line has the others.

import type { RefitOp } from "../../bench/trace.ts";
import { thingOf, type LineContext } from "./context.ts";

/** How many of a part the line puts back, where another line has the others; else undefined. */
export function someOfPart(context: LineContext, { event, things, count }: RefitOp): number | undefined {
  const part = event?.kind === "off" && things.length === 1 ? thingOf(context, things[0]!) : undefined;
  return part?.is === "part" && count < part.count ? count : undefined;
}

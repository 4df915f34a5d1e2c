// Which acts of the way back are told in one line.

import type { RefitOp, RefitPerformed } from "../../bench/trace.ts";
import { thingOf, type LineContext } from "./context.ts";
import { someOfPart } from "./some-of-part.ts";
import { spannerOf } from "./spanner.ts";
import { torqueText } from "./torque.ts";

/** Two ops that answer one act of the strip and read alike are one line: pieces, or a list of plain joints. */
export function isOneLine(context: LineContext, { op: a }: RefitPerformed, next: RefitPerformed): boolean {
  const b = next.op;
  if (next.turn === undefined && next.turnInside === undefined && isRestOf(context, a, b)) return true;
  if (
    next.turn !== undefined ||
    next.turnInside !== undefined ||
    a.verb !== "fit" ||
    b.verb !== "fit" ||
    a.around.step !== b.around.step ||
    (a.act ?? a.event?.act) !== (b.act ?? b.event?.act)
  )
    return false;
  const key = keyOf(context, a);
  return key !== "" && key === keyOf(context, b);
}

/** Some of a group right after others of it, neither with words of its own: one line again. */
function isRestOf(context: LineContext, a: RefitOp, b: RefitOp): boolean {
  const [thing] = a.things;
  return (
    a.verb === "fit" &&
    b.verb === "fit" &&
    !a.act &&
    !b.act &&
    a.event?.kind === "out" &&
    b.event?.kind === "out" &&
    thing !== undefined &&
    thing === b.things[0] &&
    thingOf(context, thing).is === "tie"
  );
}

/** What must be the same in one line; "" for what always stands alone. */
function keyOf(context: LineContext, op: RefitOp): string {
  const thing = op.things[0] === undefined ? undefined : thingOf(context, op.things[0]);
  if (!thing || op.things.length > 1) return "";
  const fresh = context.fresh.get(thing.index)?.grade ?? "";
  if (thing.is === "part")
    return op.event?.act.verb === "lift" || (op.event?.moved.length ?? 1) > 1 || someOfPart(context, op) !== undefined
      ? ""
      : `part ${thing.kind} ${fresh} ${thing.fitsBy ?? ""} ${thing.count === 1 || thing.piece !== ""}`;
  if (thing.is !== "tie" || (thing.count > 1 && thing.piece === "") || op.count < thing.count) return "";
  return `tie ${thing.fastener} ${thing.kind} ${fresh} ${spannerOf(thing, context)?.says ?? ""} ${thing.fastener ? torqueText(thing, context) : ""} ${thing.washers.length} ${thing.threadLocker?.text ?? ""}`;
}

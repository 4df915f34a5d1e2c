// A fastener's torque as a line prints it: both systems, stages, passes, order. It computes no torque and fills none in.

import { centreOutOrder, circleOrder, listedOrder, rectanglePoints } from "../../figures/tightening-order.ts";
import type { Tie } from "../../model/model.ts";
import { si, type Quantity } from "../../quantities/index.ts";
import { fastenerKinds, kindIn } from "../../tables/index.ts";
import { bothSystems, type Units } from "./figures.ts";
import type { LineTorque } from "./line.ts";

/**
 * @param count pieces that are tightened in this line: a part of them has no order of its own.
 * @param stage the one stage that this line tightens to, counted from 1; all of them if left out.
 * @returns undefined for what is not turned by a tool, and for joints.
 */
export function torqueOf(tie: Tie, count: number, units: Units, stage?: number): LineTorque | undefined {
  if (!tie.fastener || kindIn(fastenerKinds, tie.kind)?.turned === false) return undefined;
  const { acts } = units.wording,
    shares = tie.passes?.shares ?? [];
  const order = count >= tie.count ? orderOf(tie) : [];
  return {
    text: torqueText(tie, units, stage),
    passes: tie.passes
      ? acts.inPasses(tie.passes.count, shares.map((share) => `${Number((share * 100).toPrecision(6))} %`).join(", "))
      : "",
    sequence:
      tie.sequence && tie.count > 1
        ? (tie.sequence.words ?? acts.sequence(units.wording.kinds.sequence(tie.sequence.kind)))
        : "",
    order,
  };
}

/** Torque, stages and back-out in one phrase. */
export function torqueText(tie: Tie, units: Units, stage?: number): string {
  const { acts } = units.wording,
    both = (quantity: Quantity): string => bothSystems(quantity, units);
  const parts: string[] = [],
    one = stage === undefined ? undefined : tie.stages[stage - 1];
  // Before the last stage nothing is let back, and no other torque holds.
  if (one && stage !== undefined && stage < tie.stages.length) return both(one);
  if (one) parts.push(both(one));
  else if (tie.stages.length > 0) parts.push(acts.stages(tie.stages.map(both)));
  for (const torque of tie.torques) {
    const value =
      torque.is === "none"
        ? acts.torqueNone
        : torque.is === "words"
          ? (torque.words ?? "").replace(/\.$/, "")
          : torque.value
            ? both(torque.value)
            : acts.torqueNotGiven;
    parts.push(acts.torqueFor(value, torque.forCount, torque.while));
  }
  if (parts.length === 0) parts.push(acts.torqueNotGiven);
  if (tie.backOut) parts.push(acts.backOutAfter(tie.backOut.angle.written, tie.backOut.until));
  return parts.join(", ");
}

/** Numbers in the order of tightening: clockwise from the top on a circle, row by row in a rectangle, as listed. Empty where nothing places them. */
export function orderOf(tie: Tie): readonly number[] {
  const { sequence, pattern, count } = tie;
  if (!sequence || count < 3) return [];
  if (sequence.listed.length > 0) {
    const listed = listedOrder(count, sequence.listed);
    return "order" in listed ? listed.order : [];
  }
  if (sequence.kind === "star" && pattern?.is === "circle") return circleOrder(count)?.order ?? [];
  if (sequence.kind === "centre-out" && pattern?.is === "rectangle" && pattern.sides.length === 2) {
    return centreOutOrder(rectanglePoints(count, si(pattern.sides[0]!).high, si(pattern.sides[1]!).high));
  }
  if (sequence.kind === "centre-out" && pattern?.is === "at" && pattern.points.length === count) {
    return centreOutOrder(pattern.points.map(([x, y]) => ({ x: x ? si(x).high : 0, y: y ? si(y).high : 0 })));
  }
  return [];
}

// A fastener's torque as a line prints it: both systems, stages, passes, order. It computes no torque and fills none in.

import type { Tie } from "../../model/model.ts";
import type { Quantity } from "../../quantities/index.ts";
import { fastenerKinds, kindIn } from "../../tables/index.ts";
import { turnsOf } from "../draw/places.ts";
import { bothSystems, shareText, writtenText, type Units } from "./figures.ts";
import type { LineTorque } from "./line.ts";

/**
 * @param count pieces that are tightened in this line: a part of them has no order of its own.
 * @param stage the one stage that this line tightens to, counted from 1; all of them if left out.
 * @returns undefined for what is not turned by a tool, and for joints.
 */
export function torqueOf(tie: Tie, count: number, units: Units, stage?: number): LineTorque | undefined {
  if (!isTurned(tie)) return undefined;
  const { acts } = units.wording,
    shares = tie.passes?.shares ?? [];
  const order = count >= tie.count ? turnsOf(tie) : [];
  return {
    text: torqueText(tie, units, stage),
    passes: tie.passes
      ? acts.inPasses(tie.passes.count, shares.map((share) => shareText(share, units.wording)).join(", "))
      : "",
    // One that is listed is told by its order.
    sequence: tie.sequence?.listed.length === 0 ? sequenceText(tie, units) : "",
    order,
    rounds: stage === undefined ? Math.max(1, tie.passes?.count ?? tie.stages.length) : 1,
  };
}

/** By a tool. */
export const isTurned = (tie: Tie): boolean => tie.fastener && kindIn(fastenerKinds, tie.kind)?.turned !== false;

/** In which order several are tightened; "" where nothing is said of it. */
export const sequenceText = ({ sequence, count }: Tie, { wording }: Units): string =>
  sequence && count > 1 ? (sequence.words ?? wording.acts.sequence(wording.kinds.sequence(sequence.kind))) : "";

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
  if (tie.backOut)
    parts.push(acts.backOutAfter(writtenText(tie.backOut.angle.written, units.wording), tie.backOut.until));
  return parts.join(", ");
}

// A torque as set against what the author gives for the fastener, in any unit. It knows nothing of wrenches.

import type { Tie } from "../../model/model.ts";
import { convert, findUnit, isProblem, parseQuantity, quantityOf, type Quantity } from "../../quantities/index.ts";
import { figureData } from "../torque-data.ts";
import type { TorqueRecord } from "./record.ts";

/**
 * `given`: one of the author's values or stages, or the figure that is printed for it in the other system. `not-given`: the author
 * gives no figure, so that there is nothing to hold it against.
 */
export function judgedTorque(
  { value, unit }: Pick<TorqueRecord, "value" | "unit">,
  { torques, stages }: Tie,
): "given" | "other" | "wrong-unit" | "not-given" {
  const figures = [...stages, ...torques.flatMap((torque) => torque.value ?? [])],
    own = findUnit(unit);
  if (figures.length === 0) return "not-given";
  if (!own) return "wrong-unit";
  const set = quantityOf(value, own.name),
    same = figures.filter((figure) => convert(set, figure.unit) !== undefined);
  if (same.length === 0) return "wrong-unit";
  return same.some((figure) => isOf(set, figure)) ? "given" : "other";
}

function isOf(set: Quantity, figure: Quantity): boolean {
  return acceptedOf(figure).some((each) => {
    const value = convert(set, each.unit)?.low;
    return value !== undefined && isWithin(value, each);
  });
}

/** The author's own figure, his bracket, and what is printed for it in either system. */
function acceptedOf(figure: Quantity): readonly Quantity[] {
  const shown = figureData(figure),
    printed = [shown.metric, shown.us].flatMap((text) => {
      const read = parseQuantity(text);
      return isProblem(read) ? [] : [read];
    });
  return [{ ...figure, pair: undefined }, ...(figure.pair ? [figure.pair] : []), ...printed];
}

/** A torque that counts as the author's, in this unit. */
export interface AcceptedTorque {
  readonly unit: string;
  readonly low: number;
  readonly high: number;
}

/** Every figure that counts as one that the author gives, for whoever judges without a table of units; empty where he gives none. */
export const acceptedTorques = ({ torques, stages }: Tie): readonly AcceptedTorque[] =>
  [...stages, ...torques.flatMap((torque) => torque.value ?? [])].flatMap((figure) =>
    acceptedOf(figure).map(({ unit, low, high }) => ({ unit, low, high })),
  );

/** Without the last bits of a product. */
export function isWithin(value: number, { low, high }: Pick<AcceptedTorque, "low" | "high">): boolean {
  const slack = 1e-9 * Math.abs(high);
  return value >= low - slack && value <= high + slack;
}

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
  const shown = figureData(figure),
    printed = [shown.metric, shown.us].flatMap((text) => {
      const read = parseQuantity(text);
      return isProblem(read) ? [] : [read];
    });
  return [{ ...figure, pair: undefined }, ...(figure.pair ? [figure.pair] : []), ...printed].some((each) => {
    const value = convert(set, each.unit)?.low,
      slack = 1e-9 * Math.abs(each.high);
    return value !== undefined && value >= each.low - slack && value <= each.high + slack;
  });
}

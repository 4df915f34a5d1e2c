// A typed figure against the limits of its reading. It says inside or outside the limits and nothing of what that means for the machine.

import { isOutside } from "./limits.ts";
import { convert, findUnit, quantityOf } from "../../quantities/index.ts";
import type { LineReading } from "../lines/line.ts";
import type { ReadingTry } from "./record.ts";

export type TryJudged =
  /** `value` in the reading's unit, or in its own where the reading has none. */
  | { readonly is: "figure"; readonly value: number; readonly unit: string; readonly outside: boolean }
  | { readonly is: "answer"; readonly asItShouldBe: boolean }
  | { readonly is: "wrong-unit"; readonly value: number; readonly unit: string }
  | { readonly is: "none" };

/** V ac is never V dc; a figure without its unit has the wrong one. Limits themselves are inside. */
export function judgedTry({ value, unit, asItShouldBe }: ReadingTry, reading: LineReading): TryJudged {
  if (value === undefined)
    return asItShouldBe === undefined || reading.isFigure ? { is: "none" } : { is: "answer", asItShouldBe };
  const own = unit === undefined ? undefined : findUnit(unit);
  if (reading.unit === "") return { is: "figure", value, unit: own?.name ?? unit ?? "", outside: false };
  const converted = own && convert(quantityOf(value, own.name), reading.unit);
  if (!converted) return { is: "wrong-unit", value, unit: unit ?? "" };
  const { low } = converted;
  return {
    is: "figure",
    value: low,
    unit: reading.unit,
    outside: isOutside(low, reading),
  };
}

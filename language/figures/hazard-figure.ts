// Puts a hazard, lifting or time figure together: missing inputs and figures outside a formula's range become errors, the caution comes from
// the catalogue. It holds no formula.

import { si } from "../quantities/quantity.ts";
import type { Quantity } from "../quantities/quantity.ts";
import { cautions, type CautionTopic } from "./cautions.ts";
import { missing, quantityIn, type Figure, type FigureError, type FigureInputs, type FigureResult } from "./figure.ts";
import type { SupplyKind } from "./voltage-limits.ts";

/** A figure without what is the same for all of them. */
export interface FigureParts extends Omit<Figure, "run"> {
  readonly topic: CautionTopic;
  /** The sum; source and caution are added. Throws RangeError with a sentence where a formula does not hold. */
  answer(inputs: FigureInputs): Answer | FigureError;
}

/** What a sum gives; `source` where it is narrower than the figure's. */
export interface Answer extends Pick<FigureResult, "values" | "formula" | "steps"> {
  readonly assumptions?: readonly string[];
  readonly source?: string;
}

/** Makes a figure of its parts. Its run never throws for what a user typed. */
export function hazardFigure(parts: FigureParts): Figure {
  const { topic, answer, ...shape } = parts;
  return {
    ...shape,
    run(inputs) {
      const lacking = missing(shape, inputs);
      if (lacking !== undefined) return lacking;
      try {
        const given = answer(inputs);
        if ("says" in given) return given;
        return { assumptions: [], source: shape.source, ...given, caution: cautions[topic] };
      } catch (reason) {
        if (reason instanceof RangeError) return { says: `${shape.name}: ${reason.message}` };
        throw reason;
      }
    },
  };
}

/** The upper end in SI of a quantity that `missing` has asked for. */
export function highest(inputs: FigureInputs, name: string): number {
  const quantity = quantityIn(inputs, name);
  if (quantity === undefined) throw new Error(`${name} was not asked for`);
  return si(quantity).high;
}

/** The upper end in SI of a quantity that may be left out. */
export function highestIn(inputs: FigureInputs, name: string): number | undefined {
  return quantityIn(inputs, name) === undefined ? undefined : highest(inputs, name);
}

/** The lower end in SI of a quantity that `missing` has asked for. */
export function lowest(inputs: FigureInputs, name: string): number {
  const quantity = quantityIn(inputs, name);
  if (quantity === undefined) throw new Error(`${name} was not asked for`);
  return si(quantity).low;
}

/** Whether a voltage was written as dc or ac; undefined for plain V. */
export function writtenKind(quantity: Quantity | undefined): SupplyKind | undefined {
  if (quantity?.unit === "V ac") return "ac";
  return quantity?.unit === "V dc" ? "dc" : undefined;
}

/** Up to four significant figures, as sums print them. */
export function shown(value: number): string {
  return String(Number(value.toPrecision(4)));
}

/** The error for a size that a table does not hold, with the nearest that it does. */
export function outsideTable(figure: string, size: string, nearest: readonly string[]): FigureError {
  return { says: `${figure}: ${size} is not in the table; the nearest are ${nearest.join(" and ")}`, nearest };
}

/** The two sizes of a table nearest to a wanted one, the smaller first. */
export function nearestSizes(sizes: readonly number[], wanted: number): readonly number[] {
  return [...sizes]
    .sort((x, y) => Math.abs(x - wanted) - Math.abs(y - wanted))
    .slice(0, 2)
    .sort((x, y) => x - y);
}

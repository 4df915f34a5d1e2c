// A fastener's torque as values: as written, in both systems, in N·m, with stages, passes and order.

import type { Tie } from "../model/model.ts";
import { format, si, type Quantity } from "../quantities/index.ts";
import type { Units } from "./lines/figures.ts";
import { torqueText } from "./lines/torque.ts";
import { turnsOf } from "./draw/places.ts";

export interface FigureData {
  readonly written: string;
  readonly metric: string;
  readonly us: string;
  readonly unit: string;
  /** In `unit`; equal for a single value. */
  readonly low: number;
  readonly high: number;
}

export interface TorqueValueData {
  readonly is: "none" | "value" | "standard" | "words";
  readonly value?: FigureData & { readonly newtonMetres: { readonly low: number; readonly high: number } };
  readonly words?: string;
  readonly table?: string;
  readonly forPieces?: number | "rest";
  readonly while?: string;
}

export interface TorqueData {
  /** As printed. */
  readonly text: string;
  readonly values: readonly TorqueValueData[];
  readonly stages: readonly FigureData[];
  readonly passes?: { readonly count: number; readonly shares: readonly number[] };
  readonly sequence?: { readonly kind: string; readonly words?: string; readonly order: readonly number[] };
}

/** The author's own bracket stands for the other system where it is of it. */
export function figureData(quantity: Quantity): FigureData {
  const plain = { ...quantity, pair: undefined };
  return {
    written: quantity.pair ? `${quantity.written} (${quantity.pair.written})` : quantity.written,
    metric: format(plain, "metric"),
    us: format(plain, "us"),
    unit: quantity.unit,
    low: quantity.low,
    high: quantity.high,
  };
}

/** Undefined where the author gives nothing of it: nothing is filled in. */
export function torqueData(tie: Tie, units: Units): TorqueData | undefined {
  if (!tie.fastener || (tie.torques.length === 0 && tie.stages.length === 0)) return undefined;
  const order = turnsOf(tie);
  return {
    text: torqueText(tie, units),
    stages: tie.stages.map(figureData),
    values: tie.torques.map((torque) => ({
      is: torque.is,
      ...(torque.value ? { value: { ...figureData(torque.value), newtonMetres: ends(torque.value) } } : {}),
      ...(torque.words ? { words: torque.words } : {}),
      ...(torque.table ? { table: torque.table } : {}),
      ...(torque.forCount === undefined ? {} : { forPieces: torque.forCount }),
      ...(torque.while ? { while: torque.while } : {}),
    })),
    ...(tie.passes ? { passes: tie.passes } : {}),
    ...(tie.sequence
      ? { sequence: { kind: tie.sequence.kind, ...(tie.sequence.words ? { words: tie.sequence.words } : {}), order } }
      : {}),
  };
}

/** Without the last bits of a product. */
const ends = (quantity: Quantity): { low: number; high: number } => {
  const { low, high } = si(quantity),
    tidy = (value: number): number => Number(value.toPrecision(12));
  return { low: tidy(low), high: tidy(high) };
};

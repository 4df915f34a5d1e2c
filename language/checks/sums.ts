// How a figure's sum is laid out under a finding: formula, steps, what it rests on, source, and the caution that goes with it.

import { fromSource, type Because, type Span } from "../findings/finding.ts";
import { assumptionsFrom, type Assumptions } from "../figures/assumptions.ts";
import { kept } from "../model/kept.ts";
import { rounded, si, type Quantity } from "../quantities/index.ts";
import type { Settings } from "../world/settings.ts";

export interface Sum {
  /** What the formula reckons, in the trade's words: "torque at the yield share". */
  readonly name: string;
  readonly formula: string;
  readonly source: string;
  readonly steps?: readonly string[];
  readonly assumptions?: readonly string[];
}

export function sumLines(sum: Sum, at?: Span): Because[] {
  const lines: Because[] = [
    at ? { says: `${sum.name}: ${sum.formula}`, at } : { says: `${sum.name}: ${sum.formula}` },
    ...(sum.steps ?? []).map((says) => ({ says })),
  ];
  if (sum.assumptions && sum.assumptions.length > 0) lines.push({ says: `it rests on ${sum.assumptions.join(", ")}` });
  lines.push(fromSource(`${sum.source}; the maker's data come first`));
  return lines;
}

const assumptions = kept<Settings, Assumptions>();

/** The assumptions of this project: the defaults with its settings over them. */
export function assumptionsOf(settings: Settings): Assumptions {
  return assumptions(settings, () => assumptionsFrom(settings.assumptions).assumptions);
}

/** The highest value of a quantity, SI. */
export const highest = (quantity: Quantity): number => si(quantity).high;

/** A torque in N·m as a person reads it. */
export const newtonMetres = (value: number): string => `${rounded(value, 3)} N·m`;

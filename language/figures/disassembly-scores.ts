// Published scores for ease of taking apart: what counts as a step, points for depth, fasteners and tools, the EU and French indices, EN 45554 classes.
// Step counts and summed times are shown together; the indices are laid down for named products only, and a score here is no label.

import type { FastenerKindName, JointKindName, PartKindName } from "../tables/index.ts";

/** What a person does, as far as counting steps goes. */
export type CountedAct =
  "isolate mains" | "part off" | "change tool" | "take first tool" | "lay tool down" | "fastener out" | "unplug";

/** Acts that end a step. A first tool taken up, a tool laid down, a fastener or a plug undone end none. */
const ENDS_STEP: Readonly<Record<CountedAct, boolean>> = {
  "isolate mains": true,
  "part off": true,
  "change tool": true,
  "take first tool": false,
  "lay tool down": false,
  "fastener out": false,
  unplug: false,
};

/**
 * Number of steps: a step ends with a part or sub-assembly off or a change of tool; pulling the mains plug counts as one.
 * Units: 1. Source: French repairability index, definition of the ministry; Commission Decision (EU) 2016/1371, appendix (read).
 */
export function countSteps(acts: readonly CountedAct[]): number {
  return acts.filter((act) => ENDS_STEP[act]).length;
}

/**
 * Points for the steps to a part: up to 2 steps 5, up to 5 4, up to 10 3, up to 15 2, more 1.
 * Throws RangeError unless steps is a whole number from 0. Source: Regulation (EU) 2023/1669, Annex IV point 5, through an article (read).
 */
export function depthPoints(steps: number): number {
  if (!Number.isInteger(steps) || steps < 0) throw new RangeError(`steps must be a whole number from 0, got ${steps}`);
  if (steps <= 2) return 5;
  if (steps <= 5) return 4;
  if (steps <= 10) return 3;
  return steps <= 15 ? 2 : 1;
}

/**
 * Weights of the listed parts of a telephone or slate tablet that does not fold; they sum to 1. Source: Regulation (EU) 2023/1669 through an article
 * (read).
 */
export const EU_PART_WEIGHTS: Readonly<Record<string, number>> = {
  battery: 0.3,
  display: 0.3,
  "back cover": 0.1,
  "front camera": 0.05,
  "rear camera": 0.05,
  "charging port": 0.05,
  buttons: 0.05,
  microphones: 0.05,
  speakers: 0.05,
};

/** Weighted mean of points over parts. Units: weight, points -> points. Throws RangeError unless the weights sum to 1. Source: as above. */
export function weightedPoints(parts: readonly { readonly weight: number; readonly points: number }[]): number {
  const sum = parts.reduce((total, part) => total + part.weight, 0);
  if (Math.abs(sum - 1) > 1e-9) throw new RangeError(`the weights must sum to 1, got ${sum}`);
  return parts.reduce((total, part) => total + part.weight * part.points, 0);
}

/** The six scores of the EU index, 1 to 5 points each. */
export interface EuScores {
  readonly depth: number;
  readonly fasteners: number;
  readonly tools: number;
  readonly spareParts: number;
  readonly softwareUpdates: number;
  readonly information: number;
}

/**
 * EU repairability index R = 0.25 depth + 0.15 (fasteners + tools + spare parts + software updates + information).
 * Units: points -> points. Valid for smartphones and slate tablets. Source: Regulation (EU) 2023/1669, Annex IV point 5 (read second-hand).
 */
export function euIndex(scores: EuScores): number {
  return (
    0.25 * scores.depth +
    0.15 * (scores.fasteners + scores.tools + scores.spareParts + scores.softwareUpdates + scores.information)
  );
}

/**
 * Class of the EU index: A from 4.00, B from 3.35, C from 2.55, D from 1.75, E below. The index is rounded to two places first. Source: Annex II
 * (read second-hand).
 */
export function euClass(index: number): "A" | "B" | "C" | "D" | "E" {
  const rounded = Math.round((index + 1e-12) * 100) / 100;
  if (rounded >= 4) return "A";
  if (rounded >= 3.35) return "B";
  if (rounded >= 2.55) return "C";
  return rounded >= 1.75 ? "D" : "E";
}

/** Coefficients of the sub-scores of the French index, by criterion; sub-scores are out of 10. Source: two published sheets (read). */
export const FRENCH_COEFFICIENTS = {
  documentation: [2],
  disassembly: [1, 0.5, 0.5],
  spareParts: [1, 0.5, 0.3, 0.2],
  price: [2],
  special: [2],
} as const;

/** Score of a criterion of the French index out of 20: sum of sub-score x coefficient. Throws RangeError unless there are as many of both. Source: as above. */
export function frenchCriterion(subScores: readonly number[], coefficients: readonly number[]): number {
  if (subScores.length !== coefficients.length)
    throw new RangeError(`${coefficients.length} sub-scores are due, got ${subScores.length}`);
  return subScores.reduce((sum, score, at) => sum + score * coefficients[at]!, 0);
}

/** French index out of 10, one decimal: the five criteria of 20 points each, their sum divided by 10. Source: Decree 2020-1757 (read second-hand). */
export function frenchIndex(criteria: readonly [number, number, number, number, number]): number {
  return Math.round(criteria.reduce((sum, one) => sum + one, 0) + 1e-9) / 10;
}

/** EN 45554 class of a way of joining: A reusable, B removable but not reusable, C neither. Source: EN 45554:2020 through a public tool (read). */
export type JoinClass = "A" | "B" | "C";

/**
 * EN 45554 class by the kind of fastener or joint of the language, and of the parts that hold another one. The classes are the standard's, the
 * mapping is our own reading.
 * Source: EN 45554 through a published account.
 */
export const JOIN_CLASSES: Readonly<Record<FastenerKindName | JointKindName | HoldingPart, JoinClass>> = {
  screw: "A",
  bolt: "A",
  nut: "A",
  "lock-nut": "A",
  stud: "A",
  "set-screw": "A",
  "captive-screw": "A",
  plug: "A",
  "clip-nut": "A",
  clip: "A",
  circlip: "A",
  connector: "A",
  terminal: "A",
  gland: "A",
  hose: "A",
  "pipe-union": "A",
  screwed: "A",
  "slide-fit": "A",
  spline: "A",
  dowel: "A",
  taper: "A",
  magnetic: "A",
  "press-fit": "A",
  spring: "A",
  "cable-tie": "B",
  "clevis-pin": "B",
  "split-pin": "B",
  "tab-washer": "B",
  "pinch-clamp": "B",
  gasket: "B",
  sealant: "B",
  "lock-wire": "B",
  rivet: "B",
  splice: "B",
  stake: "B",
  weld: "C",
  solder: "C",
  "shrink-fit": "C",
  adhesive: "C",
};

type HoldingPart = Extract<PartKindName, "circlip" | "split-pin" | "tab-washer" | "gasket">;

// The revised NIOSH lifting equation: recommended weight limit, lifting index, composite index, duration of a pattern of work.
// It refuses to judge: an index is a figure, and the lifts that the equation does not cover (one hand, seated, while carrying) have none.

import {
  asymmetryMultiplier,
  couplingMultiplier,
  distanceMultiplier,
  frequencyMultiplier,
  horizontalMultiplier,
  loadConstant,
  verticalMultiplier,
  type Coupling,
  type LiftDuration,
  type NioshConstants,
} from "./niosh-multipliers.ts";

/** Where the equation comes from, as printed. */
export const NIOSH_SOURCE =
  "Revised NIOSH lifting equation, DHHS (NIOSH) 94-110, rev. 9/2021 (read through a page-by-page specification)";

/** Lifts for which the equation gives no result. Source: NIOSH 94-110, section 1.2. */
export const NIOSH_NOT_FOR: readonly string[] = [
  "one hand",
  "over 8 h",
  "seated or kneeling",
  "restricted space",
  "unstable object",
  "while carrying, pushing or pulling",
  "wheelbarrow or shovel",
  "faster than about 75 cm/s",
  "slippery floor",
  "outside 19 to 26 °C or 35 to 50 % humidity",
];

/** One lift, reckoned at its origin or at its destination; SI. */
export interface Lift {
  /** Ankles to hands, m. */
  readonly reach: number;
  /** Floor to hands at the point reckoned, m. */
  readonly height: number;
  /** Vertical travel, m. */
  readonly travel: number;
  /** Twist of the body, rad. */
  readonly twist: number;
  readonly perMinute: number;
  readonly duration: LiftDuration;
  readonly coupling: Coupling;
  /** Height of the hands at the origin, m, which the frequency multiplier goes by; the height itself if left out. */
  readonly originHeight?: number;
}

/** The six multipliers of the equation. */
export interface LiftMultipliers {
  readonly horizontal: number;
  readonly vertical: number;
  readonly distance: number;
  readonly asymmetry: number;
  readonly frequency: number;
  readonly coupling: number;
}

/** Multipliers of a lift at full precision. Units and errors as in niosh-multipliers.ts. Source: {@link NIOSH_SOURCE}. */
export function liftMultipliers(lift: Lift, constants: NioshConstants = "metric"): LiftMultipliers {
  return {
    horizontal: horizontalMultiplier(lift.reach, constants),
    vertical: verticalMultiplier(lift.height, constants),
    distance: distanceMultiplier(lift.travel, constants),
    asymmetry: asymmetryMultiplier(lift.twist),
    frequency: frequencyMultiplier(lift.perMinute, lift.duration, lift.originHeight ?? lift.height, constants),
    coupling: couplingMultiplier(lift.coupling, lift.height, constants),
  };
}

/** Recommended weight limit from given multipliers: RWL = LC HM VM DM AM FM CM. Units: 1 -> kg. Source: {@link NIOSH_SOURCE}. */
export function weightLimitFrom(m: LiftMultipliers, constants: NioshConstants = "metric"): number {
  return loadConstant(constants) * m.horizontal * m.vertical * m.distance * m.asymmetry * m.frequency * m.coupling;
}

/**
 * Recommended weight limit of one point of a lift. A load set down with care is reckoned at the origin and the destination, and the lower limit decides.
 * Units: SI, see {@link Lift} -> kg; 0 where a multiplier is 0. Source: {@link NIOSH_SOURCE}.
 */
export function recommendedWeightLimit(lift: Lift, constants: NioshConstants = "metric"): number {
  return weightLimitFrom(liftMultipliers(lift, constants), constants);
}

/** Lifting index LI = L / RWL; undefined where the limit is 0, since then no load is recommended. Units: kg, kg -> 1. Source: {@link NIOSH_SOURCE}. */
export function liftingIndex(load: number, limit: number): number | undefined {
  return limit > 0 ? load / limit : undefined;
}

/** One task of a composite job. */
export interface LiftTask {
  readonly name: string;
  /** Load, kg. */
  readonly load: number;
  readonly perMinute: number;
  /** Limit of the task without the frequency multiplier, kg. */
  readonly frequencyIndependentLimit: number;
  /** Height of the hands at the origin, m; from 75 cm if left out. */
  readonly originHeight?: number;
}

/**
 * Composite lifting index of several tasks done in turn: tasks in falling order of L/(FIRWL FM), then
 * CLI = STLI1 + sum of FILIi (1/FM(F1 + … + Fi) - 1/FM(F1 + … + Fi-1)).
 *
 * Units: kg, lifts a minute -> 1 and the order of the names. Undefined index where the rates together are above the table. Throws RangeError without tasks.
 * Source: NIOSH 94-110, section 2.4.
 */
export function compositeLiftingIndex(
  tasks: readonly LiftTask[],
  duration: LiftDuration,
  constants: NioshConstants = "metric",
): { readonly index: number | undefined; readonly order: readonly string[] } {
  if (tasks.length === 0) throw new RangeError("a composite index needs at least one task");
  const multiplier = (task: LiftTask, rate: number): number =>
    frequencyMultiplier(rate, duration, task.originHeight ?? 0.762, constants);
  const single = (task: LiftTask): number =>
    task.load / (task.frequencyIndependentLimit * multiplier(task, task.perMinute));
  const sorted = [...tasks].sort((a, b) => single(b) - single(a));
  let index = single(sorted[0]!);
  let rate = sorted[0]!.perMinute;
  for (const task of sorted.slice(1)) {
    const before = multiplier(task, rate);
    rate += task.perMinute;
    index += (task.load / task.frequencyIndependentLimit) * (1 / multiplier(task, rate) - 1 / before);
  }
  return { index: Number.isFinite(index) ? index : undefined, order: sorted.map((task) => task.name) };
}

/** A stretch of lifting or of recovery (light work), s. */
export interface WorkStretch {
  readonly kind: "work" | "recovery";
  readonly seconds: number;
}

/**
 * Duration class of a pattern: short for work up to 1 h followed by recovery of at least as long, moderate for up to 2 h with recovery of at least
 * 0.3 of it, else long.
 * A recovery that is too short is left out and the work on both sides is added; the last work needs none. Undefined above 8 h of work.
 *
 * Units: s. Throws RangeError without work. Source: NIOSH 94-110, pp. 13-14.
 */
export function liftDuration(pattern: readonly WorkStretch[]): LiftDuration | undefined {
  const merged: { work: number; recovery: number }[] = [];
  for (const stretch of pattern) {
    const last = merged.at(-1);
    if (stretch.kind === "recovery") {
      if (last !== undefined) last.recovery += stretch.seconds;
    } else if (last !== undefined && last.recovery === 0) last.work += stretch.seconds;
    else merged.push({ work: stretch.seconds, recovery: 0 });
  }
  if (merged.length === 0) throw new RangeError("a pattern needs at least one stretch of work");
  const worst = (least: number): number => {
    // Adds up the work across every recovery shorter than `least` times the work before it, and takes the longest sum.
    let sum = 0;
    let longest = 0;
    for (const { work, recovery } of merged) {
      sum += work;
      longest = Math.max(longest, sum);
      if (recovery >= least * sum) sum = 0;
    }
    return longest;
  };
  if (worst(1) <= 3600) return "short";
  if (worst(0.3) <= 7200) return "moderate";
  return merged.reduce((sum, { work }) => sum + work, 0) <= 8 * 3600 ? "long" : undefined;
}

/**
 * Reach estimated from the width of a box: 20 cm + W/2, or 25 cm + W/2 where the hands are below 25 cm. Units: m, m -> m. Source: NIOSH 94-110,
 * section 1.3.1.
 */
export function estimatedReach(width: number, height: number, constants: NioshConstants = "metric"): number {
  const [near, far, low, unit] = constants === "metric" ? [20, 25, 25, 0.01] : [8, 10, 10, 0.0254];
  return (height / unit >= low - 1e-9 ? near : far) * unit + width / 2;
}

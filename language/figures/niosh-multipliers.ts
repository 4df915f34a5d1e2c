// Multipliers of the revised NIOSH lifting equation and the table of frequency multipliers.
// The metric and the US constants are not conversions of each other, so each formula asks which set to use.

/** Set of constants: centimetre and kilogram, or inch and pound. */
export type NioshConstants = "metric" | "us";

/** How long the lifting goes on: up to 1 h, up to 2 h, up to 8 h, with the recovery times of the manual. */
export type LiftDuration = (typeof liftDurations)[number];
export const liftDurations = ["short", "moderate", "long"] as const;

/** Quality of the grip by the manual's decision tree; in doubt the worse. */
export type Coupling = (typeof couplings)[number];
export const couplings = ["good", "fair", "poor"] as const;

const INCH = 0.0254;
const POUND = 0.45359237;

/** Constants of the equation, lengths in the set's own unit (cm or in) and load in kg or lb. Source: NIOSH 94-110 (rev. 9/2021), section 1.3. */
export const NIOSH = {
  metric: {
    unit: 0.01,
    mass: 1,
    load: 23,
    horizontal: 25,
    horizontalMost: 63,
    vertical: 75,
    verticalRate: 0.003,
    verticalMost: 175,
    travelLeast: 25,
    travelMost: 175,
    travel: 4.5,
  },
  us: {
    unit: INCH,
    mass: POUND,
    load: 51,
    horizontal: 10,
    horizontalMost: 25,
    vertical: 30,
    verticalRate: 0.0075,
    verticalMost: 70,
    travelLeast: 10,
    travelMost: 70,
    travel: 1.8,
  },
} as const;

/** Greatest angle of twist, degrees, and the rate below which lifts count as 0.2 a minute. Source: NIOSH 94-110. */
export const ASYMMETRY_MOST = 135;
export const FREQUENCY_LEAST = 0.2;

/** Figures that come through a change of unit may miss a limit by a rounding error; this keeps 25 in at 25 in. */
const ROUNDING = 1e-9;

/** Load constant, kg: 23 kg, or 51 lb in the US set. Source: NIOSH 94-110, section 1.3. */
export function loadConstant(constants: NioshConstants): number {
  return NIOSH[constants].load * NIOSH[constants].mass;
}

/**
 * Horizontal multiplier HM = 25 cm / H (10 in / H); a reach below 25 cm counts as 25 cm, beyond 63 cm (25 in) HM is 0.
 * Units: m, from the ankles to the hands -> 1. Throws RangeError for a negative reach. Source: NIOSH 94-110, Table 1.
 */
export function horizontalMultiplier(reach: number, constants: NioshConstants = "metric"): number {
  const set = NIOSH[constants];
  const h = inSet("reach", reach, set.unit);
  if (h > set.horizontalMost + ROUNDING) return 0;
  return set.horizontal / Math.max(h, set.horizontal);
}

/**
 * Vertical multiplier VM = 1 - 0.003 |V - 75 cm| (1 - 0.0075 |V - 30 in|); above 175 cm (70 in) it is 0.
 * Units: m, floor to hands -> 1. Throws RangeError for a negative height. Source: NIOSH 94-110, Table 2.
 */
export function verticalMultiplier(height: number, constants: NioshConstants = "metric"): number {
  const set = NIOSH[constants];
  const v = inSet("height", height, set.unit);
  if (v > set.verticalMost + ROUNDING) return 0;
  return 1 - set.verticalRate * Math.abs(v - set.vertical);
}

/**
 * Distance multiplier DM = 0.82 + 4.5 cm / D (0.82 + 1.8 in / D); a travel below 25 cm (10 in) counts as that, above 175 cm (70 in) DM is 0.
 * Units: m -> 1. Throws RangeError for a negative travel. Source: NIOSH 94-110, Table 3.
 */
export function distanceMultiplier(travel: number, constants: NioshConstants = "metric"): number {
  const set = NIOSH[constants];
  const d = inSet("travel", travel, set.unit);
  if (d > set.travelMost + ROUNDING) return 0;
  return 0.82 + set.travel / Math.max(d, set.travelLeast);
}

/** Asymmetry multiplier AM = 1 - 0.0032 A; beyond 135° it is 0. Units: rad -> 1. Throws RangeError for a negative angle. Source: NIOSH 94-110, Table 4. */
export function asymmetryMultiplier(twist: number): number {
  const degrees = inSet("twist", twist, Math.PI / 180);
  return degrees > ASYMMETRY_MOST + ROUNDING ? 0 : 1 - 0.0032 * degrees;
}

/**
 * Coupling multiplier: good 1.00; fair 0.95 below 75 cm (30 in) and 1.00 from there; poor 0.90.
 * Units: m, height of the hands at the point reckoned. Source: NIOSH 94-110, Table 7 (fair and poor read; good, and poor from 75 cm up, from memory).
 */
export function couplingMultiplier(coupling: Coupling, height: number, constants: NioshConstants = "metric"): number {
  switch (coupling) {
    case "good":
      return 1;
    case "fair":
      return isHigh(height, constants) ? 1 : 0.95;
    case "poor":
      return 0.9;
  }
}

/** Rates of Table 5, lifts a minute; at or below the first the first row holds, above the last FM is 0. */
export const FREQUENCY_ROWS: readonly number[] = [0.2, 0.5, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12, 13, 14, 15];

/**
 * Frequency multipliers below 75 cm ("low") and from 75 cm ("high"), one for each of FREQUENCY_ROWS. Source: NIOSH 94-110, Table 5, through three
 * public programs that agree.
 */
const FREQUENCY_TABLE: Readonly<
  Record<LiftDuration, { readonly low: readonly number[]; readonly high: readonly number[] }>
> = {
  short: {
    low: [1, 0.97, 0.94, 0.91, 0.88, 0.84, 0.8, 0.75, 0.7, 0.6, 0.52, 0.45, 0.41, 0.37, 0, 0, 0],
    high: [1, 0.97, 0.94, 0.91, 0.88, 0.84, 0.8, 0.75, 0.7, 0.6, 0.52, 0.45, 0.41, 0.37, 0.34, 0.31, 0.28],
  },
  moderate: {
    low: [0.95, 0.92, 0.88, 0.84, 0.79, 0.72, 0.6, 0.5, 0.42, 0.35, 0.3, 0.26, 0, 0, 0, 0, 0],
    high: [0.95, 0.92, 0.88, 0.84, 0.79, 0.72, 0.6, 0.5, 0.42, 0.35, 0.3, 0.26, 0.23, 0.21, 0, 0, 0],
  },
  long: {
    low: [0.85, 0.81, 0.75, 0.65, 0.55, 0.45, 0.35, 0.27, 0.22, 0.18, 0, 0, 0, 0, 0, 0, 0],
    high: [0.85, 0.81, 0.75, 0.65, 0.55, 0.45, 0.35, 0.27, 0.22, 0.18, 0.15, 0.13, 0, 0, 0, 0, 0],
  },
};

/**
 * Frequency multiplier FM of Table 5, linear between its rows; `height` is that of the hands at the origin.
 * Units: lifts a minute, m -> 1. Throws RangeError for a negative rate. Source: NIOSH 94-110, Table 5 and p. 7 (interpolation).
 */
export function frequencyMultiplier(
  perMinute: number,
  duration: LiftDuration,
  height: number,
  constants: NioshConstants = "metric",
): number {
  if (!(perMinute >= 0)) throw new RangeError(`rate must not be negative, got ${perMinute}`);
  const column = FREQUENCY_TABLE[duration][isHigh(height, constants) ? "high" : "low"];
  const rate = Math.max(perMinute, FREQUENCY_LEAST);
  const above = FREQUENCY_ROWS.findIndex((row) => rate <= row + ROUNDING);
  if (above < 0) return 0;
  if (above === 0) return column[0]!;
  const [r0, r1] = [FREQUENCY_ROWS[above - 1]!, FREQUENCY_ROWS[above]!];
  const [f0, f1] = [column[above - 1]!, column[above]!];
  return f0 + ((f1 - f0) * Math.min(rate - r0, r1 - r0)) / (r1 - r0);
}

/** Rate that counts where the work is not continuous: lifts a minute times the minutes worked in 15, over 15. Source: NIOSH 94-110, section 1.3.5.5. */
export function adjustedFrequency(perMinute: number, minutesIn15: number): number {
  if (!(minutesIn15 >= 0 && minutesIn15 <= 15))
    throw new RangeError(`minutes in 15 must lie from 0 to 15, got ${minutesIn15}`);
  return (perMinute * minutesIn15) / 15;
}

function isHigh(height: number, constants: NioshConstants): boolean {
  return height / NIOSH[constants].unit >= NIOSH[constants].vertical - ROUNDING;
}

function inSet(name: string, value: number, unit: number): number {
  if (!(value >= 0)) throw new RangeError(`${name} must not be negative, got ${value}`);
  return value / unit;
}

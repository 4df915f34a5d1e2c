// Forces in slings and their rated limits by table. Angles are given by one of three conventions, and each function says which.
// It gives forces and table values; what may be lifted stays with the tag on the sling, the maker and a competent rigger.

/**
 * Least angle of a leg from the horizontal, rad (30°), which is the greatest of 60° from the vertical. Source: cargo sling tips; EN 818-4 catalogue
 * table (read).
 */
export const LEAST_LEG_ANGLE = Math.PI / 6;

/** How an angle of a sling was measured: from the horizontal (US factor tables), from the vertical (EN, beta) or between two legs (shackles). */
export type AngleConvention = (typeof angleConventions)[number];
export const angleConventions = ["from horizontal", "from vertical", "between legs"] as const;

/** Angle of a leg from the horizontal, rad. Throws RangeError outside 0 to 90° (0 to 180° between legs). Source: geometry. */
export function angleFromHorizontal(angle: number, convention: AngleConvention): number {
  const result =
    convention === "from horizontal" ? angle : Math.PI / 2 - (convention === "between legs" ? angle / 2 : angle);
  if (!(angle >= 0 && result >= -1e-12 && result <= Math.PI / 2 + 1e-12))
    throw new RangeError(`an angle of ${round((angle * 180) / Math.PI)}° ${convention} is none of a sling leg`);
  return result;
}

/** Tension in the legs of a sling and how it came about. */
export interface SlingTension {
  /** Tension in each leg, in the unit of the load. */
  readonly tension: number;
  /** Tension over the share of the load of one leg. */
  readonly factor: number;
  /** Legs that the load is reckoned to hang on. */
  readonly legsCounted: number;
  /** True where the legs are flatter than 30° from the horizontal, which the rules do not allow. */
  readonly tooFlat: boolean;
  readonly formula: string;
  readonly steps: readonly string[];
  readonly source: string;
}

/** Where the sling formula comes from, as printed. */
export const SLING_SOURCE =
  "Sling leg tension T = W/(n sin a): sling catalogue factor table and wire rope practice pages (read); " +
  "30° limit: EN 818-4 table and cargo sling tips (read)";

/**
 * Tension in each leg of a symmetrical sling: T = W / (n sin a), a from the horizontal.
 *
 * Units: load in any unit of force or mass, tension in the same; rad. A third leg is counted, a fourth is not (a stiff load hangs on three; pass
 * `legsCarrying` to say otherwise).
 * Throws RangeError for a negative load, fewer than one leg or an angle outside 0 < a <= 90°. Valid for equal legs and a centre of gravity below the
 * hook. Source: {@link SLING_SOURCE}.
 */
export function slingTension(
  load: number,
  legs: number,
  angle: number,
  legsCarrying: number = Math.min(legs, 3),
): SlingTension {
  if (!(load >= 0)) throw new RangeError(`load must not be negative, got ${load}`);
  if (!Number.isInteger(legs) || legs < 1 || !(legsCarrying >= 1 && legsCarrying <= legs)) {
    throw new RangeError(`legs must be a whole number from 1, got ${legs}`);
  }
  if (!(angle > 0 && angle <= Math.PI / 2 + 1e-12))
    throw new RangeError(
      `the angle from the horizontal must lie above 0 and up to 90°, got ${round((angle * 180) / Math.PI)}°`,
    );
  const factor = 1 / Math.sin(angle);
  const tension = (load / legsCarrying) * factor;
  const degrees = round((angle * 180) / Math.PI);
  const steps = [`Load factor 1/sin ${degrees}° = ${round(factor)}`];
  if (legsCarrying < legs)
    steps.push(`${legs} legs, ${legsCarrying} counted: a stiff load may hang on ${legsCarrying} of them`);
  steps.push(`T = W / ${legsCarrying} x ${round(factor)} = ${round(tension / (load || 1))} W`);
  return {
    tension,
    factor,
    legsCounted: legsCarrying,
    tooFlat: angle < LEAST_LEG_ANGLE - 1e-9,
    formula: "T = W / (n sin a), a from the horizontal",
    steps,
    source: SLING_SOURCE,
  };
}

/**
 * Share of its upright capacity that a sling keeps at an angle: sin a. Units: rad from the horizontal -> 1. Source: cargo sling tips (read; printed
 * values are cut off).
 */
export function capacityShare(angle: number): number {
  return Math.sin(angle);
}

/**
 * Load at two pick points: near a W b/(a + b), near b W a/(a + b), with a and b the distances from the centre of gravity.
 * Units: load in any unit, distances in one unit. Throws RangeError unless both distances are not negative and one is positive. Source: load limits
 * page on the centre of gravity (read).
 */
export function twoPointShare(load: number, a: number, b: number): { readonly nearA: number; readonly nearB: number } {
  if (!(a >= 0 && b >= 0 && a + b > 0))
    throw new RangeError("the distances to the centre of gravity must not be negative, nor both zero");
  return { nearA: (load * b) / (a + b), nearB: (load * a) / (a + b) };
}

/** Two unequal legs under a hook that stands over the centre of gravity. */
export interface UnequalLegs {
  readonly tensionA: number;
  readonly tensionB: number;
  readonly lengthA: number;
  readonly lengthB: number;
  /** Angles from the horizontal, rad. */
  readonly angleA: number;
  readonly angleB: number;
}

/**
 * Tensions of two legs with the hook at height h over the centre of gravity: T_a = W b L_a/(h (a + b)), L_a = sqrt(a² + h²), and likewise for b.
 * Units: load in any unit, lengths in one unit -> the same. Throws RangeError unless h is positive and the distances are as for twoPointShare.
 * Source: sling tension lesson, formula (read).
 */
export function twoLegsUnderHook(load: number, a: number, b: number, height: number): UnequalLegs {
  if (!(height > 0)) throw new RangeError(`the height of the hook must be above zero, got ${height}`);
  const { nearA, nearB } = twoPointShare(load, a, b);
  const lengthA = Math.hypot(a, height);
  const lengthB = Math.hypot(b, height);
  return {
    tensionA: (nearA * lengthA) / height,
    tensionB: (nearB * lengthB) / height,
    lengthA,
    lengthB,
    angleA: Math.atan2(height, a),
    angleB: Math.atan2(height, b),
  };
}

function round(value: number): string {
  return String(Number(value.toPrecision(4)));
}

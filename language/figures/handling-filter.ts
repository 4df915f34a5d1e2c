// The lifting and lowering filter of the HSE guide: weights for a first look by height and reach, with its reductions.
// Above a box an assessment is asked for; below it the guide promises nothing, and neither does this.

/** Height of the hands. */
export type HandHeight =
  | "shoulder height and above"
  | "elbow to shoulder"
  | "knuckle to elbow"
  | "mid lower leg to knuckle"
  | "below mid lower leg";

/** One row of the filter, kg. */
export interface FilterRow {
  readonly height: HandHeight;
  readonly men: { readonly close: number; readonly extended: number };
  readonly women: { readonly close: number; readonly extended: number };
}

/** Boxes of the filter. Source: HSE INDG143 drawing, through a note and a public program (read). */
export const FILTER_ROWS: readonly FilterRow[] = [
  { height: "shoulder height and above", men: { close: 10, extended: 5 }, women: { close: 7, extended: 3 } },
  { height: "elbow to shoulder", men: { close: 20, extended: 10 }, women: { close: 13, extended: 7 } },
  { height: "knuckle to elbow", men: { close: 25, extended: 15 }, women: { close: 16, extended: 10 } },
  { height: "mid lower leg to knuckle", men: { close: 20, extended: 10 }, women: { close: 13, extended: 7 } },
  { height: "below mid lower leg", men: { close: 10, extended: 5 }, women: { close: 7, extended: 3 } },
];

/** Starting or stopping and keeping a load moving by hand, kgf, and the distance without a rest, m. Source: HSE guide; HSE research report 228 (read). */
export const PUSH_PULL = {
  startOrStop: { men: 20, women: 15 },
  keepMoving: { men: 10, women: 7 },
  distanceWithoutRest: 20,
} as const;

/** Reference masses of ISO 11228-1, kg: ideal conditions (read through a teaching note), women 20 to 45 (read; ages from memory), scope from 3 kg (read). */
export const ISO_REFERENCE_MASS = { ideal: 25, women: 20, scopeFrom: 3 } as const;

/**
 * Reduction for repetition: 0 up to once in two minutes, 30 % at once or twice a minute, 50 % at five to eight, 80 % above twelve.
 * Between the rows of the guide the next stricter row holds (our reading: the guide leaves gaps). Units: lifts a minute -> 1. Source: HSE guide, p. 59 (read).
 */
export function repetitionReduction(perMinute: number): number {
  if (!(perMinute >= 0)) throw new RangeError(`rate must not be negative, got ${perMinute}`);
  if (perMinute <= 0.5) return 0;
  if (perMinute <= 2) return 0.3;
  return perMinute <= 8 ? 0.5 : 0.8;
}

/** Reduction for twisting: 10 % beyond 45°, 20 % beyond 90°. Units: rad -> 1. Source: HSE guide, p. 59 (read). */
export function twistReduction(twist: number): number {
  const degrees = (twist * 180) / Math.PI;
  if (degrees > 90 + 1e-9) return 0.2;
  return degrees > 45 + 1e-9 ? 0.1 : 0;
}

/**
 * Filter weight after its reductions: base (1 - repetition)(1 - twist). That both multiply is our reading; the guide does not say.
 * Units: kg, lifts a minute, rad -> kg. Source: HSE guide as above.
 */
export function filterWeight(base: number, perMinute: number, twist: number): number {
  return base * (1 - repetitionReduction(perMinute)) * (1 - twistReduction(twist));
}

// Tightening by angle: how far to turn from snug, and what a turn stretches. SI, angles in rad.

/** Stiffness of one bolt cross-section in tension, as its give: delta = L / (E A). Units: m, Pa, m² -> m/N. Source: textbook (F = k x, k = E A / L). */
export const boltCompliance = (clampedLength: number, modulus: number, area: number): number => clampedLength / (modulus * area);

/**
 * Angle from snug to a preload, theta = 2 pi F (deltaS + deltaP) / P. Units: N, m/N, m/N, m -> rad.
 * Valid in the elastic range, from a joint that is already closed. Source: textbook turn-of-nut relation.
 */
export const angleFromPreload = (preload: number, boltGive: number, plateGive: number, pitch: number): number =>
  2 * Math.PI * preload * (boltGive + plateGive) / pitch;

/** Preload that an angle from snug adds; the inverse of `angleFromPreload`. Units: rad -> N. */
export const preloadFromAngle = (angle: number, boltGive: number, plateGive: number, pitch: number): number =>
  angle * pitch / (2 * Math.PI * (boltGive + plateGive));

/**
 * Turn of the nut from snug for structural bolts with both faces flat: 1/3 turn up to 4 d, 1/2 up to 8 d, 2/3 up to 12 d.
 * @param lengthShare bolt length over diameter.
 * @returns rad; `undefined` above 12 d, where a test is asked for. Source: RCSC Table 8.2 (read second-hand).
 */
export function turnOfNut(lengthShare: number): number | undefined {
  if (!(lengthShare > 0) || lengthShare > 12) return undefined;
  return 2 * Math.PI * (lengthShare <= 4 ? 1 / 3 : lengthShare <= 8 ? 1 / 2 : 2 / 3);
}

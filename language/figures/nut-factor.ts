// Torque by the nut factor, T = K F d: the usual way with inch threads. SI throughout. K is a guess about a surface, and results say so.

/** Nut factors of surfaces. Source: Shigley's Mechanical Engineering Design, 9th ed., Table 8-15. */
export const nutFactors: Readonly<Record<string, number>> = {
  "non-plated": 0.3,
  "zinc-plated": 0.2,
  lubricated: 0.18,
  "cadmium-plated": 0.16,
  "anti-seize": 0.12,
};

/** T = K F d. Units: N, m -> N·m. Source: Shigley, Eq. 8-27. */
export const torqueByNutFactor = (nutFactor: number, preload: number, diameter: number): number =>
  nutFactor * preload * diameter;

/** F = T / (K d). Units: N·m, m -> N. Source: Shigley, Eq. 8-27. */
export const preloadByNutFactor = (nutFactor: number, torque: number, diameter: number): number =>
  torque / (nutFactor * diameter);

/**
 * The nut factor behind two coefficients of friction:
 * K = dm/(2d) (tan lambda + f sec alpha) / (1 - f tan lambda sec alpha) + 0.625 fc, dm = (d + dr)/2, tan lambda = P/(pi dm), alpha = 30°.
 * Units: m -> 1. Source: Shigley, Eq. 8-26.
 */
export function nutFactorFromFriction(
  diameter: number,
  minorDiameter: number,
  pitch: number,
  threadFriction: number,
  collarFriction: number,
): number {
  const mean = (diameter + minorDiameter) / 2,
    lead = pitch / (Math.PI * mean),
    flank = threadFriction / Math.cos(Math.PI / 6);
  return ((mean / (2 * diameter)) * (lead + flank)) / (1 - flank * lead) + 0.625 * collarFriction;
}

/**
 * Preload at a share of the proof load. Units: m², Pa, share of 1 -> N.
 * Source: published inch torque tables (0.75); Shigley, Eq. 8-31 (from memory: 0.75 for joints to be undone, 0.90 for permanent ones).
 */
export const preloadAtProofShare = (area: number, proofStress: number, share = 0.75): number =>
  area * proofStress * share;

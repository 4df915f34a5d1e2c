// Rated limits of chain and rope slings by the EN tables, and the factors for legs, edges and heat.
// Printed limits are preferred numbers: the row of the table holds, not the product. The tag on the sling comes before any of them.

/** Limits of one size, tonnes, by legs and by the angle beta of the legs from the vertical. */
export interface SlingRow {
  /** Nominal size, mm. */
  readonly size: number;
  readonly one: number;
  readonly twoTo45: number;
  readonly twoTo60: number;
  readonly threeTo45: number;
  readonly threeTo60: number;
  readonly endless: number | undefined;
  /** Not read in a source: whoever uses it is told so. */
  readonly isFromMemory?: true;
}

/** Grade 8 chain slings. Source: EN 818-4 table in a catalogue, p. 148 (read); 13 mm from memory, since the page leaves it out. */
export const CHAIN_SLINGS: readonly SlingRow[] = [
  row(6, 1.12, 1.6, 1.12, 2.36, 1.7, 1.8),
  row(7, 1.5, 2.12, 1.5, 3.15, 2.24, 2.5),
  row(8, 2, 2.8, 2, 4.25, 3, 3.15),
  row(10, 3.15, 4.25, 3.15, 6.7, 4.75, 5),
  { ...row(13, 5.3, 7.5, 5.3, 11.2, 8, 8.5), isFromMemory: true },
  row(16, 8, 11.2, 8, 17, 11.8, 12.5),
  row(22, 15, 21.2, 15, 31.5, 22.4, 23.6),
  row(26, 21.2, 30, 21.2, 45, 31.5, 33.5),
  row(32, 31.5, 45, 31.5, 67, 47.5, 50),
];

/** Steel-cored, ferrule-secured rope slings; soft eyes over a pin of at least twice the rope diameter. Source: EN 13414-1:2003 Table 4 (read). */
export const ROPE_SLINGS: readonly SlingRow[] = [
  row(8, 0.75, 1.05, 0.75, 1.55, 1.1),
  row(10, 1.15, 1.6, 1.15, 2.4, 1.7),
  row(12, 1.7, 2.3, 1.7, 3.55, 2.5),
  row(14, 2.25, 3.15, 2.25, 4.8, 3.4),
  row(20, 4.6, 6.5, 4.6, 9.8, 6.9),
];

/**
 * Factors of the uniform load method for a symmetrical load, beta from the vertical; 3 and 4 legs alike. Source: EN 818-4 and EN 13414-1 in
 * catalogues (read).
 */
export const LEG_FACTORS = { one: 1, twoTo45: 1.4, twoTo60: 1, threeTo45: 2.1, threeTo60: 1.5, endless: 1.6 } as const;

/**
 * Factor of the uniform load method; undefined beyond 60° from the vertical, where no sling is to be used. Units: rad -> 1. Throws RangeError unless
 * legs is 1 to 4.
 * Source: EN 818-4, EN 13414-1 in catalogues (read).
 */
export function legFactor(legs: number, beta: number): number | undefined {
  if (!Number.isInteger(legs) || legs < 1 || legs > 4) throw new RangeError(`legs must be 1 to 4, got ${legs}`);
  const degrees = (beta * 180) / Math.PI;
  if (degrees > 60 + 1e-9 || degrees < 0) return undefined;
  if (legs === 1) return LEG_FACTORS.one;
  const steep = degrees <= 45 + 1e-9;
  if (legs === 2) return steep ? LEG_FACTORS.twoTo45 : LEG_FACTORS.twoTo60;
  return steep ? LEG_FACTORS.threeTo45 : LEG_FACTORS.threeTo60;
}

/**
 * Limit of a sling by its single-leg limit times the factor. Units: any unit of mass -> the same; undefined as for legFactor. Source: EN 818-4,
 * uniform load method.
 */
export function uniformLoadLimit(single: number, legs: number, beta: number): number | undefined {
  const factor = legFactor(legs, beta);
  return factor === undefined ? undefined : single * factor;
}

/**
 * Limit by the table row, tonnes; undefined for a size or angle outside the table. Units: mm, rad. Throws RangeError
 * unless legs is 1 to 4. Source: the table that is given, EN 818-4 or EN 13414-1 (read).
 */
export function slingTableLimit(
  table: readonly SlingRow[],
  size: number,
  legs: number,
  beta: number,
): number | undefined {
  const found = table.find((one) => one.size === size);
  if (found === undefined || legFactor(legs, beta) === undefined) return undefined;
  const steep = (beta * 180) / Math.PI <= 45 + 1e-9;
  if (legs === 1) return found.one;
  if (legs === 2) return steep ? found.twoTo45 : found.twoTo60;
  return steep ? found.threeTo45 : found.threeTo60;
}

/**
 * Limit by the trigonometric method: 2 x single x cos beta for two legs, 3 x single x cos beta for three and four.
 * Units: any unit of mass, rad -> the same. Valid only where load, angle and centre of gravity are known exactly. Source: dimensioning of chain slings (read).
 */
export function trigonometricLimit(single: number, legs: number, beta: number): number {
  if (!Number.isInteger(legs) || legs < 2 || legs > 4) throw new RangeError(`legs must be 2 to 4, got ${legs}`);
  return Math.min(legs, 3) * single * Math.cos(beta);
}

/**
 * Factor for a chain over an edge of radius R: over 2 d 1.0, over d 0.7, at d 0.5; undefined below d. Units: any length, the same. Source:
 * dimensioning of chain slings (read).
 */
export function edgeFactor(radius: number, chainSize: number): number | undefined {
  if (radius > 2 * chainSize) return 1;
  if (radius > chainSize) return 0.7;
  return radius === chainSize ? 0.5 : undefined;
}

/**
 * Factor for the temperature of a grade 8 chain: to 200 °C 1.0, to 300 °C 0.9, to 400 °C 0.75, else not to be used (0). Units: °C. Source: EN 818-4
 * catalogue table (read).
 */
export function chainTemperatureFactor(celsius: number): number {
  if (celsius < -40 || celsius > 400) return 0;
  if (celsius <= 200) return 1;
  return celsius <= 300 ? 0.9 : 0.75;
}

/** Proof load of special grabs and tackle over the rated load: 125 %. Source: 29 CFR 1926.251(a)(4) (read). */
export const TACKLE_PROOF = 1.25;

function row(
  size: number,
  one: number,
  twoTo45: number,
  twoTo60: number,
  threeTo45: number,
  threeTo60: number,
  endless?: number,
): SlingRow {
  return { size, one, twoTo45, twoTo60, threeTo45, threeTo60, endless };
}

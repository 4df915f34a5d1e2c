// Rated loads of lifting eyebolts and shackles by table. DIN and US figures rest on different designs and are never mixed.
// The marking on the piece comes first, and figures for one piece are not to be added up for several.

/** Rated load of one DIN 580 eyebolt, kg. */
export interface EyeboltRow {
  readonly thread: string;
  readonly axial: number;
  /** Pull up to 45° from the axis. */
  readonly to45: number;
  /** Pull up to 90° from the axis; with the 2010 edition, the 2003 edition forbids side pull. */
  readonly to90: number;
}

/** DIN 580 eyebolts, C15E or stainless, -20 to 200 °C, factor 6 on the breaking load. Source: DIN 580 in three catalogues (read). */
export const EYEBOLTS: readonly EyeboltRow[] = (
  [
    ["M8", 140, 100, 70],
    ["M10", 230, 170, 115],
    ["M12", 340, 240, 170],
    ["M16", 700, 500, 350],
    ["M20", 1200, 860, 600],
    ["M24", 1800, 1290, 900],
    ["M30", 3200, 2300, 1600],
    ["M36", 4600, 3300, 2300],
    ["M42", 6300, 4500, 3150],
    ["M48", 8600, 6100, 4300],
    ["M56", 11500, 8200, 5750],
    ["M64", 16000, 11000, 8000],
    ["M72x6", 20000, 14000, 10000],
    ["M80x6", 28000, 20000, 14000],
    ["M100x6", 40000, 29000, 20000],
  ] as const
).map(([thread, axial, to45, to90]) => ({ thread, axial, to45, to90 }));

/** Where the DIN table comes from, as printed. */
export const EYEBOLT_SOURCE =
  "DIN 580 table in three catalogues (read): each eyebolt, C15E or stainless, -20 to 200 °C, turned fully in and seated flat";

/**
 * Rated load of one DIN 580 eyebolt at an angle of pull from its axis, by the next column of the table.
 * Units: rad from the axis -> kg; undefined for a thread outside the table or a pull beyond 90°. Source: {@link EYEBOLT_SOURCE}.
 */
export function eyeboltCapacity(thread: string, angle = 0): number | undefined {
  const found = EYEBOLTS.find((one) => one.thread === thread);
  const degrees = Math.abs((angle * 180) / Math.PI);
  if (found === undefined || degrees > 90 + 1e-9) return undefined;
  if (degrees < 1e-9) return found.axial;
  return degrees <= 45 + 1e-9 ? found.to45 : found.to90;
}

/** US machinery eyebolts by metric shank, mm, rated load in line, lb. Factor 5 on the breaking load. Source: machinery eye bolt limits page (read). */
export const US_EYEBOLTS: readonly { readonly diameter: number; readonly axialPounds: number }[] = (
  [
    [6, 462],
    [8, 1110],
    [10, 1628],
    [12, 2266],
    [16, 3520],
    [20, 6292],
    [24, 8470],
    [30, 14080],
    [36, 19734],
  ] as const
).map(([diameter, axialPounds]) => ({ diameter, axialPounds }));

/** Share of the in-line load that a US shoulder eyebolt keeps at 45°: 25 %; without a shoulder in line only. Source: machinery eye bolt limits page (read). */
export const US_EYEBOLT_AT_45 = 0.25;

/**
 * Share of the in-line load of a US shoulder eyebolt by the angle from its axis: to 5° 1.0, then the rows 15° 0.8, 30° 0.65, 45° 0.3, 90° 0.25;
 * between rows the next lower share.
 * Units: rad -> 1; undefined beyond 90°. Another source has 25 % at 45°, so the lower of the two is the one to plan with. Source: eye bolt
 * application page (read).
 */
export function shoulderEyeboltShare(angle: number): number | undefined {
  const degrees = Math.abs((angle * 180) / Math.PI);
  const rows = [
    [5, 1],
    [15, 0.8],
    [30, 0.65],
    [45, 0.3],
    [90, 0.25],
  ] as const;
  return rows.find(([upTo]) => degrees <= upTo + 1e-9)?.[1];
}

/** Least length of thread in the hole for an eyebolt, over its diameter, in US practice. Source: shoulder eye bolt page (read). */
export const EYEBOLT_ENGAGEMENT = 1.5;

/** Bow shackles by size in inches, tons as marked (US or metric): carbon (factor 6) and alloy (factor 5). Source: load limits page on shackles (read). */
export const INCH_SHACKLES: readonly {
  readonly size: string;
  readonly carbon: number;
  readonly alloy: number | undefined;
}[] = (
  [
    ["1/4", 0.5, undefined],
    ["5/16", 0.75, undefined],
    ["3/8", 1, 2],
    ["7/16", 1.5, 2.6],
    ["1/2", 2, 3.3],
    ["5/8", 3.25, 5],
    ["3/4", 4.75, 7],
    ["7/8", 6.5, 9.5],
    ["1", 8.5, 12.5],
    ["1-1/8", 9.5, 15],
    ["1-1/4", 12, 18],
    ["1-3/8", 13.5, 21],
    ["1-1/2", 17, 30],
  ] as const
).map(([size, carbon, alloy]) => ({ size, carbon, alloy }));

/** Bow shackles by size in millimetres, tonnes. Source: US Fed. Spec. RR-C-271 / EN 13889 table (read), factor 6. */
export const METRIC_SHACKLES: readonly { readonly size: number; readonly tonnes: number }[] = (
  [
    [5, 0.33],
    [6, 0.5],
    [8, 0.75],
    [9, 1],
    [11, 1.5],
    [13, 2],
    [16, 3.25],
    [19, 4.75],
    [22, 6.5],
    [25, 8.5],
    [28, 9.5],
    [32, 12],
    [38, 17],
  ] as const
).map(([size, tonnes]) => ({ size, tonnes }));

/** Greatest angle between two legs in one shackle, rad (120°). Source: three shackle catalogues (read). */
export const SHACKLE_INCLUDED_MOST = (120 * Math.PI) / 180;

/**
 * Share of its rated load that a bow shackle keeps by the angle of the pull from in line: 0° 1.0, to 45° 0.7, to 90° 0.5. Units: rad -> 1; undefined
 * beyond. Source: as above.
 */
export function shackleSideShare(angle: number): number | undefined {
  const degrees = Math.abs((angle * 180) / Math.PI);
  if (degrees < 1e-9) return 1;
  if (degrees <= 45 + 1e-9) return 0.7;
  return degrees <= 90 + 1e-9 ? 0.5 : undefined;
}

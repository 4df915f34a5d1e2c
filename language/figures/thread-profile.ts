// The 60 degree profile of metric and unified threads: diameters and areas from nominal diameter and pitch. Lengths in m, areas in m².
// It knows no standard sizes.

/** Height of the fundamental triangle, H = P sin 60°. Source: ISO 68-1, ASME B1.1. */
const fundamentalHeight = (pitch: number): number => (pitch * Math.sqrt(3)) / 2;

/**
 * Pitch diameter d2 = d - 3/4 H = d - 0.649519 P. Units: m, m -> m.
 * Valid for P < d/2. Source: ISO 724, ASME B1.1 (both read second-hand).
 */
export const pitchDiameter = (diameter: number, pitch: number): number => diameter - 0.75 * fundamentalHeight(pitch);

/**
 * Minor diameter of the external thread's rounded root, d3 = d - 17/12 H = d - 1.226869 P. Units: m, m -> m.
 * Source: ISO 68-1, ISO 898-1 (read second-hand).
 */
export const rootDiameter = (diameter: number, pitch: number): number =>
  diameter - (17 / 12) * fundamentalHeight(pitch);

/** Basic minor diameter of the internal thread, D1 = D - 5/4 H = D - 1.082532 P. Units: m, m -> m. Source: ISO 724, ASME B1.1. */
export const internalMinorDiameter = (diameter: number, pitch: number): number =>
  diameter - 1.25 * fundamentalHeight(pitch);

/** Minor diameter of the external UNR thread, d - 11/8 H = d - 1.190785 P. Units: m, m -> m. Source: ASME B1.1 through a published UNF table. */
export const unrMinorDiameter = (diameter: number, pitch: number): number =>
  diameter - 1.375 * fundamentalHeight(pitch);

/**
 * Stress area of a metric thread, As = pi/4 ((d2 + d3)/2)² = pi/4 (d - 0.938194 P)². Units: m, m -> m².
 * Source: ISO 898-1 (clause 9.1.6.1 from memory); Shigley's Mechanical Engineering Design, Table 8-1.
 */
export function stressArea(diameter: number, pitch: number): number {
  const mean = (pitchDiameter(diameter, pitch) + rootDiameter(diameter, pitch)) / 2;
  return (Math.PI / 4) * mean * mean;
}

/**
 * Stress area of a unified thread, At = pi/4 (d - 0.9743 P)²: about 1.5 % less than the metric formula gives. Units: m, m -> m².
 * Source: ASME B1.1 through published thread tables.
 */
export const unifiedStressArea = (diameter: number, pitch: number): number =>
  (Math.PI / 4) * (diameter - 1.125 * fundamentalHeight(pitch)) ** 2;

/**
 * The stress area as the standards print it and reckon loads with: three significant figures of mm². Units: m, m -> m².
 * Source: ISO 898-1 Tables 4 to 7 (As,nom; read second-hand).
 */
export const nominalStressArea = (diameter: number, pitch: number): number =>
  Number((stressArea(diameter, pitch) * 1e6).toPrecision(3)) * 1e-6;

/** Section at the minor diameter, pi/4 (d - 1.2990 P)². Units: m, m -> m². Source: ASME B1.1 through published UNC and UNF tables. */
export const minorArea = (diameter: number, pitch: number): number =>
  (Math.PI / 4) * (diameter - 1.5 * fundamentalHeight(pitch)) ** 2;

/**
 * Share of the full thread height that a tapping hole leaves, (d - hole) / (1.2990 P). Units: m, m, m -> share of 1.
 * Source: published unified tap drill tables.
 */
export const threadShare = (diameter: number, pitch: number, hole: number): number =>
  (diameter - hole) / (1.5 * fundamentalHeight(pitch));

/**
 * Tapping hole of a metric thread: d - P to the nearest 0.1 mm, halves up (0.05 mm below M3). Units: m, m -> m.
 * Source: ISO 2306 rule D = d - P; printed tables differ by up to 0.1 mm.
 */
export function metricTapDrill(diameter: number, pitch: number): number {
  const steps = diameter < 2.9e-3 ? 0.05 : 0.1,
    exact = (diameter - pitch) * 1e3;
  return Number((Math.floor(exact / steps + 0.5 + 1e-9) * steps).toFixed(2)) / 1e3;
}

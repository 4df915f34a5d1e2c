// Basic motions of the hand, arm and body by the MTM-1 data card, in TMU (0.036 s).
// A motion time is skilled bench work without allowances; entries marked "memory" were not seen in a source and are never the only ground of a figure.

/** One time measurement unit, s, exact. Source: MTM-1 data card 2019 (read). */
export const TMU_SECONDS = 0.036;

/** Whether a figure was read in the source named, computed from it, or recalled and not seen. */
export type Standing = "read" | "computed" | "memory";

/** Distances of the reach and move tables, in. The first holds for 3/4 in and less. */
export const MOTION_INCHES: readonly number[] = [
  0.75, 1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 12, 14, 16, 18, 20, 22, 24, 26, 28, 30,
];

/** Reach in TMU by case, one for each of MOTION_INCHES. Source: MTM-1 tables, a university page (read). */
export const REACH: readonly MotionColumn[] = [
  {
    code: "R-A",
    about: "reach to a fixed place or the other hand",
    tmu: [2, 2.5, 4, 5.3, 6.1, 6.5, 7, 7.4, 7.9, 8.3, 8.7, 9.6, 10.5, 11.4, 12.3, 13.1, 14, 14.9, 15.8, 16.7, 17.5],
  },
  {
    code: "R-B",
    about: "reach to a single object",
    tmu: [
      2, 2.5, 4, 5.3, 6.4, 7.8, 8.6, 9.3, 10.1, 10.8, 11.5, 12.9, 14.4, 15.8, 17.2, 18.6, 20.1, 21.5, 22.9, 24.4, 25.8,
    ],
  },
  {
    code: "R-C/D",
    about: "reach to a jumbled, very small or delicate object",
    tmu: [
      2, 3.6, 5.9, 7.3, 8.4, 9.4, 10.1, 10.8, 11.5, 12.2, 12.9, 14.2, 15.6, 17, 18.4, 19.8, 21.2, 22.5, 23.9, 25.3,
      26.7,
    ],
  },
  {
    code: "R-E",
    about: "reach out of the way",
    tmu: [2, 2.4, 3.8, 5.3, 6.8, 7.4, 8, 8.7, 9.3, 9.9, 10.5, 11.8, 13, 14.2, 15.5, 16.7, 18, 19.2, 20.4, 21.7, 22.9],
  },
];

/** Move up to 2.5 lb in TMU by case, one for each of MOTION_INCHES. Source: as above (read). */
export const MOVE: readonly MotionColumn[] = [
  {
    code: "M-A",
    about: "move to the other hand or a stop",
    tmu: [
      2, 2.5, 3.6, 4.9, 6.1, 7.3, 8.1, 8.9, 9.7, 10.5, 11.3, 12.9, 14.4, 16, 17.6, 19.2, 20.8, 22.4, 24, 25.5, 27.1,
    ],
  },
  {
    code: "M-B",
    about: "move to a rough place",
    tmu: [
      2, 2.9, 4.6, 5.7, 6.9, 8, 8.9, 9.7, 10.6, 11.5, 12.2, 13.4, 14.6, 15.8, 17, 18.2, 19.4, 20.6, 21.8, 23.1, 24.3,
    ],
  },
  {
    code: "M-C",
    about: "move to an exact place",
    tmu: [
      2, 3.4, 5.2, 6.7, 8, 9.2, 10.3, 11.1, 11.8, 12.7, 13.5, 15.2, 16.9, 18.7, 20.4, 22.1, 23.8, 25.5, 27.3, 29, 30.7,
    ],
  },
];

/** Weight allowance of a move: time x factor + constant TMU, for loads up to so many pounds in one hand. Source: textbook table (read where marked). */
export const MOVE_WEIGHTS: readonly {
  readonly upToPounds: number;
  readonly factor: number;
  readonly constant: number;
  readonly standing: Standing;
}[] = [
  { upToPounds: 2.5, factor: 1, constant: 0, standing: "read" },
  { upToPounds: 7.5, factor: 1.06, constant: 2.2, standing: "read" },
  { upToPounds: 12.5, factor: 1.11, constant: 3.9, standing: "memory" },
  { upToPounds: 17.5, factor: 1.17, constant: 5.6, standing: "memory" },
  { upToPounds: 22.5, factor: 1.22, constant: 7.4, standing: "memory" },
  { upToPounds: 27.5, factor: 1.28, constant: 9.1, standing: "memory" },
  { upToPounds: 32.5, factor: 1.33, constant: 10.8, standing: "memory" },
  { upToPounds: 37.5, factor: 1.39, constant: 12.5, standing: "read" },
  { upToPounds: 42.5, factor: 1.44, constant: 14.3, standing: "read" },
  { upToPounds: 47.5, factor: 1.5, constant: 16, standing: "read" },
];

/** Angles of the turn table, degrees. */
export const TURN_DEGREES: readonly number[] = [30, 45, 60, 75, 90, 105, 120, 135, 150, 165, 180];

/** Turn of the hand in TMU by effort, one for each of TURN_DEGREES. Source: MTM-1 data card 2019 (read). */
export const TURN: readonly MotionColumn[] = [
  {
    code: "T-S",
    about: "turn the hand, small, up to 1 daN or kg (2 lb)",
    tmu: [2.8, 3.5, 4.1, 4.8, 5.4, 6.1, 6.8, 7.4, 8.1, 8.7, 9.4],
  },
  {
    code: "T-M",
    about: "turn the hand, medium, 1 to 5 daN or kg",
    tmu: [4.4, 5.5, 6.5, 7.5, 8.5, 9.6, 10.6, 11.6, 12.7, 13.7, 14.8],
  },
  {
    code: "T-L",
    about: "turn the hand, large, 5 to 16 daN or kg",
    tmu: [8.4, 10.5, 12.3, 14.4, 16.2, 18.3, 20.4, 22.2, 24.3, 26.1, 28.2],
  },
];

/** A motion with one time. */
export interface Motion {
  readonly action: string;
  readonly condition: string;
  readonly tmu: number;
  readonly standing: Standing;
}

/** A column of a table by distance or angle. */
export interface MotionColumn {
  readonly code: string;
  readonly about: string;
  readonly tmu: readonly number[];
}

/** Grasps, motions of foot, leg and body, eye focus, and the elements recalled from the card. Source: textbook table and data card (read where marked). */
export const MOTIONS: readonly Motion[] = [
  { action: "grasp G1A", condition: "1A any size by itself", tmu: 2, standing: "read" },
  { action: "grasp G1B", condition: "1B very small or flat on a surface", tmu: 3.5, standing: "read" },
  { action: "grasp G1C1", condition: "1C1 nearly cylindrical, over 1/2 in, hindered", tmu: 7.3, standing: "read" },
  { action: "grasp G1C2", condition: "1C2 same, 1/4 to 1/2 in", tmu: 8.7, standing: "read" },
  { action: "grasp G1C3", condition: "1C3 same, under 1/4 in", tmu: 10.8, standing: "read" },
  { action: "grasp G4A", condition: "4A jumbled, over 1 in", tmu: 7.3, standing: "read" },
  { action: "grasp G4B", condition: "4B jumbled, 1/4 to 1 in", tmu: 9.1, standing: "read" },
  { action: "grasp G5", condition: "5 contact", tmu: 0, standing: "read" },
  { action: "regrasp G2", condition: "", tmu: 5.6, standing: "memory" },
  { action: "transfer G3", condition: "", tmu: 5.6, standing: "memory" },
  { action: "grasp G4C", condition: "jumbled, under 1/4 in", tmu: 12.9, standing: "memory" },
  { action: "FM foot motion", condition: "ankle, up to 10 cm", tmu: 8.5, standing: "read" },
  { action: "FMP foot motion", condition: "with heavy pressure", tmu: 19.1, standing: "read" },
  { action: "LM leg motion", condition: "up to 15 cm (each cm more 0.5)", tmu: 7.1, standing: "read" },
  { action: "SS-C1 side step", condition: "30 cm (each cm more 0.2)", tmu: 17, standing: "read" },
  { action: "SS-C2 side step", condition: "30 cm (each cm more 0.4)", tmu: 34.1, standing: "read" },
  { action: "TBC1 turn body", condition: "45 to 90°, case 1", tmu: 18.6, standing: "read" },
  { action: "TBC2 turn body", condition: "45 to 90°, case 2", tmu: 37.2, standing: "read" },
  { action: "eye focus", condition: "", tmu: 7.3, standing: "read" },
  { action: "release RL1", condition: "open the fingers", tmu: 2, standing: "memory" },
  { action: "release RL2", condition: "contact", tmu: 0, standing: "memory" },
  { action: "apply pressure APA", condition: "", tmu: 10.6, standing: "memory" },
  { action: "apply pressure APB", condition: "with regrasp", tmu: 16.2, standing: "memory" },
  { action: "position P1SE", condition: "loose, symmetrical, easy", tmu: 5.6, standing: "memory" },
  { action: "position P1SSE", condition: "loose, semi-symmetrical", tmu: 9.1, standing: "memory" },
  { action: "position P1NSE", condition: "loose, not symmetrical", tmu: 10.4, standing: "memory" },
  { action: "position P2SE", condition: "close", tmu: 16.2, standing: "memory" },
  { action: "position P2SSE", condition: "close", tmu: 19.7, standing: "memory" },
  { action: "position P2NSE", condition: "close", tmu: 21, standing: "memory" },
  { action: "position P3SE", condition: "exact", tmu: 43, standing: "memory" },
  { action: "disengage D1E", condition: "loose, easy", tmu: 4, standing: "memory" },
  { action: "disengage D1D", condition: "loose, hard to handle", tmu: 5.7, standing: "memory" },
  { action: "disengage D2E", condition: "close", tmu: 7.5, standing: "memory" },
  { action: "disengage D2D", condition: "close, hard to handle", tmu: 11.8, standing: "memory" },
  { action: "disengage D3E", condition: "tight", tmu: 22.9, standing: "memory" },
  { action: "disengage D3D", condition: "tight, hard to handle", tmu: 34.7, standing: "memory" },
  { action: "bend, stoop, kneel on one knee", condition: "", tmu: 29, standing: "memory" },
  { action: "arise from them", condition: "", tmu: 31.9, standing: "memory" },
  { action: "kneel on both knees", condition: "", tmu: 69.4, standing: "memory" },
  { action: "arise", condition: "", tmu: 76.7, standing: "memory" },
  { action: "sit", condition: "", tmu: 34.7, standing: "memory" },
  { action: "stand", condition: "", tmu: 43.4, standing: "memory" },
  { action: "walk", condition: "one pace", tmu: 15, standing: "memory" },
  { action: "walk, obstructed", condition: "one pace", tmu: 17, standing: "memory" },
];

/** Time for reach or move over a distance, the next longer row of the table. Units: TMU column, in -> TMU; undefined beyond 30 in. Source: MTM-1 tables. */
export function motionTime(column: MotionColumn, inches: number): number | undefined {
  const index = MOTION_INCHES.findIndex((row) => inches <= row + 1e-9);
  return index < 0 ? undefined : column.tmu[index];
}

/**
 * Move with a weight: time x factor + constant. Units: TMU, lb in one hand -> TMU; undefined above 47.5 lb. Source: MTM-1 weight allowance.
 */
export function moveWithWeight(
  tmu: number,
  pounds: number,
): { readonly tmu: number; readonly standing: Standing } | undefined {
  const row = MOVE_WEIGHTS.find((one) => pounds <= one.upToPounds + 1e-9);
  return row === undefined ? undefined : { tmu: tmu * row.factor + row.constant, standing: row.standing };
}

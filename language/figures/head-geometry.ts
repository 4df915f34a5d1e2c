// Where a bolt head or nut bears: bearing diameters and clearance holes, and the pressure under them. Tables in mm, functions in SI.

import { rounded } from "../quantities/quantity.ts";
import {
  aidCaution,
  argument,
  isFigureError,
  missing,
  plain,
  step,
  result,
  siIn,
  sizeIn,
  textIn,
  type Figure,
} from "./figure.ts";
import { threadOf, type Thread } from "./threads.ts";
import { findUnifiedThread } from "./unified-threads.ts";

export type HeadKind = "hex" | "socket-cap";

interface BearingRow {
  /** Least outer bearing diameter dw of a hexagon head (ISO 4014) and of a socket cap head (ISO 4762). */
  readonly hex: number;
  readonly cap: number | undefined;
  /** Clearance holes of ISO 273: close, medium, loose. */
  readonly close: number;
  readonly medium: number;
  readonly loose: number;
  readonly status: "read" | "memory";
}

/** By nominal diameter in mm. Sources: ISO 4014, ISO 4762, ISO 273 (M4 to M24 read through published tables, the others from memory). */
export const bearingRows: ReadonlyMap<number, BearingRow> = new Map(
  rows(`
  1.6 2.27 2.72 1.7 1.8 2 memory
  2 3.07 3.48 2.2 2.4 2.6 memory
  2.5 4.07 4.18 2.7 2.9 3.1 memory
  3 4.57 5.07 3.2 3.4 3.6 memory
  3.5 5.07 - 3.7 3.9 4.2 memory
  4 5.88 6.53 4.3 4.5 4.8 read
  5 6.88 8.03 5.3 5.5 5.8 read
  6 8.88 9.38 6.4 6.6 7 read
  7 9.63 - 7.4 7.6 8 memory
  8 11.63 12.33 8.4 9 10 read
  10 14.63 15.33 10.5 11 12 read
  12 16.63 17.23 13 13.5 15 read
  14 19.64 20.17 15 15.5 17 read
  16 22.49 23.17 17 17.5 19 read
  18 25.34 - 19 20 21 read
  20 28.19 28.87 21 22 24 read
  22 31.71 - 23 24 26 read
  24 33.61 34.81 25 26 28 read
  27 38 - 28 30 32 memory
  30 42.75 - 31 33 35 memory
  36 51.11 - 37 39 42 memory`),
);

function rows(text: string): [number, BearingRow][] {
  return text
    .trim()
    .split("\n")
    .map((line) => {
      const [d, hex, cap, close, medium, loose, status] = line.trim().split(" ");
      const row: BearingRow = {
        hex: Number(hex),
        cap: cap === "-" ? undefined : Number(cap),
        close: Number(close),
        medium: Number(medium),
        loose: Number(loose),
        status: status === "read" ? "read" : "memory",
      };
      return [Number(d), row];
    });
}

/** Where a head bears; diameters in m. */
export interface Bearing {
  readonly outer: number;
  readonly hole: number;
  /** DKm, the mean diameter of friction under the head. */
  readonly mean: number;
  /** Said under results when it is not the table's. */
  readonly assumption: string | undefined;
}

/** Width across flats of an inch hexagon head as a share of the diameter, where no table is asked: 1.5 d (ASME B18.2.1 basic). */
const inchHeadWidth = 1.5;

/**
 * Bearing of a head on a medium clearance hole: DKm = (dw + dh) / 2.
 * Metric from the table; inch hexagon heads with the washer face at 0.95 of 1.5 d (ASME B18.2.1, from memory) and the normal hole.
 * Units: m. Source: ISO 4014, ISO 4762, ISO 273, ASME B18.2.8 (read through published tables).
 * @returns `undefined` for a size that the table lacks.
 */
export function bearingOf(thread: Thread, head: HeadKind): Bearing | undefined {
  if (thread.system === "unified") {
    const hole = findUnifiedThread(thread.designation.split(" ")[0]!)?.clearance.normalInches;
    if (!hole) return undefined;
    const outer = 0.95 * inchHeadWidth * thread.diameter;
    return {
      ...bearing(outer, hole * 0.0254),
      assumption: "bearing face 0.95 of a head 1.5 d wide (ASME B18.2.1, from memory)",
    };
  }
  const row = bearingRows.get(Number((thread.diameter * 1e3).toPrecision(6)));
  if (!row) return undefined;
  const outer = head === "socket-cap" && row.cap !== undefined ? row.cap : row.hex;
  const substituted =
    head === "socket-cap" && row.cap === undefined
      ? "bearing face of a hexagon head taken for the socket head"
      : undefined;
  return { ...bearing(outer / 1e3, row.medium / 1e3), assumption: substituted };
}

const bearing = (outer: number, hole: number): Omit<Bearing, "assumption"> => ({
  outer,
  hole,
  mean: (outer + hole) / 2,
});

/** Bearing area under a head, pi/4 (dw² - dh²). Units: m, m -> m². Source: VDI 2230-1 (read second-hand). */
export const bearingArea = (outer: number, hole: number): number => (Math.PI / 4) * (outer * outer - hole * hole);

/** Pressure under a head, p = F / A. Units: N, m, m -> Pa. Source: VDI 2230-1 (read second-hand). */
export const bearingPressure = (force: number, outer: number, hole: number): number => force / bearingArea(outer, hole);

export const bearingFigure: Figure = {
  name: "bearing",
  title: "Clearance holes, bearing of the head and pressure under it",
  arguments: [
    argument("size", "size", "the thread"),
    argument("preload", "force", "force under the head", { optional: true, default: "sizes only" }),
    argument("head", "word", "shape of the head", { optional: true, default: "hex", words: ["hex", "socket-cap"] }),
  ],
  validity: "metric M1.6 to M36, unified sizes with a clearance hole in the table; plain heads without washer",
  source:
    "ISO 4014, ISO 4762, ISO 273, ASME B18.2.8 (read through published tables; below M4 and above M24 from memory)",
  examples: ["M10", "M10 29.6 kN"],
  run(inputs) {
    const lacking = missing(bearingFigure, inputs),
      size = sizeIn(inputs, "size"),
      preload = siIn(inputs, "preload");
    if (lacking || !size) return lacking ?? { says: "bearing needs a thread size" };
    const thread = threadOf(size);
    if (isFigureError(thread)) return thread;
    const under = bearingOf(thread, textIn(inputs, "head") === "socket-cap" ? "socket-cap" : "hex"),
      row = bearingRows.get(Number((thread.diameter * 1e3).toPrecision(6)));
    if (!under) return { says: `${thread.designation} has no bearing diameter in the tables` };
    const holes = thread.unified?.clearance;
    return {
      values: [
        ...(preload === undefined
          ? []
          : [result("pressure under the head", bearingPressure(preload, under.outer, under.hole), "MPa")]),
        result("outer bearing diameter, least", under.outer, "mm"),
        result("mean friction diameter DKm", under.mean, "mm"),
        plain(
          "clearance holes close, medium, loose",
          row && thread.system === "metric"
            ? `${row.close}, ${row.medium}, ${row.loose} mm`
            : holes
              ? `${holes.close}, ${holes.normal}, ${holes.loose}`
              : `${rounded(under.hole * 1e3)} mm`,
        ),
      ],
      formula: "DKm = (dw + dh) / 2; p = F / (pi/4 (dw² - dh²))",
      steps: [step("clearance hole reckoned with", under.hole * 1e3, "mm")],
      assumptions: [
        ...(under.assumption === undefined ? [] : [under.assumption]),
        ...(row?.status === "memory" ? ["bearing figures from memory"] : []),
      ],
      source: bearingFigure.source,
      caution: aidCaution,
    };
  },
};

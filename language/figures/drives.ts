// Which tool size goes with a thread, and which threads a tool size may mean. Widths in m; hexalobular and cross recesses by number.
// A drive that no table has for the thread is answered with the usual ones, not called wrong.

import { rounded } from "../quantities/quantity.ts";
import { parseNumber } from "../quantities/number.ts";
import type { ThreadSize } from "../quantities/thread-size.ts";
import { driveRows, type DriveKind, type DriveRow } from "./drive-table.ts";
import { aidCaution, argument, missing, plain, step, quantityIn, siIn, sizeIn, textIn, type Figure } from "./figure.ts";

/** The kinds that a drive of the language may mean in the table: a cross recess of type H or Z is in both. */
const kindsOf: Readonly<Record<string, readonly DriveKind[]>> = {
  hex: ["hex"],
  square: ["square"],
  "hex-socket": ["hex-socket"],
  hexalobular: ["hexalobular"],
  "cross-ph": ["cross", "cross-ph"],
  "cross-pz": ["cross"],
};

/**
 * Width across flats in m of a row; `undefined` for a numbered drive. Source: the head standard that the row names.
 */
export function rowWidth(row: DriveRow): number | undefined {
  widths ??= new Map(driveRows.map((one) => [one, widthOf(one)]));
  return widths.get(row);
}
let widths: ReadonlyMap<DriveRow, number | undefined> | undefined;

function widthOf(row: DriveRow): number | undefined {
  if (row.drive === "hexalobular" || row.drive === "cross" || row.drive === "cross-ph") return undefined;
  return parseNumber(row.size)!.value * (row.thread.startsWith("M") ? 0.001 : 0.0254);
}

/**
 * Rows of the table for a thread's nominal size (`M8`, `3/8`) and drive kind. Source: the head standards that the
 * rows name.
 */
export function rowsForThread(nominal: string, drive: string): readonly DriveRow[] {
  let rows = byDrive.get(drive);
  if (!rows) {
    const kinds = kindsOf[drive];
    if (!kinds) return none;
    rows = Map.groupBy(
      driveRows.filter((row) => kinds.includes(row.drive)),
      (row) => row.thread,
    );
    byDrive.set(drive, rows);
  }
  return rows.get(nominal) ?? none;
}
const byDrive = new Map<string, ReadonlyMap<string, readonly DriveRow[]>>(),
  none: readonly DriveRow[] = [];

/** A width is the same within half a per cent: 1/2 in is not 13 mm (2.4 %), 5/16 in is not 8 mm (0.8 %). */
const sameWidth = (a: number, b: number): boolean => Math.abs(a - b) <= 0.005 * b;

/** A drive as declared: its width in m, or the number of a hexalobular or cross recess. */
export interface DriveSize {
  readonly width?: number | undefined;
  readonly number?: number | undefined;
}

const fits = (row: DriveRow, size: DriveSize): boolean => {
  const width = rowWidth(row);
  return width === undefined
    ? size.number !== undefined && Number(row.size) === size.number
    : size.width !== undefined && sameWidth(size.width, width);
};

/** Threads that a tool size may mean, with the standards that say so. Source: the head standards, through the table. */
export const threadsForDrive = (drive: string, size: DriveSize): readonly DriveRow[] =>
  driveRows.filter((row) => (kindsOf[drive] ?? []).includes(row.drive) && fits(row, size));

export interface DriveFinding {
  /** Sizes that the tables give this thread with this drive, as on the tool: "13", "9/16 in". */
  readonly usual: readonly string[];
  /** Threads that this tool size goes with. */
  readonly threads: readonly string[];
  readonly source: string;
}

/**
 * What to ask about a drive that no head standard gives this thread. `undefined` when it is in a table, when the tables do not hold the
 * thread with this drive, and for pipe threads.
 * Units: m, number of a recess. Source: the head standards that the rows name; the finding carries them.
 */
export function driveFinding(size: ThreadSize, drive: string, given: DriveSize): DriveFinding | undefined {
  if (size.system === "pipe" || (given.width === undefined && given.number === undefined)) return undefined;
  const rows = rowsForThread(size.nominal, drive);
  if (rows.length === 0 || rows.some((row) => fits(row, given))) return undefined;
  return {
    usual: unique(rows.map(shownSize)),
    threads: unique(threadsForDrive(drive, given).map((row) => row.thread)),
    source: unique(rows.map((row) => row.standard)).join(", "),
  };
}

const unique = (texts: readonly string[]): readonly string[] => [...new Set(texts)];

const named = (row: DriveRow): string => `${row.standard}, ${row.item}`;

function shownSize(row: DriveRow): string {
  if (rowWidth(row) === undefined) return row.size;
  return row.thread.startsWith("M") ? `${row.size} mm` : `${row.size} in`;
}

/** Heavy inch hexagons: width = 1.5 d + 1/8 in. Units: m -> m. Source: ASME B18.2.1, from memory. */
export const heavyHexWidth = (diameter: number): number => 1.5 * diameter + 0.003175;

/** Hexalobular sockets by number: diameters over and between the lobes in mm. Source: ISO 10664 (read through a published table). */
export const hexalobularSockets: ReadonlyMap<number, { readonly over: number; readonly between: number }> = new Map(
  [
    [6, 1.75, 1.205],
    [8, 2.4, 1.67],
    [10, 2.8, 1.98],
    [15, 3.35, 2.35],
    [20, 3.95, 2.75],
    [25, 4.5, 3.16],
    [30, 5.6, 3.95],
    [40, 6.75, 4.76],
    [45, 7.93, 5.55],
    [50, 8.95, 6.36],
    [55, 11.35, 7.92],
    [60, 13.45, 9.48],
    [70, 15.7, 11.08],
    [80, 17.75, 12.64],
    [90, 20.2, 14.22],
    [100, 22.4, 15.81],
  ].map(([number, over, between]) => [number!, { over: over!, between: between! }]),
);

/** Cross recesses by number: wing width b and gap g in mm. Source: ISO 4757 (read through a published table). */
export const crossRecesses: ReadonlyMap<number, { readonly wing: number; readonly gap: number }> = new Map(
  [
    [0, 0.61, 0.81],
    [1, 0.97, 1.27],
    [2, 1.47, 2.29],
    [3, 2.41, 3.81],
    [4, 3.48, 5.08],
  ].map(([number, wing, gap]) => [number!, { wing: wing!, gap: gap! }]),
);

/** Cross recess driver by screw gauge of wood and sheet screws. Source: published trade pages; machine screws differ at #10 (ASME B18.6.3: 2). */
export function driverForGauge(gauge: number): number | undefined {
  if (!Number.isInteger(gauge) || gauge < 0 || gauge > 24 || gauge === 17) return undefined;
  return gauge <= 1 ? 0 : gauge <= 4 ? 1 : gauge <= 9 ? 2 : gauge <= 16 ? 3 : 4;
}

const driveWords = ["hex", "hex-socket", "hexalobular", "square", "cross-ph", "cross-pz"];

export const spannerFigure: Figure = {
  name: "spanner",
  title: "Tool size of a thread",
  arguments: [
    argument("size", "size", "the thread"),
    argument("drive", "word", "what the tool grips", { optional: true, default: "hex", words: driveWords }),
  ],
  validity: "standard heads; makers use others, flange and small-series heads above all",
  source:
    "ISO 272, ISO 4014, ISO 4032, ISO 4762, ISO 4757, ISO 10664, ASME B18.2, B18.3, B18.6.3 and those named (read through published tables)",
  examples: ["M6", "M8 hexalobular", "3/8-16"],
  run(inputs) {
    const lacking = missing(spannerFigure, inputs),
      size = sizeIn(inputs, "size"),
      drive = textIn(inputs, "drive") ?? "hex";
    if (lacking || !size) return lacking ?? { says: "spanner needs a thread size" };
    const rows = rowsForThread(size.nominal, drive);
    if (rows.length === 0) {
      return {
        says: `no table gives ${size.nominal} with drive ${drive}`,
        nearest: driveWords.filter((word) => rowsForThread(size.nominal, word).length > 0),
      };
    }
    return {
      values: unique(rows.map(shownSize)).map((shown) =>
        plain(shown, unique(rows.filter((row) => shownSize(row) === shown).map(named))),
      ),
      formula: "from the table",
      steps: [step("heads looked up", rows.length)],
      assumptions: rows.some((row) => row.status === "memory")
        ? rows.filter((row) => row.status === "memory").map((row) => `${row.standard}: from memory`)
        : [],
      source: spannerFigure.source,
      caution: aidCaution,
    };
  },
};

/** `T30`, as it stands on the tool: a hexalobular socket by its number (ISO 10664). */
const socketByNumber = (word: string): readonly string[] | undefined => {
  const number = /^T(\d+)$/i.exec(word)?.[1];
  return number === undefined ? undefined : ["drive", "hexalobular", "number", number];
};

export const threadFromSpannerFigure: Figure = {
  name: "thread-from-spanner",
  title: "Threads that a tool size may mean",
  arguments: [
    argument("width", "length", "width across flats", { optional: true, default: "give a number instead" }),
    argument("number", "number", "hexalobular or cross recess number", {
      optional: true,
      default: "give a width instead",
    }),
    argument("drive", "word", "what the tool grips", { optional: true, default: "hex", words: driveWords }),
  ],
  validity: spannerFigure.validity,
  source: spannerFigure.source,
  examples: ["10 mm", "9/16 in", "T30"],
  spoken: socketByNumber,
  run(inputs) {
    const drive = textIn(inputs, "drive") ?? "hex",
      width = siIn(inputs, "width"),
      number = typeof inputs["number"] === "number" ? inputs["number"] : undefined;
    if (width === undefined && number === undefined) return { says: "thread-from-spanner needs a width or a number" };
    const rows = threadsForDrive(drive, { width, number }),
      written = quantityIn(inputs, "width")?.written ?? String(number);
    if (rows.length === 0)
      return { says: `no table gives a thread for drive ${drive} ${written}`, nearest: nearestSizes(drive, width) };
    return {
      values: unique(rows.map((row) => row.thread)).map((thread) =>
        plain(thread, unique(rows.filter((row) => row.thread === thread).map(named))),
      ),
      formula: "from the table",
      steps: [step("tool size looked up", written)],
      assumptions: rows
        .filter((row) => row.status === "memory")
        .map((row) => `${row.thread} by ${row.standard}: from memory`),
      source: spannerFigure.source,
      caution: aidCaution,
    };
  },
};

function nearestSizes(drive: string, width: number | undefined): readonly string[] {
  if (width === undefined) return [];
  const rows = driveRows.filter((row) => (kindsOf[drive] ?? []).includes(row.drive) && rowWidth(row) !== undefined);
  const sorted = [...rows].sort((a, b) => Math.abs(rowWidth(a)! - width) - Math.abs(rowWidth(b)! - width));
  return unique(sorted.map((row) => `${shownSize(row)} (${rounded(rowWidth(row)! * 1e3, 4)} mm)`)).slice(0, 3);
}

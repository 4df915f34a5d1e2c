// Circlips, retaining washers, keys and pins: which standard one goes with a shaft or bore. Millimetres in the tables, m at the door.

import { aidCaution, argument, missing, plain, step, siIn, textIn, type Figure, type ResultValue } from "./figure.ts";
import {
  boreCirclipRows,
  dowelDiameters,
  hardenedDowelDiameters,
  parallelKeyRows,
  retainingWasherRows,
  shaftCirclipRows,
  splitPinDiameters,
  springPinRows,
} from "./small-hardware-table.ts";

export interface Circlip {
  /** Shaft or bore. */
  readonly nominal: number;
  readonly thickness: number;
  readonly grooveDiameter: number;
  /** Least groove width; `undefined` where the source prints none. */
  readonly grooveWidth: number | undefined;
  readonly freeDiameter: number;
  readonly lugHole: number;
}

const split = (text: string): string[][] =>
  text
    .trim()
    .replace(/\s+/g, " ")
    .split(", ")
    .map((row) => row.split(" "));

function circlips(text: string): readonly Circlip[] {
  return split(text)
    .map(([nominal, thickness, groove, width, free, lug]) => ({
      nominal: Number(nominal),
      thickness: Number(thickness),
      grooveDiameter: Number(groove),
      grooveWidth: width === "-" ? undefined : Number(width),
      freeDiameter: Number(free),
      lugHole: Number(lug),
    }))
    .sort((a, b) => a.nominal - b.nominal);
}

/** Source: DIN 471 and DIN 472 (read through published tables, their slips mended by groove depth and ring thickness). */
export const shaftCirclips = circlips(shaftCirclipRows);
export const boreCirclips = circlips(boreCirclipRows);

/** Depth of a circlip's groove, half of the difference of diameters. Units: mm -> mm. Source: geometry. */
export const circlipGrooveDepth = (ring: Circlip): number =>
  Number((Math.abs(ring.nominal - ring.grooveDiameter) / 2).toFixed(3));

export interface RetainingWasher {
  readonly groove: number;
  readonly thickness: number;
  readonly shaft: readonly [number, number];
  readonly mouth: number;
}

/** Named by the groove, not by the shaft. Source: DIN 6799 (read through a published table). */
export const retainingWashers: readonly RetainingWasher[] = split(retainingWasherRows).map(
  ([groove, thickness, shaft = "", mouth]) => {
    const [from, to] = shaft.split("..");
    return {
      groove: Number(groove),
      thickness: Number(thickness),
      shaft: [Number(from), Number(to)],
      mouth: Number(mouth),
    };
  },
);

export interface ParallelKey {
  readonly name: string;
  readonly width: number;
  readonly height: number;
  /** Shaft diameter over and up to. */
  readonly over: number;
  readonly upTo: number;
  /** Keyway depths in shaft and hub. */
  readonly shaftDepth: number;
  readonly hubDepth: number;
  readonly status: "read" | "memory";
}

/** Source: DIN 6885-1, ISO 773 (read to 14x9, above from memory). */
export const parallelKeys: readonly ParallelKey[] = split(parallelKeyRows).map(
  ([name = "", over, upTo, shaftDepth, hubDepth, status]) => {
    const [width, height] = name.split("x").map(Number) as [number, number];
    return {
      name,
      width,
      height,
      over: Number(over),
      upTo: Number(upTo),
      shaftDepth: Number(shaftDepth),
      hubDepth: Number(hubDepth),
      status: status === "memory" ? "memory" : "read",
    };
  },
);

/** Clearance over a key, shaft depth + hub depth - height. Units: mm -> mm. Source: geometry. */
export const keyClearance = (key: ParallelKey): number =>
  Number((key.shaftDepth + key.hubDepth - key.height).toFixed(3));

export interface Pin {
  readonly standard: string;
  readonly hole: number;
  readonly tolerance: string | undefined;
  /** Before driving in. */ readonly free: number | undefined;
}

const diameters = (text: string): readonly number[] => text.split(" ").map(Number);

/** Sources: ISO 2338, ISO 8734, ISO 8752, ISO 1234 (read through a published table). Split pins are used once. */
export const pins: readonly Pin[] = [
  ...diameters(dowelDiameters).map((hole) => ({ standard: "ISO 2338", hole, tolerance: "H7", free: undefined })),
  ...diameters(hardenedDowelDiameters).map((hole) => ({
    standard: "ISO 8734",
    hole,
    tolerance: "H7",
    free: undefined,
  })),
  ...split(springPinRows).map(([hole, free]) => ({
    standard: "ISO 8752",
    hole: Number(hole),
    tolerance: "H12",
    free: Number(free),
  })),
  ...diameters(splitPinDiameters).map((hole) => ({
    standard: "ISO 1234",
    hole,
    tolerance: undefined,
    free: undefined,
  })),
];

const near = (a: number, b: number): boolean => Math.abs(a - b) < 1e-6;

/**
 * The circlip of a shaft or bore in mm; `undefined` for one that the table lacks. Source: DIN 471, DIN 472 (read
 * through published tables).
 */
export const circlipFor = (on: "shaft" | "bore", diameter: number): Circlip | undefined =>
  (on === "shaft" ? shaftCirclips : boreCirclips).find((ring) => near(ring.nominal, diameter));

/**
 * The parallel key of a shaft in mm. `undefined` for one outside 6 to 110 mm. Source: DIN 6885-1, ISO 773 (read to
 * 14x9, above from memory).
 */
export const keyFor = (shaft: number): ParallelKey | undefined =>
  parallelKeys.find((key) => shaft > key.over && shaft <= key.upTo);

/** Retaining washers that go on a shaft of this diameter in mm. Source: DIN 6799 (read through a published table). */
export const retainingWashersFor = (shaft: number): readonly RetainingWasher[] =>
  retainingWashers.filter((ring) => shaft >= ring.shaft[0] && shaft <= ring.shaft[1]);

export const hardwareFigure: Figure = {
  name: "small-hardware",
  title: "Circlip, retaining washer, key or pin of a shaft or bore",
  arguments: [
    argument("kind", "word", "what is looked up", {
      words: ["shaft-circlip", "bore-circlip", "retaining-washer", "key", "pin"],
    }),
    argument("diameter", "length", "of the shaft, bore or hole"),
  ],
  validity: "metric standards; grooves of makers differ",
  source:
    "DIN 471, DIN 472, DIN 6799, DIN 6885-1, ISO 2338, ISO 8734, ISO 8752, ISO 1234 (read through published tables; keys above 14x9 from memory)",
  examples: ["shaft-circlip 25 mm", "key 28 mm"],
  run(inputs) {
    const lacking = missing(hardwareFigure, inputs),
      kind = textIn(inputs, "kind"),
      metres = siIn(inputs, "diameter");
    if (lacking || kind === undefined || metres === undefined)
      return lacking ?? { says: "small-hardware needs a kind and a diameter" };
    const d = Number((metres * 1e3).toPrecision(9)),
      values = looked(kind, d);
    if (values.length === 0)
      return {
        says: `no ${kind.replace("-", " ")} is tabled for ${d} mm`,
        nearest: nearestDiameters(kind, d).map((each) => `${each} mm`),
      };
    return {
      values,
      formula: "from the table",
      steps: [step("diameter looked up", d, "mm")],
      assumptions: [],
      source: hardwareFigure.source,
      caution: aidCaution,
    };
  },
};

function looked(kind: string, d: number): readonly ResultValue[] {
  if (kind === "key") {
    const key = keyFor(d);
    return key
      ? [
          plain("key", key.name),
          plain("keyway in the shaft", key.shaftDepth, "mm"),
          plain("keyway in the hub", key.hubDepth, "mm"),
        ]
      : [];
  }
  if (kind === "retaining-washer")
    return retainingWashersFor(d).map((ring) =>
      plain(`washer ${ring.groove}`, `thickness ${ring.thickness} mm, groove ${ring.groove} mm`),
    );
  if (kind === "pin")
    return pins
      .filter((pin) => near(pin.hole, d))
      .map((pin) => plain(pin.standard, `${pin.hole}${pin.tolerance ? ` ${pin.tolerance}` : ""}`, "mm"));
  const ring = circlipFor(kind === "bore-circlip" ? "bore" : "shaft", d);
  if (!ring) return [];
  return [
    plain("ring thickness", ring.thickness, "mm"),
    plain("groove diameter", ring.grooveDiameter, "mm"),
    plain("groove depth", circlipGrooveDepth(ring), "mm"),
    ...(ring.grooveWidth === undefined ? [] : [plain("groove width, least", ring.grooveWidth, "mm")]),
    plain("lug hole", ring.lugHole, "mm"),
  ];
}

function nearestDiameters(kind: string, d: number): readonly number[] {
  const all =
    kind === "key"
      ? parallelKeys.map((key) => key.upTo)
      : kind === "retaining-washer"
        ? retainingWashers.flatMap((ring) => [...ring.shaft])
        : kind === "pin"
          ? pins.map((pin) => pin.hole)
          : (kind === "bore-circlip" ? boreCirclips : shaftCirclips).map((ring) => ring.nominal);
  return [...new Set(all)]
    .sort((a, b) => Math.abs(a - d) - Math.abs(b - d) || a - b)
    .slice(0, 3)
    .sort((a, b) => a - b);
}

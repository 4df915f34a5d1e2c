// Figures on eyebolts and shackles: the rated load of one piece by table and by the angle of the pull.

import {
  argument,
  plain,
  result,
  sizeIn,
  step,
  textIn,
  type Figure,
  type FigureInputs,
  type ResultValue,
} from "./figure.ts";
import {
  EYEBOLTS,
  EYEBOLT_ENGAGEMENT,
  EYEBOLT_SOURCE,
  INCH_SHACKLES,
  METRIC_SHACKLES,
  SHACKLE_INCLUDED_MOST,
  US_EYEBOLTS,
  US_EYEBOLT_AT_45,
  eyeboltCapacity,
  shackleSideShare,
  shoulderEyeboltShare,
  type EyeboltRow,
} from "./eyebolts.ts";
import { hazardFigure, highest, highestIn, nearestSizes, outsideTable, shown, type Answer } from "./hazard-figure.ts";
import { parseNumber } from "../quantities/number.ts";

const degrees = (radians: number): number => (radians * 180) / Math.PI;

/** Rated load of a DIN 580 eyebolt. */
export const eyebolt: Figure = hazardFigure({
  name: "eyebolt",
  title: "Rated load of a lifting eyebolt",
  topic: "slings",
  arguments: [
    argument("thread", "size", "thread of the eyebolt"),
    argument("pull", "angle", "angle of the pull from the axis of the eyebolt", {
      optional: true,
      default: "0 deg, in line",
    }),
    argument("load", "mass", "load on this one eyebolt", { optional: true, default: "no comparison" }),
  ],
  validity:
    "each eyebolt by itself, turned fully in and seated flat; never added up over several; US eyebolts rest on another design",
  source: EYEBOLT_SOURCE,
  examples: ["M12", "M12 45 deg 300 kg"],
  answer(inputs) {
    const size = sizeIn(inputs, "thread")!;
    const pull = highestIn(inputs, "pull") ?? 0;
    // The thick threads of the table are fine-pitched by name; a bare M72 means them, as no coarse one is listed.
    const row =
      EYEBOLTS.find((one) => one.thread === size.designation) ??
      EYEBOLTS.find((one) => one.thread.includes("x") && one.thread.startsWith(`${size.designation}x`));
    if (row === undefined) return outsideTable("eyebolt", size.designation, nearestThreads(size.diameter));
    const capacity = eyeboltCapacity(row.thread, pull);
    if (capacity === undefined) return { says: "eyebolt: a pull beyond 90° from the axis is not in the table" };
    return loaded(inputs, result("rated load", capacity, "kg"), capacity, "row and column of the table", [
      `${row.thread}: in line ${row.axial} kg, to 45° ${row.to45} kg, to 90° ${row.to90} kg`,
    ]);
  },
});

/** Rated load of a US shoulder eyebolt by its metric shank. */
export const eyeboltUs: Figure = hazardFigure({
  name: "eyebolt-us",
  title: "Rated load of a US shoulder eyebolt",
  topic: "slings",
  arguments: [
    argument("shank", "length", "diameter of the shank"),
    argument("pull", "angle", "angle of the pull from the axis", { optional: true, default: "0 deg, in line" }),
    argument("load", "mass", "load on this one eyebolt", { optional: true, default: "no comparison" }),
  ],
  validity:
    `shoulder type, pulled in the plane of the eye, thread in the hole at least ${EYEBOLT_ENGAGEMENT} d; ` +
    "without a shoulder in line only; DIN eyebolts rest on another design",
  source:
    "Machinery eye bolt limits page, factor 5; eye bolt application page for the angles (read); where they differ the lower figure",
  examples: ["12 mm", "12 mm 45 deg"],
  answer(inputs) {
    const size = millimetres(highest(inputs, "shank"));
    const row = US_EYEBOLTS.find((one) => one.diameter === size);
    if (row === undefined)
      return outsideTable(
        "eyebolt-us",
        `${shown(size)} mm`,
        nearestSizes(
          US_EYEBOLTS.map((one) => one.diameter),
          size,
        ).map((one) => `${one} mm`),
      );
    const pull = highestIn(inputs, "pull") ?? 0;
    const read = shoulderEyeboltShare(pull);
    if (read === undefined) return { says: "eyebolt-us: a pull beyond 90° from the axis is not in the table" };
    // The two sources meet between the 30° and the 45° row; from there the lower of them holds.
    const share = degrees(pull) > 30 + 1e-9 ? Math.min(read, US_EYEBOLT_AT_45) : read;
    const pounds = row.axialPounds * share;
    return loaded(
      inputs,
      result("rated load", pounds * 0.45359237, "lb"),
      pounds * 0.45359237,
      "row of the table x share by angle",
      [`${row.axialPounds} lb x ${share} = ${shown(pounds)} lb`],
    );
  },
});

/** Rated load of a bow shackle. */
export const shackle: Figure = hazardFigure({
  name: "shackle",
  title: "Rated load of a bow shackle",
  topic: "slings",
  arguments: [
    argument("bow", "length", "diameter of the bow, in mm or in"),
    argument("steel", "word", "steel of an inch size", {
      words: ["carbon", "alloy"],
      optional: true,
      default: "carbon",
    }),
    argument("pull", "angle", "angle of the pull from in line", { optional: true, default: "0 deg, in line" }),
    argument("load", "mass", "load on this one shackle", { optional: true, default: "no comparison" }),
  ],
  validity:
    `bow shackles, carbon factor 6, alloy factor 5; two legs in one shackle at most ${Math.round(degrees(SHACKLE_INCLUDED_MOST))}° apart; ` +
    "the marking on the shackle comes first",
  source:
    "US Fed. Spec. RR-C-271 / EN 13889 table and load limits page on shackles; side loading by three catalogues (read)",
  examples: ["13 mm", "13 mm 45 deg", "1/2 in alloy"],
  answer(inputs) {
    const size = millimetres(highest(inputs, "bow"));
    const alloy = textIn(inputs, "steel") === "alloy";
    const share = shackleSideShare(highestIn(inputs, "pull") ?? 0);
    if (share === undefined) return { says: "shackle: a pull beyond 90° from in line is not in the table" };
    const metric = METRIC_SHACKLES.find((one) => one.size === size);
    const inch = INCH_SHACKLES.find((one) => Math.abs((parseNumber(one.size)?.value ?? 0) * 25.4 - size) < 0.01);
    if (metric !== undefined && inch === undefined) {
      if (alloy) return { says: "shackle: the metric table has carbon steel alone", nearest: ["carbon"] };
      return loaded(
        inputs,
        result("rated load", metric.tonnes * share * 1000, "t"),
        metric.tonnes * share * 1000,
        "row of the table x side-load share",
        [`${metric.tonnes} t x ${share} = ${shown(metric.tonnes * share)} t`],
      );
    }
    const tons = alloy ? inch?.alloy : inch?.carbon;
    if (inch === undefined || tons === undefined) {
      const sizes = [
        ...nearestSizes(
          METRIC_SHACKLES.map((one) => one.size),
          size,
        ).map((one) => `${one} mm`),
        ...(alloy
          ? INCH_SHACKLES.filter((one) => one.alloy !== undefined)
              .slice(0, 2)
              .map((one) => `${one.size} in`)
          : []),
      ];
      return outsideTable("shackle", `${shown(size)} mm${alloy ? " in alloy steel" : ""}`, sizes);
    }
    // The table says "US or metric tons as marked": the US ton is the smaller, so it is the one reckoned with.
    const kilograms = tons * 2000 * 0.45359237 * share;
    return loaded(inputs, result("rated load", kilograms, "t"), kilograms, "row of the table x side-load share", [
      `${tons} US tons x 0.9072 x ${share} = ${shown(kilograms / 1000)} t`,
    ]);
  },
});

/** A rated load with, where a load was given and lies over it, the finding. */
function loaded(
  inputs: FigureInputs,
  rated: ResultValue,
  kilograms: number,
  formula: string,
  sums: readonly string[],
): Answer {
  const on = highestIn(inputs, "load");
  const over = on !== undefined && on > kilograms;
  return {
    values: [rated, ...(over ? [plain("finding", "over the rated load")] : [])],
    formula,
    steps: [
      ...sums.map((text) => step(text)),
      ...(over ? [step(`${shown(on)} kg is over the rated load by ${shown(on - kilograms)} kg`)] : []),
    ],
  };
}

/** Millimetres without the noise of a conversion. */
const millimetres = (metres: number): number => Math.round(metres * 1e6) / 1e3;

function nearestThreads(diameter: number | undefined): readonly string[] {
  const wanted = (diameter ?? 0) * 1000;
  const size = (thread: string): number => Number.parseFloat(thread.slice(1));
  const away = (row: EyeboltRow): number => Math.abs(size(row.thread) - wanted);
  return [...EYEBOLTS]
    .sort((x, y) => away(x) - away(y))
    .slice(0, 2)
    .map((row) => row.thread)
    .sort((x, y) => size(x) - size(y));
}

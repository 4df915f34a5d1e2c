// The torque wrench: setting with an adapter, permissible deviation, the range it may be used in, and the drag of locking nuts. SI, angles in rad.

import { si } from "../quantities/quantity.ts";
import {
  aidCaution,
  argument,
  missing,
  plain,
  quantityIn,
  result,
  siIn,
  step,
  textIn,
  type Figure,
  wordIn,
} from "./figure.ts";

/**
 * Setting of the wrench with an adapter, set = wanted x L / (L + E cos a). Units: N·m, m, m, rad -> N·m.
 * L: grip centre to drive; E: drive to fastener; a: 0 straight out, 90° no correction, 180° pointing back to the grip. A socket extension in
 * the drive axis needs none. Error: `undefined` where the lever vanishes (L + E cos a not above 0).
 * Source: TM 9-254 and TM 1-1500-204-23-9, US Army.
 */
export function adapterSetting(wanted: number, lever: number, adapter: number, angle: number): number | undefined {
  const reach = lever + adapter * Math.cos(angle);
  return lever > 0 && reach > 0 ? (wanted * lever) / reach : undefined;
}

/** Types and classes of ISO 6789-1: I indicates, II is set and releases. */
export type WrenchClass =
  "I-A" | "I-B" | "I-C" | "I-D" | "I-E" | "II-A" | "II-B" | "II-C" | "II-D" | "II-E" | "II-F" | "II-G";

/**
 * Largest permissible deviation at a setting: 6 % up to and including 10 N·m of the wrench's maximum, above that 4 % for the classes
 * I B, C, E and II A, B, C; 6 % throughout for the others. Units: N·m -> share of 1.
 * Source: ISO 6789:2003 (class II A read), ISO 6789-1:2017 cl. 5.1.5 (the others from memory).
 */
export function wrenchDeviation(wrench: WrenchClass, torque: number): number {
  const fine: readonly WrenchClass[] = ["I-B", "I-C", "I-E", "II-A", "II-B", "II-C"];
  return fine.includes(wrench) && torque > 10 ? 0.04 : 0.06;
}

/** Lowest setting of a wrench that states only its maximum: 20 %. Units: N·m -> N·m. Source: test points of ISO 6789:2003; a common workshop rule. */
export const leastSetting = (maximum: number): number => 0.2 * maximum;

/** Middle of the range, 25 to 75 %, where beam and dial wrenches read best. Source: TB 43-0218, US Army. */
export const bestRange = (maximum: number): { readonly low: number; readonly high: number } => ({
  low: 0.25 * maximum,
  high: 0.75 * maximum,
});

/** Points that a type II wrench is checked at, N·m: 20, 60 and 100 % of its maximum. Source: ISO 6789:2003 (read second-hand). */
export const testPoints = (maximum: number): readonly number[] =>
  [0.2, 0.6, 1].map((share) => Number((share * maximum).toPrecision(12)));

export interface WrenchFinding {
  readonly is: "over" | "under" | "below-a-fifth";
  readonly limit: number;
}

/**
 * What is wrong with a setting on a wrench of this range (N·m). A wrench that states its lowest value is held to it; one whose lowest is
 * under a fifth of its maximum gets the milder finding. `undefined`: nothing to ask.
 * Source: ISO 6789-1:2017 (range from 20 % of the maximum; read through summaries).
 */
export function wrenchFinding(
  setting: number,
  range: { readonly low: number | undefined; readonly high: number },
): WrenchFinding | undefined {
  if (setting > range.high * (1 + 1e-9)) return { is: "over", limit: range.high };
  if (range.low !== undefined && setting < range.low * (1 - 1e-9)) return { is: "under", limit: range.low };
  const fifth = leastSetting(range.high);
  return setting < fifth * (1 - 1e-9) && (range.low === undefined || range.low <= 0)
    ? { is: "below-a-fifth", limit: fifth }
    : undefined;
}

/**
 * Setting for a fastener with its own drag: wanted + run-down torque. Units: N·m -> N·m.
 * Source: AC 43.13-1B, TB 43-0218.
 * @param rule `always` (AC 43.13-1B, US FAA) or `from-a-third`: only when the drag is a third or more of the wanted torque (TB 43-0218, US Army).
 */
export const settingWithDrag = (wanted: number, runDown: number, rule: "always" | "from-a-third" = "always"): number =>
  rule === "always" || runDown * 3 >= wanted * (1 - 1e-12) ? wanted + runDown : wanted;

export const adapterFigure: Figure = {
  name: "adapter",
  title: "Torque wrench setting with an adapter",
  arguments: [
    argument("torque", "torque", "the torque wanted at the fastener"),
    argument("lever", "length", "grip centre to the centre of the drive"),
    argument("adapter", "length", "centre of the drive to the centre of the fastener"),
    argument("angle", "angle", "between adapter and wrench: 0 straight out, 90 deg across, 180 deg back", {
      optional: true,
      default: "0 deg",
    }),
  ],
  validity:
    "pull at the middle of the grip, at right angles to the wrench; no correction at 90 deg or for an extension in the drive axis",
  source: "TM 9-254, TM 1-1500-204-23-9 (US Army)",
  examples: ["80 N·m 40 cm 5 cm", "80 N·m 400 mm 50 mm 60 deg"],
  run(inputs) {
    const lacking = missing(adapterFigure, inputs),
      wanted = siIn(inputs, "torque"),
      lever = siIn(inputs, "lever"),
      adapter = siIn(inputs, "adapter");
    if (lacking || wanted === undefined || lever === undefined || adapter === undefined)
      return lacking ?? { says: "adapter needs a torque and two lengths" };
    const angle = siIn(inputs, "angle") ?? 0,
      setting = adapterSetting(wanted, lever, adapter, angle),
      { form, unit } = quantityIn(inputs, "torque")!,
      { low, high } = si(quantityIn(inputs, "torque")!),
      least = form === "single" ? undefined : adapterSetting(low, lever, adapter, angle),
      most = adapterSetting(high, lever, adapter, angle);
    if (!(lever > 0)) return { says: "lever: a length above 0 is due" };
    if (angle > Math.PI + 1e-9)
      return { says: "angle: from 0 straight out to 180 deg back", nearest: ["0 deg", "180 deg"] };
    if (setting === undefined || most === undefined)
      return { says: "the adapter reaches back past the grip: no setting gives that torque" };
    return {
      values:
        least === undefined
          ? [result("setting", setting, unit)]
          : [result("setting from", least, unit), result("setting to", most, unit)],
      formula: "set = wanted x L / (L + E cos a)",
      steps: [step("L + E cos a", (lever + adapter * Math.cos(angle)) * 1e3, "mm")],
      assumptions: quantityIn(inputs, "angle") ? [] : ["adapter straight out"],
      source: adapterFigure.source,
      caution: aidCaution,
    };
  },
};

const classWords: readonly WrenchClass[] = [
  "I-A",
  "I-B",
  "I-C",
  "I-D",
  "I-E",
  "II-A",
  "II-B",
  "II-C",
  "II-D",
  "II-E",
  "II-F",
  "II-G",
];

export const wrenchFigure: Figure = {
  name: "torque-wrench",
  title: "Deviation and usable range of a torque wrench",
  arguments: [
    argument("torque", "torque", "the setting"),
    argument("maximum", "torque", "the wrench's highest value"),
    argument("class", "word", "type and class of ISO 6789", { optional: true, default: "II-A", words: classWords }),
  ],
  validity: "hand torque tools of ISO 6789 within their calibration",
  source: "ISO 6789:2003 and ISO 6789-1:2017 (read through summaries; classes other than II A from memory)",
  examples: ["24 N·m 50 N·m"],
  run(inputs) {
    const lacking = missing(wrenchFigure, inputs),
      setting = siIn(inputs, "torque"),
      maximum = siIn(inputs, "maximum");
    if (lacking || setting === undefined || maximum === undefined)
      return lacking ?? { says: "torque-wrench needs a setting and a highest value" };
    const wrench = wordIn(inputs, "class", classWords) ?? "II-A",
      share = wrenchDeviation(wrench, setting),
      unit = quantityIn(inputs, "torque")!.unit;
    const finding = wrenchFinding(setting, { low: undefined, high: maximum });
    return {
      values: [
        result("permissible deviation", share, "%"),
        result("lowest that this may be", setting * (1 - share), unit),
        result("highest that this may be", setting * (1 + share), unit),
        result("lowest setting by the fifth rule", leastSetting(maximum), unit),
        ...(finding
          ? [
              plain(
                "finding",
                finding.is === "over" ? "over the wrench's range" : "below a fifth of the wrench's maximum",
              ),
            ]
          : []),
      ],
      formula: "deviation = share x setting; lowest setting = 20 % of the maximum",
      steps: [step("deviation at the setting", setting * share, "N·m")],
      assumptions: textIn(inputs, "class") === undefined ? ["type II class A (a setting wrench with a scale)"] : [],
      source: wrenchFigure.source,
      caution: aidCaution,
    };
  },
};

export const dragFigure: Figure = {
  name: "locking-drag",
  title: "Torque wrench setting for a locking nut",
  arguments: [
    argument("torque", "torque", "the torque wanted"),
    argument("run-down", "torque", "what it takes to run the nut down"),
    argument("rule", "word", "when the drag is added", {
      optional: true,
      default: "always",
      words: ["always", "from-a-third"],
    }),
  ],
  validity: "the maker's torque does not already hold the drag",
  source: "AC 43.13-1B (US FAA): always; TB 43-0218 (US Army): from a third of the torque wanted",
  examples: ["50..70 lbf·in 30 lbf·in"],
  run(inputs) {
    const lacking = missing(dragFigure, inputs),
      wanted = quantityIn(inputs, "torque"),
      drag = siIn(inputs, "run-down");
    if (lacking || !wanted || drag === undefined) return lacking ?? { says: "locking-drag needs two torques" };
    if (drag < 0) return { says: "run-down: a torque of 0 or more is due" };
    const rule = textIn(inputs, "rule") === "from-a-third" ? "from-a-third" : "always",
      { low, high } = si(wanted);
    return {
      values:
        low === high
          ? [result("setting", settingWithDrag(high, drag, rule), wanted.unit)]
          : [
              result("setting from", settingWithDrag(low, drag, rule), wanted.unit),
              result("setting to", settingWithDrag(high, drag, rule), wanted.unit),
            ],
      formula: "set = wanted + run-down",
      steps: [step("run-down torque", drag, "N·m")],
      assumptions: textIn(inputs, "rule") === undefined ? ["the drag is always added"] : [],
      source: dragFigure.source,
      caution: aidCaution,
    };
  },
};

// How far a screw must go in, how long it should be, and whether a used locking nut still grips. SI. It flags lengths; it chooses none.

import {
  aidCaution,
  argument,
  isFigureError,
  missing,
  plain,
  result,
  siIn,
  sizeIn,
  step,
  textIn,
  type Figure,
  wordIn,
} from "./figure.ts";
import { tappedIn, type TappedName } from "../tables/index.ts";
import { selfLockingLimits } from "./self-locking-nuts.ts";
import { threadOf } from "./threads.ts";

export type TappedMaterial = Exclude<TappedName, "nut">;
const threadCarriers = Object.keys(tappedIn) as TappedName[];
export const tappedMaterials = threadCarriers.filter((name): name is TappedMaterial => name !== "nut");

/**
 * Least engaged length in diameters. Steel 1.0 (read; makers ask up to 1.25), aluminium 2.0 (read; others 1.5 to 2.0), cast iron and brass 1.5
 * (common practice, from memory). Source: thread engagement guides and an engine maker's manual.
 */
export const leastEngagement: Readonly<Record<TappedMaterial, number>> = {
  steel: 1,
  "cast-iron": 1.5,
  brass: 1.5,
  aluminium: 2,
};

/**
 * Engaged length at which bolt and equally strong internal thread give way together, Le = (D - 0.938194 P)² / (D - 0.64952 P). Units: m -> m.
 * Source: published engagement calculation (its print leaves out the P in the numerator).
 */
export const engagementLength = (diameter: number, pitch: number): number =>
  (diameter - 0.938194 * pitch) ** 2 / (diameter - 0.64952 * pitch);

/**
 * The same in a weaker material: Le x tensile strength of the bolt / of the tapped material. Units: m, Pa, Pa -> m.
 * Source: published thread engagement guides (read).
 */
export const engagementInWeaker = (length: number, boltStrength: number, tappedStrength: number): number =>
  length * Math.max(1, boltStrength / tappedStrength);

export interface LengthRange {
  readonly least: number;
  readonly most: number;
}

/**
 * Plausible nominal length of a screw in a tapped hole: grip + engagement .. grip + engagement + 3 d. Units: m. Below: it may not hold; above:
 * it may bottom. Source: common practice, from the engagement figures above.
 */
export const screwLength = (grip: number, diameter: number, material: TappedMaterial = "steel"): LengthRange => {
  const least = grip + leastEngagement[material] * diameter;
  return { least, most: least + 3 * diameter };
};

/**
 * Plausible nominal length of a bolt with a nut: grip + 0.8 d nut + 1 pitch .. grip + 0.9 d nut + 5 pitches. Units: m.
 * Source: Naval Ships' Technical Manual ch. 075 as quoted (1 to 5 threads through the nut); nut height 0.8 to 0.9 d.
 */
export const boltLength = (grip: number, diameter: number, pitch: number): LengthRange => ({
  least: grip + 0.8 * diameter + pitch,
  most: grip + 0.9 * diameter + 5 * pitch,
});

/**
 * A length outside its plausible range; `undefined` says nothing. Half a millimetre either way is left to rounding.
 * Units: m. Source: common practice.
 */
export const lengthFinding = (length: number, range: LengthRange): "short" | "long" | undefined =>
  length < range.least - 0.5e-3 ? "short" : length > range.most + 0.5e-3 ? "long" : undefined;

export const engagementFigure: Figure = {
  name: "engagement",
  title: "Thread engagement and plausible screw length",
  arguments: [
    argument("size", "size", "the thread"),
    argument("grip", "length", "sum of the plates it passes", { optional: true, default: "engagement only" }),
    argument("into", "word", "what the thread is cut in, or a nut", {
      optional: true,
      default: "steel",
      words: threadCarriers,
    }),
  ],
  validity: "standard threads, full profile; chamfers and countersinks add to the length",
  source:
    "published thread engagement guides; Naval Ships' Technical Manual ch. 075 as quoted; length ranges common practice",
  examples: ["M8 20 mm", "M10 30 mm aluminium"],
  run(inputs) {
    const lacking = missing(engagementFigure, inputs),
      size = sizeIn(inputs, "size");
    if (lacking || !size) return lacking ?? { says: "engagement needs a thread size" };
    const thread = threadOf(size);
    if (isFigureError(thread)) return thread;
    const into = wordIn(inputs, "into", threadCarriers) ?? "steel",
      grip = siIn(inputs, "grip"),
      { diameter, pitch } = thread;
    const material = into === "nut" ? undefined : into;
    // It holds for two materials of one strength; in a softer one it would be short, so that it is not shown there.
    const alike = into === "steel" || into === "nut";
    const values = alike ? [result("equal-strength engagement", engagementLength(diameter, pitch), "mm")] : [];
    if (material) values.unshift(result("least engagement", leastEngagement[material] * diameter, "mm"));
    if (grip !== undefined) {
      const range = material ? screwLength(grip, diameter, material) : boltLength(grip, diameter, pitch);
      values.push(result("length from", range.least, "mm"), result("length to", range.most, "mm"));
      const found = size.length === undefined ? undefined : lengthFinding(size.length, range);
      if (found) values.push(plain("finding", `${found === "short" ? "shorter" : "longer"} than plausible`));
    }
    return {
      values,
      formula:
        "Le = (D - 0.938194 P)² / (D - 0.64952 P); length = grip + engagement to + 3 d, or grip + nut + 1 to 5 pitches",
      steps: [step("share of the diameter", engagementLength(diameter, pitch) / diameter)],
      assumptions: textIn(inputs, "into") === undefined ? ["tapped in steel"] : [],
      source: engagementFigure.source,
      caution: aidCaution,
    };
  },
};

export const lockingNutFigure: Figure = {
  name: "locking-nut",
  title: "Least drag of a used self-locking nut",
  arguments: [
    argument("size", "size", "unified thread of the nut"),
    argument("torque", "torque", "drag measured without axial load", { optional: true, default: "limit only" }),
  ],
  validity:
    "two threads through the nut, no axial load, torque to start it turning again; the army's and the civil limits are two sets, never mixed",
  source: "TM 1-1500-204-23-6 Table 2-8 (US Army); AC 43.13-1B Table 7-2 (US FAA)",
  examples: ["1/2-20 17 lbf·in"],
  run(inputs) {
    const lacking = missing(lockingNutFigure, inputs),
      size = sizeIn(inputs, "size"),
      measured = siIn(inputs, "torque");
    if (lacking || !size) return lacking ?? { says: "locking-nut needs a thread size" };
    const limits = selfLockingLimits(size.designation.split(" ")[0]!);
    if (isFigureError(limits)) return limits;
    const values = [];
    if (limits.breakaway !== undefined) values.push(result("least breakaway torque, army", limits.breakaway, "lbf·in"));
    if (limits.prevailing !== undefined)
      values.push(result("least prevailing torque, civil aviation", limits.prevailing, "lbf·in"));
    if (measured !== undefined) {
      const below = [limits.breakaway, limits.prevailing].filter(
        (limit) => limit !== undefined && measured < limit * (1 - 1e-9),
      ).length;
      if (below > 0) values.push(plain("finding", "under the least drag: renew the nut"));
    }
    return {
      values,
      formula: "from the table",
      steps: [step("thread looked up", size.designation)],
      assumptions: [],
      source: lockingNutFigure.source,
      caution: aidCaution,
    };
  },
};

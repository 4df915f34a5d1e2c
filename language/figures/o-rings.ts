// O-rings: the standard ring nearest to measured sizes, and how much a groove squeezes it. Lengths in m at the door, mm in the tables.

import { rounded } from "../quantities/quantity.ts";
import { aidCaution, argument, missing, plain, result, siIn, step, textIn, type Figure, wordIn } from "./figure.ts";
import { oRings, type ORing } from "./o-ring-table.ts";

/**
 * The ring of this dash number, `-214` or `214`; `undefined` for one that the series does not have. Source: ISO
 * 3601-1 class A, SAE AS568 (read through published tables).
 */
export const oRing = (dash: string): ORing | undefined => {
  const wanted = `-${dash.replace(/^-/, "").padStart(3, "0")}`;
  return oRings.find((ring) => ring.dash === wanted);
};

export interface NearestORing {
  readonly ring: ORing;
  /** Measured less standard, m. */
  readonly insideOff: number;
  readonly sectionOff: number;
  /** Both differences lie within the ring's tolerances. */
  readonly withinTolerance: boolean;
}

/**
 * The standard rings nearest to an inside diameter and a section (m), best first: the section decides before the diameter.
 * @returns as many as asked for. Source: ISO 3601-1 class A, SAE AS568.
 */
export function nearestORings(inside: number, section: number, count = 3): readonly NearestORing[] {
  const scored = oRings.map((ring) => {
    const insideOff = inside - ring.inside / 1e3,
      sectionOff = section - ring.section / 1e3;
    const withinTolerance =
      Math.abs(insideOff) <= (ring.insideTolerance / 1e3) * (1 + 1e-9) &&
      Math.abs(sectionOff) <= (ring.sectionTolerance / 1e3) * (1 + 1e-9);
    return {
      ring,
      insideOff,
      sectionOff,
      withinTolerance,
      score: Math.abs(insideOff) / inside + (4 * Math.abs(sectionOff)) / section,
    };
  });
  scored.sort((a, b) => a.score - b.score || (a.ring.dash < b.ring.dash ? -1 : 1));
  return scored
    .slice(0, count)
    .map(({ ring, insideOff, sectionOff, withinTolerance }) => ({ ring, insideOff, sectionOff, withinTolerance }));
}

export type GlandKind = (typeof glandKinds)[number];
const glandKinds = ["static-radial", "static-face", "dynamic-radial"] as const;

export interface Gland {
  readonly section: number;
  /** Groove depth, squeeze (of the ring within its tolerance) and groove width, all in mm; squeeze shares in per cent as printed. */
  readonly depth: readonly [number, number];
  readonly squeeze: readonly [number, number];
  readonly squeezePercent: readonly [number, number];
  readonly width: number;
}

/** Source: a published seal design guide, read through a public data table. Section, depth, squeeze, squeeze in %, groove width. */
export const glands: Readonly<Record<GlandKind, readonly Gland[]>> = {
  "static-radial":
    glandRows(`1.02 .69 .76 .18 .41 19 37 1.52, 1.27 .89 .99 .20 .46 17 34 1.91, 1.52 1.07 1.19 .25 .53 18 33 2.29, 1.78 1.27 1.40 .30 .58 18 32 2.41,
    2.62 2.03 2.18 .36 .66 14 25 3.56, 3.53 2.79 2.95 .48 .84 14 23 4.57, 5.33 4.32 4.47 .74 1.14 14 21 7.11, 6.99 5.72 5.97 .86 1.42 13 20 9.40`),
  "static-face":
    glandRows(`1.02 .69 .76 .18 .41 19 37 1.52, 1.27 .86 .97 .23 .48 19 36 1.91, 1.52 1.07 1.17 .28 .53 19 33 2.29, 1.78 1.24 1.37 .33 .61 19 33 2.41,
    2.62 1.91 2.06 .48 .79 19 29 3.56, 3.53 2.54 2.74 .69 1.09 20 30 4.57, 5.33 3.94 4.19 1.02 1.52 20 28 7.11, 6.99 5.21 5.42 1.37 1.93 20 27 9.40`),
  "dynamic-radial":
    glandRows(`1.02 .79 .84 .10 .30 11 28 1.60, 1.27 .99 1.04 .15 .36 13 26 1.85, 1.52 1.19 1.24 .20 .41 14 25 2.13, 1.78 1.40 1.45 .25 .46 15 25 2.41,
    2.62 2.21 2.29 .25 .48 10 18 3.68, 3.53 3.02 3.12 .30 .61 9 17 4.70, 5.33 4.65 4.78 .43 .81 8.5 15 7.24, 6.99 5.94 6.10 .74 1.19 10.5 17 9.52`),
};

function glandRows(text: string): readonly Gland[] {
  return text.split(",").map((row) => {
    const [section, depthMin, depthMax, low, high, lowPercent, highPercent, width] = row
      .trim()
      .split(/\s+/)
      .map(Number) as [number, number, number, number, number, number, number, number];
    return {
      section,
      depth: [depthMin, depthMax],
      squeeze: [low, high],
      squeezePercent: [lowPercent, highPercent],
      width,
    };
  });
}

/** Squeeze of a section in a groove, (section - depth) / section. Units: m, m -> share of 1. Source: seal design guides. */
export const squeeze = (section: number, depth: number): number => (section - depth) / section;

/**
 * The gland row of a section (m) within 2 %; `undefined` for a section that is not standard. Source: a published seal
 * design guide (read through a public data table).
 */
export const glandFor = (kind: GlandKind, section: number): Gland | undefined =>
  glands[kind].find((gland) => Math.abs(gland.section / 1e3 - section) <= 0.02 * section);

export interface SqueezeFinding {
  readonly is: "little" | "much";
  readonly squeeze: number;
  readonly range: readonly [number, number];
}

/**
 * A squeeze outside the published range of its gland kind; `undefined` says nothing, also for a section that is not
 * standard. Units: m, m -> shares of 1. Source: a published seal design guide (read through a public data table).
 */
export function squeezeFinding(kind: GlandKind, section: number, depth: number): SqueezeFinding | undefined {
  const gland = glandFor(kind, section);
  if (!gland) return undefined;
  const share = squeeze(section, depth),
    range = [gland.squeezePercent[0] / 100, gland.squeezePercent[1] / 100] as const;
  return share < range[0]
    ? { is: "little", squeeze: share, range }
    : share > range[1]
      ? { is: "much", squeeze: share, range }
      : undefined;
}

const sections = [...new Set(oRings.map((ring) => ring.section))];
/** A tenth of the section and a twentieth of the bore: a worn or swollen ring is still asked about, another ring is none. */
const isNear = (ring: ORing, inside: number, section: number): boolean =>
  Math.abs(ring.section / 1e3 - section) <= 0.1 * section && Math.abs(ring.inside / 1e3 - inside) <= 0.05 * inside;

export const oRingFigure: Figure = {
  name: "o-ring",
  title: "Nearest standard O-ring",
  arguments: [
    argument("inside", "length", "inside diameter as measured"),
    argument("section", "length", "section as measured"),
  ],
  validity: "sizes -001 to -445; a used ring has set and swollen, so measure a new one or the groove",
  source: "ISO 3601-1 class A, SAE AS568 (read through published tables)",
  examples: ["183.8 mm 2.6 mm"],
  run(inputs) {
    const lacking = missing(oRingFigure, inputs),
      inside = siIn(inputs, "inside"),
      section = siIn(inputs, "section");
    if (lacking || inside === undefined || section === undefined)
      return lacking ?? { says: "o-ring needs an inside diameter and a section" };
    if (inside <= 0 || section <= 0) return { says: "inside diameter and section are above 0" };
    const near = nearestORings(inside, section),
      first = near[0]!;
    if (!near.some(({ ring, withinTolerance }) => withinTolerance || isNear(ring, inside, section)))
      return {
        says: `no standard ring is near ${rounded(inside * 1e3, 4)} x ${rounded(section * 1e3, 3)} mm: the sections are ${sections.join(", ")} mm`,
        nearest: near.map(({ ring }) => `${ring.inside} x ${ring.section} mm`),
      };
    return {
      values: near.map(({ ring, withinTolerance }) =>
        plain(ring.dash, `${ring.inside} x ${ring.section} mm${withinTolerance ? "" : ", outside its tolerance"}`),
      ),
      formula: "least difference, the section before the diameter",
      steps: [
        step("inside diameter off by", first.insideOff * 1e3, "mm"),
        step("section off by", first.sectionOff * 1e3, "mm"),
      ],
      assumptions: [],
      source: oRingFigure.source,
      caution: aidCaution,
    };
  },
};

export const squeezeFigure: Figure = {
  name: "o-ring-squeeze",
  title: "Squeeze of an O-ring in its groove",
  arguments: [
    argument("section", "length", "section of the ring"),
    argument("depth", "length", "groove depth with the gap"),
    argument("gland", "word", "how it seals", {
      optional: true,
      default: "static-radial",
      words: glandKinds,
    }),
  ],
  validity: "standard sections, nominal sizes, elastomer rings, no swell",
  source: "a published seal design guide (read through a public data table)",
  examples: ["3.53 mm 2.8 mm", "2.62 mm 2 mm static-face"],
  run(inputs) {
    const lacking = missing(squeezeFigure, inputs),
      section = siIn(inputs, "section"),
      depth = siIn(inputs, "depth"),
      kind = wordIn(inputs, "gland", glandKinds) ?? "static-radial";
    if (lacking || section === undefined || depth === undefined)
      return lacking ?? { says: "o-ring-squeeze needs a section and a depth" };
    if (section <= 0 || depth <= 0) return { says: "section and depth are above 0" };
    const gland = glandFor(kind, section),
      finding = squeezeFinding(kind, section, depth);
    if (depth >= section)
      return {
        says: `depth ${rounded(depth * 1e3, 3)} mm is not under the section ${rounded(section * 1e3, 3)} mm: nothing squeezes the ring`,
        ...(gland ? { nearest: gland.depth.map((each) => `${each} mm`) } : {}),
      };
    if (!gland)
      return {
        says: `${rounded(section * 1e3, 3)} mm is no standard section`,
        nearest: glands[kind].map((each) => `${each.section} mm`),
      };
    return {
      values: [
        result("squeeze", squeeze(section, depth), "%"),
        plain("published range", `${gland.squeezePercent[0]}..${gland.squeezePercent[1]}`, "%"),
        plain("groove depth", `${gland.depth[0]}..${gland.depth[1]}`, "mm"),
        plain("groove width", gland.width, "mm"),
        ...(finding
          ? [plain("finding", finding.is === "little" ? "less squeeze than the range" : "more squeeze than the range")]
          : []),
      ],
      formula: "squeeze = (section - depth) / section",
      steps: [step("section - depth", (section - depth) * 1e3, "mm")],
      assumptions: textIn(inputs, "gland") === undefined ? ["static, radial"] : [],
      source: squeezeFigure.source,
      caution: aidCaution,
    };
  },
};

// Sealant and thread-locker by volume: beads, packs, gaps. SI (m, m², m³). It invents no dose: a thread-locker's comes from its maker.

import type { Assumptions } from "./assumptions.ts";
import { assumed } from "./assumptions.ts";
import {
  aidCaution,
  argument,
  isFigureError,
  missing,
  numberIn,
  plain,
  result,
  siIn,
  sizeIn,
  step,
  type Figure,
  type FigureError,
  wordIn,
} from "./figure.ts";
import { threadOf } from "./threads.ts";

export type BeadShape = (typeof beadShapes)[number];
const beadShapes = ["round", "half-round", "rectangle", "triangle"] as const;

/**
 * Cross-section of a bead: round pi d²/4, half-round pi/8 W², rectangle W D, triangle W D / 2. Units: m, m -> m².
 * @param depth of a rectangle or triangle; the width where it is left out.
 * Source: a sealant maker's consumption guide (read); geometry.
 */
export function beadSection(shape: BeadShape, width: number, depth = width): number {
  switch (shape) {
    case "round":
      return (Math.PI / 4) * width * width;
    case "half-round":
      return (Math.PI / 8) * width * width;
    case "rectangle":
      return width * depth;
    case "triangle":
      return (width * depth) / 2;
  }
}

/** Volume of a bead, section x length. Units: m², m -> m³. Valid for a bead of even section. Source: geometry. */
export const beadVolume = (section: number, length: number): number => section * length;

/** Length that a pack lays, pack / section / (1 + waste). Units: m³, m², share of 1 -> m. Source: a sealant maker's consumption guide (read). */
export const packLength = (pack: number, section: number, waste = 0): number => pack / section / (1 + waste);

/**
 * Whole packs for a volume, never short: ceil(volume (1 + waste) / pack). Units: m³, m³, share of 1. Error:
 * `undefined` for a pack that is not above 0. Source: geometry; a pack is whole.
 */
export function packsFor(volume: number, pack: number, waste = 0): number | undefined {
  if (!(pack > 0) || !(volume >= 0) || !Number.isFinite(volume)) return undefined;
  const due = (volume * (1 + waste)) / pack,
    whole = Math.round(due);
  // A sum that is whole but for its last bits is not a pack more.
  return whole >= 1 && Math.abs(due - whole) <= 1e-12 * due ? whole : Math.ceil(due);
}

/**
 * Gap in an engaged thread, pi d2 l c: a lower bound of thread-locker, for the flanks must be wetted too. Units: m, m, m -> m³.
 * Source: geometry; no open table of doses could be found, so none is given.
 */
export const threadGapVolume = (pitchDiameter: number, engaged: number, clearance: number): number =>
  Math.PI * pitchDiameter * engaged * clearance;

export const beadFigure: Figure = {
  name: "bead",
  title: "Sealant for a bead, and packs",
  arguments: [
    argument("width", "length", "width or diameter of the bead"),
    argument("length", "length", "of the joint"),
    argument("shape", "word", "cross-section", {
      optional: true,
      default: "round",
      words: beadShapes,
    }),
    argument("depth", "length", "of a rectangle or triangle", { optional: true, default: "the width" }),
    argument("count", "number", "joints like it", { optional: true, default: "1", whole: true }),
    argument("pack", "volume", "content of a pack", { optional: true, default: "volume only" }),
    argument("waste", "share", "what stays in nozzle and pack", { optional: true, default: "10 %" }),
  ],
  validity: "an even bead on a clean face; gaps and corners take more",
  source: "a sealant maker's consumption guide (read); geometry",
  examples: ["3 mm 640 mm", "3 mm 640 mm count 12 pack 50 ml"],
  run(inputs, assumptions: Assumptions) {
    const lacking = missing(beadFigure, inputs),
      width = siIn(inputs, "width"),
      length = siIn(inputs, "length");
    if (lacking || width === undefined || length === undefined)
      return lacking ?? { says: "bead needs a width and a length" };
    const count = numberIn(inputs, "count") ?? 1,
      waste = siIn(inputs, "waste") ?? assumptions["bead-waste"],
      pack = siIn(inputs, "pack");
    const depth = siIn(inputs, "depth");
    if (!(width > 0) || !(length > 0) || !(count > 0) || depth === 0)
      return { says: "width, length, depth and count are above 0" };
    const section = beadSection(wordIn(inputs, "shape", beadShapes) ?? "round", width, depth),
      volume = beadVolume(section, length) * count;
    const packs = pack === undefined ? undefined : packsFor(volume, pack, waste);
    if (pack !== undefined && packs === undefined) return { says: "pack: a volume above 0 is due" };
    return {
      values: [
        result("volume in the joint", volume, "ml"),
        result("volume with waste", volume * (1 + waste), "ml"),
        ...(packs === undefined
          ? []
          : [plain("packs", packs), result("one pack lays", packLength(pack!, section, waste), "m")]),
      ],
      formula: "V = A x L x n; packs = ceil(V (1 + waste) / pack)",
      steps: [step("cross-section, as volume a metre", section * 1e6, "ml")],
      assumptions: inputs["waste"] === undefined ? [assumed(assumptions, "bead-waste")] : [],
      source: beadFigure.source,
      caution: aidCaution,
    };
  },
};

export const threadLockerFigure: Figure = {
  name: "thread-locker",
  title: "Gap in a thread, the least that thread-locker must fill",
  arguments: [
    argument("size", "size", "the thread"),
    argument("engaged", "length", "engaged length", { optional: true, default: "0.8 of the diameter" }),
    argument("clearance", "length", "mean radial gap", { optional: true, default: "0.10 mm" }),
    argument("count", "number", "fasteners", { optional: true, default: "1", whole: true }),
    argument("dose", "volume", "dose for one fastener, of the maker's data sheet", {
      optional: true,
      default: "none: gap only",
    }),
    argument("pack", "volume", "content of a pack; needs the dose", { optional: true, default: "no packs" }),
  ],
  validity: "a lower bound; the dose comes from the maker's data sheet and is several times this",
  source: "geometry; no open table of doses was found",
  examples: ["M8", "M8 count 40 dose 0.3 ml pack 10 ml"],
  run(inputs) {
    const lacking = missing(threadLockerFigure, inputs),
      size = sizeIn(inputs, "size");
    if (lacking || !size) return lacking ?? { says: "thread-locker needs a thread size" };
    const thread = threadOf(size);
    if (isFigureError(thread)) return thread satisfies FigureError;
    const engaged = siIn(inputs, "engaged") ?? 0.8 * thread.diameter,
      clearance = siIn(inputs, "clearance") ?? 1e-4,
      count = numberIn(inputs, "count") ?? 1,
      dose = siIn(inputs, "dose"),
      pack = siIn(inputs, "pack");
    if (!(engaged > 0) || !(clearance > 0)) return { says: "engaged length and clearance are above 0" };
    // Packs by the gap would fall short: it is the least that the thread-locker fills.
    if (pack !== undefined && dose === undefined)
      return {
        says: "pack: packs are counted by the dose of the maker's data sheet, give it as well",
        nearest: ["dose"],
      };
    const packs = pack === undefined || dose === undefined ? undefined : packsFor(dose * count, pack);
    if (pack !== undefined && packs === undefined) return { says: "pack: a volume above 0 is due" };
    if (dose !== undefined && dose * count < threadGapVolume(thread.pitchDiameter, engaged, clearance) * count)
      return { says: "dose: it is less than the gap in the thread: look at the unit" };
    const volume = threadGapVolume(thread.pitchDiameter, engaged, clearance) * count,
      notes: string[] = [];
    if (inputs["engaged"] === undefined) notes.push("engaged length 0.8 of the diameter");
    if (inputs["clearance"] === undefined) notes.push("radial gap 0.10 mm");
    return {
      values: [
        ...(dose === undefined ? [] : [result("thread-locker", dose * count, "ml")]),
        ...(packs === undefined ? [] : [plain("packs", packs)]),
        result("gap, at least", volume, "ml"),
      ],
      formula: "V = pi d2 l c; packs = ceil(n dose / pack)",
      steps: [step("pitch diameter", thread.pitchDiameter * 1e3, "mm")],
      assumptions: notes,
      source: threadLockerFigure.source,
      caution: aidCaution,
    };
  },
};

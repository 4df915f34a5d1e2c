// Tightening of a named bolt: the torque at the yield share, the preload of a torque, and whether a torque is over what the bolt carries or
// too low to hold. It proposes no torque: the maker's figure is the figure.

import { rounded, si } from "../quantities/quantity.ts";
import type { ThreadSize } from "../quantities/thread-size.ts";
import {
  assumed,
  isFriction,
  isSurface,
  leastFriction,
  mostFriction,
  onSurface,
  type Assumptions,
} from "./assumptions.ts";
import {
  assemblyPreload,
  leastPreload,
  preloadFromTorque,
  torqueFromPreload,
  torqueParts,
  yieldUtilisation,
  type Friction,
  type TighteningGeometry,
} from "./assembly-preload.ts";
import { boltOf, loadArea, proofLoad } from "./bolt-loads.ts";
import {
  aidCaution,
  argument,
  isFigureError,
  missing,
  numberIn,
  plain,
  result,
  quantityIn,
  sizeIn,
  step,
  textIn,
  type Figure,
  type FigureError,
  type FigureInputs,
  type FigureResult,
} from "./figure.ts";
import { bearingOf, type HeadKind } from "./head-geometry.ts";
import { nutFactorFromFriction, preloadAtProofShare, preloadByNutFactor, torqueByNutFactor } from "./nut-factor.ts";
import type { BoltMaterial } from "./property-classes.ts";
import type { Thread } from "./threads.ts";

export interface TighteningQuestion {
  readonly size: ThreadSize;
  readonly className: string;
  readonly head?: HeadKind | undefined;
  /** Coefficients of friction; the assumptions where they are not given. */
  readonly frictionThread?: number | undefined;
  readonly frictionHead?: number | undefined;
  /** Nut factor: by it instead of by friction, for the unified sizes that have no bearing in the tables as well. */
  readonly nutFactor?: number | undefined;
}

/** A bolt with all that the torque relation needs. */
export interface TighteningCase {
  readonly thread: Thread;
  readonly material: BoltMaterial;
  readonly yieldStress: number;
  readonly geometry: TighteningGeometry;
  readonly friction: Friction;
  readonly assumptions: readonly string[];
}

/** What the figures rest on, as printed: "VDI 2230-1". */
const tighteningSource =
  "VDI 2230-1:2015 and ISO 16047 (relations read second-hand); strengths ISO 898-1, ISO 3506-1, SAE J429; heads ISO 4014, ISO 4762, holes ISO 273";
const tighteningFormula =
  "FM = nu Rp0.2 A0 / sqrt(1 + 3 [3/2 d2/d0 (P/(pi d2) + 1.155 muG)]²); MA = FM (P/(2 pi) + 0.577 d2 muG + DKm/2 muK)";

/**
 * Puts a bolt, its strength, its bearing and the friction together. Errors: sizes and classes out of the tables, a
 * grade without a yield stress. Units: SI. Source: {@link tighteningSource}.
 */
export function tighteningCase(question: TighteningQuestion, assumptions: Assumptions): TighteningCase | FigureError {
  const bolt = boltOf(question.size, question.className);
  if (isFigureError(bolt)) return bolt;
  const { thread, material } = bolt,
    bearing = bearingOf(thread, question.head ?? "hex");
  if (material.yield === undefined)
    return { says: `${material.standard} gives ${material.name} no yield stress: no torque can be reckoned` };
  if (!bearing)
    return {
      says: `${thread.designation} has no bearing diameter in the tables: give the nut factor instead`,
      nearest: ["nut-factor 0.2"],
    };
  const notes: string[] = [];
  if (question.frictionThread === undefined) notes.push(assumed(assumptions, "friction-thread"));
  if (question.frictionHead === undefined) notes.push(assumed(assumptions, "friction-head"));
  notes.push(`${question.head ?? "hex"} head on a medium hole`);
  if (bearing.assumption !== undefined) notes.push(bearing.assumption);
  return {
    thread,
    material,
    yieldStress: material.yield,
    geometry: {
      pitch: thread.pitch,
      pitchDiameter: thread.pitchDiameter,
      rootDiameter: thread.rootDiameter,
      headDiameter: bearing.mean,
    },
    friction: {
      thread: question.frictionThread ?? assumptions["friction-thread"],
      head: question.frictionHead ?? assumptions["friction-head"],
    },
    assumptions: notes,
  };
}

/** Preload (N) and torque (N·m) at the yield share. Source: VDI 2230-1 (relations read second-hand). */
export function torqueAtYieldShare(
  bolt: TighteningCase,
  assumptions: Assumptions,
): { readonly preload: number; readonly torque: number } {
  const preload = assemblyPreload(bolt.geometry, bolt.yieldStress, bolt.friction.thread, assumptions["yield-share"]);
  return { preload, torque: torqueFromPreload(bolt.geometry, preload, bolt.friction) };
}

export interface TorqueAssessment {
  /** What a check may ask about; `undefined` says nothing either way. */
  readonly verdict: "over" | "low" | undefined;
  /** N·m: the torque, and the torque at the yield share (metric) or at the proof load by nut factor (unified). */
  readonly torque: number;
  readonly limit: number;
  /** Under which `low` is said, N·m. */
  readonly least: number;
  readonly preload: number;
  /** Of the yield stress while tightening; of the proof load with unified threads. */
  readonly utilisation: number;
  /** What the limit is. */
  readonly name: string;
  readonly formula: string;
  readonly source: string;
  readonly assumptions: readonly string[];
}

/**
 * Judges a torque (N·m, the highest of a range) against the bolt. Metric: the torque at the yield share of VDI 2230. Unified: the torque
 * that reaches the proof load by T = K F d. Below the least share of that limit it is called low (common practice, no standard), but not in a
 * soft joint, whose torque the seal decides. It never calls a torque right.
 * Source: VDI 2230-1; Shigley, Eq. 8-26 and 8-27; each result names its own.
 */
export function assessTorque(
  torque: number,
  question: TighteningQuestion,
  assumptions: Assumptions,
): TorqueAssessment | FigureError {
  for (const friction of [question.frictionThread, question.frictionHead])
    if (friction !== undefined && !isFriction(friction))
      return { says: `a coefficient of friction of ${friction} is outside ${leastFriction} to ${mostFriction}` };
  if (!(torque > 0)) return { says: "a torque above 0 is due" };
  const byFactor = question.nutFactor !== undefined || question.size.system === "unified";
  const reckoned = byFactor
    ? assessedByFactor(torque, question, assumptions)
    : assessedByFriction(torque, question, assumptions);
  if (isFigureError(reckoned)) return reckoned;
  const least = reckoned.limit * assumptions["least-torque-share"],
    verdict = torque > reckoned.limit ? "over" : torque < least && assumptions.joint === "hard" ? "low" : undefined;
  return { ...reckoned, verdict, torque, least };
}

type Reckoned = Omit<TorqueAssessment, "verdict" | "torque" | "least">;

function assessedByFriction(
  torque: number,
  question: TighteningQuestion,
  assumptions: Assumptions,
): Reckoned | FigureError {
  const bolt = tighteningCase(question, assumptions);
  if (isFigureError(bolt)) return bolt;
  const preload = preloadFromTorque(bolt.geometry, torque, bolt.friction);
  return {
    limit: torqueAtYieldShare(bolt, assumptions).torque,
    preload,
    utilisation: yieldUtilisation(bolt.geometry, preload, bolt.yieldStress, bolt.friction.thread),
    name: "torque at the yield share",
    formula: tighteningFormula,
    source: tighteningSource,
    assumptions: [...bolt.assumptions, assumed(assumptions, "yield-share")],
  };
}

function assessedByFactor(
  torque: number,
  question: TighteningQuestion,
  assumptions: Assumptions,
): Reckoned | FigureError {
  const bolt = boltOf(question.size, question.className);
  if (isFigureError(bolt)) return bolt;
  const { thread, material } = bolt,
    { factor, notes } = factorOf(question, thread, assumptions);
  if (material.proof === undefined)
    return {
      says: `${material.standard} gives ${material.name} no proof stress: no torque can be reckoned by nut factor`,
    };
  const load = proofLoad(loadArea(thread), material.proof),
    preload = preloadByNutFactor(factor, torque, thread.diameter);
  return {
    limit: torqueByNutFactor(factor, load, thread.diameter),
    preload,
    utilisation: preload / load,
    name: "torque at the proof load by nut factor",
    formula: "T = K F d, F = proof load",
    source: "Shigley's Mechanical Engineering Design, Eq. 8-27; SAE J429, ASTM A574",
    assumptions: notes,
  };
}

/** The nut factor that is given, the one behind the coefficients of friction that are given (Shigley, Eq. 8-26), or the assumed one. */
function factorOf(
  question: TighteningQuestion,
  thread: Thread,
  assumptions: Assumptions,
): { readonly factor: number; readonly notes: readonly string[] } {
  const { nutFactor, frictionThread, frictionHead } = question;
  if (nutFactor !== undefined) return { factor: nutFactor, notes: [] };
  if (frictionThread === undefined && frictionHead === undefined)
    return { factor: assumptions["nut-factor"], notes: [assumed(assumptions, "nut-factor")] };
  const factor = nutFactorFromFriction(
    thread.diameter,
    thread.rootDiameter,
    thread.pitch,
    frictionThread ?? assumptions["friction-thread"],
    frictionHead ?? assumptions["friction-head"],
  );
  return {
    factor,
    notes: [
      `nut factor ${rounded(factor, 2)} from the friction that is given (Shigley, Eq. 8-26)`,
      ...(frictionThread === undefined ? [assumed(assumptions, "friction-thread")] : []),
      ...(frictionHead === undefined ? [assumed(assumptions, "friction-head")] : []),
    ],
  };
}

const surfaceArgument = argument(
  "surface",
  "word",
  "thread and head as fitted; friction and nut factor follow from it",
  {
    optional: true,
    default: "oiled",
    words: ["oiled", "dry"],
  },
);
/** The assumptions on the surface that the question names. */
const surfaced = (inputs: FigureInputs, assumptions: Assumptions): Assumptions => {
  const surface = textIn(inputs, "surface");
  return isSurface(surface) ? onSurface(assumptions, surface) : assumptions;
};
const frictionArguments = [
  argument("head", "word", "shape of the head", { optional: true, default: "hex", words: ["hex", "socket-cap"] }),
  argument("friction-thread", "number", "coefficient of friction in the thread, 0.04 to 0.4", {
    optional: true,
    default: "0.12, dry 0.15",
  }),
  argument("friction-head", "number", "coefficient of friction under the head, 0.04 to 0.4", {
    optional: true,
    default: "0.12, dry 0.15",
  }),
  surfaceArgument,
];
const sizeAndClass = [argument("size", "size", "the thread"), argument("class", "class", "property class or grade")];

function questionIn(inputs: FigureInputs): TighteningQuestion | FigureError {
  const size = sizeIn(inputs, "size"),
    className = textIn(inputs, "class") ?? size?.propertyClass,
    head = textIn(inputs, "head");
  if (!size || className === undefined) return { says: "a thread size and a class are due" };
  for (const name of ["friction-thread", "friction-head"]) {
    const value = numberIn(inputs, name);
    if (value !== undefined && !isFriction(value))
      return {
        says: `${name} ${value} is outside ${leastFriction} to ${mostFriction}`,
        nearest: [String(value < leastFriction ? leastFriction : mostFriction)],
      };
  }
  return {
    size,
    className,
    head: head === "socket-cap" ? "socket-cap" : "hex",
    frictionThread: numberIn(inputs, "friction-thread"),
    frictionHead: numberIn(inputs, "friction-head"),
  };
}

const caseIn = (figure: Figure, inputs: FigureInputs, assumptions: Assumptions): TighteningCase | FigureError => {
  const lacking = missing(figure, inputs),
    question = lacking ?? questionIn(inputs);
  return isFigureError(question) ? question : tighteningCase(question, assumptions);
};

const answer = (result: Pick<FigureResult, "values" | "steps" | "assumptions">): FigureResult => ({
  ...result,
  formula: tighteningFormula,
  source: tighteningSource,
  caution: aidCaution,
});
const units = (thread: Thread): { readonly torque: string; readonly force: string } =>
  thread.system === "metric" ? { torque: "N·m", force: "kN" } : { torque: "lbf·ft", force: "lbf" };

export const torqueFigure: Figure = {
  name: "torque",
  title: "Torque and preload at a share of the yield stress",
  arguments: [...sizeAndClass, ...frictionArguments],
  validity:
    "steel on steel, full shaft, medium hole, hard joint, room temperature; prints of the same method differ by rounding, up to 2 %",
  source: tighteningSource,
  examples: ["M8 8.8", "M10x1.25 10.9", "M6 A2-70 head socket-cap", "M8 8.8 surface dry"],
  run(inputs, general) {
    const assumptions = surfaced(inputs, general);
    const bolt = caseIn(torqueFigure, inputs, assumptions);
    if (isFigureError(bolt)) return bolt;
    const { preload, torque } = torqueAtYieldShare(bolt, assumptions),
      parts = torqueParts(bolt.geometry, preload, bolt.friction),
      unit = units(bolt.thread);
    return answer({
      values: [
        result("torque at the yield share", torque, unit.torque),
        result("preload", preload, unit.force),
        result("least preload with scatter", leastPreload(preload, assumptions["tightening-factor"]), unit.force),
      ],
      steps: [
        step("yield stress", bolt.yieldStress / 1e6, "MPa"),
        step("DKm = (dw + dh) / 2", bolt.geometry.headDiameter * 1e3, "mm"),
        step("for the pitch", parts.pitch, "N·m"),
        step("friction in the thread", parts.thread, "N·m"),
        step("friction under the head", parts.head, "N·m"),
      ],
      assumptions: [
        ...bolt.assumptions,
        assumed(assumptions, "yield-share"),
        assumed(assumptions, "joint"),
        assumed(assumptions, "tightening-factor"),
      ],
    });
  },
};

export const preloadFigure: Figure = {
  name: "preload",
  title: "Preload of a torque, and how much of the yield stress it uses",
  arguments: [...sizeAndClass, argument("torque", "torque", "the tightening torque"), ...frictionArguments],
  validity: torqueFigure.validity,
  source: tighteningSource,
  examples: ["M8 8.8 24 N·m"],
  run(inputs, general) {
    const assumptions = surfaced(inputs, general);
    const bolt = caseIn(preloadFigure, inputs, assumptions),
      asked = quantityIn(inputs, "torque"),
      // The upper end of a tolerance, too: a wrench may stop there.
      torque = asked && si(asked).high;
    if (isFigureError(bolt)) return bolt;
    if (torque === undefined || torque <= 0) return { says: "torque: a torque above 0 is due" };
    const preload = preloadFromTorque(bolt.geometry, torque, bolt.friction),
      used = yieldUtilisation(bolt.geometry, preload, bolt.yieldStress, bolt.friction.thread);
    const limit = torqueAtYieldShare(bolt, assumptions).torque,
      unit = units(bolt.thread);
    return answer({
      values: [
        result("preload", preload, unit.force),
        result("share of the yield stress", used, "%"),
        ...(torque > limit ? [plain("finding", `over the torque at the yield share, ${rounded(limit, 3)} N·m`)] : []),
        ...(bolt.material.proof === undefined
          ? []
          : [result("share of the proof load", preload / proofLoad(loadArea(bolt.thread), bolt.material.proof), "%")]),
      ],
      steps: [step("torque at the yield share", limit, "N·m"), step("lever: preload per N·m", preload / torque, "N")],
      assumptions: [...bolt.assumptions, assumed(assumptions, "yield-share")],
    });
  },
};

export const nutFactorFigure: Figure = {
  name: "torque-by-nut-factor",
  title: "Torque by nut factor at a share of the proof load",
  arguments: [
    ...sizeAndClass,
    argument("nut-factor", "number", "K, 0.08 to 0.4", { optional: true, default: "0.18, dry 0.2" }),
    argument("proof-share", "number", "share of the proof load, 0.3 to 1", { optional: true, default: "0.75" }),
    surfaceArgument,
  ],
  validity:
    "estimates only: preload at one torque scatters by a quarter either way; the share is of the proof load, not of yield",
  source:
    "Shigley's Mechanical Engineering Design, Eq. 8-27; 0.75 of proof as in published inch tables; SAE J429, ASTM A574",
  examples: ["3/8-16 8", "1/2-13 5 nut-factor 0.15", "3/8-16 8 surface dry"],
  run(inputs, general) {
    const assumptions = surfaced(inputs, general);
    const lacking = missing(nutFactorFigure, inputs),
      size = sizeIn(inputs, "size"),
      name = textIn(inputs, "class");
    if (lacking || !size || name === undefined) return lacking ?? { says: "a thread size and a grade are due" };
    const bolt = boltOf(size, name),
      factor = numberIn(inputs, "nut-factor") ?? assumptions["nut-factor"],
      share = numberIn(inputs, "proof-share") ?? assumptions["proof-share"];
    if (isFigureError(bolt)) return bolt;
    if (!(factor >= 0.08 && factor <= 0.4))
      return { says: `nut-factor ${factor} is outside 0.08 to 0.4`, nearest: ["0.15", "0.2"] };
    if (!(share >= 0.3 && share <= 1))
      return { says: `proof-share ${share} is outside 0.3 to 1`, nearest: ["0.75", "0.9"] };
    if (bolt.material.proof === undefined)
      return { says: `${bolt.material.standard} gives ${bolt.material.name} no proof stress` };
    const preload = preloadAtProofShare(loadArea(bolt.thread), bolt.material.proof, share),
      unit = units(bolt.thread);
    return {
      values: [
        result("torque", torqueByNutFactor(factor, preload, bolt.thread.diameter), unit.torque),
        result("preload", preload, unit.force),
      ],
      formula: "T = K F d, F = share x As x Sp",
      steps: [
        step("stress area", loadArea(bolt.thread) * 1e6, "mm²"),
        step("proof stress", bolt.material.proof / 1e6, "MPa"),
      ],
      assumptions: [
        ...(numberIn(inputs, "nut-factor") === undefined ? [assumed(assumptions, "nut-factor")] : []),
        ...(numberIn(inputs, "proof-share") === undefined ? [assumed(assumptions, "proof-share")] : []),
      ],
      source: nutFactorFigure.source,
      caution: aidCaution,
    };
  },
};

// Proof and breaking load of a bolt: stress area times the stress of its class. It says what the standard tests, not what a joint may carry.

import { boltMaterial, type BoltMaterial } from "./property-classes.ts";
import {
  aidCaution,
  argument,
  isFigureError,
  missing,
  plain,
  result,
  sizeIn,
  step,
  textIn,
  type Figure,
  type FigureError,
} from "./figure.ts";
import { threadOf, type Thread } from "./threads.ts";
import type { ThreadSize } from "../quantities/thread-size.ts";

/** Fp = As x Sp with the printed stress area. Units: m², Pa -> N. Source: ISO 898-1 Tables 5 and 7; SAE J429. */
export const proofLoad = (area: number, proofStress: number): number => area * proofStress;

/** Fm = As x Rm with the printed stress area. Units: m², Pa -> N. Source: ISO 898-1 Tables 4 and 6; SAE J429. */
export const breakingLoad = (area: number, tensileStrength: number): number => area * tensileStrength;

/**
 * The area that the load tables of the thread's standard reckon with: As,nom for metric, the unrounded one for
 * unified threads. Units: m². Source: ISO 898-1:2013 Tables 4 to 7, ASME B1.1 (read through published tables).
 */
export const loadArea = (thread: Thread): number =>
  thread.system === "metric" ? thread.nominalStressArea : thread.stressArea;

export interface Bolt {
  readonly thread: Thread;
  readonly material: BoltMaterial;
}

/**
 * A thread and a class that go together, or why they do not. Source: ISO 898-1, ISO 3506-1, SAE J429, ASTM A574 (read
 * through published tables).
 */
export function boltOf(size: ThreadSize, className: string): Bolt | FigureError {
  const thread = threadOf(size);
  if (isFigureError(thread)) return thread;
  if (thread.system === "pipe") return { says: `${size.designation} is a pipe thread: it has no class` };
  const material = boltMaterial(className, thread.system, thread.diameter);
  return isFigureError(material) ? material : { thread, material };
}

const source = "ISO 898-1:2013 Tables 4 to 7, SAE J429, ASTM A574 (all read through published tables)";

export const boltLoadFigure: Figure = {
  name: "bolt-load",
  title: "Proof load and breaking load of a bolt",
  arguments: [
    argument("size", "size", "the thread"),
    argument("class", "class", "property class (8.8, A2-70) or grade (5, 8, A574)"),
  ],
  validity:
    "static tension in the thread, room temperature, full engagement; hot-dip galvanized threads with oversize nuts hold less",
  source,
  examples: ["M8 8.8", "1/2-13 5"],
  run(inputs) {
    const lacking = missing(boltLoadFigure, inputs),
      size = sizeIn(inputs, "size"),
      name = textIn(inputs, "class");
    if (lacking || !size || name === undefined) return lacking ?? { says: "bolt-load needs a size and a class" };
    const bolt = boltOf(size, name);
    if (isFigureError(bolt)) return bolt;
    const { thread, material } = bolt,
      area = loadArea(thread),
      force = thread.system === "metric" ? "kN" : "lbf";
    const stress = thread.system === "metric" ? "MPa" : "ksi",
      breaking = result("breaking load, least", breakingLoad(area, material.tensile), force);
    const steps = [
      step("stress area", area * 1e6, "mm²"),
      step("tensile strength, least", result("", material.tensile, stress).value as number, stress),
    ];
    if (material.proof === undefined) {
      return {
        values: [breaking],
        formula: "Fm = As x Rm",
        steps,
        source,
        caution: aidCaution,
        assumptions: [`${material.standard} gives ${material.name} no proof stress: there is no proof load`],
      };
    }
    steps.push(step("proof stress", result("", material.proof, stress).value as number, stress));
    return {
      values: [result("proof load", proofLoad(area, material.proof), force), breaking],
      formula: "Fp = As x Sp; Fm = As x Rm",
      steps,
      assumptions: material.status === "memory" ? [`figures of ${material.standard} ${material.name} from memory`] : [],
      source,
      caution: aidCaution,
    };
  },
};

export const classFigure: Figure = {
  name: "class",
  title: "Strength of a property class or grade",
  arguments: [argument("size", "size", "the thread"), argument("class", "class", "property class or grade")],
  validity: "room temperature; the size counts, for several classes step with the diameter",
  source: "ISO 898-1:2013 Table 3, ISO 3506-1, SAE J429, ASTM A574 (read through published extracts)",
  examples: ["M20 8.8", "7/8-9 2"],
  run(inputs) {
    const lacking = missing(classFigure, inputs),
      size = sizeIn(inputs, "size"),
      name = textIn(inputs, "class");
    if (lacking || !size || name === undefined) return lacking ?? { says: "class needs a size and a class" };
    const bolt = boltOf(size, name);
    if (isFigureError(bolt)) return bolt;
    const { material, thread } = bolt,
      unit = thread.system === "metric" ? "MPa" : "ksi";
    const values = [result("tensile strength, least", material.tensile, unit)];
    if (material.yield !== undefined)
      values.push(result(`yield stress, least (${material.yieldKind})`, material.yield, unit));
    if (material.proof !== undefined) values.push(result("proof stress", material.proof, unit));
    values.push(plain("standard", material.standard));
    if (material.headMark !== undefined) values.push(plain("mark on the head", material.headMark));
    return {
      values,
      formula: "from the table",
      steps: [step("diameter looked up", thread.diameter * 1e3, "mm")],
      assumptions: material.status === "memory" ? ["from memory"] : [],
      source: classFigure.source,
      caution: aidCaution,
    };
  },
};

// Strength of bolt materials: ISO 898-1 and ISO 3506-1 classes, SAE J429 and ASTM grades, with the sizes where they step. Stresses in Pa.
// It gives no proof stress where the standard gives none.

import type { FigureError } from "./figure.ts";

export interface BoltMaterial {
  readonly name: string;
  readonly standard: string;
  /** Least tensile strength. */
  readonly tensile: number;
  /** Nominal tensile strength, where the class has one beside the least (ISO 898-1). */
  readonly tensileNominal: number | undefined;
  /** Least yield stress; `undefined` where the standard has none (A307). */
  readonly yield: number | undefined;
  readonly yieldKind: "ReL" | "Rp0.2" | "Rpf" | "yield";
  /** Proof stress; `undefined` where the standard has none (ISO 3506-1, A307, B7). */
  readonly proof: number | undefined;
  /** The row holds for a nominal diameter over `over` m up to and including `upTo` m. */
  readonly over: number;
  readonly upTo: number;
  readonly headMark: string | undefined;
  readonly status: "read" | "memory";
}

const MPa = 1e6,
  ksi = 6.894757293168361e6,
  inch = 0.0254,
  everySize = [0, Infinity] as const;

function iso(
  name: string,
  nominal: number,
  tensile: number,
  yieldMPa: number,
  yieldKind: BoltMaterial["yieldKind"],
  proof: number,
  [over, upTo]: readonly [number, number] = everySize,
): BoltMaterial {
  return {
    name,
    standard: "ISO 898-1",
    tensile: tensile * MPa,
    tensileNominal: nominal * MPa,
    yield: yieldMPa * MPa,
    yieldKind,
    proof: proof * MPa,
    over,
    upTo,
    headMark: name,
    status: "read",
  };
}
function stainless(steel: string, strength: number, yieldMPa: number, upTo: number): BoltMaterial {
  const name = `${steel}-${strength}`;
  return {
    name,
    standard: "ISO 3506-1",
    tensile: strength * 10 * MPa,
    tensileNominal: undefined,
    yield: yieldMPa * MPa,
    yieldKind: "Rp0.2",
    proof: undefined,
    over: 0,
    upTo,
    headMark: name,
    status: "read",
  };
}
function inchGrade(
  name: string,
  standard: string,
  proof: number | undefined,
  tensile: number,
  yieldKsi: number | undefined,
  over: number,
  upTo: number,
  headMark: string | undefined,
  status: "read" | "memory",
): BoltMaterial {
  return {
    name,
    standard,
    tensile: tensile * ksi,
    tensileNominal: undefined,
    yield: yieldKsi === undefined ? undefined : yieldKsi * ksi,
    yieldKind: "yield",
    proof: proof === undefined ? undefined : proof * ksi,
    over: over * inch,
    upTo: upTo * inch,
    headMark,
    status,
  };
}

/**
 * Metric classes. Sources: ISO 898-1:2013 Table 3 (read through two published extracts; 8.8 steps above M16, which is the usual trap);
 * ISO 3506-1 (extracts; 70 and 80 to M24, older editions to M20; it gives no proof stress).
 */
export const metricClasses: readonly BoltMaterial[] = [
  iso("4.6", 400, 400, 240, "ReL", 225),
  iso("4.8", 400, 420, 340, "Rpf", 310),
  iso("5.6", 500, 500, 300, "ReL", 280),
  iso("5.8", 500, 520, 420, "Rpf", 380),
  iso("6.8", 600, 600, 480, "Rpf", 440),
  iso("8.8", 800, 800, 640, "Rp0.2", 580, [0, 0.016]),
  iso("8.8", 800, 830, 660, "Rp0.2", 600, [0.016, Infinity]),
  iso("9.8", 900, 900, 720, "Rp0.2", 650, [0, 0.016]),
  iso("10.9", 1000, 1040, 940, "Rp0.2", 830),
  iso("12.9", 1200, 1220, 1100, "Rp0.2", 970),
  ...["A1", "A2", "A3", "A4", "A5"].flatMap((steel) => [
    stainless(steel, 50, 210, 0.039),
    stainless(steel, 70, 450, 0.024),
    stainless(steel, 80, 600, 0.024),
  ]),
];

/**
 * Inch grades. Sources: SAE J429, ASTM A574 (read through published tables); grades 1, 5.2, 8.2, A307, A325, B7 from memory.
 * Grade 2 steps at 3/4 in, grade 5 at 1 in, A574 at 1/2 in.
 */
export const inchGrades: readonly BoltMaterial[] = [
  inchGrade("1", "SAE J429", 33, 60, 36, 0, 1.5, undefined, "memory"),
  inchGrade("2", "SAE J429", 55, 74, 57, 0, 0.75, undefined, "read"),
  inchGrade("2", "SAE J429", 33, 60, 36, 0.75, 1.5, undefined, "read"),
  inchGrade("5", "SAE J429", 85, 120, 92, 0, 1, "3 radial lines", "read"),
  inchGrade("5", "SAE J429", 74, 105, 81, 1, 1.5, "3 radial lines", "read"),
  inchGrade("5.2", "SAE J429", 85, 120, 92, 0, 1, "3 lines on one side of the head", "memory"),
  inchGrade("8", "SAE J429", 120, 150, 130, 0, 1.5, "6 radial lines", "read"),
  inchGrade("8.2", "SAE J429", 120, 150, 130, 0, 1, "6 lines, not evenly spread", "memory"),
  inchGrade("A574", "ASTM A574", 140, 180, 153, 0, 0.5, undefined, "read"),
  inchGrade("A574", "ASTM A574", 135, 170, 153, 0.5, 4, undefined, "read"),
  inchGrade("A307", "ASTM A307", undefined, 60, undefined, 0, 4, "307A", "memory"),
  inchGrade("A325", "ASTM F3125", 85, 120, 92, 0, 1, "A325", "memory"),
  inchGrade("B7", "ASTM A193", undefined, 125, 105, 0, 2.5, "B7", "memory"),
];

/** `grade 5`, `SAE J429 8`, `ASTM A574` and `class 8.8` to the bare name. */
const bareName = (text: string): string =>
  text
    .trim()
    .replace(/^(?:(?:class|grade|gr\.?|SAE|ASTM|J429|F3125|ISO\s*\d+(?:-\d)?)\s+)+/i, "")
    .toUpperCase();

/**
 * The material of a class or grade at a nominal diameter in m.
 * Errors: an unknown name; an inch grade on a metric thread or the other way round; a diameter beyond the class.
 * Units: Pa in the result. Source: ISO 898-1:2013 Table 3, ISO 3506-1, SAE J429, ASTM A574 (read through published extracts).
 */
export function boltMaterial(name: string, system: "metric" | "unified", diameter: number): BoltMaterial | FigureError {
  const wanted = bareName(name),
    own = system === "metric" ? metricClasses : inchGrades,
    others = system === "metric" ? inchGrades : metricClasses;
  const rows = own.filter((material) => material.name === wanted),
    what = system === "metric" ? "class" : "grade";
  if (rows.length === 0) {
    const names = [...new Set(own.map((material) => material.name))];
    if (others.some((material) => material.name === wanted)) {
      return {
        says: `${wanted} is for ${system === "metric" ? "inch" : "metric"} threads: a ${system} thread has a ${what}`,
        nearest: nearestNames(wanted, names),
      };
    }
    return { says: `${name} is no ${what} that is known here`, nearest: nearestNames(wanted, names) };
  }
  const reach = 1 + 1e-9,
    found = rows.find((material) => diameter > material.over * reach && diameter <= material.upTo * reach);
  if (found) return found;
  const largest = Math.max(...rows.map((material) => material.upTo));
  return {
    says: `${wanted} is not laid down above ${system === "metric" ? `M${Math.round(largest * 1e3)}` : `${largest / inch} in`} (${rows[0]!.standard})`,
  };
}

function nearestNames(wanted: string, names: readonly string[]): readonly string[] {
  const figure = Number(wanted.replace(/^[A-Z]\d-/, "").replace(/[^\d.]/g, "")),
    first = wanted[0];
  const distance = (name: string): number => {
    const own = Number(name.replace(/^[A-Z]\d-/, "").replace(/[^\d.]/g, ""));
    return (name[0] === first ? 0 : 1e3) + (Number.isNaN(figure) ? 0 : Math.abs(own - figure));
  };
  return [...names].sort((a, b) => distance(a) - distance(b)).slice(0, 3);
}

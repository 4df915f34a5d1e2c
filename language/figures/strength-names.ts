// Which strength classes and grades there are, by thread and by what the fastener is: names only, for telling a slip of the hand.

import { inchGrades, metricClasses } from "./property-classes.ts";

const metric = [...new Set(metricClasses.map((one) => one.name))],
  inch = [...new Set(inchGrades.map((one) => one.name))];
/** By what the fastener is: ISO 898-2 (nuts, from memory) and ISO 898-5 (set screws in compression, from memory) beside the others. */
const metricOf = {
  other: metric,
  nut: [...metric, "04", "05", "5", "6", "8", "9", "10", "12"],
  "set-screw": [...metric, "14H", "22H", "33H", "45H"],
};
/** ISO 3506-1 to -3 have more steels and classes than carry a figure here (from memory). */
const stainless = /^(?:A[1-58]|C[134]|F1|D[2468])-(?:0?25|0?35|040|12H|21H|45|50|60|70|80|100|110)$/;
/** Written like a class or grade of these standards, and so to be held against them; `brass` or `Ti-5` is the shop's own. */
const looksMetric = /^(?:\d\dH|\d+(?:[.,]\d+)?|A\d-?\d*|C\d-?\d*)$/i,
  looksInch = /^(?:\d+(?:\.\d+)?)$/;

export const strengthSource = "ISO 898-1, ISO 898-2, ISO 898-5, ISO 3506-1, SAE J429; nuts and set screws from memory";

export interface StrengthFinding {
  readonly says: "other system" | "unknown";
  /** The nearest there are, best first. */
  readonly near: readonly string[];
}

/**
 * What is wrong with a class (metric) or grade (inch) of this name on a thread of that system; undefined where nothing is, or where it
 * is not written like one of the standards. Source: {@link strengthSource}.
 */
export function strengthFinding(
  name: string,
  system: "metric" | "unified",
  fastener: "nut" | "set-screw" | "other",
): StrengthFinding | undefined {
  const wanted = name.toUpperCase(),
    own = system === "metric" ? metricOf[fastener] : inch;
  if (own.includes(wanted) || (system === "metric" && stainless.test(wanted))) return undefined;
  const others = system === "metric" ? inch : metric;
  if (others.includes(wanted)) return { says: "other system", near: [] };
  if (!(system === "metric" ? looksMetric : looksInch).test(name)) return undefined;
  return { says: "unknown", near: nearestOf(wanted, own) };
}

/** By the signs without points and hyphens first (`88` is 8.8), then by how far the figures are apart. */
function nearestOf(wanted: string, names: readonly string[]): string[] {
  const bare = (text: string): string => text.replaceAll(/[^0-9A-Z]/g, "");
  const same = names.filter((name) => bare(name) === bare(wanted));
  if (same.length > 0) return same;
  const figure = (text: string): number => Number(text.replace(/^[A-Z]\d-?/, "").replace(",", ".")),
    letter = /^[A-Z]\d/.exec(wanted)?.[0] ?? "";
  return names
    .filter((name) => name.startsWith(letter) && (letter !== "" || /^\d/.test(name)))
    .sort((a, b) => Math.abs(figure(a) - figure(wanted)) - Math.abs(figure(b) - figure(wanted)))
    .slice(0, 2);
}

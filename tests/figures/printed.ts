// Judges a computed value against a printed one by the print's own rounding.

import { expect } from "vitest";
import { parseThreadSize, isThreadSize, type ThreadSize } from "../../language/quantities/index.ts";
import { boltMaterial, type BoltMaterial } from "../../language/figures/property-classes.ts";
import { isFigureError, type FigureError } from "../../language/figures/figure.ts";
import { threadOf, type Thread } from "../../language/figures/threads.ts";

/** Half of the last printed place: 0.05 for "24.6", 0.5 for "206"; zeros before the point count as printed unless `figures` says how many do. */
export function halfPlace(print: string, figures?: number): number {
  const point = print.indexOf(".");
  if (point >= 0) return 0.5 * 10 ** -(print.length - point - 1);
  return figures === undefined ? 0.5 : 0.5 * 10 ** Math.max(0, print.replace("-", "").length - figures);
}

/** The value rounds to the print; `share` widens it for a print that was itself computed from rounded figures. */
export function expectPrinted(
  value: number,
  print: string,
  what: string,
  { share = 0, figures }: { readonly share?: number; readonly figures?: number } = {},
): void {
  const wanted = Number(print),
    allowed = halfPlace(print, figures) + Math.abs(wanted) * share;
  expect(Math.abs(value - wanted), `${what}: ${value}, printed ${print}`).toBeLessThanOrEqual(allowed * (1 + 1e-9));
}

/** Within a share of the print. */
export function expectNear(value: number, wanted: number, share: number, what: string): void {
  expect(Math.abs(value - wanted), `${what}: ${value}, published ${wanted}`).toBeLessThanOrEqual(
    Math.abs(wanted) * share * (1 + 1e-9),
  );
}

export function sizeOf(text: string): ThreadSize {
  const size = parseThreadSize(text);
  if (!isThreadSize(size)) throw new Error(size.problem);
  return size;
}

export const known = <T extends object>(value: T | FigureError): T => {
  if (isFigureError(value)) throw new Error(value.says);
  return value;
};

export const thread = (text: string): Thread => known(threadOf(sizeOf(text)));
export const material = (name: string, of: Thread): BoltMaterial =>
  known(boltMaterial(name, of.system === "unified" ? "unified" : "metric", of.diameter));

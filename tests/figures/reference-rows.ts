// Reads the published reference files and compares results with them. Unit factors stand here a second time on purpose: the check must not rest
// on the table that it checks.

import { readFileSync } from "node:fs";
import { afterAll, expect, test } from "vitest";

/** One row of a reference file, by column. */
export type Row = Readonly<Record<string, string>>;

/** A value of a JSON column. */
export type Json = number | string | boolean | null | readonly Json[] | { readonly [key: string]: Json };

/** Rows of a CSV file in tests/reference, with quotes and doubled quotes as RFC 4180 has them. */
export function referenceRows(file: string): readonly Row[] {
  const text = readFileSync(new URL(`../reference/${file}`, import.meta.url), "utf8").replace(/\r\n/g, "\n");
  const lines: string[][] = [[""]];
  let quoted = false;
  for (let at = 0; at < text.length; at++) {
    const sign = text[at]!;
    const fields = lines.at(-1)!;
    if (quoted) {
      if (sign !== '"') fields[fields.length - 1] += sign;
      else if (text[at + 1] === '"') {
        fields[fields.length - 1] += '"';
        at++;
      } else quoted = false;
    } else if (sign === '"') quoted = true;
    else if (sign === ",") fields.push("");
    else if (sign === "\n") lines.push([""]);
    else fields[fields.length - 1] += sign;
  }
  const [head, ...body] = lines.filter((fields) => fields.length > 1);
  return body.map((fields) => Object.fromEntries(head!.map((name, at) => [name, fields[at] ?? ""])));
}

const FACTORS: Readonly<Record<string, number>> = {
  V: 1,
  uF: 1e-6,
  mF: 1e-3,
  ohm: 1,
  kohm: 1e3,
  Mohm: 1e6,
  "ohm/V": 1,
  J: 1,
  kJ: 1e3,
  W: 1,
  mC: 1e-3,
  uC: 1e-6,
  s: 1,
  min: 60,
  h: 3600,
  months: 1,
  T: 1,
  mT: 1e-3,
  cm2: 1e-4,
  N: 1,
  kN: 1e3,
  lbf: 4.4482216152605,
  "N/m": 1,
  "N/mm": 1e3,
  m: 1,
  cm: 0.01,
  mm: 1e-3,
  in: 0.0254,
  ft: 0.3048,
  kg: 1,
  lb: 0.45359237,
  t: 1e3,
  deg: Math.PI / 180,
  bar: 1e5,
  psi: 4.4482216152605 / 0.0254 ** 2,
  L: 1e-3,
  m3: 1,
  "kJ/kg": 1e3,
  "kJ/g": 1e6,
  "1/min": 1 / 60,
  "cal/cm2": 1,
  "US or metric ton as marked": 1,
};

/** SI value of a number or a `[number, "unit"]`. */
export function si(value: Json | undefined): number {
  if (typeof value === "number") return value;
  if (Array.isArray(value) && typeof value[0] === "number" && typeof value[1] === "string")
    return value[0] * factor(value[1]);
  throw new Error(`no quantity: ${JSON.stringify(value)}`);
}

function factor(unit: string): number {
  const found = FACTORS[unit];
  if (found === undefined) throw new Error(`no factor for ${unit}`);
  return found;
}

const isQuantity = (value: Json): value is readonly [number, string] =>
  Array.isArray(value) && value.length === 2 && typeof value[0] === "number" && typeof value[1] === "string";

/**
 * Compares a result with what a row expects. Numbers and quantities within the row's tolerance (in the expected unit, or a share of it for %),
 * words and truth exactly, objects key by key: every expected key must be there.
 */
export function compare(actual: unknown, expected: Json, tolerance: string, path: string): void {
  if (typeof expected === "number" || isQuantity(expected)) {
    const scale = typeof expected === "number" ? 1 : factor(expected[1]);
    const wanted = typeof expected === "number" ? expected : expected[0];
    expect(typeof actual, `${path} is a number`).toBe("number");
    const got = (actual as number) / scale;
    const share = /^([\d.e-]+)\s*%$/.exec(tolerance);
    const allowed = share ? (Math.abs(wanted) * Number(share[1])) / 100 : Number(/^[\d.e-]+/.exec(tolerance)?.[0] ?? 0);
    const off = Math.abs(got - wanted);
    expect(off, `${path}: ${got}, published ${wanted}`).toBeLessThanOrEqual(allowed + Math.abs(wanted) * 1e-9);
  } else if (Array.isArray(expected)) {
    expect(Array.isArray(actual), `${path} is a list`).toBe(true);
    expect((actual as unknown[]).length, path).toBe(expected.length);
    expected.forEach((one, at) => compare((actual as unknown[])[at], one as Json, tolerance, `${path}[${at}]`));
  } else if (typeof expected === "object" && expected !== null) {
    for (const [key, one] of Object.entries(expected))
      compare((actual as Record<string, unknown> | undefined)?.[key], one as Json, tolerance, `${path}.${key}`);
  } else expect(actual, path).toEqual(expected);
}

/** Counts the published rows of one file. */
export interface Tally {
  /** A test of one row; it counts when it goes through. */
  row(name: string, body: () => void): void;
  /** A row that no figure stands for, and why. */
  leave(name: string, why: string): void;
}

/** Said of rows whose table was typed from the same page: they prove the look-up, and what else holds the table. */
export const lookUp = {
  byRule: "look-up of a typed table, its second check is tables-by-rule.test.ts",
  alone: "look-up of a typed table, its source page is the only one",
} as const;

/** A count of `rows` published rows, printed when the tests of the file are through; `basis` says where the rows prove a look-up alone. */
export function tally(file: string, rows: number, basis?: string): Tally {
  let reproduced = 0;
  const left = new Map<string, string[]>();
  afterAll(() => {
    const without = [...left.values()].reduce((sum, names) => sum + names.length, 0);
    const short = (names: readonly string[]): string =>
      names.length > 8 ? `${names.length} rows, ${names[0]} to ${names.at(-1)}` : names.join("; ");
    const why = [...left].map(([reason, names]) => `\n  ${reason}: ${short(names)}`).join("");
    console.log(
      `${file}: ${reproduced} of ${rows - without} usable rows reproduced${basis === undefined ? "" : ` (${basis})`}${without > 0 ? `; ${without} of ${rows} rows are no figures${why}` : ""}`,
    );
  });
  return {
    row(name, body) {
      test(name, () => {
        body();
        reproduced++;
      });
    },
    leave(name, why) {
      left.set(why, [...(left.get(why) ?? []), name]);
    },
  };
}

/** Rounds half up to so many places, as the worksheets of the published tables do. */
export function halfUp(value: number, places: number): number {
  return Math.round(Number((value * 10 ** places).toFixed(6))) / 10 ** places;
}

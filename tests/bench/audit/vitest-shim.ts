// As much of the test runner as the tests of the bench use, so that thousands of runs fit into one process.

import { readFileSync } from "node:fs";
import { isDeepStrictEqual } from "node:util";

export interface Test {
  readonly name: string;
  readonly run: () => Promise<void>;
}
export const tests: Test[] = [];

const heads: string[] = [];
type Run = (...of: never[]) => unknown;
/** `%s` and `$name` are left as they are: a number keeps the names apart. */
const add = (name: string, run: Run, args: readonly unknown[] = []): void => {
  // With options beside its name: one that needs more time than the rest.
  if (typeof run !== "function") return;
  tests.push({
    name: [...heads, name].join(" > "),
    run: async () => {
      after.length = 0;
      try {
        await (run as (...of: readonly unknown[]) => unknown)(...args);
      } finally {
        after.forEach((each) => each());
      }
    },
  });
};
const each =
  (list: readonly unknown[]) =>
  (name: string, run: Run): void =>
    list.forEach((args, n) => add(`${name} #${n}`, run, Array.isArray(args) ? args : [args]));
const after: (() => void)[] = [];

export const test = Object.assign((name: string, run: () => unknown, _limit?: number): void => add(name, run), {
  each,
});
export const describe = (name: string, run: () => void): void => {
  heads.push(name);
  run();
  heads.pop();
};
export const onTestFinished = (run: () => void): void => void after.push(run);

/** What was expected is not so. */
export class Unmet extends Error {}

class Like {
  readonly fits: (value: unknown) => boolean;
  constructor(fits: (value: unknown) => boolean) {
    this.fits = fits;
  }
}
const isObject = (value: unknown): value is Record<string, unknown> => typeof value === "object" && value !== null;

/** Equal as `toEqual` has it: a property that is undefined is none. */
function equal(a: unknown, b: unknown): boolean {
  if (b instanceof Like) return b.fits(a);
  if (Object.is(a, b)) return true;
  if (!isObject(a) || !isObject(b) || Array.isArray(a) !== Array.isArray(b)) return false;
  if (Array.isArray(a)) return a.length === (b as unknown as unknown[]).length && a.every((one, i) => equal(one, b[i]));
  if (a instanceof Map || a instanceof Set || a instanceof RegExp || a instanceof Date) return isDeepStrictEqual(a, b);
  const keys = new Set([...Object.keys(a), ...Object.keys(b)]);
  return [...keys].every((key) => equal(a[key], b[key]));
}
const partly = (a: unknown, b: unknown): boolean =>
  b instanceof Like || !isObject(b) || !isObject(a)
    ? equal(a, b)
    : Array.isArray(b)
      ? Array.isArray(a) && a.length === b.length && b.every((one, i) => partly(a[i], one))
      : Object.keys(b).every((key) => partly(a[key], b[key]));

const has = (list: unknown, one: unknown, same: (a: unknown, b: unknown) => boolean): boolean =>
  typeof list === "string" ? list.includes(String(one)) : [...(list as Iterable<unknown>)].some((of) => same(of, one));

const matchers: Readonly<Record<string, (value: never, ...of: never[]) => boolean>> = {
  toBe: (a: unknown, b: unknown) => Object.is(a, b),
  toEqual: equal,
  toStrictEqual: equal,
  toMatchObject: partly,
  toContain: (a: unknown, b: unknown) => has(a, b, Object.is),
  toContainEqual: (a: unknown, b: unknown) => has(a, b, equal),
  toHaveLength: (a: { length: number }, b: number) => a.length === b,
  toHaveProperty: (a: object, b: string) => b in a,
  toMatch: (a: string, b: RegExp | string) => (typeof b === "string" ? a.includes(b) : new RegExp(b).test(a)),
  toBeGreaterThan: (a: number, b: number) => a > b,
  toBeGreaterThanOrEqual: (a: number, b: number) => a >= b,
  toBeLessThan: (a: number, b: number) => a < b,
  toBeLessThanOrEqual: (a: number, b: number) => a <= b,
  toMatchFileSnapshot: (a: string, b: string) => readFileSync(b, "utf8") === a,
  toBeDefined: (a: unknown) => a !== undefined,
  toBeUndefined: (a: unknown) => a === undefined,
  toBeNull: (a: unknown) => a === null,
  toBeTruthy: Boolean,
  toBeFalsy: (a: unknown) => !a,
  toBeCloseTo: (a: number, b: number, digits = 2) => Math.abs(a - b) < 10 ** -digits / 2,
  toBeInstanceOf: (a: unknown, b: never) => (a as object) instanceof (b as new () => object),
  toThrow: (a: () => unknown) => {
    try {
      a();
    } catch {
      return true;
    }
    return false;
  },
};

const judge = (value: unknown, wanted: boolean): object =>
  Object.fromEntries(
    Object.entries(matchers).map(([name, fits]) => [
      name,
      (...of: never[]) => {
        if (fits(value as never, ...of) !== wanted) throw new Unmet(name);
      },
    ]),
  );

export const expect = Object.assign(
  (value: unknown, _says?: string) => ({ ...judge(value, true), not: judge(value, false) }),
  {
    stringContaining: (part: string) => new Like((value) => String(value).includes(part)),
    stringMatching: (part: RegExp) => new Like((value) => part.test(String(value))),
    objectContaining: (part: object) => new Like((value) => partly(value, part)),
    arrayContaining: (part: unknown[]) => new Like((value) => part.every((one) => has(value, one, equal))),
  },
);

// Figures in drawings: two places, by all digits of the number, as ECMA-262 says of `toFixed`.

import fc from "fast-check";
import { expect, test } from "vitest";
import { n } from "../../../language/outputs/draw/drawing.ts";

const byAllDigits = (value: number): string => String(Number(value.toFixed(2)) + 0);

test("a number is rounded by all its digits, also half way between two", () => {
  const half = fc.tuple(fc.integer({ min: -100_000, max: 100_000 }), fc.integer({ min: -3, max: 3 }));
  fc.assert(
    fc.property(fc.double({ min: -5000, max: 5000, noNaN: true }), (value) => {
      expect(n(value)).toBe(byAllDigits(value));
    }),
    { seed: 6, numRuns: 2000 },
  );
  fc.assert(
    fc.property(half, ([thousandths, bits]) => {
      const value = (thousandths * 5) / 1000 + bits * 1e-13;
      expect(n(value)).toBe(byAllDigits(value));
    }),
    { seed: 6, numRuns: 2000 },
  );
});

test.each([
  [2.675, "2.67"],
  [1.005, "1"],
  [0.125, "0.13"],
  [-0.001, "0"],
  [-0, "0"],
  [650, "650"],
])("%f is %s", (value, written) => {
  expect(n(value)).toBe(written);
});

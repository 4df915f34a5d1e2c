// Classes of fasteners and joints cover the kinds of the language; indices stand in their published ranges (sources T40 to T48 in
// tests/reference/sources-times.md, rules in tests/reference/disassembly-scores.md).

import { expect, test } from "vitest";
import {
  FRENCH_COEFFICIENTS,
  JOIN_CLASSES,
  euClass,
  euIndex,
  frenchCriterion,
  frenchIndex,
  weightedPoints,
} from "../../language/figures/disassembly-scores.ts";
import { jointKinds, kindIn } from "../../language/tables/index.ts";

// EN 45554:2020: class A is reusable, C neither removable nor reusable (section 4 of tests/reference/disassembly-scores.md).
test("what needs something new, or cannot be made again, is not classed as reusable", () => {
  for (const [kind, { remade }] of Object.entries(jointKinds)) {
    const found = kindIn(JOIN_CLASSES, kind);
    if (remade !== "always") expect(found, kind).not.toBe("A");
    if (remade === "never") expect(found, kind).toBe("C");
  }
});

test("the EU index runs from 1 to 5 and its classes meet without a gap", () => {
  const all = (points: number): number =>
    euIndex({
      depth: points,
      fasteners: points,
      tools: points,
      spareParts: points,
      softwareUpdates: points,
      information: points,
    });
  expect(all(1)).toBeCloseTo(1, 12);
  expect(all(5)).toBeCloseTo(5, 12);
  expect([4.995, 3.995, 3.994, 3.345, 2.545, 1.745, 1.744].map(euClass)).toEqual(["A", "A", "B", "B", "C", "D", "E"]);
});

test("the French criteria reach 20 points each and the index 10", () => {
  const full = Object.values(FRENCH_COEFFICIENTS).map((coefficients) =>
    frenchCriterion(
      coefficients.map(() => 10),
      coefficients,
    ),
  );
  expect(full).toEqual([20, 20, 20, 20, 20]);
  expect(frenchIndex([20, 20, 20, 20, 20])).toBe(10);
  expect(frenchIndex([15.4, 17.8, 19.6, 20, 10])).toBe(8.3);
});

test("weights and scores that do not fit are refused", () => {
  expect(() => weightedPoints([{ weight: 0.5, points: 5 }])).toThrow(RangeError);
  expect(() => frenchCriterion([1, 2], FRENCH_COEFFICIENTS.price)).toThrow(RangeError);
});

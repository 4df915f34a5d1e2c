// Tightening orders and passes against the published ones, and the laws that every order keeps. Source: tightening-patterns.md (S33).

import { readFileSync } from "node:fs";
import fc from "fast-check";
import { expect, test } from "vitest";
import {
  centreOutOrder,
  circleOrder,
  gridPoints,
  listedOrder,
  looseningOrder,
  passShares,
  rectanglePoints,
  rowsOrder,
  usualPasses,
} from "../../language/figures/tightening-order.ts";
import { tally } from "./reference-rows.ts";

const page = readFileSync(new URL("../reference/tightening-patterns.md", import.meta.url), "utf8");
const printed = [...page.matchAll(/^\| (\d+) \| ([\d ·]+)(?:\([^)]*\) )?\| read \|/gm)].map(
  ([, n, order]) => [Number(n), order!.replaceAll("·", " ").trim().split(/\s+/).map(Number)] as const,
);
const count = tally("tightening-patterns.md, cross orders", printed.length);
for (const [n, order] of printed)
  count.row(`${n} bolts`, () => expect(circleOrder(n)).toEqual({ order, groupSize: 1 }));

test("the page prints seven orders", () => expect(printed.map(([n]) => n)).toEqual([4, 8, 12, 16, 20, 24, 6]));

test("20 bolts: the other order that is printed (S33d) is a disagreement, and not ours", () => {
  expect(circleOrder(20)!.order).not.toEqual([1, 11, 6, 16, 2, 12, 7, 17, 3, 13, 8, 18, 4, 14, 9, 19, 5, 15, 10, 20]);
});

test("48 bolts become 12 groups of 4 in the order of 12 (S33a)", () => {
  const { order, groupSize } = circleOrder(48)!;
  expect(groupSize).toBe(4);
  expect(order.filter((_, i) => i % 4 === 0).map((bolt) => (bolt - 1) / 4 + 1)).toEqual(circleOrder(12)!.order);
});

const sorted = (order: readonly number[]): readonly number[] => [...order].sort((a, b) => a - b);
const upTo = (n: number): readonly number[] => Array.from({ length: n }, (_, i) => i + 1);

test("every circle order is a permutation; up to 24 even ones have opposite neighbours; of four, each is at right angles", () => {
  for (let n = 1; n <= 400; n++) {
    const { order, groupSize } = circleOrder(n)!;
    expect(sorted(order), `${n}`).toEqual(upTo(n));
    expect(n <= 24 ? groupSize === 1 : (groupSize * 360) / n <= 30.000001, `${n} bolts in groups of ${groupSize}`).toBe(
      true,
    );
    const groups = order.filter((_, i) => i % groupSize === 0).map((bolt) => (bolt - 1) / groupSize),
      m = n / groupSize;
    if (m % 2 === 0)
      for (let i = 0; i + 1 < m; i += 2)
        expect((groups[i + 1]! - groups[i]! + m) % m, `${n}: places ${i + 1}, ${i + 2}`).toBe(m / 2);
    if (m % 4 === 0) for (let i = 0; i + 3 < m; i += 4) expect((groups[i + 2]! - groups[i]! + m) % m).toBe(m / 4);
    // With an odd number the next one is as nearly opposite as there is.
    if (m % 2 === 1 && m > 3)
      for (let i = 0; i + 1 < m; i++)
        expect([(m - 1) / 2, (m + 1) / 2]).toContain((groups[i + 1]! - groups[i]! + m) % m);
  }
  for (const wrong of [0, -1, 2.5, 1001, Number.NaN]) expect(circleOrder(wrong)).toBeUndefined();
});

test("centre out: a permutation whose distance from the middle never falls", () => {
  fc.assert(
    fc.property(
      fc.array(fc.record({ x: fc.integer({ min: -500, max: 500 }), y: fc.integer({ min: -500, max: 500 }) }), {
        minLength: 1,
        maxLength: 40,
      }),
      (points) => {
        const order = centreOutOrder(points),
          n = points.length;
        expect(sorted(order)).toEqual(upTo(n));
        const x = points.reduce((sum, p) => sum + p.x, 0) / n,
          y = points.reduce((sum, p) => sum + p.y, 0) / n;
        const distances = order.map((number) => Math.hypot(points[number - 1]!.x - x, points[number - 1]!.y - y));
        distances.forEach((distance, i) => i > 0 && expect(distance).toBeGreaterThanOrEqual(distances[i - 1]! - 1e-6));
      },
    ),
    { seed: 20, numRuns: 200 },
  );
});

test("rectangles go crosswise and end at the corners; rows go from the middle out", () => {
  expect(centreOutOrder(rectanglePoints(4, 2, 1))).toEqual([1, 3, 4, 2]);
  const eight = centreOutOrder(rectanglePoints(8, 1, 1));
  expect(sorted(eight.slice(0, 4))).toEqual([2, 4, 6, 8]);
  for (const i of [0, 2, 4, 6]) expect(Math.abs(eight[i]! - eight[i + 1]!)).toBe(4);
  expect(rowsOrder(1, 5)).toEqual([3, 2, 4, 1, 5]);
  expect(rowsOrder(3, 3).slice(0, 3)).toEqual([5, 4, 6]);
  for (const [rows, perRow] of [
    [2, 7],
    [4, 4],
    [1, 1],
    [5, 2],
  ] as const) {
    expect(sorted(rowsOrder(rows, perRow))).toEqual(upTo(rows * perRow));
    expect(sorted(centreOutOrder(gridPoints(rows, perRow)))).toEqual(upTo(rows * perRow));
  }
});

test("loosening: the same on a circle, inward elsewhere (common practice)", () => {
  expect(looseningOrder([1, 3, 2, 4], "circle")).toEqual([1, 3, 2, 4]);
  expect(looseningOrder([2, 1, 3], "outward")).toEqual([3, 1, 2]);
});

test("a listed order names each fastener once, and then some again", () => {
  expect(listedOrder(4, [4, 2, 3, 1])).toEqual({ order: [4, 2, 3, 1] });
  expect(listedOrder(4, [4, 2, 3, 1, 4, 2])).toEqual({ order: [4, 2, 3, 1, 4, 2] });
  expect(listedOrder(4, [1, 2, 2, 4])).toEqual({ wrong: "2 stands twice" });
  expect(listedOrder(4, [1, 5, 2, 3])).toEqual({ wrong: "5 is not among 1 to 4" });
  expect(listedOrder(5, [1, 2, 3])).toEqual({ wrong: "4, 5 are left out" });
});

test("passes as printed, and always up to the full torque", () => {
  expect(passShares(3)!.map((share) => Number((share * 120).toFixed(6)))).toEqual([36, 72, 120]);
  expect(passShares(4)!.map((share) => Number((share * 85).toFixed(6)))).toEqual([17, 34, 68, 85]);
  expect(passShares(2)).toEqual([0.7, 1]);
  expect([usualPasses(8), usualPasses(12)]).toEqual([3, 4]);
  for (let n = 1; n <= 10; n++) {
    const shares = passShares(n)!;
    expect(shares).toHaveLength(n);
    expect(shares.at(-1)).toBe(1);
    shares.forEach((share, i) => i > 0 && expect(share).toBeGreaterThan(shares[i - 1]!));
  }
  for (const wrong of [0, 11, 1.5]) expect(passShares(wrong)).toBeUndefined();
});

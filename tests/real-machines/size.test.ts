// No construct needs more than one line a fact that the author knows: measured on the three published procedures.

import { readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { factsIn, itemSizes, sizes, sizeText } from "./size.ts";

test("facts are counted by single values", () => {
  expect(
    factsIn({
      id: "a",
      n: 3,
      mass: null,
      torque: { low: 1, unit: "N·m", computed_newton_metres: [1, 2] },
      joins: ["b", "c"],
      note: "ours",
    }),
  ).toBe(5);
});

test("no kind of statement takes more lines than its facts", () => {
  for (const { procedure, of, lines, facts } of sizes())
    expect(lines, `${procedure}: ${of}`).toBeLessThanOrEqual(facts);
});

test("no part, fastener or joint takes more lines than its facts", () => {
  const items = itemSizes();
  expect(items.length).toBeGreaterThan(30);
  expect(items.filter(({ lines, facts }) => lines > facts)).toEqual([]);
});

test("a whole procedure takes less than a line for two facts", () => {
  for (const [name, rows] of Map.groupBy(sizes(), ({ procedure }) => procedure)) {
    expect(
      rows.reduce((sum, row) => sum + row.lines, 0) / rows.reduce((sum, row) => sum + row.facts, 0),
      name,
    ).toBeLessThanOrEqual(0.5);
  }
});

test("size.md is of this state", () => {
  expect(readFileSync(join(import.meta.dirname, "size.md"), "utf8")).toBe(sizeText());
});

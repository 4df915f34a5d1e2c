// The builds of a unit: all combinations while they are few, every pair beyond.

import { expect, test } from "vitest";
import { combinations, mostCombinations } from "../../language/model/builds.ts";
import { built, unit } from "./build.ts";

test("one of each line of variants, with and without each option; the plain one first", () => {
  const { builds } = built(unit(`variants early, late\noption heater`));
  expect(builds.map((build) => [...build.chosen])).toEqual([
    ["early"],
    ["early", "heater"],
    ["late"],
    ["late", "heater"],
  ]);
  expect(builds.map((build) => build.name)).toEqual(["early", "early with heater", "late", "late with heater"]);
});

test("conditions on declarations, statements and pieces", () => {
  const text = unit(
    `variants early, late\noption heater\nif late { part fan }\npart lid { mass 1 kg  if late and heater mass 3 kg }\nunless heater { part blank }`,
  );
  const ids = (build: string): string[] => built(text, "u", build).model.parts.map((part) => part.id);
  expect([ids("early"), ids("late with heater")]).toEqual([
    ["b", "lid", "blank"],
    ["b", "fan", "lid"],
  ]);
});

test("a reading that may fail, an optional block and a free choice each double the builds", () => {
  const text = `${unit(`part lid`)}procedure p "P" for u { step { inspect bore on lid "Good"  if bore fails { renew lid }  optional "if required" { clean lid }  either { clean lid } or { clean b } } }`;
  const { builds } = built(text);
  expect(builds).toHaveLength(8);
  expect(builds.filter((build) => build.chosen.has("bore fails"))).toHaveLength(4);
  expect(new Set(builds.map((build) => build.name)).size).toBe(8);
});

test.each([
  [[2, 2, 2, 2, 2, 2]],
  [[3, 3, 3, 2]],
  [[2, 2, 2, 2, 2, 2, 2]],
  [[4, 3, 2, 5, 2, 3, 2, 2]],
  [Array.from({ length: 20 }, () => 2)],
])("%j: all rows, or every pair of alternatives in one of them", (sizes) => {
  const rows = combinations(sizes),
    product = sizes.reduce((all, size) => all * size, 1);
  expect(rows[0]).toEqual(sizes.map(() => 0));
  expect(new Set(rows.map(String)).size).toBe(rows.length);
  if (product <= mostCombinations) expect(rows).toHaveLength(product);
  else expect(rows.length).toBeLessThan(product);
  const pairs = new Set(
    rows.flatMap((row) => row.flatMap((a, i) => row.slice(i + 1).map((b, j) => `${i}.${a} ${i + 1 + j}.${b}`))),
  );
  for (let i = 0; i < sizes.length; i++)
    for (let j = i + 1; j < sizes.length; j++)
      for (let a = 0; a < sizes[i]!; a++)
        for (let b = 0; b < sizes[j]!; b++) expect(pairs.has(`${i}.${a} ${j}.${b}`)).toBe(true);
});

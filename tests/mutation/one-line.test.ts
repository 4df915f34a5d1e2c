// One line deleted, one fastener fewer, two neighbours swapped, over every published procedure and two from the trade: never two findings for one edit, never
// an exception. The table of what each class gave is held to the run.

import { readFileSync } from "node:fs";
import { beforeAll, expect, test } from "vitest";
import { judgeOneLine, tableOf } from "./one-line.ts";
import type { Judged } from "./judge.ts";

let judged: readonly Judged[] = [];
beforeAll(() => {
  judged = judgeOneLine();
}, 120_000);

test("there are some hundreds of edits, of each class", () => {
  expect(judged.length).toBeGreaterThan(180);
  for (const name of ["drop an action", "swap two neighbours", "count - 1"])
    expect(
      judged.some(({ mutant }) => mutant.class === name),
      name,
    ).toBe(true);
});

test("no edit gives two findings", () => {
  const doubles = judged
    .filter(({ findings }) => findings.length > 1)
    .map(({ mutant }) => `${mutant.file}: ${mutant.says}`);
  expect(doubles).toEqual([]);
});

test("one-line.md is the table of this run", () => {
  expect(readFileSync(new URL("one-line.md", import.meta.url), "utf8")).toBe(tableOf(judged));
});

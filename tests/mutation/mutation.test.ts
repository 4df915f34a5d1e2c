// The bar of the mutation run, and the report held to it.

import { readFileSync } from "node:fs";
import { beforeAll, expect, test } from "vitest";
import { classes } from "./mutant.ts";
import { judgeAll, type Judged } from "./judge.ts";
import { reportOf, scoreOf } from "./report.ts";

let judged: readonly Judged[] = [];
beforeAll(() => {
  judged = judgeAll();
}, 600_000);

test("every class of mutant is made", () => {
  for (const name of classes) expect(judged.filter((one) => one.mutant.class === name).length, name).toBeGreaterThan(0);
});

test("at least 95 of 100 mutants that count are found at the right line as one finding", () => {
  const { found, of } = scoreOf(judged);
  expect(of).toBeGreaterThan(500);
  expect(found / of).toBeGreaterThanOrEqual(0.95);
});

test("no example, taken alone, falls far behind", () => {
  for (const [file, list] of Map.groupBy(judged, (one) => one.mutant.file)) {
    const { found, of } = scoreOf(list);
    if (of >= 20) expect(found / of, file).toBeGreaterThanOrEqual(0.85);
  }
});

test("every survivor and every only statement has its reason", () => {
  for (const one of judged)
    if (one.verdict === "survivor" || one.verdict === "only statement")
      expect(one.why, `${one.mutant.file}:${one.mutant.line} ${one.mutant.says}`).not.toBe("");
});

test("report.md is the report of this run", () => {
  expect(readFileSync(new URL("report.md", import.meta.url), "utf8")).toBe(reportOf(judged));
});

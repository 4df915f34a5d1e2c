// One line deleted, one fastener fewer, two neighbours swapped, over every procedure: never two findings for one edit, never an
// exception. The table of what each class gave is held to the run.

import { readFileSync } from "node:fs";
import { beforeAll, expect, test } from "vitest";
import { classes, editOneLine, tableOf } from "./one-line.ts";

let edited: ReturnType<typeof editOneLine> = [];
beforeAll(() => {
  edited = editOneLine();
}, 600_000);

test("there are some thousands of edits, of each class, of every machine", () => {
  expect(edited.length).toBeGreaterThan(2000);
  for (const name of classes) expect(edited.filter((one) => one.class === name).length, name).toBeGreaterThan(40);
  expect(new Set(edited.map(({ file }) => file)).size).toBeGreaterThanOrEqual(16);
});

test("no edit gives two findings", () => {
  expect(edited.filter(({ findings }) => findings.length > 1)).toEqual([]);
});

test("one-line.md is the table of this run", () => {
  expect(readFileSync(new URL("one-line.md", import.meta.url), "utf8")).toBe(tableOf(edited));
});

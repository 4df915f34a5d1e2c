// The coverage table has a row for every word and no empty cell, and its cells name places that exist. That the file on disk is the
// generated one is held by generated.test.ts.

import { existsSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { beforeAll, expect, test } from "vitest";
import { columns, coverage, type Row } from "../../language/generate/coverage.ts";
import { checks } from "../../language/checks/registry.ts";
import { allWords } from "../../language/vocabulary/index.ts";

const project = join(import.meta.dirname, "../..");
let rows: ReadonlyMap<string, Row> = new Map();
beforeAll(() => {
  rows = coverage(project);
}, 120_000);

test("every word has a row", () => {
  expect([...rows.keys()]).toEqual([...allWords]);
});

test("no cell is empty", () => {
  const empty = [...rows].flatMap(([word, row]) =>
    columns.filter((column) => row[column] === "").map((column) => `${word}: ${column}`),
  );
  expect(
    empty,
    "nothing changes there without the word: use it in a case of tests/real-machines/cases, or say in language/vocabulary/at-the-bench.ts why there is nothing",
  ).toEqual([]);
});

test("each cell names a file with that line, a check, or why there is nothing", () => {
  const codes = new Set(checks.map(({ code }) => code)),
    wrong: string[] = [];
  for (const [word, row] of rows)
    for (const column of columns) {
      const cell = row[column];
      if (cell === "") continue;
      const [, path = "", line] = /^((?:tests|examples)\/[^:]+)(?::(\d+))?$/.exec(cell) ?? [];
      const names =
        path !== ""
          ? existsSync(join(project, path)) &&
            (line === undefined ||
              new RegExp(`\\b${word}\\b`).test(
                readFileSync(join(project, path), "utf8").split("\n")[Number(line) - 1] ?? "",
              ))
          : codes.has(cell) || cell === "words.md" || /^\(.+\)$/.test(cell);
      if (!names) wrong.push(`${word}, ${column}: ${cell}`);
    }
  expect(wrong).toEqual([]);
});

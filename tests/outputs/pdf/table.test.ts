// Widths of columns on paper: no word of a head or of a short column is broken while there is room beside it.

import { expect, test } from "vitest";
import { table } from "../../../language/outputs/pdf/table.ts";

const isCut = (words: unknown): boolean => JSON.stringify(words).includes('"cut"');

test("a column of single words keeps them whole beside a column of sentences", () => {
  const made = table<readonly [string, string]>(
    "Signal words",
    [
      { head: "Word", cell: (row) => row[0], isHead: true },
      { head: "It means", cell: (row) => row[1] },
    ],
    [
      ["DANGER", "If not avoided, will result in death or serious injury."],
      ["WARNING", "If not avoided, could result in death or serious injury."],
    ],
    167,
  );
  expect(isCut(made.heads)).toBe(false);
  expect(isCut(made.rows)).toBe(false);
});

test("the heads of narrow columns of figures stay whole", () => {
  const made = table<readonly [number, string]>(
    "Parts",
    [
      { head: "No.", cell: (row) => row[0], is: "n" },
      { head: "Name", cell: (row) => row[1], isHead: true },
      { head: "Count", cell: () => 1, is: "n" },
    ],
    [[1, "Air receiver, 50 litres"]],
    167,
  );
  expect(isCut(made.heads)).toBe(false);
});

test("a word that fits nowhere is still cut, so that it stays on the paper", () => {
  const made = table<string>("Long", [{ head: "One", cell: (row) => row }], ["x".repeat(200)], 60);
  expect(isCut(made.rows)).toBe(true);
});

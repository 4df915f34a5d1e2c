// Widths of columns on paper: no word of a head or of a short column is broken while there is room beside it.

import { expect, test } from "vitest";
import { table } from "../../../language/outputs/pdf/table.ts";
import { piecesOf, plainOf, widthOf, words } from "../../../language/outputs/pdf/words.ts";

const isCut = (made: unknown): boolean => JSON.stringify(made).includes('"cut"');

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

test("a wide word with a hyphen, shown or not, is parted there and its halves stay whole", () => {
  expect(isCut(words("Innensechskant-Schlüssel 8 mm", 20))).toBe(false);
  expect(isCut(words("Drehmoment\u00adschlüssel", 14))).toBe(false);
  expect(isCut(words("Drehmomentschlüssel", 14))).toBe(true);
  expect(isCut(words("a-very".repeat(20), 14))).toBe(false);
  expect(isCut(words("x".repeat(40), 14))).toBe(true);
});

test("a column asks for the halves of a word with a hyphen, not for the whole", () => {
  expect(piecesOf("Innensechskant-Schlüssel 8 mm")).toEqual(["Innensechskant-", "Schlüssel", "8", "mm"]);
  expect(piecesOf("Anzieh\u00addrehmoment, 40-200")).toEqual(["Anzieh\u00ad", "drehmoment,", "40-200"]);
});

test("a figure and its unit stay on one line, words behind a figure may part from it", () => {
  const kept = (text: string): string => plainOf(words(text)).replaceAll("\u00a0", "~");
  expect(kept("45 x 65 x 8 mm, 180 N·m (133 lbf·ft), ± 4 %, 780 V dc, 15 kΩ, -20 to 200 °C")).toBe(
    "45 x 65 x 8~mm, 180~N·m (133~lbf·ft), ±~4~%, 780~V~dc, 15~kΩ, -20 to 200~°C",
  );
  expect(kept("2 people, 3 passes, 12 off, 4 metres, M8 x 25")).toBe("2 people, 3 passes, 12 off, 4 metres, M8 x 25");
});

test("a column that makes the rows high takes width from one that does not miss it", () => {
  const rows = Array.from({ length: 12 }, (_, i) => [
    `R${i}.1`,
    "Innensechskant-Schlüssel 10 mm; Torque wrench 40-200, 40 bis 200 N·m",
    i % 3 === 0 ? "in 3 Durchgängen: 30 %, 60 %, 100 %; über Kreuz; Reihenfolge: 1 7 4 10 2 8 5 11 3 9 6 12" : "",
    i === 4 ? "auf das Gewinde" : "",
  ]);
  const made = table<readonly string[]>(
    "",
    ["Zeile", "Werkzeug", "Durchgänge", "Anmerkung"].map((head, at) => ({ head, cell: (row) => row[at]! })),
    rows,
    150,
    8,
  );
  const lines = rows.map((row) =>
    Math.max(...row.map((text, at) => Math.ceil(widthOf(text, 8) / (made.widths[at]! - 12)))),
  );
  expect(
    lines.reduce((sum, each) => sum + each, 0),
    JSON.stringify(made.widths),
  ).toBeLessThanOrEqual(28);
});

test("a path that is wider than its place breaks behind a folder", () => {
  expect(isCut(words("examples/reducer-family/reducer.strip, examples/workshop/workshop.strip"))).toBe(false);
});

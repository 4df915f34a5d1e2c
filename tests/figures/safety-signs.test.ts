// Every row of safety-signs.csv against the table of signs and its look-up, and the signs that the manual puts on hazards. Sources I08 and I09 in
// tests/reference/sources-hazards.md: two public lists of ISO 7010. The table was made from these rows, so the loop shows that nothing is lost or
// mistyped, and no second source; the second list (column second_list) is one for the rows that it has. Letter and look follow ISO 3864-1.

import { expect, test } from "vitest";
import { answerWords } from "../../language/calc/answer.ts";
import { signNumbers } from "../../language/outputs/manual/signs.ts";
import { hazardKinds } from "../../language/tables/index.ts";
import { safetySigns, signCategories, signCategory } from "../../language/tables/safety-signs.ts";
import { referenceRows, lookUp, tally } from "./reference-rows.ts";

const rows = referenceRows("safety-signs.csv"),
  count = tally("safety-signs.csv", rows.length, lookUp.alone);
const letters: Readonly<Record<string, string>> = {
  warning: "W",
  mandatory: "M",
  prohibition: "P",
  "safe condition": "E",
  fire: "F",
};

for (const row of rows)
  count.row(`${row["code"]} ${row["meaning"]} (${row["status"]}, second list ${row["second_list"]})`, () => {
    const code = row["code"]!;
    expect(safetySigns.filter((sign) => sign.code === code)).toEqual([
      { code, meaning: row["meaning"], at: row["use_here"] },
    ]);
    expect(code[0]).toBe(letters[row["category"]!]);
    expect(signCategory(code).look).toBe(row["look"]);
    const answer = answerWords("safety-sign", [code.toLowerCase()]);
    expect("values" in answer && answer.values).toMatchObject([{ name: code, value: row["meaning"] }]);
  });

test("no sign beside the published ones, each once, and every letter known", () => {
  expect(safetySigns.map((sign) => sign.code)).toEqual(rows.map((row) => row["code"]));
  expect(new Set(safetySigns.map((sign) => sign.code)).size).toBe(rows.length);
  for (const { code } of safetySigns) expect(Object.keys(signCategories)).toContain(code[0]);
});

test("where the two lists differ the numbers of the present edition stand: apron M026, do not touch P010, no water P011", () => {
  const differing = rows.filter((row) => row["second_list"] === "differs").map((row) => row["code"]);
  expect(differing).toEqual(["M026", "P010", "P011"]);
  const meaning = (code: string): string | undefined => safetySigns.find((sign) => sign.code === code)?.meaning;
  expect(meaning("M026")).toBe("Use protective apron");
  expect(meaning("M025")).toBeUndefined();
  expect(meaning("P010")).toBe("Do not touch");
  expect(meaning("W015")).toBe("Overhead load");
  expect(meaning("W024")).toBe("Crushing of hands");
});

test("every sign that the manual puts on a kind of hazard is a published warning sign of that meaning", () => {
  const words: Readonly<Record<string, RegExp>> = {
    electrical: /Electricity/,
    pressure: /Pressurized/,
    overhead: /Overhead load/,
    hot: /Hot surface/,
    magnetic: /Magnetic field/,
    sharp: /Sharp/,
    crushing: /Crushing/,
    heavy: /Crushing/,
    rotating: /Automatic start-up/,
    fire: /Flammable/,
    suffocation: /Asphyxiating/,
    slipping: /Slippery/,
    noise: /noise/,
  };
  expect(Object.keys(words).sort()).toEqual(Object.keys(signNumbers).sort());
  for (const [kind, code] of Object.entries(signNumbers)) {
    expect(Object.keys(hazardKinds)).toContain(kind);
    const row = rows.find((each) => each["code"] === code);
    expect(row?.["category"], code).toBe("warning");
    expect(row?.["meaning"], kind).toMatch(words[kind]!);
  }
});

test("a number or word that no sign has is an error with what there is", () => {
  for (const wrong of ["W999", "unicorn", "Q001"]) {
    const answer = answerWords("safety-sign", [wrong]);
    expect("values" in answer, wrong).toBe(false);
  }
});

// What a hand puts before a line, as in a list, and a temperature in pieces: one finding a line that says what to write, with a fix that
// leaves nothing to be found, and the line is read as it is meant.

import { expect, test } from "vitest";
import { parse } from "../../language/syntax/index.ts";
import { check, stage } from "../bench/refit/stage.ts";

const text = (first: string, second: string): string =>
  stage(
    `part lid "Lid"\n fastener screws screw "Screws" { count 4  joins lid to b }`,
    `step "Open" {\n    ${first}undo screws\n    ${second}remove lid\n  }`,
    "aim lid off",
  );
/** Codes, whether the one fix is certain, and the text with all fixes done. */
function mended(of: string): { codes: string[]; certain: boolean; text: string } {
  const { findings } = check(of),
    wrong = findings.filter(({ severity }) => severity === "error" || severity === "warning"),
    edits = wrong.flatMap(({ fixes }) => fixes[0]?.edits ?? []);
  return {
    codes: wrong.map(({ code }) => code),
    certain: wrong.every(({ fixes }) => fixes.length === 1 && fixes[0]!.certain),
    text: edits.reduceRight((all, edit) => all.slice(0, edit.start) + edit.text + all.slice(edit.end), of),
  };
}

test.each([
  ["1) ", "2) "],
  ["1. ", "2. "],
  ["(1) ", "(2) "],
  ["a) ", "b) "],
  ["- ", "- "],
  ["* ", "* "],
  ["\u2022 ", "\u2013 "],
])("before acts %s%s", (first, second) => {
  const found = mended(text(first, second));
  expect(found).toEqual({
    codes: ["syntax/strange-sign", "syntax/strange-sign"],
    certain: true,
    text: text("", ""),
  });
});

test.each(["Step 1: ", "step 1. ", "Step 12 - ", "STEP 3) "])(
  "before an act %s: it may be meant as a step of its own",
  (mark) => {
    const found = mended(text(mark, ""));
    expect(found).toEqual({ codes: ["syntax/strange-sign"], certain: false, text: text("", "") });
  },
);

test.each([
  ['step "Open" {', 'Step 3: "Open" {', 'step "Open" {'],
  ['step "Open" {', "Step 3: {", "step {"],
  ['step "Open" {', '2) step "Open" {', 'step "Open" {'],
])("%s as %s", (right, wrong, meant) => {
  expect(mended(text("", "").replace(right, wrong))).toEqual({
    codes: ["syntax/strange-sign"],
    certain: true,
    text: text("", "").replace(right, meant),
  });
});

const warmed = (figure: string): string =>
  stage(
    `part hub "Hub" { rests on b }\n hazard heat hot caution "Heat" { on hub  temperature ${figure}  precaution cool }`,
    "step { cool heat  remove hub }",
    "aim hub off",
  );
test.each(["80 ° C", "80° C", "80 ° c", "80 deg C", "80 degrees C"])("a temperature in pieces: %s", (figure) => {
  expect(mended(warmed("80 °C"))).toMatchObject({ codes: [] });
  expect(mended(warmed(figure))).toMatchObject({ codes: ["syntax/strange-sign"], certain: true });
  expect(mended(mended(warmed(figure)).text).codes).toEqual([]);
  expect(check(warmed(figure)).findings.find(({ code }) => code === "syntax/strange-sign")!.says).toBe(
    "A temperature is written in one piece, as in 80 °C",
  );
});

test("what only looks so stays what it is", () => {
  for (const line of ["loosen screws 45 deg", "mark lid as M1", 'note "1) first"', "step-two-lid"])
    expect(
      parse(line, "step").errors.filter(({ code }) => code === "syntax/strange-sign"),
      line,
    ).toEqual([]);
});

// Wording beside a danger: only what is certain is found, and ordinary texts are left alone.

import { expect, test } from "vitest";
import { check, stage } from "../bench/refit/stage.ts";

const lid = `no electrical "None."\n part lid "Lid" { rests on b }`;
const said = (line: string): string[] =>
  check(stage(lid, `step { ${line}\n remove lid }`, "aim lid off"))
    .findings.filter((one) => one.code.startsWith("wording/"))
    .map((one) => `${one.code}: ${one.says}`);

// Sentences and counts of words: the rule of 20 words for procedural sentences (ASD-STE100, read through public summaries); a figure
// with its unit and a word with hyphens count as one, text in brackets is a sentence of its own.
test("twenty words pass beside a danger, twenty-one do not", () => {
  const words = (count: number): string => Array.from({ length: count }, (_, i) => `w${i}`).join(" ");
  expect(said(`warning "${words(20)}."`)).toEqual([]);
  expect(said(`warning "${words(21)}."`)).toEqual([
    "wording/long-sentence: A sentence here has 21 words: over 20, make two of it",
  ]);
  expect(said(`warning "${words(19)} 40 mm."`)).toEqual([]);
  expect(said(`warning "${words(15)} (${words(12)}) ${words(4)}."`)).toEqual([]);
  expect(said(`warning "${words(15)}: ${words(15)}."`)).toEqual([]);
  expect(said(`note "${words(30)}."`)).toEqual([]);
});

test("a signal word in a text is told with the line to write", () => {
  expect(said(`note "WARNING: the lid is hot."`)).toEqual([
    'wording/signal-in-text: "WARNING" is typed into the text of a note: write warning "…"',
  ]);
  expect(said(`caution "Danger! The lid is hot: wait."`)).toEqual([
    'wording/signal-in-text: "Danger" is typed into the text of a caution: write danger "…"',
  ]);
  expect(said(`caution "Caution: the lid is hot."`)).toEqual([
    'wording/signal-in-text: "Caution" stands in the text of caution again: it is printed twice',
  ]);
  expect(said(`clean lid "Danger: hot."`)).toEqual([
    'wording/signal-in-text: "Danger" is typed into the text of clean: write it as a line of its own, danger "…"',
  ]);
  for (const text of ["Caution labels stay on.", "The warning lamp goes out.", "Notice the mark on the rim."])
    expect(said(`note "${text}"`)).toEqual([]);
});

test("an injury under a notice is told, damage and denials are not", () => {
  expect(said(`notice "The spring burns the skin."`)).toHaveLength(1);
  expect(said(`notice "Risk of electric shock."`)).toHaveLength(1);
  for (const text of [
    "Do not crush the ring.",
    "The seal burns at 200 °C.",
    "It kills no seal.",
    "This is not an injury.",
  ])
    expect(said(`notice "${text}"`)).toEqual([]);
  expect(said(`warning "The spring burns the skin: let it cool."`)).toEqual([]);
});

test("what is left from drafting is told in any text, part numbers are not", () => {
  for (const text of ["Torque TBD.", "??? check", "Use XXX.", "TODO"]) expect(said(`note "${text}"`)).toHaveLength(1);
  for (const text of ["Part XXX-12.", "Really?", "Size XXL gloves.", "Todo list in the office."])
    expect(said(`note "${text}"`)).toEqual([]);
});

test("a warning of nothing but care is asked about", () => {
  for (const text of ["Be careful!", "Caution", "Take care.", "Danger of death!"])
    expect(said(`warning "${text}"`)).toEqual([
      "wording/says-nothing: This says neither what the danger is nor what to do against it",
    ]);
  expect(said(`warning "Be careful: the rim is sharp."`)).toEqual([]);
  expect(said(`note "Take care."`)).toEqual([]);
});

// Letters and signs that come with pasted text and look like ours: one finding at the word, with the remedy, and the word is read as it
// looks. Unicode Technical Standard 39 lists such letters as confusable.

import { expect, test } from "vitest";
import { check, stage } from "../bench/refit/stage.ts";

const text = stage(
  `part lid "Lid" { mass 2 kg }\n fastener screws screw "Screws" { count 4 size M8x20 class 8.8 drive hex 13 torque 20 N·m joins lid to b }`,
  'step {\n undo screws\n measure gap on b "Gap" 0.1..0.2 mm\n remove lid\n }',
  "aim lid off",
);
const found = (from: string, to: string): readonly [string, readonly string[]][] =>
  check(text.replace(from, to)).findings.map(({ code, fixes }) => [code, fixes.map(({ title }) => title)]);

test("as it stands nothing is found", () => {
  expect(check(text).findings.filter(({ severity }) => severity !== "hint")).toEqual([]);
});

test.each<[string, string, string]>([
  ["undo screws", "und\u043e screws", "Write undo"],
  ["undo screws", "undo s\u0441rews", "Write screws"],
  ["M8x20", "\u041c8x20", "Write M8x20"],
  ["M8x20", "M8\u044520", "Write M8x20"],
  ["20 N·m", "20 \u039d·m", "Write N·m"],
  ["20 N·m", "\uff12\uff10 N·m", "Write 20"],
  ["0.1..0.2", "0.1\u20260.2", "Write .."],
])("%s as %s", (from, to, remedy) => {
  expect(found(from, to)).toEqual([["syntax/strange-sign", [remedy]]]);
});

test("a name in one script of its own stays a name", () => {
  const own = text.replaceAll("screws", "\u0432\u0438\u043d\u0442\u044b");
  expect(check(own).findings.filter(({ severity }) => severity !== "hint")).toEqual([]);
});

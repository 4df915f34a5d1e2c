// What a finding says to do is done as it says: nothing is found then. Two findings that send the author to and fro mend nothing.

import { expect, test } from "vitest";
import { check, codes, stage } from "../bench/refit/stage.ts";

const mended = (text: string): string => {
  const [found] = check(text).findings.filter((one) => one.fixes.length > 0);
  return [...found!.fixes[0]!.edits]
    .sort((a, b) => b.start - a.start)
    .reduce((whole, edit) => whole.slice(0, edit.start) + edit.text + whole.slice(edit.end), text);
};

test.each([
  ["undone", "undo latches", "sequence/captive"],
  ["loosened only", "loosen latches", "sequence/still-held"],
  ["forgotten", "", "sequence/still-held"],
])("captive screws that are %s before their cover comes off are backed out", (_, act, code) => {
  const text = stage(
    `part lid "Lid"\n fastener latches captive-screw "Latches" { count 4 joins lid to b }`,
    `step {\n ${act}\n remove lid\n}`,
    "aim lid off",
  );
  expect(codes(text)).toEqual([code]);
  const right = mended(text);
  expect(right).toContain("back-out latches");
  expect(codes(right)).toEqual([]);
});

test("of captive screws and others each is told its own way out", () => {
  const text = stage(
    `part lid "Lid"\n fastener latches captive-screw "Latches" { count 4 joins lid to b }\n fastener screws screw "Screws" { joins lid to b }`,
    "step {\n remove lid\n}",
    "aim lid off",
  );
  expect(codes(mended(text))).toEqual([]);
});

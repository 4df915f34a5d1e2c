// Small tools of the syntax: the line table and the ranking of near names.

import fc from "fast-check";
import { expect, test } from "vitest";
import { editDistance, linesOf, nearNames, offsetAt, positionAt } from "../../language/syntax/index.ts";

test("offsets become lines and columns and come back, for every kind of line end", () => {
  fc.assert(
    fc.property(fc.array(fc.constantFrom("a", "é", "𝔸", "\n", "\r\n", "\r", " "), { maxLength: 40 }), (parts) => {
      const text = parts.join(""),
        lines = linesOf(text);
      expect(lines.starts.length).toBe(text.split(/\r\n|\r|\n/).length);
      for (let at = 0; at <= text.length; at++) expect(offsetAt(lines, positionAt(lines, at))).toBe(at);
    }),
    { seed: 7 },
  );
});

test("places outside the text count as its ends", () => {
  const lines = linesOf("ab\ncd");
  expect(positionAt(lines, 99)).toEqual({ line: 1, column: 2 });
  expect(positionAt(lines, -1)).toEqual({ line: 0, column: 0 });
  expect(offsetAt(lines, { line: 9, column: 0 })).toBe(5);
  expect(offsetAt(lines, { line: 0, column: 99 })).toBe(3);
});

// Damerau 1964: an added, a lost, a changed letter and two swapped neighbours are one slip each. The pairs below are our own.
test("one slip of the hand counts one", () => {
  for (const [a, b, slips] of [
    ["remove", "remov", 1],
    ["remove", "removee", 1],
    ["remove", "rempve", 1],
    ["remove", "rmeove", 1],
    ["undo", "undo", 0],
    ["lift", "fit", 2],
    ["", "abc", 3],
  ] as const) {
    expect(editDistance(a, b), `${a} ${b}`).toBe(slips);
    expect(editDistance(b, a), `${b} ${a}`).toBe(slips);
  }
});

test("the distance is symmetric, zero for equal words only, and stops at its limit", () => {
  const word = fc.string({ maxLength: 8, unit: fc.constantFrom("a", "b", "c", "-") });
  fc.assert(
    fc.property(word, word, fc.nat(4), (a, b, limit) => {
      const slips = editDistance(a, b);
      expect(editDistance(b, a)).toBe(slips);
      expect(slips === 0).toBe(a === b);
      expect(editDistance(a, b, limit)).toBe(slips <= limit ? slips : limit + 1);
    }),
    { seed: 7 },
  );
});

test("near names are ranked, and short or far ones are left out", () => {
  const words = ["remove", "renew", "release", "undo", "o-ring", "on"];
  expect(nearNames("remov", words)).toEqual(["remove"]);
  expect(nearNames("Oring", words)).toEqual(["o-ring"]);
  expect(nearNames("renwe", words)[0]).toBe("renew");
  expect(nearNames("om", words)).toEqual([]);
  expect(nearNames("zzzzzz", words)).toEqual([]);
});

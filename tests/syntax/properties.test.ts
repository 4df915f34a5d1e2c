// Laws of the syntax, over texts made of its own words and signs in any order.

import fc from "fast-check";
import { expect, test } from "vitest";
import { eachItem, format, parse, print } from "../../language/syntax/index.ts";
import { allWords, kinds, places } from "../../language/vocabulary/index.ts";
import { unitWords } from "../../language/quantities/index.ts";

const piece = fc.oneof(
  fc.constantFrom(...allWords),
  fc.constantFrom(...Object.values(kinds).flatMap((names) => [...names])),
  fc.constantFrom(...unitWords.any),
  fc.constantFrom(
    "{",
    "}",
    "{",
    "}",
    "\n",
    "\n",
    "\r\n",
    "  ",
    "# note\n",
    ",",
    "..",
    "±",
    "+/-",
    "(",
    ")",
    "x",
    "×",
    '"text"',
    '"open',
    '"""',
    "“curly”",
    "\\",
  ),
  fc.constantFrom(
    "9",
    "0.05",
    "1-13/16",
    "3,5",
    "M8x35",
    "M8x1x35-8.8",
    "G1/4",
    "1/4 NPT",
    "3/8-16 UNC",
    "#10-32 UNF",
    "12:04",
    "cap.3",
    "lid",
    "पहिया",
    "e\u0301",
  ),
  fc.constantFrom("<<<<<<< a\n", "=======\n", ">>>>>>> b\n", ";", "§", "\ufffd", "\u0007", "\ufeff", "\u00a0"),
);
const text = fc
  .array(fc.tuple(piece, fc.constantFrom(" ", " ", "", "\n")), { maxLength: 60 })
  .map((parts) => parts.flat().join(""));
const settings = { seed: 7, numRuns: 1500 };

test("any text in any place parses, comes back whole, and each finding lies in it", () => {
  fc.assert(
    fc.property(
      fc.oneof(text, fc.string({ unit: "binary", maxLength: 60 })),
      fc.constantFrom(...places),
      (source, place) => {
        const tree = parse(source, place),
          lines = source.split(/\r\n|\r|\n/).length;
        expect(print(tree)).toBe(source);
        let before = -1;
        for (const { start, end, line, fix } of tree.errors) {
          expect(start).toBeGreaterThanOrEqual(0);
          expect(end).toBeGreaterThanOrEqual(start);
          expect(end).toBeLessThanOrEqual(source.length);
          expect(line).toBeLessThan(lines);
          expect(start, "in the order of the text").toBeGreaterThanOrEqual(before);
          for (const edit of fix?.edits ?? []) expect(edit.start <= edit.end && edit.end <= source.length).toBe(true);
          before = start;
        }
        eachItem(tree.items, (item) => {
          expect(item.last).toBeGreaterThanOrEqual(item.first);
          for (const one of item.arguments) expect(one.first > item.first && one.last <= item.last).toBe(true);
        });
      },
    ),
    settings,
  );
});

test("formatting twice is formatting once, and keeps every token and comment", () => {
  const seen = (source: string): unknown => {
    const { tokens, comments } = parse(source).scan;
    return [
      tokens.map((token) => token.image.replaceAll(/\s+/g, " ")),
      comments.map((one) => source.slice(one.start, one.end).trimEnd()),
    ];
  };
  fc.assert(
    fc.property(text, (source) => {
      const once = format(source);
      expect(format(once)).toBe(once);
      expect(seen(once)).toEqual(seen(source));
    }),
    settings,
  );
});

test("the same text gives the same tree, whatever was parsed before", () => {
  fc.assert(
    fc.property(text, text, (one, other) => {
      const first = JSON.stringify(parse(one).errors);
      parse(other);
      expect(JSON.stringify(parse(one).errors)).toBe(first);
    }),
    { seed: 7, numRuns: 200 },
  );
});

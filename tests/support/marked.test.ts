// The notation itself: it must see every mark, and the comparison must fail for what is unmarked and for what is not found.

import { expect, test } from "vitest";
import { expectMarked } from "./check-text.ts";
import { marked } from "./marked.ts";

test("marks, their codes and reasons, files and the cursor are read, and taken out of the text", () => {
  const { files, marks, cursor } = marked(`
    #- a.strip
    part a "A" { mass 2 }
    #                 ^ error figure/x: 2 has no unit
    #  | because: it stands alone
    # a comment stays
    #- dir/b.strip
    use "a.strip"
    #<^^ says this
    undo lid-<|>screws
  `);
  expect([...files]).toEqual([
    ["a.strip", 'part a "A" { mass 2 }\n# a comment stays'],
    ["dir/b.strip", 'use "a.strip"\nundo lid-screws\n'],
  ]);
  expect(marks).toEqual([
    {
      file: "a.strip",
      line: 0,
      start: 18,
      end: 19,
      says: "2 has no unit",
      severity: "error",
      code: "figure/x",
      because: ["it stands alone"],
    },
    {
      file: "dir/b.strip",
      line: 0,
      start: 0,
      end: 3,
      says: "says this",
      severity: undefined,
      code: undefined,
      because: [],
    },
  ]);
  expect(cursor).toEqual({ file: "dir/b.strip", start: 23, end: 23 });
});

test("a selection", () => {
  const { files, cursor } = marked("undo <|lid|> now");
  expect(files.get("main.strip")).toBe("undo lid now\n");
  expect(cursor).toEqual({ file: "main.strip", start: 5, end: 8 });
});

test("a finding without a mark fails, so does a mark without a finding, or at another place", () => {
  const wrong = 'part lid "Lid" {\n  rests on frame\n  wieght 2 kg\n}';
  expect(() => expectMarked(wrong)).toThrow();
  expect(() => expectMarked('part lid "Lid" { rests on frame }\n#    ^^^ something')).toThrow();
  const says =
    "Unknown word wieght: every line begins with a word of the language, such as mass, fits, rests, between, behind or renew";
  expect(() => expectMarked(wrong.replace("kg\n", `kg\n#       ^^ ${says}\n`))).toThrow();
});

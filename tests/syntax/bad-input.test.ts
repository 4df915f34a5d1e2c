// Texts that nobody should have given: one clear finding each, never an exception, never a hang.

import { expect, test } from "vitest";
import { format, parse, print } from "../../language/syntax/index.ts";
import { deepestBlock } from "../../language/syntax/mend-braces.ts";

const codes = (text: string, place?: string): string[] => parse(text, place).errors.map((error) => error.code);

test("an empty file, blanks, a BOM alone, comments alone: no items, no findings", () => {
  for (const text of ["", " \t\n\r\n", "\ufeff", "# a\n# b", "\u00a0"]) {
    const tree = parse(text);
    expect([tree.items, tree.errors], JSON.stringify(text)).toEqual([[], []]);
    expect(print(tree)).toBe(text);
  }
});

test("a file with a byte of value 0 is named as no text", () => {
  const tree = parse("part a\n\0\0\u0001{{{ part b\n", "unit");
  expect(tree.errors.map((error) => [error.code, error.line, error.start])).toEqual([["syntax/not-text", 1, 7]]);
  expect(print(tree)).toBe(tree.scan.text);
});

test("half of a character is one finding at its place, and the rest is read", () => {
  for (const half of ["\ud800", "\udc00"]) {
    const tree = parse(`part a\npart b "x${half}y"\npart c`, "unit");
    expect(tree.errors.map((error) => [error.code, error.line])).toEqual([["syntax/not-text", 1]]);
    expect(tree.items).toHaveLength(3);
  }
});

test("a file that is no UTF-8 says so where the first letter was lost", () => {
  expect(parse("part a\npart \ufffdb", "unit").errors.map((error) => [error.line, error.says])).toEqual([
    [1, "A letter here could not be read: save the file as UTF-8"],
  ]);
});

test("50 MB are refused with one finding that names the limit", () => {
  const text = "part a { mass 3 kg }\n".repeat(2_500_000),
    tree = parse(text, "unit");
  expect(tree.errors.map((error) => [error.code, error.says])).toEqual([
    ["syntax/too-large", "This file is too large: 52.5 million characters, and at most 8 million are read"],
  ]);
  expect(tree.items).toEqual([]);
});

test("10,000 blocks inside each other: one finding, paired or not", () => {
  const deep = (times: number): string => `${"if a {\n".repeat(times)}mass 3 kg\n`;
  expect(codes(`${deep(10_000)}${"}\n".repeat(10_000)}`, "part")).toEqual(["syntax/too-deep"]);
  expect(codes(`${deep(deepestBlock)}${"}\n".repeat(deepestBlock)}`, "part")).toEqual([]);
  expect(() => parse(deep(10_000), "part")).not.toThrow();
  expect(() => parse("{".repeat(10_000))).not.toThrow();
  expect(() => parse("}".repeat(10_000))).not.toThrow();
  expect(() => parse(`${"  if a {".repeat(10_000)} mass 3 kg ${"}".repeat(10_000)}`, "part")).not.toThrow();
});

test("a line of 10,000 conditions: one finding", () => {
  expect(codes("if a ".repeat(10_000) + "mass 3 kg", "part")).toEqual(["syntax/block-missing"]);
});

test("100,000 stray braces in a large file end in reasonable time", () => {
  const text = "  part a\n".repeat(100_000) + "}\n".repeat(100_000);
  expect(parse(text, "unit").errors.length).toBeGreaterThan(0);
}, 20_000);

test("merge conflicts are one finding each, and both sides stay in the text", () => {
  const text =
    "unit a {\n<<<<<<< HEAD\n  part b\n||||||| base\n  part c\n=======\n  part d\n>>>>>>> branch\n}\n<<<<<<< HEAD\n=======\n>>>>>>> x\n";
  expect(parse(text).errors.map((error) => [error.code, error.line])).toEqual([
    ["syntax/merge-conflict", 1],
    ["syntax/merge-conflict", 9],
  ]);
  expect(print(parse(text))).toBe(text);
  expect(format(text)).toBe(text);
});

test("tabs and blanks of other kinds are blanks", () => {
  expect(codes("part\ta\t{\n\tmass\u00a03\u202fkg\n}\n", "unit")).toEqual([]);
});

test("a text of a million signs without meaning is one finding a line", () => {
  expect(codes("§".repeat(100_000))).toHaveLength(1);
});

// One sign that was lost is one mistake, said where it was lost; what stands around it stays known. Common practice.

import { expect, test } from "vitest";
import { parse } from "../../language/syntax/index.ts";

const said = (text: string): string[] => parse(text).errors.map((error) => `${error.line + 1}: ${error.code}`);
const words = (text: string): (string | undefined)[] =>
  parse(text).items[0]!.block!.items.map((item) => item.entry?.word);

test("a text block without its end inside braces", () => {
  const inPart = 'unit a "A" {\n  part b "B" { mass 3 kg  about """\n    Long text.\n    More.\n  }\n  part c "C"\n}\n';
  expect(said(inPart)).toEqual(["2: syntax/unclosed-text"]);
  expect(words(inPart)).toEqual(["part", "part"]);
  const inUnit = 'unit a "A" {\r\n  about """\r\n    Long text.\r\n\r\n  part c "C"\r\n}\r\n';
  expect(said(inUnit)).toEqual(["2: syntax/unclosed-text"]);
  expect(words(inUnit)).toEqual(["about", "part"]);
});

test("a block that opens and wraps, and lost a brace", () => {
  expect(said('unit a "A" {\n  fastener f "F" count 2  size M6\n    joins b to c }\n  part c "C"\n}\n')).toEqual([
    "2: syntax/brace-missing",
  ]);
  expect(said('unit a "A" {\n  fastener f "F" { count 2\n    size M6  joins b to c\n  part c "C"\n}\n')).toEqual([
    "3: syntax/brace-missing",
  ]);
});

test("a line that opens a block, lost: one finding at the first line of its block, and what stands around it stays known", () => {
  const unit =
    'unit a "A" {\n  base b\n  part b "B" {\n    mass 3 kg\n  }\n  fastener f screw "F" {\n    count 2\n    joins c to b\n  }\n  part c "C"\n}\n';
  const without = (line: number): string =>
    unit
      .split("\n")
      .map((one, i) => (i === line - 1 ? "" : one))
      .join("\n");
  expect(said(without(1))).toEqual(["2: syntax/head-missing"]);
  expect(said(without(3))).toEqual(["4: syntax/head-missing"]);
  expect(said(without(6))).toEqual(["7: syntax/head-missing"]);
  expect(words(without(6))).toEqual(["base", "part", "fastener", "part"]);
  expect(parse(without(6)).errors[0]!.says).toBe(
    'No line opens the block that begins here: a line is missing, as fastener screws "Screws" {',
  );
});

test("a step without its first line is read as a step", () => {
  const text =
    'procedure p "P" for a {\n  aim b off\n\n    undo f\n    remove b\n  }\n  step "Then" {\n    clean b\n  }\n}\n';
  expect(said(text)).toEqual(["4: syntax/head-missing"]);
  expect(words(text)).toEqual(["aim", "step", "step"]);
});

test("an editor that closes a block of itself in front of its lines: that } is one too many", () => {
  const text = 'procedure p "P" for a {\n  step "One" {\n  }\n    undo f\n    remove b\n  }\n}\n';
  expect(said(text)).toEqual(["3: syntax/brace-stray"]);
  expect(words(text)).toEqual(["step"]);
});

test("a text block that lost its beginning or its end is one finding, whichever way it stands", () => {
  for (const text of [
    'unit a "A" {\n  renew always seal\n  about """\n    Long; text. Of 3 lines.\n    More - and more.\n  """\n  part c "C"\n  about """\n    Second.\n  """\n}\n',
    'unit a "A" {\n  hazard h spring "H" {\n    precaution block behind c\n      """\n      Turn; it. In. 3 turns.\n      More - and more.\n      """\n  }\n  about """\n    Second.\n  """\n}\n',
  ]) {
    expect(said(text)).toEqual([]);
    text.split("\n").forEach((line, i, lines) => {
      if (!line.includes('"""')) return;
      const found = said([...lines.slice(0, i), "", ...lines.slice(i + 1)].join("\n"));
      expect(found, `line ${i + 1}`).toHaveLength(1);
      expect(found[0], `line ${i + 1}`).toContain("syntax/unclosed-text");
    });
  }
});

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

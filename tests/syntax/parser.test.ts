// What the parser makes of texts that are right.

import { expect, test } from "vitest";
import { eachItem, parse, print } from "../../language/syntax/index.ts";
import { StripRules } from "../../language/syntax/rules.ts";
import { vocabulary } from "../../language/vocabulary/index.ts";
import { coreExample, everyWord, examples } from "./texts.ts";

const says = (text: string, place?: string): string[] =>
  parse(text, place).errors.map((error) => `${error.line + 1}: ${error.says}`);

/** The arguments of the first item, as `slot=its tokens`. */
function argumentsOf(text: string, place: string): string[] {
  const tree = parse(text, place);
  return tree.items[0]!.arguments.map(
    (one) =>
      `${one.slot}=${tree.scan.tokens
        .slice(one.first, one.last + 1)
        .map((token) => token.image)
        .join(" ")}`,
  );
}

test("the example of each word parses in its place, as that word", () => {
  for (const { place, word, example } of vocabulary) {
    const { errors, items } = parse(example, place);
    expect([errors, items[0]?.entry?.word], `${place}: ${example}`).toEqual([[], word]);
  }
});

test("one file uses every word with every shape it has, and parses clean", () => {
  const tree = parse(everyWord),
    used = new Set<string>();
  expect(says(everyWord)).toEqual([]);
  eachItem(tree.items, (item) => used.add(`${item.entry!.word} ${item.entry!.shape}`));
  expect(
    [...new Set(vocabulary.map((entry) => `${entry.word} ${entry.shape}`))].filter((key) => !used.has(key)),
  ).toEqual([]);
});

test("the first example parses clean", () => expect(says(coreExample)).toEqual([]));

test("every example parses clean, but those that show a mistake of form", () => {
  const withErrors = examples.filter(({ text }) => parse(text).errors.length > 0).map(({ path }) => path);
  expect(withErrors.filter((path) => !path.startsWith("mistakes/"))).toEqual([]);
});

test("arguments are told apart", () => {
  expect(argumentsOf("stages 52 N·m (38 lb-ft), 90 deg", "fastener")).toEqual([
    "stage=52 N·m ( 38 lb-ft )",
    "stage=90 deg",
  ]);
  expect(argumentsOf("size #10-32 UNF x 1/2 in # a comment", "fastener")).toEqual(["thread=#10-32 UNF x 1/2 in"]);
  expect(argumentsOf("size 164.47 x 3.53 mm", "part")).toEqual(["plane=164.47 x 3.53 mm"]);
  expect(argumentsOf("tag leads as M8, R1", "step"), "a size may be a name").toEqual([
    "item=leads",
    "label=M8",
    "label=R1",
  ]);
  expect(argumentsOf("remove cap.3, x with y", "step")).toEqual(["item=cap.3", "item=x", "name=y"]);
  expect(argumentsOf("loosen x 2 turns", "step")).toEqual(["item=x", "angle=2 turns"]);
  expect(argumentsOf('part ring o-ring "Ring"', "unit")).toEqual(["name=ring", "kind:part=o-ring", 'string="Ring"']);
  expect(argumentsOf("passes 30 %, 60 %, 100 %", "fastener")).toEqual(["passes=30 % , 60 % , 100 %"]);
});

test("declared names are told from names referred to", () => {
  const { items } = parse('procedure strip "Strip" for pump { }');
  expect(items[0]!.arguments.filter((one) => one.slot === "name").map((one) => one.declares)).toEqual([true, false]);
});

test("every unit that the figures know in a file is read after a figure", () => {
  for (const text of [
    "torque 9 N·m",
    "torque 9 N.m",
    "torque 9 Nm",
    "torque 80 lbf·in",
    "torque 9 ft-lb",
    "torque 9 lb·ft",
    "stages 9 N·m, 90°",
    "back-out 1/4 turn",
    "bead 3mm",
    "supply 24 V DC",
  ]) {
    const place = text.startsWith("bead") ? "joint" : text.startsWith("supply") ? "part" : "fastener";
    expect(says(text, place), text).toEqual([]);
  }
  for (const text of ["volume 2 US  qt", "volume 3 cm³", "volume 1-1/2 US gal", "volume 8 US fl oz"])
    expect(says(text, "fluid"), text).toEqual([]);
});

test("a word is a word only where it is expected", () => {
  expect(says('part count "C" { rests on in  behind part, step }', "unit")).toEqual([]);
  expect(says("joins a,\n  drive to b", "fastener"), "after a comma a line may open with any name").toEqual([]);
});

test("a block of if and unless may be one item on the same line", () => {
  const { items, errors } = parse("if late torque 9 N·m\nsize M8", "fastener");
  expect(errors).toEqual([]);
  expect(items.map((item) => item.entry?.word)).toEqual(["if", "size"]);
  expect(items[0]!.block!.items.map((item) => item.entry?.word)).toEqual(["torque"]);
});

test("names are compared after NFC, of any script, with BOM and CRLF", () => {
  const tree = parse("\ufeffpart e\u0301cran { rests on पहिया }\r\npart 軸受 { behind \u00e9cran }\r\n", "unit");
  expect(tree.errors).toEqual([]);
  expect(tree.scan.tokens.filter((token) => token.text === "\u00e9cran")).toHaveLength(2);
  expect(print(tree)).toBe(tree.scan.text);
});

test("the grammar's rules are sound: no rule is ambiguous for one token of lookahead, none is left-recursive", () => {
  expect(() => new StripRules(true)).not.toThrow();
});

test("LF, CRLF and CR end lines alike", () => {
  const text = 'part a { # one\n  mass 3 kg\n  about """\n    x\n  """\n}\npart b\n';
  const shape = (text: string): unknown =>
    parse(text, "unit").scan.tokens.map((token) => [
      token.text.replaceAll(/\r\n?/g, "\n"),
      token.line,
      token.endLine,
      token.column,
    ]);
  expect(says(text, "unit")).toEqual([]);
  expect(shape(text.replaceAll("\n", "\r\n"))).toEqual(shape(text));
  expect(shape(text.replaceAll("\n", "\r"))).toEqual(shape(text));
});

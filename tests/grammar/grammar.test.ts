// The colouring grammar: every word, kind, size and quantity has its scope, and the committed file is the generated one.

import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import { beforeAll, expect, test } from "vitest";
import onig from "vscode-oniguruma";
import textmate, { type IGrammar } from "vscode-textmate";
import { generate, scopeOf } from "../../language/generate/grammar.ts";
import { unitWords } from "../../language/quantities/index.ts";
import { kinds, vocabulary } from "../../language/vocabulary/index.ts";
import { parse } from "../../language/syntax/index.ts";
import { coreExample } from "../syntax/texts.ts";

let grammar: IGrammar;
beforeAll(async () => {
  const wasm = readFileSync(createRequire(import.meta.url).resolve("vscode-oniguruma/release/onig.wasm"));
  await onig.loadWASM(wasm.buffer.slice(wasm.byteOffset, wasm.byteOffset + wasm.byteLength));
  const registry = new textmate.Registry({
    onigLib: Promise.resolve({
      createOnigScanner: (sources: string[]) => new onig.OnigScanner(sources),
      createOnigString: (text: string) => new onig.OnigString(text),
    }),
    loadGrammar: () => Promise.resolve(textmate.parseRawGrammar(generate().text, "strip.json")),
  });
  grammar = (await registry.loadGrammar("source.strip"))!;
});

/** Each coloured stretch of a text, as [text, its innermost scope]. */
function colours(text: string): [string, string][] {
  let stack = textmate.INITIAL;
  return text.split("\n").flatMap((line) => {
    const { tokens, ruleStack } = grammar.tokenizeLine(line, stack);
    stack = ruleStack;
    return tokens.map((token): [string, string] => [
      line.slice(token.startIndex, token.endIndex),
      token.scopes.at(-1)!,
    ]);
  });
}
const scopeIn = (text: string, what: string): string | undefined => colours(text).find(([part]) => part === what)?.[1];

test("the committed grammar is the generated one: run npm run generate", () => {
  const { path, text } = generate();
  expect(readFileSync(new URL(`../../${path}`, import.meta.url), "utf8")).toBe(text);
});

test("every word of the language has its scope in its example", () => {
  for (const { word, example } of vocabulary)
    expect([word, scopeIn(example, word)], example).toEqual([word, scopeOf(word)]);
});

test("words are told apart by what they do", () => {
  expect(["part", "undo", "torque", "lock-out", "danger", "joins"].map(scopeOf)).toEqual([
    "storage.type.strip",
    "keyword.control.strip",
    "storage.modifier.strip",
    "keyword.control.precaution.strip",
    "keyword.other.signal.strip",
    "storage.modifier.strip",
  ]);
});

test("every kind has its scope after the name that it describes", () => {
  for (const list of ["part", "fastener", "joint", "fluid", "hazard"] as const)
    for (const kind of kinds[list]) {
      expect(scopeIn(`${list} xyz ${kind} "Name" { }`, kind), `${list} ${kind}`).toBe("support.constant.kind.strip");
      expect(scopeIn(`${list} xyz ${kind} "Name" { }`, "xyz")).toBe("entity.name.type.strip");
    }
  for (const [text, list] of [
    ["precaution", "precaution"],
    ["drive", "drive"],
    ["sequence", "sequence"],
    ["source", "source"],
    ["no", "hazard"],
    ["fits hub by", "joint"],
    ["starts with", "precaution"],
  ] as const) {
    for (const kind of kinds[list])
      expect(
        colours(`${text} ${kind} x`).some(([part, scope]) => part === kind && scope === "support.constant.kind.strip"),
        `${text} ${kind}`,
      ).toBe(true);
  }
});

test("every unit has its scope after a figure, with and without a blank, and none without a figure", () => {
  for (const unit of unitWords.any) {
    for (const text of [`range 5 ${unit}`, `range 5..25 ${unit}`, `range 24 ± 2 ${unit}`, `range 1-13/16${unit}`]) {
      expect(colours(text).at(-1), text).toEqual([unit, "keyword.other.unit.strip"]);
      expect(colours(text).filter(([, scope]) => scope === "constant.numeric.strip").length, text).toBe(
        /\.\.|±/.test(text) ? 2 : 1,
      );
    }
  }
  expect(colours("remove m").at(-1)![1]).not.toBe("keyword.other.unit.strip");
});

test("every form of size has its scope", () => {
  for (const size of [
    "M8",
    "M8x35",
    "M8x1x35",
    "M8x35-8.8",
    "M24x1.5-LH",
    "M6x16-A2-70",
    "G1/4",
    "G1",
    "R 1/2",
    "1/4 NPT",
    "3/8-16 UNC",
    "#10-32 UNF",
    "3/8-16 UNC-2A",
    "1-1/4-7 UNC",
  ]) {
    expect(scopeIn(`size ${size}`, size), size).toBe("constant.other.size.strip");
  }
});

test("comments, texts, text blocks and times of a recording", () => {
  expect(scopeIn("mass 3 kg # note", "# note")).toBe("comment.line.number-sign.strip");
  expect(scopeIn('about "undo # it"', "undo # it")).toBe("string.quoted.double.strip");
  expect(scopeIn('about "a \\" b"', '\\"')).toBe("constant.character.escape.strip");
  expect(
    colours('about """\n undo "it" #\n"""  mass 3 kg')
      .filter(([, scope]) => scope === "string.quoted.triple.strip")
      .map(([part]) => part),
  ).toContain(' undo "it" #');
  expect(scopeIn('part a "open\nmass 3 kg', "mass"), "an open text ends with its line").toBe("storage.modifier.strip");
  expect(scopeIn("video from 12:04 to 1:02:30", "12:04")).toBe("constant.numeric.time-code.strip");
});

test("a name that only begins like a word, or has a piece, keeps no word's colour", () => {
  for (const name of ["count-plate", "part2", "mass.left", "undo-ring"])
    expect(scopeIn(`remove ${name} x`, name), name).toBeUndefined();
  expect(scopeIn("remove lid, count", "count")).not.toBe(scopeOf("count"));
});

test("in the first example the words that begin items are coloured as such", () => {
  const { items, scan } = parse(coreExample),
    wrong: string[] = [],
    lines = coreExample.split("\n");
  const scopes: string[][] = [];
  let stack = textmate.INITIAL;
  for (const line of lines) {
    const { tokens, ruleStack } = grammar.tokenizeLine(line, stack);
    stack = ruleStack;
    scopes.push(
      Array.from({ length: line.length }, (_, i) =>
        tokens.find((token) => i >= token.startIndex && i < token.endIndex)!.scopes.at(-1)!,
      ),
    );
  }
  const visit = (list: typeof items): void =>
    list.forEach((item) => {
      const token = scan.tokens[item.first]!;
      if (scopes[token.line]![token.column] !== scopeOf(token.text)) wrong.push(`${token.line + 1}: ${token.text}`);
      if (item.block) visit(item.block.items);
    });
  visit(items);
  expect(wrong).toEqual([]);
});

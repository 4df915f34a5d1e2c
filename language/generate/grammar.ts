// The TextMate grammar of `.strip` files, made from the vocabulary, the tables of kinds and the units. A first colouring without
// the server: it knows words by their spelling only, and a word used as a name may take a word's colour until the server speaks.

import { unitWords } from "../quantities/units.ts";
import { kinds, type KindList } from "../vocabulary/kinds.ts";
import type { Entry } from "../vocabulary/entry.ts";
import { vocabulary } from "../vocabulary/vocabulary.ts";
import { macros } from "../vocabulary/macros.ts";

/** The scope of a word that begins an item, by what the word does. A word that does several things takes the first. */
export function scopeOf(word: string): string {
  const entries = vocabulary.filter((entry) => entry.word === word);
  if (kinds.signal.has(word)) return "keyword.other.signal.strip";
  if (kinds.precaution.has(word)) return "keyword.control.precaution.strip";
  if (entries.some(declaresAName)) return "storage.type.strip";
  if (entries.some((entry) => /^(?:step|refit|finish|procedure)$/.test(entry.place))) return "keyword.control.strip";
  // As properties of other notations these would be red in light themes, and the words of hazards beside them would not stand out.
  return "storage.modifier.strip";
}

const name = "\\p{L}[\\p{L}\\p{M}\\p{N}]*(?:-[\\p{L}\\p{M}\\p{N}]+)*";
/** Nothing of a name stands before it, or after it. */
const before = "(?<![\\p{L}\\p{M}\\p{N}.-])",
  after = "(?![\\p{L}\\p{M}\\p{N}]|-[\\p{L}\\p{N}]|\\.[\\p{L}\\p{N}])";
const number = "(?:\\d+(?:\\.\\d+)?(?:(?:-\\d+)?/\\d+)?|\\.\\d+)";
const sizes = [
  "M\\d+(?:\\.\\d+)?(?:[x×]\\d+(?:\\.\\d+)?){0,2}(?:-(?:\\d\\dH|\\d+(?:\\.\\d+)?|[AC]\\d-\\d+|LH))?(?![\\p{L}\\p{N}])",
  "(?:G|Rp?|Rc)(?:\\d+/\\d+|\\d+| \\d+/\\d+)(?![\\p{L}\\p{N}])",
  "\\d+(?:-\\d+/\\d+|/\\d+)? +NP[TS]F?(?![\\p{L}\\p{N}])",
  "#?\\d+(?:-\\d+/\\d+|/\\d+)?-\\d+ +UN[A-Z]*(?:-\\d[AB])?",
];

/** Path and text of the grammar file. */
export function generate(): { readonly path: string; readonly text: string } {
  const grammar = {
    information_for_contributors: [
      "Generated from language/vocabulary by language/generate/grammar.ts: run npm run generate",
    ],
    name: "Strip",
    scopeName: "source.strip",
    fileTypes: ["strip"],
    patterns: [
      "comment",
      "text-block",
      "string",
      "declaration",
      "kind",
      "size",
      "time-code",
      "quantity",
      "number",
      "word",
      "small-word",
      "braces",
      "sign",
    ].map((rule) => ({ include: `#${rule}` })),
    repository: {
      comment: { name: "comment.line.number-sign.strip", match: "#(?!\\d+(?:-\\d+/\\d+|/\\d+)?-\\d+ +UN).*$" },
      "text-block": { name: "string.quoted.triple.strip", begin: '"""', end: '"""' },
      string: {
        name: "string.quoted.double.strip",
        begin: '"',
        end: '"|$',
        patterns: [{ name: "constant.character.escape.strip", match: '\\\\["\\\\]' }],
      },
      declaration: { patterns: declarations() },
      kind: { patterns: kindsAfterWords() },
      size: { name: "constant.other.size.strip", match: `${before}(?:${sizes.join("|")})` },
      "time-code": { name: "constant.numeric.time-code.strip", match: "\\d+:\\d\\d(?::\\d\\d)?" },
      quantity: {
        match: `([+\\-−]?${number})(?:\\s*(\\.\\.|±|\\+/-)\\s*(${number}))?\\s*(${units()})(?![\\p{L}\\p{N}])`,
        captures: captures(
          "constant.numeric.strip",
          "keyword.operator.range.strip",
          "constant.numeric.strip",
          "keyword.other.unit.strip",
        ),
      },
      number: { name: "constant.numeric.strip", match: `${before}[+\\-−]?${number}` },
      word: { patterns: itemWords() },
      "small-word": { name: "keyword.operator.word.strip", match: anyOf(smallWords()) },
      braces: {
        patterns: [
          { name: "punctuation.section.block.begin.strip", match: "\\{" },
          { name: "punctuation.section.block.end.strip", match: "\\}" },
        ],
      },
      sign: {
        patterns: [
          { name: "punctuation.separator.comma.strip", match: "," },
          { name: "keyword.operator.strip", match: "\\.\\.|±|\\+/-|[×()]" },
        ],
      },
    },
  };
  return { path: "syntaxes/strip.tmLanguage.json", text: `${JSON.stringify(grammar, null, 2)}\n` };
}

const declaresAName = (entry: Entry): boolean => entry.shape.startsWith("<id>");
/** The closed list that may follow the declared name. */
const kindAfterName = (entry: Entry): KindList | undefined =>
  /^<id> \[?<kind:(\w+)>/.exec(entry.shape)?.[1] as KindList | undefined;

/** `fastener cover-screws screw`: word, name, and the kind if its list has it. */
function declarations(): object[] {
  const lists = Map.groupBy(
    vocabulary.filter(declaresAName),
    (entry) => `${scopeOf(entry.word)} ${kindAfterName(entry) ?? ""}`,
  );
  return [...lists].map(([key, entries]) => {
    const [scope = "", list = ""] = key.split(" ");
    const kind = list === "" ? "" : `(?:\\s+(${choice(kinds[list as KindList])})${after})?`;
    const signal = list === "hazard" ? `(?:\\s+(${choice(kinds.signal)})${after})?` : "";
    return {
      match: `${before}(${choice(entries.map((entry) => entry.word))})\\s+(${name})${after}${kind}${signal}`,
      captures: captures(
        scope,
        "entity.name.type.strip",
        ...(kind ? ["support.constant.kind.strip"] : []),
        ...(signal ? ["keyword.other.signal.strip"] : []),
      ),
    };
  });
}

/** `precaution lock-out`, `drive hex`, `fits hub by press-fit`: a kind after the word of the shape that asks for it. */
function kindsAfterWords(): object[] {
  const pairs = new Map<string, { word: string; list: KindList; scope: string }>();
  for (const { word, shape } of vocabulary) {
    for (const [, small, list] of `${word} ${shape}`.matchAll(/([a-z][a-z-]*) [[(]*<kind:(\w+)>/g)) {
      pairs.set(`${small} ${list}`, {
        word: small!,
        list: list as KindList,
        scope: small === word ? scopeOf(word) : "keyword.operator.word.strip",
      });
    }
  }
  return [...pairs.values()].map(({ word, list, scope }) => ({
    match: `${before}(${word})\\s+(${choice(kinds[list])})${after}`,
    captures: captures(scope, "support.constant.kind.strip"),
  }));
}

/** Words that begin an item, by their scope; not after a comma, where a name stands. */
function itemWords(): object[] {
  const scopes = Map.groupBy(new Set(vocabulary.map((entry) => entry.word)), scopeOf);
  return [...scopes].map(([scope, words]) => ({ name: scope, match: `(?<!,)(?<!, )${anyOf(words)}` }));
}

/** Words inside shapes that begin no item anywhere. */
function smallWords(): string[] {
  const items = new Set(vocabulary.map((entry) => entry.word)),
    found = new Set<string>();
  for (const shape of [...vocabulary.map((entry) => entry.shape), ...Object.values(macros)]) {
    for (const [word] of shape.replaceAll(/<[^>]*>|'[^']*'/g, " ").matchAll(/[a-z][a-z-]*/g))
      if (!items.has(word)) found.add(word);
  }
  return [...found];
}

const units = (): string =>
  longestFirst(unitWords.any)
    .map((unit) => escaped(unit).replaceAll(" ", " +"))
    .join("|");
const anyOf = (words: Iterable<string>): string => `${before}(?:${choice(words)})${after}`;
const choice = (words: Iterable<string>): string => longestFirst(words).map(escaped).join("|");
/** Each once, the longer first, so that none is cut off by its own beginning; then by spelling, so that the file does not hang on the order of a table. */
const longestFirst = (words: Iterable<string>): string[] =>
  [...new Set(words)].sort((a, b) => b.length - a.length || (a < b ? -1 : 1));
const escaped = (text: string): string => text.replaceAll(/[.*+?^${}()|[\]\\]/g, "\\$&");
const captures = (...scopes: string[]): object =>
  Object.fromEntries(scopes.map((scope, i) => [String(i + 1), { name: scope }]));

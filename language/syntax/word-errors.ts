// What is said of the word that opens an item, and of an item that ends too early: where what is written belongs.

import type { Entry } from "../vocabulary/index.ts";
import type { Leaf } from "./shapes.ts";
import { Num, Size, Str } from "./tokens.ts";
import type { Item, SyntaxError, SyntaxFix, Token } from "./tree.ts";
import { expected, shown } from "./wording.ts";

/** Written in the place of this word. */
export const replaced = (word: Token, text: string): SyntaxFix => ({
  title: `Write ${text}`,
  edits: [{ start: word.startOffset, end: word.endOffset! + 1, text }],
  certain: false,
});
/** Where what is written belongs, for what no line begins with. */
export const belongsBehind = ({ tokenType }: Token): string =>
  tokenType === Num
    ? ": a figure stands behind its word, as in mass 2 kg or count 4; steps and acts are numbered in print"
    : tokenType === Size
      ? ": a thread stands behind its word, as in size M8x35"
      : tokenType === Str
        ? ': a text stands behind its word, as in note "…"'
        : "";

/** Words that most lines of a block begin with, for whoever looks for the right one. */
const usualWords: Readonly<Record<string, string>> = {
  file: "use, unit, tool, consumable or procedure",
  unit: "part, fastener, joint, fluid, hazard or base",
  part: "mass, fits, rests, between, behind or renew",
  fastener: "count, size, drive, torque, joins or into",
  joint: "joins, how, uses or behind",
  fluid: "volume, drains, fills or uses",
  hazard: "on, precaution, wear, voltage or pressure",
  tool: "kind, range, capacity or calibration",
  consumable: "pack, part-no or shelf-life",
  procedure: "aim, step, needs or finish",
};
/** What a line of this block begins with; of acts, the one that stands for all others. */
export const beginsWith = (place: string): string =>
  usualWords[place] !== undefined
    ? `, such as ${usualWords[place]}`
    : ["step", "refit", "finish"].includes(place)
      ? '; an act that has none is written work X "In your own words."'
      : "";

/** The head ends where something must still come. */
export function unfinished(word: Token, state: Leaf, last: Token, { entry, arguments: given }: Item): SyntaxError {
  const end = last.endOffset! + 1;
  if (last.text === "else")
    return { code: "syntax/argument-missing", start: end, end, line: last.endLine, says: afterElse };
  const example =
    entry && entry.block === "" && (given.length === 0 || telling(state)) ? `, as in: ${entry.example}` : "";
  return {
    code: "syntax/argument-missing",
    start: end,
    end,
    line: last.endLine,
    says: `${word.text} needs ${expected(state)}${example === "" && last !== word ? ` after ${shown(last)}` : example}`,
  };
}

/** As the turn of speech says it where another word stands behind `else`. */
const afterElse =
  "else needs renew X, choose SHIM from 0.10, 0.20 mm, repeat from STEP, scrap X or words in quotes; any other act stands in otherwise { … }";

/** A text must come, and an example shows what it says better than "a text in quotes". */
const telling = (state: Leaf): boolean => state.follow.some((leaf) => leaf.is === "string");

const readings = new Set(["measure", "inspect", "test", "set"]);

/** `renew ring if worn`, `measure … or renew ring`: the item before it on its line is what was meant. */
export function saidBefore(before: Token | undefined, word: Token, { itemWillDo }: Entry): string {
  if (!before || word.opensLine || before.line !== word.line) return "";
  if (readings.has(before.text)) return ": what follows a bad reading begins with else, as in else renew disc";
  return itemWillDo ? `: what it is asked for comes behind it, as in ${word.text} worn renew disc` : "";
}

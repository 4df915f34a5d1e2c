// A line that goes on with an item, of which the line before is missing: `else renew disc` below no reading. What it may have gone on
// from, and how that is told. Asked on errors only.

import { EOF } from "chevrotain";
import { placesOf, type Entry } from "../vocabulary/index.ts";
import { follows, startOf, step, type Leaf } from "./shapes.ts";
import { suggestWord, wordMeantHere } from "./suggestions.ts";
import { LBrace, RBrace } from "./tokens.ts";
import type { SyntaxError, Token } from "./tree.ts";
import { oneOf } from "./wording.ts";

export interface Orphan {
  /** The likeliest item that the line goes on with: the first of those that take all of it. */
  readonly entry: Entry;
  /** Where in its shape the line goes on, its first word read. */
  readonly state: Leaf;
  readonly error: SyntaxError;
}

type Ahead = (k: number) => Token;
type Words = ReadonlyMap<string, Entry>;

/**
 * `ahead(k)` is the k-th token behind `word`, and `before` is the word of the item before; `words` may stand here. Undefined where no
 * item goes on so. What has another meaning here is only taken so where it stands deeper than its neighbours.
 */
export function orphan(word: Token, ahead: Ahead, words: Words, before: Token | undefined): Orphan | undefined {
  if (!word.opensLine || (meansOther(word, ahead(1), words) && !isSetIn(word, ahead, before))) return undefined;
  const found: { readonly entry: Entry; readonly state: Leaf }[] = [];
  for (const entry of new Set(words.values())) {
    const state = joints(startOf(entry.shape), word).find((leaf) => takesLine(leaf, ahead, entry));
    if (state) found.push({ entry, state });
  }
  const [first] = found;
  if (!first) return undefined;
  const heads = [...new Set(found.map(({ entry }) => entry.word))];
  return {
    ...first,
    error: {
      code: "syntax/line-missing",
      start: word.startOffset,
      end: word.endOffset! + 1,
      line: word.line,
      says: `${word.text} goes on from a line above it${heads.length > 4 ? "" : ` that begins with ${oneOf(heads)}`}, and none stands there`,
    },
  };
}

/** Is it a word of another place, or the trade's word for one of this place, behind which the next token fits? */
function meansOther(word: Token, next: Token, words: Words): boolean {
  if (wordMeantHere(word.text, words) || placesOf(word.text).length > 0) return true;
  const meant = suggestWord(word.text, words);
  return (
    meant !== undefined && (next.opensLine || next.tokenType === LBrace || follows(words.get(meant.word)!.shape, next))
  );
}

/** More lines than this that stand as deep as it does are its neighbours, not further ones that go on. */
const mostSetIn = 16;

/** Was it set in as a line that goes on? It stands deeper than the next line of its block; of a last line, than the item before. */
function isSetIn(word: Token, ahead: Ahead, before: Token | undefined): boolean {
  let depth = 0,
    asDeep = 0;
  for (let k = 1; ; k++) {
    const token = ahead(k);
    if (token.tokenType === EOF || (token.tokenType === RBrace && depth-- === 0))
      return before !== undefined && before.opensLine && before.column < word.column;
    if (depth === 0 && token.opensLine) {
      if (token.column !== word.column) return token.column < word.column;
      if (++asDeep > mostSetIn) return false;
    }
    if (token.tokenType === LBrace) depth++;
  }
}

/** The places behind this word, wherever in the shape it may stand but at its start. */
function joints(start: Leaf, word: Token): readonly Leaf[] {
  const seen = new Set<Leaf>(start.follow);
  for (const leaf of seen) for (const next of leaf.follow) seen.add(next);
  const within = new Set([...seen].flatMap((leaf) => leaf.follow));
  return [...within].filter((leaf) => leaf.is === "word" && leaf.text === word.text);
}

/** May the rest of the line stand behind it? */
function takesLine(from: Leaf, ahead: Ahead, { block }: Entry): boolean {
  let state: Leaf | undefined = from;
  for (let k = 1; ; k++) {
    const token = ahead(k);
    if (token.opensLine || token.tokenType === EOF || token.tokenType === RBrace) return true;
    if (token.tokenType === LBrace) return block !== "";
    state = step(state, token);
    if (!state) return false;
  }
}

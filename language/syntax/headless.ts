// A block whose first line is missing: what its lines belong to, and how that is told.

import { EOF } from "chevrotain";
import { wordsIn, type Entry } from "../vocabulary/index.ts";
import { LBrace, RBrace } from "./tokens.ts";
import type { SyntaxError, SyntaxFix, Token } from "./tree.ts";

/**
 * `ahead(k)` is the k-th token ahead: 1 opens the block. `words` may stand around it, `said` is the word of the item before it.
 * The entry is undefined where no word takes all of its lines; `first` is the place of the first token in it.
 */
export function headless(
  ahead: (k: number) => Token,
  { words, said }: { readonly words: ReadonlyMap<string, Entry>; readonly said: string },
  tokens: readonly Token[],
): { readonly entry: Entry | undefined; readonly error: SyntaxError; readonly first: number } {
  const opening = linesAhead(ahead),
    likely = [...words.values()].filter(
      ({ block }) => block !== "" && opening.every((word) => wordsIn(block).has(word)),
    ),
    // What is named comes before what stands once: a step before `finish`.
    entry = likely.find(({ shape }) => shape !== "") ?? likely[0],
    example = entry ? `: a line is missing, as ${entry.example.split("{")[0]!.trim()} {` : "";
  // After a block of the same sort it may as well be that block which goes on.
  const first = ahead(2),
    brace = tokens[first.index - 1],
    tooSoon = brace?.tokenType === RBrace && entry?.word === said ? brace : undefined;
  const error: SyntaxError = {
    code: "syntax/head-missing",
    start: first.startOffset,
    end: first.endOffset! + 1,
    line: first.line,
    says: `No line opens the block that begins here${example}${tooSoon ? ", or the } before it is one too many" : ""}`,
  };
  return { entry, error: tooSoon ? { ...error, fix: without(tooSoon) } : error, first: first.index };
}

const without = ({ startOffset, endOffset }: Token): SyntaxFix => ({
  title: "Take the } before it out",
  edits: [{ start: startOffset, end: endOffset! + 1, text: "" }],
  certain: false,
});

/** The words that open the lines of the block, those of blocks inside it and wrapped ones left out. */
function linesAhead(ahead: (k: number) => Token): readonly string[] {
  const opening: string[] = [],
    { column } = ahead(2);
  let depth = 0;
  for (let k = 1; ; k++) {
    const token = ahead(k);
    if (token.tokenType === LBrace) depth++;
    else if (token.tokenType === RBrace) depth--;
    else if (depth === 1 && token.opensLine && token.column === column) opening.push(token.text);
    if (depth <= 0 || token.tokenType === EOF) return opening;
  }
}

// The texts of authors in a file, each with an id that stays as long as the text does, wherever its line moves. A text that changes gets
// another id: a translation of what stood there before must never be printed.

import type { SourceFile } from "../../names/project.ts";
import { textOf } from "../../names/strings.ts";
import { eachItem, type Item, type Token } from "../../syntax/index.ts";
import { Str } from "../../syntax/tokens.ts";
import { sha256 } from "../text/sha256.ts";

export interface AuthorText {
  /** The word of the language that it stands behind and ten digits of its SHA-256: `note-1f3870be27`. */
  readonly id: string;
  /** The word of the language: `part`, `note`, `danger`. */
  readonly word: string;
  readonly text: string;
  /** From 1: where it stands first. */
  readonly line: number;
}

/** Names of files, of data and of builds are read by programs: in another language they would be other ones. */
const untranslated: ReadonlySet<string> = new Set([
  "use",
  "video",
  "part-no",
  "standard",
  "calibration",
  "revision",
  "optional",
  "torque-table",
]);

/** May this string be printed in another language? Of a picture only its second string, what it shows. */
function isText(word: string, nth: number, before: Token | undefined): boolean {
  if (untranslated.has(word) || before?.text === "standard") return false;
  return word !== "photo" || nth > 0;
}

export const idOf = (word: string, text: string): string => `${word}-${sha256(text).slice(0, 10)}`;

/** Every translatable string of a file in its order, with the number of its token. A text that stands several times behind one word comes each time. */
export function* stringsOf({ tree }: Pick<SourceFile, "tree">): Generator<AuthorText & { readonly at: number }> {
  const { tokens } = tree.scan,
    heads: { readonly item: Item; readonly from: number; readonly to: number }[] = [];
  eachItem(tree.items, (item) => {
    heads.push({ item, from: item.first, to: item.block ? item.block.first - 1 : item.last });
  });
  for (const { item, from, to } of heads) {
    const word = item.entry?.word;
    if (word === undefined || item.broken) continue;
    let nth = 0;
    for (let at = from + 1; at <= to; at++) {
      const token = tokens[at]!;
      if (token.tokenType !== Str) continue;
      const text = textOf(token);
      if (isText(word, nth++, tokens[at - 1]) && /\p{L}/u.test(text))
        yield { id: idOf(word, text), word, text, line: token.line + 1, at };
    }
  }
}

/** Each text once, in the order of the file. */
export function authorTexts(file: Pick<SourceFile, "tree">): readonly AuthorText[] {
  const found = new Map<string, AuthorText>();
  for (const { id, word, text, line } of stringsOf(file)) if (!found.has(id)) found.set(id, { id, word, text, line });
  return [...found.values()];
}

// The tree of one file: items with their arguments and blocks, over an array of tokens. Nodes hold token indexes; text is never copied.

import type { IToken } from "chevrotain";
import type { Entry } from "../vocabulary/entry.ts";

export type Token = IToken & {
  /** Its place in the token array; a token invented while braces were mended has that of the one before it. */
  index: number;
  /** As compared: NFC, a sign in its one spelling. `image` is as written. */
  text: string;
  /** From 0, of its start. */
  line: number;
  /** From 0, in UTF-16 code units, of its start. */
  column: number;
  /** From 0; differs from `line` for text blocks only. */
  endLine: number;
  opensLine: boolean;
  /** No blank stands before it. */
  glued: boolean;
  invented: boolean;
};

export type Comment = {
  readonly start: number;
  readonly end: number;
  readonly line: number;
  /** The index of the token that it stands before. */
  readonly before: number;
  /** It stands alone on its line. */
  readonly ownLine: boolean;
};

export type SyntaxEdit = { readonly start: number; readonly end: number; readonly text: string };

/** A remedy. `certain` ones may be applied unasked; none of them ever chooses a unit of torque, time, voltage or pressure. */
export type SyntaxFix = { readonly title: string; readonly edits: readonly SyntaxEdit[]; readonly certain: boolean };

/** A mistake of form. Offsets are UTF-16 code units from the start of the text, `end` is the first one after; lines count from 0. */
export type SyntaxError = {
  readonly code: string;
  readonly start: number;
  readonly end: number;
  readonly line: number;
  readonly says: string;
  readonly fix?: SyntaxFix;
};

/** Where reading begins, if not at the first sign: at the start of a line, behind tokens and comments that are known. */
export interface ScanFrom {
  readonly at: number;
  /** From 0. */
  readonly line: number;
  /** What stands in front; what is read is put behind. */
  readonly tokens: Token[];
  readonly comments: Comment[];
  /** Asked at the start of each line: is all from here on known too? Reading ends there. */
  readonly isKnown: (at: number, line: number) => boolean;
}

export type Scan = {
  readonly text: string;
  readonly tokens: Token[];
  readonly comments: Comment[];
  readonly errors: SyntaxError[];
};

export type Argument = {
  /** Which argument of the shape: `name`, `item`, `string`, `torque`, `thread`, …, or of a closed list: `part`, `joint`, `kind`. */
  slot: string;
  /** First and last token. */
  first: number;
  last: number;
  /** The name is declared here, not referred to. */
  declares: boolean;
};

export type Block = { place: string; items: Item[]; first: number; last: number };

export type Item = {
  /** Undefined: no word of the language. */
  entry: Entry | undefined;
  arguments: Argument[];
  /** With braces, or the one item that follows `if` and `unless` on the same line. */
  block: Block | undefined;
  first: number;
  last: number;
  /** It has an error in its head: checks leave it alone. */
  broken: boolean;
};

export type Tree = {
  readonly scan: Scan;
  readonly place: string;
  readonly items: Item[];
  readonly errors: SyntaxError[];
};

/** Calls `visit` with every item, each before those in its block. */
export function eachItem(items: readonly Item[], visit: (item: Item) => void): void {
  for (const item of items) {
    visit(item);
    if (item.block) eachItem(item.block.items, visit);
  }
}

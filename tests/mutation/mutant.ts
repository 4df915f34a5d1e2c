// What a mutant is: one edit of one line that a tired author could have made, and the text after it.

import type { Item, SyntaxEdit, Tree } from "../../language/syntax/index.ts";

export const classes = [
  "drop an action",
  "swap two neighbours",
  "count + 1",
  "count - 1",
  "drop a precaution",
  "halve a wait",
  "drop a drain",
  "change a position",
  "torque unit swapped",
  "fastener renamed",
  "one-time part reused",
] as const;
export type MutantClass = (typeof classes)[number];

export interface Mutant {
  readonly class: MutantClass;
  readonly file: string;
  /** The line of the edit as printed, from 1. Lines never shift: an edit stays on its own lines. */
  readonly line: number;
  /** "undo lid-screws dropped". */
  readonly says: string;
  readonly edits: readonly SyntaxEdit[];
  /** Offsets, in the text as it was, of the items that were changed. */
  readonly starts: readonly number[];
  /** The name that stands there now, of a renamed one. */
  readonly other: string | undefined;
  /** It changes a declaration, not a step. */
  readonly declared: boolean;
}

/** Lines of a text by offset, from 1. */
export function lineAt(text: string, offset: number): number {
  let line = 1;
  for (let i = text.indexOf("\n"); i >= 0 && i < offset; i = text.indexOf("\n", i + 1)) line++;
  return line;
}

export function applied(text: string, edits: readonly SyntaxEdit[]): string {
  let out = text;
  for (const { start, end, text: by } of [...edits].sort((a, b) => b.start - a.start))
    out = out.slice(0, start) + by + out.slice(end);
  return out;
}

export const startOf = (tree: Tree, item: Item): number => tree.scan.tokens[item.first]!.startOffset;
export const endOf = (tree: Tree, item: Item): number => tree.scan.tokens[item.last]!.endOffset! + 1;
/** The line of an item as written, its block left out. */
export function written(tree: Tree, item: Item): string {
  const last = item.block ? tree.scan.tokens[item.block.first]!.startOffset : endOf(tree, item);
  return tree.scan.text.slice(startOf(tree, item), last).replaceAll(/\s+/g, " ").trim();
}
/** What stands in the place of an item that is gone: its line ends, so that no line shifts. */
export const emptied = (tree: Tree, item: Item): SyntaxEdit => {
  const start = startOf(tree, item),
    end = endOf(tree, item);
  return { start, end, text: "\n".repeat(tree.scan.text.slice(start, end).split("\n").length - 1) };
};

// What stands at an offset of a file: the item, the block, the token, and what may follow there. It decides nothing about names.

import { linesOf, positionAt, type Lines } from "../syntax/lines.ts";
import { startOf, step, type Leaf } from "../syntax/shapes.ts";
import { Str } from "../syntax/tokens.ts";
import { kept } from "../model/kept.ts";
import type { Item, Token, Tree } from "../syntax/tree.ts";

export interface Place {
  /** The items that hold the offset, outermost first: each with its head or its block around it. */
  readonly path: readonly Item[];
  /** The kind of the innermost block around the offset; `file` at the top. */
  readonly block: string;
  /** The token that the offset touches; the one that ends there goes before the one that begins there. */
  readonly token: Token | undefined;
}

const endOf = (token: Token): number => token.endOffset! + 1;

/** Index of the first token that ends at or after the offset. */
export function tokenIndexAt(tokens: readonly Token[], offset: number): number {
  let low = 0,
    high = tokens.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (endOf(tokens[middle]!) < offset) low = middle + 1;
    else high = middle;
  }
  return low;
}

export function placeAt(tree: Tree, offset: number): Place {
  const { tokens } = tree.scan,
    path: Item[] = [];
  let items: readonly Item[] = tree.items,
    block = tree.place;
  for (;;) {
    const inside = items.find(
      (item) => tokens[item.first]!.startOffset <= offset && endOf(tokens[item.last]!) >= offset,
    );
    if (!inside) break;
    path.push(inside);
    if (!inside.block || inside.block.first > inside.block.last) break;
    const open = tokens[inside.block.first]!,
      close = tokens[inside.block.last]!;
    const inBlock =
      endOf(open) <= offset &&
      (close.text === "}" && !close.invented ? close.startOffset >= offset : endOf(close) >= offset);
    if (!inBlock) break;
    block = inside.block.place;
    items = inside.block.items;
  }
  const index = tokenIndexAt(tokens, offset),
    token = tokens[index];
  return { path, block, token: token && token.startOffset <= offset && endOf(token) >= offset ? token : undefined };
}

/** What may be typed at an offset. */
export interface Slot {
  /** What is typed already of the word at the offset, and where it begins. */
  readonly prefix: string;
  readonly from: number;
  /** The kind of block around. */
  readonly block: string;
  /** A new item may begin here. */
  readonly opens: boolean;
  /** The item whose head goes on here, and the places of its shape that may come next; empty where none does. */
  readonly item: Item | undefined;
  readonly next: readonly Leaf[];
  /** The words before it in the head, the nearest first: they decide what a name stands for. */
  readonly context: string;
  readonly earlier: string;
  /** Names written in this list already. */
  readonly listed: ReadonlySet<string>;
  /** The offset is inside a text; its token. */
  readonly text: Token | undefined;
  /** The items around, outermost first. */
  readonly path: readonly Item[];
}

/** Undefined inside a comment. */
export function slotAt(tree: Tree, offset: number): Slot | undefined {
  const {
    scan: { text, tokens, comments },
  } = tree;
  if (comments.some((comment) => comment.start < offset && offset <= comment.end)) return undefined;
  const index = tokenIndexAt(tokens, offset),
    at = tokens[index],
    here = at && at.startOffset < offset && offset <= endOf(at) ? at : undefined;
  // A text that is not closed yet reaches to the end of its line, with the blanks that were typed last.
  const open = !here && at ? openText(text, tokens[endOf(at) <= offset ? index : index - 1], offset) : undefined;
  if (open) return slotInText(open, placeAt(tree, endOf(open)), offset);
  if (here?.tokenType === Str && (offset < endOf(here) || !here.image.endsWith('"') || here.image === '"'))
    return slotInText(here, placeAt(tree, offset), offset);
  const isWord = here !== undefined && /^[\p{L}\p{N}·°µΩ%.-]+$/u.test(here.image),
    from = isWord ? here.startOffset : offset,
    prefix = text.slice(from, offset);
  const before = isWord ? index - 1 : at && endOf(at) <= offset ? index : index - 1;
  const { path, block } = blockAround(tree, before),
    last = tokens[before];
  const lineStart = text.lastIndexOf("\n", from - 1) + 1,
    startsLine = /^\s*$/.test(text.slice(lineStart, from));
  const head =
    last === undefined || last.text === "{" || last.text === "}" ? undefined : headBefore(path, tree, before);
  const state = head && follow(head, tokens, before);
  const goesOn = state !== undefined && (!startsLine || last!.text === ",");
  return {
    prefix,
    from,
    block,
    text: undefined,
    path,
    // Behind a head that a block belongs to its brace is due, on the same line, and no other item.
    opens: !goesOn ? true : state.ends && last!.text !== "," && (head!.entry!.block === "" || head!.entry!.itemWillDo),
    item: head,
    next: goesOn ? state.follow : [],
    ...(goesOn ? wordsBefore(head!, tokens, before) : { context: "", earlier: "", listed: new Set<string>() }),
  };
}

/** Inside a text no word, name or kind is due. */
const slotInText = (text: Token, { path, block }: Place, offset: number): Slot => ({
  prefix: "",
  from: offset,
  block,
  opens: false,
  item: path[path.length - 1],
  next: [],
  context: "",
  earlier: "",
  listed: new Set(),
  text,
  path,
});

function openText(text: string, token: Token | undefined, offset: number): Token | undefined {
  return token?.tokenType === Str &&
    !/^"[^]*"$/.test(token.image) &&
    endOf(token) <= offset &&
    /^[^\S\n]*$/.test(text.slice(endOf(token), offset))
    ? token
    : undefined;
}

/** The items whose blocks are open after a token. */
function blockAround(tree: Tree, index: number): { path: Item[]; block: string } {
  const path: Item[] = [];
  let items: readonly Item[] = tree.items,
    block = tree.place;
  for (;;) {
    const around = items.findLast(
      (item) => item.block && item.block.first <= index && isOpenAt(item, tree.scan.tokens, index),
    );
    if (!around?.block) return { path, block };
    path.push(around);
    block = around.block.place;
    items = around.block.items;
  }
}

function isOpenAt(item: Item, tokens: readonly Token[], index: number): boolean {
  const block = item.block!,
    close = tokens[block.last];
  if (tokens[block.first]?.text !== "{") return index >= block.first && index <= block.last; // the one item behind an `if`
  return close?.text === "}" && !close.invented
    ? index < block.last
    : index <= block.last || block.last === tokens.length - 1;
}

/** The item whose head a token belongs to. */
function headBefore(path: readonly Item[], tree: Tree, index: number): Item | undefined {
  const items = path.length > 0 ? path[path.length - 1]!.block!.items : tree.items;
  let found = items.findLast((item) => item.first <= index);
  while (found?.block && tree.scan.tokens[found.block.first]?.text !== "{" && found.block.first <= index)
    found = found.block.items.findLast((item) => item.first <= index) ?? found;
  if (!found?.entry || (found.block && found.block.first <= index && tree.scan.tokens[found.block.first]?.text === "{"))
    return undefined;
  return found;
}

/** The place in the shape that the tokens of a head lead to; undefined where they do not fit it. */
function follow(item: Item, tokens: readonly Token[], to: number): Leaf | undefined {
  let state: Leaf | undefined = startOf(item.entry!.shape);
  for (let i = item.first + 1; i <= to && state; i++) state = step(state, tokens[i]!);
  return state;
}

function wordsBefore(item: Item, tokens: readonly Token[], to: number): Pick<Slot, "context" | "earlier" | "listed"> {
  const listed = new Set<string>();
  let context = item.entry!.word,
    earlier = "",
    state: Leaf | undefined = startOf(item.entry!.shape);
  for (let i = item.first + 1; i <= to && state; i++) {
    const token = tokens[i]!;
    state = step(state, token);
    if (!state) break;
    if (state.is === "name" || state.is === "item" || state.is === "label") listed.add(token.text);
    else if (state.is === "string") {
      earlier = context;
      context = item.entry!.word;
    } else if (
      state.is === "word" &&
      token.text !== "of" &&
      token.text !== "and" &&
      token.text !== "or" &&
      token.text !== "fails" &&
      token.text !== "removed" &&
      token.text !== "rest" &&
      token.text !== "each"
    ) {
      earlier = context;
      context = token.text;
      listed.clear();
    }
  }
  return { context, earlier, listed };
}

const known = kept<Tree, Lines>();

/** Line starts of a tree's text, worked out once. */
const linesOfTree = (tree: Tree): Lines => known(tree, () => linesOf(tree.scan.text));

/** The line of an offset, from 1, as people count. */
export const lineNumber = (tree: Tree, offset: number): number => positionAt(linesOfTree(tree), offset).line + 1;

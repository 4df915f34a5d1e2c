// After an edit: only the lines that it touched are made tokens again, and only the innermost block around them is read. What stands in
// front keeps its tokens and items; what stands behind gets them anew at its new places, since an item is known by where it stands.

import type { StripRules } from "./rules.ts";
import { deepestBlock } from "./mend-braces.ts";
import { scan } from "./scanner.ts";
import { tokenAt } from "./token-at.ts";
import { LBrace, RBrace } from "./tokens.ts";
import type { Comment, Item, Scan, SyntaxError, Token, Tree } from "./tree.ts";

/** A token is read by itself and by at most so many signs behind it, line ends included. */
const lookahead = 16;
const textMarks = '"""';
/** Longer ones are parts of the whole text to the engine and would hold it. */
const longestOwn = 12;
/** How these are mended goes by the layout of all that stands before. */
const ofBraces = /^syntax\/(?:brace-|too-deep)/;

/**
 * The tree of `text`, its errors unsorted. Undefined where all has to be read: signs or braces are amiss in either text, or what changed
 * stands in no block, or a text over several lines begins or ends in it.
 */
export function reread(older: Tree, text: string, rules: StripRules): Tree | undefined {
  if (older.scan.errors.length > 0 || older.errors.some(({ code }) => ofBraces.test(code))) return undefined;
  const rescanned = rescan(older.scan, text);
  if (!rescanned) return undefined;
  const { scanned, change } = rescanned,
    { path, done } = blockAround(older, change);
  if (path.length === 0 && !done) return undefined;
  const errors: SyntaxError[] = [];
  const within = (items: readonly Item[], depth: number): Item[] | undefined => {
    const owner = path[depth];
    if (!owner) return undefined;
    const block = owner.block!,
      last = block.last + change.indexes;
    const item: Item = { ...owner, block: undefined, last };
    if (depth + 1 < path.length) {
      const inner = within(block.items, depth + 1);
      if (!inner) return undefined;
      item.block = { ...block, items: inner, last };
    } else {
      const input = scanned.tokens.slice(block.first, last + 1),
        around = [older.place, ...path.slice(0, -1).map((one) => one.block!.place)];
      if (!pairs(input, path.length) || !rules.readBlock(input, scanned.tokens, item, around)) return undefined;
      errors.push(...rules.found);
    }
    const at = items.indexOf(owner);
    return [...items.slice(0, at), item, ...items.slice(at + 1).map((one) => moved(one, change))];
  };
  const items = done ? older.items.map((one) => moved(one, change)) : within(older.items, 0);
  return items && { scan: scanned, place: older.place, items, errors };
}

/** The tokens between `from` and `to` of the older text are others now; all behind stands elsewhere by so much. */
interface Change {
  readonly from: number;
  readonly to: number;
  readonly indexes: number;
  readonly signs: number;
  readonly lines: number;
}

function rescan(older: Scan, text: string): { readonly scanned: Scan; readonly change: Change } | undefined {
  const had = older.text,
    most = Math.min(had.length, text.length),
    signs = text.length - had.length;
  let same = 0,
    behind = 0;
  while (same < most && had.charCodeAt(same) === text.charCodeAt(same)) same++;
  while (behind < most - same && had.charCodeAt(had.length - 1 - behind) === text.charCodeAt(text.length - 1 - behind))
    behind++;
  const near = (of: string): string => of.slice(Math.max(0, same - 2), of.length - behind + 2);
  if (near(had).includes(textMarks) || near(text).includes(textMarks)) return undefined;

  // From the start of a line whose first token ends too early to have been read with a look at what changed.
  let first = tokenAt(older.tokens, same - lookahead) - 1;
  while (first > 0 && !older.tokens[first]!.opensLine) first--;
  const opening = older.tokens[first];
  if (!opening) return undefined;
  const at = opening.startOffset - opening.column,
    tokens = older.tokens.slice(0, first),
    comments = older.comments.slice(0, commentAt(older.comments, at));
  let next = first,
    stopped: { readonly at: number; readonly line: number } | undefined;
  const isKnown = (here: number, line: number): boolean => {
    if (here <= text.length - behind) return false;
    const then = here - signs;
    while (next < older.tokens.length && older.tokens[next]!.startOffset < then) next++;
    const before = older.tokens[next - 1];
    // What a sign means may hang on the two tokens in front of it.
    if (
      (before && before.endOffset! >= then) ||
      before?.tokenType !== tokens[tokens.length - 1]?.tokenType ||
      older.tokens[next - 2]?.tokenType !== tokens[tokens.length - 2]?.tokenType
    )
      return false;
    stopped = { at: then, line };
    return true;
  };
  const { errors } = scan(text, { at, line: opening.line, tokens, comments, isKnown });
  if (errors.length > 0) return undefined;
  for (let i = first; i < tokens.length; i++) ownImage(tokens[i]!);
  const lines = stopped ? stopped.line - opening.line - lineEnds(had, at, stopped.at) : 0,
    shift = { signs, lines };
  if (!stopped) next = older.tokens.length;

  let from = first,
    to = next,
    end = tokens.length;
  const indexes = end - to;
  while (
    from < to &&
    from < end &&
    isSame(older.tokens[from]!, tokens[from]!, noShift) &&
    older.tokens[from]!.column === tokens[from]!.column
  ) {
    tokens[from] = older.tokens[from]!;
    from++;
  }
  while (to > from && end > from && isSame(older.tokens[to - 1]!, tokens[end - 1]!, shift)) {
    to--;
    end--;
  }
  const stays = signs === 0 && lines === 0 && indexes === 0;
  for (let i = next; i < older.tokens.length; i++) {
    const one = older.tokens[i]!;
    tokens.push(stays ? one : movedToken(one, signs, indexes, lines));
  }
  if (stopped)
    for (let i = commentAt(older.comments, stopped.at); i < older.comments.length; i++) {
      const one = older.comments[i]!;
      comments.push({
        ...one,
        start: one.start + signs,
        end: one.end + signs,
        line: one.line + lines,
        before: one.before + indexes,
      });
    }
  return { scanned: { text, tokens, comments, errors }, change: { from, to, indexes, signs, lines } };
}

/** The index of the first comment that begins at this place or behind. */
function commentAt(comments: readonly Comment[], offset: number): number {
  let low = 0,
    high = comments.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (comments[middle]!.start < offset) low = middle + 1;
    else high = middle;
  }
  return low;
}

function lineEnds(text: string, from: number, to: number): number {
  let count = 0;
  for (let i = from; i < to; i++) {
    const c = text.charCodeAt(i);
    if (c === 10 || (c === 13 && text.charCodeAt(i + 1) !== 10)) count++;
  }
  return count;
}

/** A long image gets signs of its own: else each edit would leave a token that holds the whole text of its time. */
function ownImage(token: Token): void {
  if (token.image.length <= longestOwn) return;
  const isText = token.text === token.image;
  token.image = JSON.parse(JSON.stringify(token.image)) as string;
  token.text = isText ? token.image : (JSON.parse(JSON.stringify(token.text)) as string);
}

/** Field by field in the order of the scanner: the engine then knows both for the same kind of object. */
const movedToken = (one: Token, signs: number, indexes: number, lines: number): Token => ({
  image: one.image,
  startOffset: one.startOffset + signs,
  endOffset: one.endOffset! + signs,
  tokenType: one.tokenType,
  tokenTypeIdx: one.tokenTypeIdx,
  index: one.index + indexes,
  text: one.text,
  line: one.line + lines,
  column: one.column,
  endLine: one.endLine + lines,
  opensLine: one.opensLine,
  glued: one.glued,
  invented: one.invented,
});

const noShift = { signs: 0, lines: 0 };

/** Columns apart: they only tell how a mistake is mended, and with one the block is read. */
const isSame = (a: Token, b: Token, { signs, lines }: { readonly signs: number; readonly lines: number }): boolean =>
  a.tokenType === b.tokenType &&
  a.startOffset + signs === b.startOffset &&
  a.endOffset! + signs === b.endOffset &&
  a.line + lines === b.line &&
  a.endLine + lines === b.endLine &&
  a.opensLine === b.opensLine &&
  a.glued === b.glued &&
  a.image === b.image &&
  a.text === b.text;

/** The items down to the innermost block that holds all that changed and every error of before. `done`: nothing is to be read. */
function blockAround(older: Tree, { from, to, indexes }: Change): { readonly path: Item[]; readonly done: boolean } {
  const { tokens } = older.scan,
    path: Item[] = [];
  if (from === to && indexes === 0 && older.errors.length === 0) return { path, done: true };
  let items: readonly Item[] = older.items;
  for (;;) {
    const owner = items.find(({ block }) => {
      if (!block || block.first >= from || block.last < to) return false;
      const open = tokens[block.first]!,
        close = tokens[block.last]!;
      return (
        open.tokenType === LBrace &&
        close.tokenType === RBrace &&
        older.errors.every(({ start, end }) => open.endOffset! < start && end <= close.startOffset)
      );
    });
    if (!owner) return { path, done: false };
    path.push(owner);
    items = owner.block!.items;
  }
}

/** Do the braces pair within the first and the last, no deeper than a tree goes? */
function pairs(input: readonly Token[], outer: number): boolean {
  let depth = 0;
  for (const [i, { tokenType }] of input.entries()) {
    if (tokenType === LBrace) depth++;
    else if (tokenType === RBrace) depth--;
    if (depth + outer > deepestBlock || (depth === 0 && i < input.length - 1)) return false;
  }
  return depth === 0;
}

/** The same item at its new place; what stands in front of the change stays where it was. */
function moved(item: Item, change: Change): Item {
  const { from, indexes, signs, lines } = change,
    { block } = item;
  if (item.last < from || (indexes === 0 && signs === 0 && lines === 0)) return item;
  return {
    entry: item.entry,
    arguments: item.arguments.map((one) => ({ ...one, first: one.first + indexes, last: one.last + indexes })),
    block: block && {
      place: block.place,
      items: block.items.map((one) => moved(one, change)),
      first: block.first + indexes,
      last: block.last + indexes,
    },
    first: item.first + indexes,
    last: item.last + indexes,
    broken: item.broken,
  };
}

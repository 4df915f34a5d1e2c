// Formats a text by setting only the blanks between its tokens and comments, so that it can lose neither and never changes the
// tree. It keeps the author's lines (one ends after a one-item `if`, which is misread otherwise) and wraps nothing.

import { setColumns, type Placed } from "./columns.ts";
import { parse } from "./parser.ts";
import { Junk, LBrace, RBrace } from "./tokens.ts";
import { eachItem, type SyntaxEdit, type Token, type Tree } from "./tree.ts";

/** A token or a comment: what the formatter never touches. */
type Piece = {
  readonly start: number;
  readonly end: number;
  readonly line: number;
  readonly endLine: number;
  readonly token: Token | undefined;
  readonly ownLine: boolean;
};

/**
 * Two blanks for each block that it stands in, one blank between arguments, two between items, at most one empty line; what the
 * author set in columns stays in columns.
 */
export function format(text: string): string {
  let out = "",
    done = 0;
  for (const edit of formatEdits(parse(text))) {
    out += text.slice(done, edit.start) + edit.text;
    done = edit.end;
  }
  return out + text.slice(done);
}

/**
 * The least edits that format a text, in its order; with a range, only those that touch it. None at all for a text whose braces
 * do not pair, that has an open text block or a merge conflict: its depth would be a guess.
 */
export function formatEdits(tree: Tree, range = { start: 0, end: tree.scan.text.length }): SyntaxEdit[] {
  const { text } = tree.scan;
  if (!hasDepth(tree)) return [];
  const pieces = piecesOf(tree),
    { begins, conditions, conditional, endsLine, tight } = layoutOf(tree),
    newline = /\r\n|\n|\r/.exec(text)?.[0] ?? "\n";
  const edits: SyntaxEdit[] = [];
  let depth = 0,
    from = text.charCodeAt(0) === 0xfeff ? 1 : 0,
    before: Piece | undefined;
  const placed = pieces.map((piece): Placed => {
    const { token, start, end, line, endLine } = piece;
    if (token?.tokenType === RBrace) depth = Math.max(0, depth - 1);
    const gap = gapBefore(piece);
    if (token?.tokenType === LBrace) depth++;
    before = piece;
    return { start, end, line, endLine, image: token?.image ?? "", isComment: token === undefined, gap };
  });
  setColumns(placed);
  for (const { start, end, gap } of placed) {
    set(from, start, gap);
    from = end;
  }
  set(from, text.length, pieces.length > 0 ? newline : "");
  return edits;

  function set(start: number, end: number, wanted: string): void {
    // What begins where the range ends is the next line's own, unless there is nothing behind it.
    if (start > range.end || (start === range.end && end > start && range.end > range.start)) return;
    if (end < range.start || text.slice(start, end) === wanted) return;
    edits.push({ start, end, text: wanted });
  }
  function gapBefore(piece: Piece): string {
    const { token } = piece,
      goesOn = token && token.tokenType !== RBrace && !begins.has(token.index);
    const margin = "  ".repeat(depth + (goesOn ? 1 : 0)); // a wrapped line stands one deeper
    if (!before) return margin;
    if (piece.line > before.endLine) return newline.repeat(Math.min(2, piece.line - before.endLine)) + margin;
    if (!token) return "  ";
    const last = before.token;
    if (!last || (endsLine.has(last.index) && token.tokenType !== RBrace && !conditions.has(token.index)))
      return newline + margin;
    return tight.has(token.index) ? "" : blanks(last, token, begins.has(token.index) && !conditional.has(token.index));
  }
}

/** Is the depth of every line known: braces that pair, no open text block, no conflict, nothing that was not read? */
function hasDepth({ scan: { tokens, errors } }: Tree): boolean {
  if (errors.some((error) => /^syntax\/(?:unclosed-text|merge-conflict|too-large|not-text)/.test(error.code)))
    return false;
  let depth = 0;
  for (const { tokenType } of tokens) {
    if (tokenType === LBrace) depth++;
    else if (tokenType === RBrace && --depth < 0) return false;
  }
  return depth === 0;
}

/** Tokens and comments in the order of the text; a comment ends before the blanks at the end of its line. */
function piecesOf({ scan: { text, tokens, comments } }: Tree): Piece[] {
  const pieces: Piece[] = [];
  let next = 0;
  const commentsUpTo = (index: number): void => {
    for (; next < comments.length && comments[next]!.before <= index; next++) {
      const { start, end, line, ownLine } = comments[next]!;
      pieces.push({
        start,
        end: start + text.slice(start, end).trimEnd().length,
        line,
        endLine: line,
        token: undefined,
        ownLine,
      });
    }
  };
  for (const token of tokens) {
    commentsUpTo(token.index);
    pieces.push({
      start: token.startOffset,
      // A dash that was meant as a bullet has the blank behind it.
      end: token.startOffset + token.image.trimEnd().length,
      line: token.line,
      endLine: token.endLine,
      token,
      ownLine: token.opensLine,
    });
  }
  commentsUpTo(tokens.length);
  return pieces;
}

/**
 * The tokens that begin an item, those of them that are a condition and those that a one-item `if` governs, those that must end
 * their line (the last of such an `if`, unless the next condition follows), and those that stay close to the comma before them: after a decimal comma a blank would hide the mistake.
 */
function layoutOf({
  items,
  scan: { tokens },
}: Tree): Record<"begins" | "conditions" | "conditional" | "endsLine" | "tight", ReadonlySet<number>> {
  const begins = new Set<number>(),
    conditions = new Set<number>(),
    conditional = new Set<number>(),
    endsLine = new Set<number>(),
    tight = new Set<number>();
  eachItem(items, (item) => {
    begins.add(item.first);
    if (item.broken)
      for (let i = item.first + 1; i < (item.block?.first ?? item.last + 1); i++)
        if (tokens[i]!.glued && tokens[i - 1]!.text === ",") tight.add(i);
    if (item.entry?.itemWillDo) conditions.add(item.first);
    if (!item.entry?.itemWillDo || !item.block || tokens[item.block.first]!.tokenType === LBrace) return;
    conditional.add(item.block.first);
    endsLine.add(item.last);
  });
  return { begins, conditions, conditional, endsLine, tight };
}

/** The blanks between two tokens of one line. What an author wrote without a blank (20mm, 1/4) stays so. */
function blanks(a: Token, b: Token, begins: boolean): string {
  if (b.text === "," || b.text === ")" || a.text === "(" || a.text === ".." || b.text === "..") return "";
  if (a.tokenType === Junk) return b.glued && a.image === a.image.trimEnd() ? "" : " ";
  const brace = a.tokenType === LBrace || a.tokenType === RBrace || b.tokenType === LBrace || b.tokenType === RBrace;
  if (begins && !brace) return "  ";
  if (b.glued && !brace && a.text !== "," && b.text !== "(") return "";
  return " ";
}

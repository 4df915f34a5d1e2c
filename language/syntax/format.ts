// Formats from the token array, not from the tree, so that a broken text is formatted too. It keeps the author's lines and
// sets what stands in them: indentation by braces, one space, two between items, one blank line at most, comments where they were.

import { parse } from "./parser.ts";
import { LBrace, RBrace } from "./tokens.ts";
import { eachItem, type Token } from "./tree.ts";

export function format(text: string): string {
  const tree = parse(text), { tokens, comments } = tree.scan;
  if (tree.errors.some((error) => /brace|unclosed-text/.test(error.code))) return text;      // depth would be a guess
  const begins = new Set<number>();
  eachItem(tree.items, (item) => begins.add(item.first));

  const out: string[] = [];
  let line = "", depth = 0, lastLine = -1, comment = 0, before: Token | undefined;
  const endLine = () => { if (lastLine >= 0) out.push(line.trimEnd()); line = ""; };
  const goTo = (to: number, indent: number) => {
    if (to === lastLine) return;
    endLine();
    if (lastLine >= 0 && to > lastLine + 1) out.push("");
    line = "  ".repeat(Math.max(0, indent));
    before = undefined;
  };
  const commentsUpTo = (index: number) => {
    for (; comment < comments.length && comments[comment]!.before <= index; comment++) {
      const { start, end, line: at, ownLine } = comments[comment]!;
      if (ownLine) goTo(at, depth);
      line += (ownLine ? "" : "  ") + text.slice(start, end).trimEnd();
      lastLine = at;
    }
  };
  for (const token of tokens) {
    commentsUpTo(token.index);
    if (token.tokenType === RBrace) depth = Math.max(0, depth - 1);
    const goesOn = token.tokenType !== RBrace && !begins.has(token.index);          // a wrapped line stands one deeper
    goTo(token.line, depth + (goesOn ? 1 : 0));
    if (before) line += gap(before, token, begins.has(token.index));
    line += token.image;
    if (token.tokenType === LBrace) depth++;
    before = token;
    lastLine = token.endLine;
  }
  commentsUpTo(tokens.length);
  endLine();
  return out.length > 0 ? out.join("\n") + "\n" : "";
}

function gap(a: Token, b: Token, begins: boolean): string {
  if (b.text === "," || b.text === ")" || a.text === "(" || a.text === ".." || b.text === "..") return "";
  if (b.glued && a.tokenType !== LBrace && b.tokenType !== LBrace && b.tokenType !== RBrace && a.text !== ",") return b.text === "(" ? " " : "";
  if (begins && a.tokenType !== LBrace && a.tokenType !== RBrace) return "  ";
  return " ";
}

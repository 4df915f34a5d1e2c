// Braces that do not pair are mended before parsing, by the indentation, so that the parser only ever sees pairs.
// A text whose braces pair is left alone, however it is laid out.

import { createTokenInstance } from "chevrotain";
import { LBrace, RBrace } from "./tokens.ts";
import type { SyntaxError, Token } from "./tree.ts";
import { startOf, step } from "./shapes.ts";
import { placesOf, wordsIn } from "../vocabulary/index.ts";

export function mendBraces(tokens: Token[]): { input: Token[]; errors: SyntaxError[] } {
  let depth = 0, lowest = 0;
  for (const token of tokens) {
    if (token.tokenType === LBrace) depth++;
    else if (token.tokenType === RBrace) lowest = Math.min(lowest, --depth);
  }
  if (depth === 0 && lowest === 0) return { input: tokens, errors: [] };

  const errors: SyntaxError[] = [];
  const input: Token[] = [];
  const open: { token: Token; indent: number; at: number }[] = [];       // at: its place in input
  const tooManyClosed = depth < 0;
  let indent = 0;

  for (const token of tokens) {
    const closes = token.tokenType === RBrace;
    if (token.opensLine) {
      indent = token.column;
      while (open.length > 0 && open[open.length - 1]!.token.line < token.line
        && (closes ? indent < open[open.length - 1]!.indent : indent <= open[open.length - 1]!.indent)) closeMissing();
    }
    if (!closes) {
      if (token.tokenType === LBrace) {
        if (input[input.length - 1]?.tokenType === LBrace && depth > 0) { report("syntax/brace-stray", token, "This { opens nothing", true); continue; }
        open.push({ token, indent, at: input.length });
      }
      input.push(token);
      continue;
    }
    const top = open[open.length - 1];
    const pairs = top && (token.opensLine ? top.indent === indent && top.token.line < token.line : top.token.line === token.line || !tooManyClosed);
    if (pairs) { open.pop(); input.push(token); continue; }
    const place = token.opensLine ? headBefore(token) : headWithin(token);
    if (place > 0) {
      report("syntax/brace-missing", input[place - 1]!, "A { is missing here");
      input.splice(place, 0, invent(LBrace, input[place - 1]!));
      input.push(token);
    } else report("syntax/brace-stray", token, "This } closes nothing", true);        // swallowed
  }
  if (open.length > 0) {
    const last = input[input.length - 1]!, names = open.length === 1 ? "A block is" : `${open.length} blocks are`;
    report("syntax/brace-open", last, `${names} not closed: } is missing`);
    while (open.pop()) input.push(invent(RBrace, last));
  }
  return { input, errors };

  function closeMissing(): void {
    const last = input[input.length - 1]!;
    report("syntax/brace-missing", last, `The block opened in line ${open.pop()!.token.line + 1} ends here: } is missing`);
    input.push(invent(RBrace, last));
  }
  /** End of the nearest line at the indent of this }, with only deeper lines between: that line lost its {. */
  function headBefore(token: Token): number {
    const floor = open.length > 0 ? open[open.length - 1]!.at + 1 : 0;
    let end = input.length;                                              // where the deeper lines begin
    for (let i = input.length - 1; i >= floor; i--) {
      if (!input[i]!.opensLine || input[i]!.invented) continue;
      if (input[i]!.column < token.column) return 0;
      if (input[i]!.column === token.column) {
        const opens = end < input.length || placesOf(input[i]!.text).some((one) => one.blockNeeded);
        return opens && input[end - 1]!.tokenType !== RBrace ? end : 0;
      }
      end = i;
    }
    return 0;
  }
  /** On one line: after the first head whose word takes a block and that has none. */
  function headWithin(token: Token): number {
    let i = input.length;
    while (i > 0 && input[i - 1]!.line === token.line) i--;
    while (i < input.length) {
      const entry = placesOf(input[i]!.text).find((one) => one.block) ?? placesOf(input[i]!.text)[0];
      let end = i + 1;
      for (let state = entry && startOf(entry.shape); state && end < input.length; end++) if (!(state = step(state, input[end]!))) break;
      const follower = input[end];
      if (entry?.block && follower?.tokenType !== LBrace && (entry.blockNeeded || wordsIn(entry.block).has(follower?.text ?? ""))) return end;
      i = end;
    }
    return 0;
  }
  function report(code: string, token: Token, says: string, whole = false): void {
    const end = token.endOffset! + 1;
    errors.push({ code, start: whole ? token.startOffset : end, end, line: whole ? token.line : token.endLine, says });
  }
}

function invent(type: typeof LBrace, before: Token): Token {
  const end = before.endOffset! + 1;
  const token = createTokenInstance(type, "", end, end - 1, 0, 0, 0, 0) as Token;
  return Object.assign(token, { index: before.index, text: "", line: before.endLine, column: 0, endLine: before.endLine, opensLine: false, glued: true, invented: true });
}

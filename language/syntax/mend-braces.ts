// Braces that do not pair are mended before parsing, by the indentation, so that the parser only ever sees pairs, and never deeper
// ones than a procedure can need. A text whose braces pair is left alone, however it is laid out.

import { createTokenInstance, type TokenType } from "chevrotain";
import { placesOf, wordsIn } from "../vocabulary/index.ts";
import { startOf, step } from "./shapes.ts";
import { LBrace, RBrace, Word } from "./tokens.ts";
import type { SyntaxError, SyntaxFix, Token } from "./tree.ts";

/** Blocks inside each other; what stands deeper is left out of the tree. Real procedures have at most six. */
export const deepestBlock = 64;
/** With more brace errors than this the layout tells nothing any more: a } without a { is then simply passed over. */
const mostGuesses = 200;

type Opened = {
  readonly token: Token;
  readonly indent: number;
  readonly margin: string;
  /** Its place in the input. */ readonly at: number;
};
type Mended = { readonly input: Token[]; readonly errors: SyntaxError[] };

/** The tokens with every { and } paired, and one error for each that was missing or too many. */
export function mendBraces(tokens: Token[], text: string): Mended {
  let depth = 0,
    lowest = 0,
    deepest = 0;
  for (const token of tokens) {
    if (token.tokenType === LBrace) deepest = Math.max(deepest, ++depth);
    else if (token.tokenType === RBrace) lowest = Math.min(lowest, --depth);
  }
  if (depth === 0 && lowest === 0)
    return deepest > deepestBlock ? flattened(tokens, []) : { input: tokens, errors: [] };
  const { input, errors } = paired(tokens, text, depth);
  return flattened(input, errors);
}

function paired(tokens: readonly Token[], text: string, depth: number): Mended {
  const errors: SyntaxError[] = [],
    input: Token[] = [],
    open: Opened[] = [];
  const tooManyClosed = depth < 0,
    newline = text.includes("\r\n") ? "\r\n" : "\n";
  let indent = 0,
    margin = "",
    passed = 0;

  for (const [i, token] of tokens.entries()) {
    const closes = token.tokenType === RBrace;
    const goesOn = closes && token.opensLine && passed < -depth && goesDeeperAfter(tokens, i);
    // One } too many in the middle of a block: what follows it stands deeper, as the rest of that block does. An editor puts it there
    // of itself behind a { that is typed in front of lines.
    if (goesOn && (!ends(token) || input[input.length - 1]?.tokenType === LBrace)) {
      passed++;
      stray(token, "This } closes nothing, since its block goes on");
      continue;
    }
    if (token.opensLine) {
      indent = token.column;
      margin = text.slice(token.startOffset - indent, token.startOffset);
      while (
        open.length > 0 &&
        open[open.length - 1]!.token.line < token.line &&
        (closes ? indent < open[open.length - 1]!.indent : indent <= open[open.length - 1]!.indent)
      )
        closeMissing();
    }
    if (token.tokenType === LBrace) {
      if (input[input.length - 1]?.tokenType === LBrace && depth > 0) {
        stray(token, "This { opens nothing");
        continue;
      }
      open.push({ token, indent, margin, at: input.length });
    }
    if (!closes) {
      input.push(token);
      continue;
    }
    const top = open[open.length - 1];
    const pairs =
      top &&
      (token.opensLine
        ? top.indent === indent && top.token.line < token.line
        : top.token.line === token.line || !tooManyClosed);
    if (pairs) {
      open.pop();
      input.push(token);
      // A block that ends, and lines of another one behind it: the line that opened that one is missing.
      if (goesOn) {
        passed++;
        const headless = headlessBlock(token);
        open.push({ token: headless[1], indent, margin, at: input.length + 1 });
        input.push(...headless);
      }
      continue;
    }
    const place = errors.length > mostGuesses ? -1 : token.opensLine ? headBefore(token) : headWithin(token);
    if (place < 0) {
      stray(token, "This } closes nothing"); // passed over
      continue;
    }
    const head = input[place - 1];
    if (head && (!token.opensLine || takesBlock(place))) {
      report("syntax/brace-missing", head, "A { is missing here", insertion("Put { in", " {"));
      input.splice(place, 0, invent(LBrace, head));
    } else input.splice(place, 0, ...headlessBlock(head ?? input[0]!));
    input.push(token);
  }
  if (open.length > 0) {
    const last = input[input.length - 1]!,
      names = open.length === 1 ? "A block is" : `${open.length} blocks are`;
    report(
      "syntax/brace-open",
      last,
      `${names} not closed: } is missing`,
      insertion("Close here", open.map(closing).reverse().join("")),
    );
    while (open.pop()) input.push(invent(RBrace, last));
  }
  return { input, errors };

  function closeMissing(): void {
    const last = input[input.length - 1]!,
      block = open.pop()!;
    report(
      "syntax/brace-missing",
      last,
      `The block opened in line ${block.token.line + 1} ends here: } is missing`,
      insertion("Put } in", closing(block)),
    );
    input.push(invent(RBrace, last));
  }
  function closing(block: Opened): string {
    return input[input.length - 1]!.line === block.token.line ? " }" : `${newline}${block.margin}}`;
  }
  /** It ends the block that is open, by the layout. */
  function ends(token: Token): boolean {
    const top = open[open.length - 1];
    return top !== undefined && top.indent === token.column && top.token.line < token.line;
  }
  /** The line that ends before this place may have lost its {; another one opens no block, or its own: then the line that did is missing. */
  function takesBlock(place: number): boolean {
    const before = input[place - 1],
      inside = input[place];
    if (!before || before.tokenType === LBrace || before.tokenType === RBrace) return false;
    let i = place - 1;
    while (i > 0 && !input[i]!.opensLine) i--;
    const lines = input.slice(place).filter((one) => one.opensLine && one.column === inside?.column);
    return placesOf(input[i]!.text).some(
      ({ block }) =>
        block !== "" && lines.every(({ text: word }) => wordsIn(block).has(word) || placesOf(word).length === 0),
    );
  }
  /**
   * End of the nearest line at the indent of this }, with only deeper lines between: that line lost its {, or one behind it is missing.
   * -1 for none.
   */
  function headBefore(token: Token): number {
    const floor = open.length > 0 ? open[open.length - 1]!.at + 1 : 0;
    let end = input.length; // where the deeper lines begin
    for (let i = input.length - 1; i >= floor; i--) {
      const one = input[i]!;
      if (!one.opensLine || one.invented) continue;
      if (one.column < token.column) return -1;
      if (one.column === token.column) {
        if (end < input.length) return end;
        return placesOf(one.text).some((entry) => entry.blockNeeded) && input[end - 1]!.tokenType !== RBrace ? end : -1;
      }
      end = i;
    }
    return end < input.length ? end : -1;
  }
  /** On one line: after the first head whose word takes a block and that has none. */
  function headWithin(token: Token): number {
    let i = input.length;
    while (i > 0 && input[i - 1]!.line === token.line) i--;
    const onLine = headFrom(i);
    if (onLine >= 0) return onLine;
    // The line goes on with one above that stands less deep: the head may stand there.
    const column = input[i]?.column ?? 0,
      floor = open.length > 0 ? open[open.length - 1]!.at + 1 : 0;
    while (i > floor && !(input[i]?.opensLine === true && input[i]!.column < column)) i--;
    return input[i]?.opensLine && input[i]!.column < column ? headFrom(i) : -1;
  }
  function headFrom(start: number): number {
    let i = start;
    while (i < input.length) {
      const known = placesOf(input[i]!.text),
        entry = known.find((one) => one.block !== "") ?? known[0];
      let end = i + 1;
      for (let state = entry && startOf(entry.shape); state && end < input.length; end++)
        if (!(state = step(state, input[end]!))) break;
      const follower = input[end];
      if (
        entry &&
        entry.block !== "" &&
        follower?.tokenType !== LBrace &&
        (entry.blockNeeded || wordsIn(entry.block).has(follower?.text ?? ""))
      )
        return end;
      i = end;
    }
    return -1;
  }
  function stray(token: Token, says: string): void {
    const start = token.startOffset,
      end = start + 1;
    errors.push({
      code: "syntax/brace-stray",
      start,
      end,
      line: token.line,
      says,
      fix: { title: "Take it out", edits: [{ start, end, text: "" }], certain: false },
    });
  }
  function report(code: string, after: Token, says: string, fix: (end: number) => SyntaxFix): void {
    const end = after.endOffset! + 1;
    errors.push({ code, start: end, end, line: after.endLine, says, fix: fix(end) });
  }
}

function goesDeeperAfter(tokens: readonly Token[], brace: number): boolean {
  const next = tokens[brace + 1];
  return next !== undefined && next.opensLine && next.tokenType !== RBrace && next.column > tokens[brace]!.column;
}

const insertion =
  (title: string, text: string) =>
  (end: number): SyntaxFix => ({ title, edits: [{ start: end, end, text }], certain: false });

/** Takes out what stands inside more blocks than a tree is built of; the braces around it stay, so that their head has its block. */
function flattened(tokens: Token[], errors: SyntaxError[]): Mended {
  const input: Token[] = [];
  let depth = 0,
    told = false;
  for (const token of tokens) {
    if (token.tokenType === RBrace) depth--;
    if (depth <= deepestBlock) input.push(token);
    if (token.tokenType !== LBrace) continue;
    depth++;
    if (depth <= deepestBlock || told) continue;
    told = true;
    const start = token.startOffset,
      says = `More than ${deepestBlock} blocks stand inside each other here: what is deeper is not read`;
    errors.push({ code: "syntax/too-deep", start, end: token.endOffset! + 1, line: token.line, says });
  }
  return { input, errors };
}

/** What opens a block that no line opens: a word of no letters, which the parser tells. */
const headlessBlock = (before: Token): readonly [word: Token, brace: Token] => [
  Object.assign(invent(Word, before), { opensLine: true }),
  invent(LBrace, before),
];

function invent(type: TokenType, before: Token): Token {
  const end = before.endOffset! + 1;
  const token = createTokenInstance(type, "", end, end - 1, 0, 0, 0, 0) as Token;
  return Object.assign(token, {
    index: before.index,
    text: "",
    line: before.endLine,
    column: 0,
    endLine: before.endLine,
    opensLine: false,
    glued: true,
    invented: true,
  });
}

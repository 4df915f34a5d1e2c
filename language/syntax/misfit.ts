// A token that does not fit its item, as the parser hands it on to be told, and the plain forms of an error about it.

import type { Leaf } from "./shapes.ts";
import type { SyntaxError, SyntaxFix, Token } from "./tree.ts";

/** What was read of the item so far, and the token that does not fit. */
export type Misfit = {
  /** The item's word. */
  readonly word: Token;
  readonly state: Leaf;
  /** The token before. */
  readonly last: Token;
  readonly token: Token;
  /** The token is a comma that stands for a decimal point. */
  readonly decimal: boolean;
  /** The token after. */
  readonly after: Token;
  /** The first token of the argument that the token before belongs to. */
  readonly figure: Token | undefined;
  /** The token before the last. */
  readonly lead: Token | undefined;
  /** The kind of block that the item stands in. */
  readonly place: string;
};
export type Mended = { readonly error: SyntaxError; readonly next: Leaf | undefined };

export const endOf = (token: Token): number => token.endOffset! + 1;
export const at = (token: Token, code: string, says: string, fix?: SyntaxFix): SyntaxError =>
  error(code, token.startOffset, endOf(token), token.line, says, fix);
export const replacing = (token: Token, text: string, title: string, certain: boolean): SyntaxFix => ({
  title,
  edits: [{ start: token.startOffset, end: endOf(token), text }],
  certain,
});

export function error(
  code: string,
  start: number,
  end: number,
  line: number,
  says: string,
  fix: SyntaxFix | undefined,
): SyntaxError {
  return fix ? { code, start, end, line, says, fix } : { code, start, end, line, says };
}

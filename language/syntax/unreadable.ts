// Texts that are no procedure at all: too large, or not text. One clear finding instead of thousands.

import type { SyntaxError } from "./tree.ts";

/** The largest text that is read, in UTF-16 code units: about 200,000 lines, a thousand times a long procedure. */
export const largestText = 8_000_000;

/** Why a text is not read as it stands. `nothing`: not one token is made of it; else it is read, and this is its only error of signs. */
export function refusal(text: string): { readonly nothing: boolean; readonly error: SyntaxError } | undefined {
  if (text.length > largestText) {
    const says = `This file is too large: ${inMillions(text.length)} million characters, and at most ${inMillions(largestText)} million are read`;
    return { nothing: true, error: { code: "syntax/too-large", start: 0, end: 0, line: 0, says } };
  }
  const zero = text.indexOf("\0");
  if (zero >= 0)
    return { nothing: true, error: at(zero, "syntax/not-text", "This is no text file: it holds a byte of value 0") };
  if (text.isWellFormed()) return undefined;
  const broken = text.search(/\p{Surrogate}/u);
  return {
    nothing: false,
    error: at(broken, "syntax/not-text", "Half of a character stands here: type it again and save the file as UTF-8"),
  };

  function at(start: number, code: string, says: string): SyntaxError {
    return { code, start, end: start + 1, line: text.slice(0, start).split(/\r\n|\r|\n/).length - 1, says };
  }
}

const inMillions = (characters: number): string => String(Math.round(characters / 100_000) / 10);

// The door of the parser: any text to a tree with its errors. Never throws and judges nothing but form.

import { mendBraces } from "./mend-braces.ts";
import { reread } from "./reread.ts";
import { StripRules } from "./rules.ts";
import { scan } from "./scanner.ts";
import { Junk } from "./tokens.ts";
import type { SyntaxError, Tree } from "./tree.ts";

let rules: StripRules | undefined; // built once, on first use: start-up time is felt

/**
 * Reads a text of any content as the inside of a block of that kind, `file` if not said.
 *
 * Errors are in the order of the text, at most one a line. A text that is no text, or is too large, gives one error and no items.
 *
 * With the tree of an `earlier` text of the same place only what an edit touched is read again where that is enough. The tree is the same
 * either way; items and tokens in front of the edit are then those of the earlier tree, and are changed in neither.
 */
export function parse(text: string, place = "file", earlier?: Tree): Tree {
  const again = earlier && rules && earlier.place === place ? reread(earlier, text, rules) : undefined;
  if (again) return { ...again, errors: oneALine(again.errors) };
  const scanned = scan(text);
  const known = scanned.errors.length > 0 ? scanned.tokens.filter((token) => token.tokenType !== Junk) : scanned.tokens;
  const { input, errors } = mendBraces(known, text);
  rules ??= new StripRules();
  const items = rules.read(input, scanned.tokens, place);
  const echoes = (error: SyntaxError): boolean => error.code === "syntax/strange-sign";
  return {
    scan: scanned,
    place,
    items,
    errors: oneALine(
      scanned.errors.filter((error) => !echoes(error)),
      errors,
      scanned.errors.filter(echoes),
      rules.found,
    ),
  };
}

/** One error a line, the most certain first: what follows it on the line is mostly its echo. */
function oneALine(...byCertainty: readonly (readonly SyntaxError[])[]): SyntaxError[] {
  const lines = new Map<number, SyntaxError>();
  for (const errors of byCertainty)
    for (const error of errors) if (!lines.has(error.line)) lines.set(error.line, error);
  return [...lines.values()].sort((a, b) => a.start - b.start);
}

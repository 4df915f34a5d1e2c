// Which token stands at a place of the text.

import type { Token } from "./tree.ts";

/** The index of the first token that begins behind this place. */
export function tokenAt(tokens: readonly Token[], offset: number): number {
  let low = 0,
    high = tokens.length;
  while (low < high) {
    const middle = (low + high) >> 1;
    if (tokens[middle]!.startOffset <= offset) low = middle + 1;
    else high = middle;
  }
  return low;
}

// The sets that parts of one line belong to, as the line says them.

import { matchedSets } from "../../bench/matched.ts";
import type { Part } from "../../model/model.ts";
import { phrase, type LineContext } from "./context.ts";

/** One phrase a set, all of its parts in it, in the order of the line. */
export function setsOf(context: LineContext, parts: readonly Part[]): string[] {
  const sets = matchedSets(context.model);
  if (sets.size === 0) return [];
  return [...new Set(parts.flatMap((part) => [sets.get(part.index)].flatMap((set) => (set ? [set] : []))))].map((set) =>
    phrase(
      context,
      set.map(({ index }) => index),
    ),
  );
}

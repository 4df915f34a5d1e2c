// What a procedure does, needs, or is put together by, as written in its lines.

import { eachItem, type Item } from "../syntax/index.ts";

const calling: readonly string[] = ["do", "needs", "refit"];

/** Names of procedures behind these words, and of steps where a `do` names one. */
export function callsIn(
  tokens: readonly { readonly text: string }[],
  procedure: Item,
  words: readonly string[] = calling,
): ReadonlySet<string> {
  const names = new Set<string>();
  eachItem(procedure.block?.items ?? [], (item) => {
    if (!words.includes(item.entry?.word ?? "")) return;
    for (const argument of item.arguments) if (argument.slot === "name") names.add(tokens[argument.first]!.text);
  });
  return names;
}

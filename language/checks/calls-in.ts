// What a procedure does, needs, or is put together by, as written in its lines.

import { eachItem, type Item } from "../syntax/index.ts";

/** Names of procedures, and of steps where a `do` names one. */
export function callsIn(tokens: readonly { readonly text: string }[], procedure: Item): ReadonlySet<string> {
  const names = new Set<string>();
  eachItem(procedure.block?.items ?? [], (item) => {
    const word = item.entry?.word;
    if (word !== "do" && word !== "needs" && word !== "refit") return;
    for (const argument of item.arguments) if (argument.slot === "name") names.add(tokens[argument.first]!.text);
  });
  return names;
}

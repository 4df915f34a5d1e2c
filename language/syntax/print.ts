// The text again, from the tree: every token belongs to one node, and what lies between tokens is carried along.

import type { Item, Tree } from "./tree.ts";

/** The text again, from the tree: every token belongs to one node, and what lies between tokens is carried along. */
export function print(tree: Tree): string {
  const { text, tokens } = tree.scan;
  let out = "",
    done = 0;
  const upTo = (index: number) => {
    for (; done < index; done++) out += between(done) + tokens[done]!.image;
  };
  const items = (list: Item[]) => {
    for (const item of list) node(item);
  };
  items(tree.items);
  upTo(tokens.length);
  return out + text.slice(tokens.length > 0 ? tokens[tokens.length - 1]!.endOffset! + 1 : 0);

  function node(item: Item): void {
    upTo(item.first);
    if (item.block) items(item.block.items);
    upTo(item.last + 1);
  }
  function between(index: number): string {
    return text.slice(index > 0 ? tokens[index - 1]!.endOffset! + 1 : 0, tokens[index]!.startOffset);
  }
}

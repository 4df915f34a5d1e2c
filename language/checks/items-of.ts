// The items of a file in one row, gathered once for all checks that look through them: most look for few words, and to walk the tree for
// each of them took as long as performing the procedure.

import { kept } from "../model/kept.ts";
import type { SourceFile } from "../names/project.ts";
import type { Item } from "../syntax/index.ts";

interface Items {
  readonly all: readonly Item[];
  readonly words: ReadonlySet<string>;
}

const gathered = kept<SourceFile, Items>();
const itemsIn = (file: SourceFile): Items => gathered(file, () => gather(file.tree.items));

/** Every item, each before those in its block. */
export const itemsOf = (file: SourceFile): readonly Item[] => itemsIn(file).all;

/** Does any item of the file begin with this word? */
export const holdsWord = (file: SourceFile, word: string): boolean => itemsIn(file).words.has(word);

function gather(top: readonly Item[]): Items {
  const all: Item[] = [],
    words = new Set<string>();
  const add = (items: readonly Item[]): void => {
    for (const item of items) {
      all.push(item);
      if (item.entry) words.add(item.entry.word);
      if (item.block) add(item.block.items);
    }
  };
  add(top);
  return { all, words };
}

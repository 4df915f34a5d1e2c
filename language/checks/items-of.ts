// The items of a file in one row and by their word, gathered once for all checks that look through them: most look for few words, and to
// walk the tree for each of them took as long as performing the procedure.

import { kept } from "../model/kept.ts";
import type { SourceFile } from "../names/project.ts";
import type { Item } from "../syntax/index.ts";

interface Items {
  readonly all: readonly Item[];
  readonly byWord: ReadonlyMap<string, readonly Item[]>;
}

const gathered = kept<SourceFile, Items>();
const itemsIn = (file: SourceFile): Items => gathered(file, () => gather(file.tree.items));

/** Every item, each before those in its block. */
export const itemsOf = (file: SourceFile): readonly Item[] => itemsIn(file).all;

/** Those that begin with this word, wherever they stand, in the order of the text. */
export const itemsWith = (file: SourceFile, word: string): readonly Item[] => itemsIn(file).byWord.get(word) ?? none;
const none: readonly Item[] = [];

/** Does any item of the file begin with this word? */
export const holdsWord = (file: SourceFile, word: string): boolean => itemsIn(file).byWord.has(word);

function gather(top: readonly Item[]): Items {
  const all: Item[] = [],
    byWord = new Map<string, Item[]>();
  const add = (items: readonly Item[]): void => {
    for (let i = 0; i < items.length; i++) {
      const item = items[i]!,
        { entry, block } = item;
      all.push(item);
      if (entry) {
        const list = byWord.get(entry.word);
        if (list) list.push(item);
        else byWord.set(entry.word, [item]);
      }
      if (block) add(block.items);
    }
  };
  add(top);
  return { all, byWord };
}

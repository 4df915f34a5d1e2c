// Sources whose strings read as their translations: the same tokens at the same places, so that lines, findings and the content hash
// stay those of what the author wrote.

import type { TreeCache } from "../../names/load.ts";
import { textOf } from "../../names/strings.ts";
import type { Item, Token } from "../../syntax/index.ts";
import { stringsOf, type AuthorText } from "./author-texts.ts";

export interface Translated {
  readonly trees: TreeCache;
  /** Texts that have no translation, by file: they print as written. */
  readonly missing: ReadonlyMap<string, readonly AuthorText[]>;
}

/** @param translate by file: the translation of a text, or undefined; undefined for a file without translations. */
export function translated(
  trees: ReadonlyMap<string, NonNullable<ReturnType<TreeCache["get"]>>>,
  translate: (path: string) => ((text: AuthorText) => string | undefined) | undefined,
): Translated {
  const made: TreeCache = new Map(),
    missing = new Map<string, AuthorText[]>();
  for (const [path, { text, file }] of trees) {
    const of = translate(path),
      tokens = [...file.tree.scan.tokens],
      lacking = new Map<string, AuthorText>();
    for (const { at, ...each } of stringsOf(file)) {
      const said = of?.(each);
      if (said === undefined) lacking.set(each.id, each);
      else tokens[at] = saying(tokens[at]!, said);
    }
    if (lacking.size > 0) missing.set(path, [...lacking.values()]);
    // Items of their own: what was worked out from the source's items is kept with those.
    const again = new Map<Item, Item>(),
      copy = (item: Item): Item => {
        const made = { ...item, block: item.block && { ...item.block, items: item.block.items.map(copy) } };
        again.set(item, made);
        return made;
      },
      tree = { ...file.tree, items: file.tree.items.map(copy), scan: { ...file.tree.scan, tokens } };
    made.set(path, {
      text,
      file: {
        ...file,
        tree,
        declarations: file.declarations.map((declaration) => {
          const item = again.get(declaration.item)!,
            title = item.arguments.find(({ slot }) => slot === "string");
          return title && declaration.word !== "warn"
            ? { ...declaration, item, name: textOf(tokens[title.first]!) }
            : { ...declaration, item };
        }),
      },
    });
  }
  return { trees: made, missing };
}

/** A string token that reads as another text. */
function saying(token: Token, text: string): Token {
  const image = `"${text.replace(/["\\]/g, "\\$&")}"`;
  return { ...token, image, text: image };
}

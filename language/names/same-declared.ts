// Do two readings declare the same, at the same places? Then what was made of the declarations alone need not be made again: an edit in
// a procedure that stands behind its unit, the usual one, leaves the unit as it was.

import type { Item, Tree } from "../syntax/index.ts";
import type { Declaration, SourceFile } from "./project.ts";

/** The files of either reading in the order in which they are reached. Procedures are left out. */
export const sameDeclared = (older: readonly SourceFile[], now: readonly SourceFile[]): boolean =>
  older.length === now.length &&
  older.every((file, i) => {
    const other = now[i]!;
    if (file.tree === other.tree) return true;
    if (file.path !== other.path) return false;
    const declared = declarations(file),
      others = declarations(other);
    return (
      declared.length === others.length &&
      declared.every((one, k) => sameItem(file.tree, one.item, other.tree, others[k]!.item))
    );
  });

const declarations = (file: SourceFile): readonly Declaration[] =>
  file.declarations.filter(({ word }) => word !== "procedure");

/** Token by token, at the same places of text and tree. */
function sameItem(older: Tree, a: Item, now: Tree, b: Item): boolean {
  if (a === b) return true; // an item is known by where it stands
  if (!sameShape(a, b)) return false;
  for (let i = a.first; i <= a.last; i++) {
    const x = older.scan.tokens[i]!,
      y = now.scan.tokens[i]!;
    if (
      x.startOffset !== y.startOffset ||
      x.endOffset !== y.endOffset ||
      x.tokenType !== y.tokenType ||
      x.image !== y.image ||
      x.invented !== y.invented
    )
      return false;
  }
  return true;
}

function sameShape(a: Item, b: Item): boolean {
  if (
    a.entry !== b.entry ||
    a.first !== b.first ||
    a.last !== b.last ||
    a.broken !== b.broken ||
    a.arguments.length !== b.arguments.length ||
    a.block?.first !== b.block?.first ||
    a.block?.last !== b.block?.last ||
    a.block?.place !== b.block?.place ||
    a.block?.items.length !== b.block?.items.length
  )
    return false;
  return (
    a.arguments.every((one, i) => {
      const other = b.arguments[i]!;
      return (
        one.slot === other.slot &&
        one.first === other.first &&
        one.last === other.last &&
        one.declares === other.declares
      );
    }) &&
    (a.block?.items.every((one, i) => sameShape(one, b.block!.items[i]!)) ?? true)
  );
}

// Looking up a kind by a name that an author wrote. Knows no kind itself.

/** Is this name a kind of that table? Narrows the type, so that `table[name]` needs no cast. */
export function isKindOf<T extends object>(table: T, name: string): name is Extract<keyof T, string> {
  return Object.hasOwn(table, name);
}

/** The entry of that name, or undefined. */
export function kindIn<K extends string, V>(table: Readonly<Record<K, V>>, name: string | undefined): V | undefined {
  return name !== undefined && isKindOf(table, name) ? table[name] : undefined;
}

// A `use` line where it belongs, for who finds that one is missing.

import type { TextEdit } from "../findings/finding.ts";
import type { SourceFile } from "../names/project.ts";
import type { Item } from "../syntax/index.ts";

/** A `use` line for a file, behind the last one that is there. */
export function useLine(file: SourceFile, path: string): TextEdit {
  const last = file.tree.items.findLast((item) => item.entry?.word === "use"),
    line = `use ${JSON.stringify(relativeTo(file.path, path))}`;
  if (last) {
    const end = endOf(file, last);
    return { file: file.path, start: end, end, text: `\n${line}` };
  }
  const first = file.tree.items[0],
    start = first ? file.text.lastIndexOf("\n", startOf(file, first) - 1) + 1 : 0;
  return { file: file.path, start, end: start, text: `${line}\n\n` };
}

/** A path as a file would write it. Both are absolute with `/`. */
export function relativeTo(fromFile: string, path: string): string {
  const from = fromFile.split("/").slice(0, -1),
    to = path.split("/");
  let same = 0;
  while (same < from.length && same < to.length - 1 && from[same] === to[same]) same++;
  return [...from.slice(same).map(() => ".."), ...to.slice(same)].join("/");
}

const startOf = ({ tree }: SourceFile, { first }: Item): number => tree.scan.tokens[first]!.startOffset;
const endOf = ({ tree }: SourceFile, { last }: Item): number => tree.scan.tokens[last]!.endOffset! + 1;

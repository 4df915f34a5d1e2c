// A new name for a declared thing, in every file that speaks of it; or the reason why not.

import type { TextEdit } from "../findings/finding.ts";
import type { Project, SourceFile } from "../names/project.ts";
import { parse } from "../syntax/index.ts";
import { reservedNames } from "../vocabulary/index.ts";
import { mentionAt, mentionsIn, mentionsOf, type Mention } from "./symbols.ts";

export type Renamed = { readonly edits: readonly TextEdit[] } | { readonly problem: string };

/** What would be renamed at an offset; undefined where no name stands. */
export const renameTarget = (project: Project, file: SourceFile, offset: number): Mention | undefined =>
  mentionAt(project, file, offset);

export function rename(project: Project, file: SourceFile, offset: number, to: string): Renamed {
  const target = mentionAt(project, file, offset);
  if (!target) return { problem: "No name stands here" };
  if (to === target.id) return { edits: [] };
  if (reservedNames.has(to)) return { problem: `${to} is a word of the language where names stand: choose another` };
  const tree = parse(`unit a { part ${to} }\n`),
    item = tree.items[0]?.block?.items[0],
    token = item && tree.scan.tokens[item.first + 1];
  if (tree.errors.length > 0 || tree.scan.tokens.length !== 6 || token?.text !== to || to.includes("."))
    return { problem: `"${to}" is no name: letters, figures and hyphens, a letter first` };
  const all = mentionsOf(project, target.symbol),
    taken = clash(project, target, to);
  if (!all.some((one) => one.role === "declared"))
    return { problem: `Where ${target.id} is declared cannot be seen from here` };
  if (taken) return { problem: `${to} is the name of a ${taken.word} already` };
  return { edits: all.map((one) => ({ file: one.file, start: one.start, end: one.end, text: to })) };
}

/** A thing that has the new name where the old one is known. */
function clash(project: Project, target: Mention, to: string): Mention | undefined {
  const scope = target.symbol.slice(0, target.symbol.length - target.id.length);
  for (const file of project.files.values())
    for (const one of mentionsIn(project, file)) {
      if (
        one.role === "declared" &&
        one.id === to &&
        (one.symbol === `${scope}${to}` || (target.symbol.includes("/") && one.symbol.slice(0, -to.length) === scope))
      )
        return one;
    }
  return undefined;
}

// Procedures that say nothing of what they are to reach: the bench takes them for a strip, and misses nothing at their end.

import type { Span } from "../findings/finding.ts";
import { kept } from "../model/kept.ts";
import type { Declaration, Project, SourceFile } from "../names/project.ts";
import type { Item } from "../syntax/index.ts";
import { callsIn } from "./calls-in.ts";
import { wasReadWhole } from "./read-whole.ts";

/** What such a procedure is, by what its lines do: it puts together and takes nothing apart, or it takes apart. */
export type Unsaid = "builds up" | "takes apart";

const making: ReadonlySet<string> = new Set(["fit", "press"]),
  parting: ReadonlySet<string> = new Set(["undo", "remove", "lift"]),
  /** Blocks of the way back, and what comes after it. */
  later: ReadonlySet<string> = new Set(["refit", "instead", "finish"]);

/** Undefined where it has an aim, does neither, or where a line of it could not be read. */
export function unsaidAim(project: Project, file: SourceFile, declaration: Declaration): Unsaid | undefined {
  const { word, item } = declaration,
    items = item.block?.items;
  if (word !== "procedure" || !items || items.some(({ entry }) => entry?.word === "aim")) return undefined;
  const words = wordsOf(items);
  if (words.has("aim") || !wasReadWhole(project, wholeOf(file, item))) return undefined;
  // What another one does is a part of it, and what it needs comes before it: it is that one's aim which counts.
  if (isAny(words, parting)) return called(project).any.has(declaration.id) ? undefined : "takes apart";
  return isAny(words, making) && !called(project).done.has(declaration.id) ? "builds up" : undefined;
}

const isAny = (words: ReadonlySet<string>, of: ReadonlySet<string>): boolean => !words.isDisjointFrom(of);

/** Words that open its lines, those of blocks inside it too, but of its strip alone. */
function wordsOf(items: readonly Item[], found = new Set<string>()): ReadonlySet<string> {
  for (const { entry, block } of items) {
    const word = entry?.word ?? "";
    if (later.has(word)) continue;
    found.add(word);
    if (block) wordsOf(block.items, found);
  }
  return found;
}

function wholeOf({ path, tree }: SourceFile, { first, last }: Item): Span {
  const { tokens } = tree.scan;
  return { file: path, start: tokens[first]!.startOffset, end: tokens[last]!.endOffset! + 1 };
}

/** Ids of procedures that others of the project do, and of those that they do, need or are put together by. */
interface Called {
  readonly done: ReadonlySet<string>;
  readonly any: ReadonlySet<string>;
}
const known = kept<Project, Called>();
const called = (project: Project): Called =>
  known(project, () => {
    const calls = (words?: readonly string[]): Set<string> =>
      new Set(
        [...project.files.values()].flatMap((file) =>
          file.declarations.flatMap(({ word, item }) =>
            word === "procedure" ? [...callsIn(file.tree.scan.tokens, item, words)] : [],
          ),
        ),
      );
    return { done: calls(["do"]), any: calls() };
  });

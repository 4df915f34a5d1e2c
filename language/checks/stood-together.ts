// Names that nothing has and that one block may have declared, all of them: what stood under one condition, or in one procedure.

import type { Span } from "../findings/finding.ts";
import { kept } from "../model/kept.ts";
import type { Project, SourceFile } from "../names/project.ts";
import type { Item } from "../syntax/index.ts";
import { nearestName } from "./near-names.ts";
import { surveyOf, type Unknown } from "./survey-of-names.ts";

interface Place {
  readonly start: number;
  readonly end: number;
}

const conditions = kept<Project, ReadonlyMap<string, ReadonlySet<string | undefined>>>();

const keyOf = ({ unit, text }: Unknown): string => `${unit ?? ""} ${text}`;

/** The condition that all lines with this name stand under, as written: `if heater`; undefined where one stands under none, or another. */
export function conditionOf(project: Project, unknown: Unknown): string | undefined {
  const found = conditions(project, () => conditionsIn(project)).get(keyOf(unknown));
  return found?.size === 1 ? [...found][0] : undefined;
}

/** Gathered once: a name that nothing has may stand in thousands of lines, and each of them asks. */
function conditionsIn(project: Project): ReadonlyMap<string, ReadonlySet<string | undefined>> {
  const all = new Map<string, Set<string | undefined>>();
  for (const file of project.files.values())
    for (const unknown of surveyOf(project, file).unknown) {
      const key = keyOf(unknown);
      let found = all.get(key);
      if (!found) all.set(key, (found = new Set()));
      found.add(conditionAround(file, unknown));
    }
  return all;
}

/** The innermost. */
function conditionAround(file: SourceFile, place: Place): string | undefined {
  let found: string | undefined,
    items: readonly Item[] | undefined = file.tree.items;
  while (items) {
    const next = itemAt(file, items, place),
      word = next?.entry?.word;
    if (next?.block && (word === "if" || word === "unless"))
      found = file.tree.scan.tokens
        .slice(next.first, next.block.first)
        .map(({ text }) => text)
        .join(" ");
    items = next?.block?.items;
  }
  return found;
}

/** Items stand in the order of their text, so that of thousands the one is found by halves. */
function itemAt(file: SourceFile, items: readonly Item[], place: Place): Item | undefined {
  const { tokens } = file.tree.scan;
  let low = 0,
    high = items.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (tokens[items[middle]!.first]!.startOffset <= place.start) low = middle;
    else high = middle - 1;
  }
  const item = items[low];
  return item && isIn(file, item, place) ? item : undefined;
}

/** For a reading like no other name, in a procedure that does or needs one which nothing declares: that one would have made it. */
export function lostProcedureFor(project: Project, file: SourceFile, unknown: Unknown): Span | undefined {
  const { due, is, text, candidates } = unknown;
  if (due !== "condition" || is !== undefined || nearestName(text, candidates) !== undefined) return undefined;
  const around = file.tree.items.find((item) => isIn(file, item, unknown));
  const lost =
    around &&
    surveyOf(project, file).unknown.find(
      (one) =>
        (one.due === "procedure" || one.due === "procedure or step") && one.is === undefined && isIn(file, around, one),
    );
  return lost && { file: file.path, start: lost.start, end: lost.end };
}

function isIn({ tree }: SourceFile, { first, last }: Item, { start, end }: Place): boolean {
  const { tokens } = tree.scan;
  return tokens[first]!.startOffset <= start && tokens[last]!.endOffset! + 1 >= end;
}

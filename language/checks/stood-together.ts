// Names that nothing has and that one block may have declared, all of them: what stood under one condition, or in one procedure.

import type { Span } from "../findings/finding.ts";
import type { Project, SourceFile } from "../names/project.ts";
import type { Item } from "../syntax/index.ts";
import { nearestName } from "./near-names.ts";
import { surveyOf, type Unknown } from "./survey-of-names.ts";

interface Place {
  readonly start: number;
  readonly end: number;
}

/** The condition that all lines with this name stand under, as written: `if heater`; undefined where one stands under none, or another. */
export function conditionOf(project: Project, { unit, text }: Unknown): string | undefined {
  const found = new Set(
    [...project.files.values()].flatMap((file) =>
      surveyOf(project, file)
        .unknown.filter((one) => one.unit === unit && one.text === text)
        .map((one) => conditionAround(file, one)),
    ),
  );
  return found.size === 1 ? [...found][0] : undefined;
}

/** The innermost. */
function conditionAround(file: SourceFile, place: Place): string | undefined {
  let found: string | undefined,
    items: readonly Item[] | undefined = file.tree.items;
  while (items) {
    const next: Item | undefined = items.find((item) => isIn(file, item, place)),
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

// A block whose first line is missing, and a name that nothing has, are one slip: that line would have declared it.

import type { Span } from "../findings/finding.ts";
import { kept } from "../model/kept.ts";
import type { Project, SourceFile } from "../names/project.ts";
import { eachItem, type Item, type SyntaxError } from "../syntax/index.ts";
import type { Due } from "./due-names.ts";
import { surveyOf, type Unknown } from "./survey-of-names.ts";

export interface LostHead {
  /** Undefined where the lines stand below a line that may have lost its brace as well. */
  readonly item: Item | undefined;
  readonly at: Span;
}

const lost = kept<SourceFile, readonly LostHead[]>();

/** The blocks of a file that no line opens, or that may be another line's than the one that they stand below. */
export function lostHeads(file: SourceFile): readonly LostHead[] {
  const errors = file.tree.errors.filter(
    ({ code }) => code === "syntax/head-missing" || code === "syntax/brace-missing",
  );
  if (errors.length === 0) return [];
  return lost(file, () => {
    const at = ({ start, end }: SyntaxError): Span => ({ file: file.path, start, end }),
      found: LostHead[] = errors
        .filter(({ code }) => code === "syntax/brace-missing")
        .map((error) => ({ item: undefined, at: at(error) })),
      starts = new Map(
        errors.filter(({ code }) => code === "syntax/head-missing").map((error) => [error.start, error]),
      );
    eachItem(file.tree.items, (item) => {
      const error = starts.get(file.tree.scan.tokens[item.first]!.startOffset);
      if (!error) return;
      starts.delete(error.start); // The first line in it begins at the same sign.
      found.push({ item, at: at(error) });
    });
    return found;
  });
}

const things: readonly Due[] = ["part", "thing", "washer", "step or thing", "kind or thing", "like"];
/** What the missing line may have declared, by the word that its lines belong to. */
const declares: Readonly<Record<string, readonly Due[]>> = {
  part: things,
  fastener: things,
  joint: things,
  fluid: ["fluid", "thing"],
  hazard: ["hazard", "hazard type", "thing"],
  step: ["step", "step or thing", "procedure or step"],
  procedure: ["procedure", "procedure or step"],
  unit: ["unit"],
};

/** The block that would have declared this name, where there is one such block and one such name, or that holds its declaration. */
export function lostHeadFor(project: Project, unknown: Unknown): Span | undefined {
  const heads = known(project, () => [...project.files.values()].flatMap(lostHeads)),
    [head, ...more] = heads;
  if (!head || more.length > 0) return undefined;
  if (declaredIn(project, head).has(unknown.text)) return head.at;
  const names = new Set<string>(),
    dues = declares[head.item?.entry?.word ?? ""];
  for (const file of project.files.values())
    for (const { text, due, is } of surveyOf(project, file).unknown)
      if (is === undefined && (dues === undefined || dues.includes(due))) names.add(text);
  return names.size === 1 && names.has(unknown.text) ? head.at : undefined;
}
/** Readings, steps and things that stand in the block: their lines are read, and nothing takes them up. */
function declaredIn(project: Project, { item, at }: LostHead): ReadonlySet<string> {
  const found = new Set<string>(),
    tokens = project.files.get(at.file)!.tree.scan.tokens;
  eachItem(item?.block?.items ?? [], ({ arguments: all }) => {
    for (const { first } of all) found.add(tokens[first]!.text);
  });
  return found;
}
const known = kept<Project, readonly LostHead[]>();

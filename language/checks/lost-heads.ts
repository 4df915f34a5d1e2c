// A block, or an item, whose first line is missing, and a name that nothing has, are one slip: that line would have declared it.

import type { Problem } from "../bench/trace.ts";
import type { Span } from "../findings/finding.ts";
import { kept } from "../model/kept.ts";
import type { Project, SourceFile } from "../names/project.ts";
import { eachItem, type Item, type SyntaxError } from "../syntax/index.ts";
import type { Met } from "./check.ts";
import type { Due } from "./due-names.ts";
import { surveyOf, type Unknown } from "./survey-of-names.ts";

export interface LostHead {
  /** Undefined where the lines stand below a line that may have lost its brace as well. */
  readonly item: Item | undefined;
  readonly at: Span;
  /** What is left of one item, not of a block. */
  readonly isLine: boolean;
}

/** Said where the first of its lines stands: of a block, or of one item, that is left over. */
const beginsAtItem: ReadonlySet<string> = new Set(["syntax/head-missing", "syntax/line-missing"]);
const lost = kept<SourceFile, readonly LostHead[]>();

/** The blocks of a file that no line opens, the lines that go on from none, and blocks that may be another line's than the one that they stand below. */
export function lostHeads(file: SourceFile): readonly LostHead[] {
  const errors = file.tree.errors.filter(({ code }) => code === "syntax/brace-missing" || beginsAtItem.has(code));
  if (errors.length === 0) return [];
  return lost(file, () => {
    const at = ({ start, end }: SyntaxError): Span => ({ file: file.path, start, end }),
      found: LostHead[] = errors
        .filter(({ code }) => code === "syntax/brace-missing")
        .map((error) => ({ item: undefined, at: at(error), isLine: false })),
      starts = new Map(errors.filter(({ code }) => beginsAtItem.has(code)).map((error) => [error.start, error]));
    eachItem(file.tree.items, (item) => {
      const error = starts.get(file.tree.scan.tokens[item.first]!.startOffset);
      if (!error) return;
      starts.delete(error.start); // The first line in it begins at the same sign.
      found.push({ item, at: at(error), isLine: error.code === "syntax/line-missing" });
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
  measure: ["condition"],
  inspect: ["condition"],
  test: ["condition"],
  set: ["condition"],
};

/** The block that would have declared this name, where there is one such block and one such name, or that holds its declaration. */
export function lostHeadFor(project: Project, unknown: Unknown): Span | undefined {
  const heads = known(project, () => [...project.files.values()].flatMap(lostHeads)),
    [head, ...more] = heads;
  if (!head || more.length > 0) return undefined;
  if (declaredIn(project, head).has(unknown.text)) return head.at;
  const names = new Set<string>(),
    dues = declares[head.item?.entry?.word ?? ""] ?? (head.isLine ? [] : undefined);
  for (const file of project.files.values())
    for (const { text, due, is } of surveyOf(project, file).unknown)
      if (is === undefined && (dues === undefined || dues.includes(due))) names.add(text);
  return names.size === 1 && names.has(unknown.text) ? head.at : undefined;
}

/** The block that this stands in, if no line opens it: its lines were read as those of a guess. */
export const lostHeadAround = ({ at: { file, start, end } }: Problem, { project }: Met): Span | undefined => {
  const source = project.files.get(file);
  return (
    source &&
    lostHeads(source).find(({ item }) => {
      const { tokens } = source.tree.scan;
      return item?.block && tokens[item.first]!.startOffset <= start && tokens[item.last]!.endOffset! + 1 >= end;
    })?.at
  );
};

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

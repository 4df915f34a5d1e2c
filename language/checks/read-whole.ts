// Whether a declaration could be read to its end: what seems to be missing in one that could not may stand in the line that is wrong,
// or in the type that it is like and that is not found.

import type { Span } from "../findings/finding.ts";
import type { Project, SourceFile } from "../names/project.ts";
import { tokenAt } from "../syntax/index.ts";
import { surveyOf } from "./survey-of-names.ts";

export function wasReadWhole(project: Project, { file, start, end }: Span): boolean {
  const errors = project.files.get(file)?.tree.errors ?? [];
  return !errors.some((error) => error.start >= start && error.end <= end);
}

/** What keeps a declaration from saying all that its author wrote of it: the first error of form in it, or the type that is not found. */
export function unreadIn(project: Project, { file, start, end }: Span): Span | undefined {
  const source = project.files.get(file);
  if (!source) return undefined;
  const isIn = (one: { readonly start: number; readonly end: number }): boolean => one.start >= start && one.end <= end,
    place =
      source.tree.errors.find(isIn) ?? surveyOf(project, source).unknown.find((one) => one.due === "like" && isIn(one));
  return place && { file, start: place.start, end: place.end };
}

/** Does a declaration hold one of these words, outside its texts and comments? Even where what it names is not found. */
export function saysWord(source: SourceFile, { start, end }: Span, words: ReadonlySet<string>): boolean {
  const { tokens } = source.tree.scan;
  for (let i = tokenAt(tokens, start - 1); i < tokens.length && tokens[i]!.endOffset! < end; i++)
    if (words.has(tokens[i]!.image)) return true;
  return false;
}

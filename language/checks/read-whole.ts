// Whether a declaration could be read to its end: what seems to be missing in one that could not may stand in the line that is wrong.

import type { Span } from "../findings/finding.ts";
import type { Project, SourceFile } from "../names/project.ts";

export function wasReadWhole(project: Project, { file, start, end }: Span): boolean {
  const errors = project.files.get(file)?.tree.errors ?? [];
  return !errors.some((error) => error.start >= start && error.end <= end);
}

/** Does a declaration hold one of these words, outside its texts and comments? Even where what it names is not found. */
export const saysWord = (source: SourceFile, { start, end }: Span, words: ReadonlySet<string>): boolean =>
  source.tree.scan.tokens.some(
    ({ startOffset, endOffset, image }) => startOffset >= start && endOffset! < end && words.has(image),
  );

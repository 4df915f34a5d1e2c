// Whether a declaration could be read to its end: what seems to be missing in one that could not may stand in the line that is wrong.

import type { Span } from "../findings/finding.ts";
import type { Project } from "../names/project.ts";

export function wasReadWhole(project: Project, { file, start, end }: Span): boolean {
  const errors = project.files.get(file)?.tree.errors ?? [];
  return !errors.some((error) => error.start >= start && error.end <= end);
}

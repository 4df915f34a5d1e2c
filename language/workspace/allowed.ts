// What the authors allowed, for documents: whoever works by one has to know which findings were set aside, and why.

import { allChecks, type Checked } from "./check-project.ts";

export interface AllowedFinding {
  readonly code: string;
  /** What the check finds, in a few words. */
  readonly title: string;
  readonly reason: string;
  readonly file: string;
  /** From 1: the line that it speaks of. */
  readonly line: number;
}

/** By file and line. */
export function allowedOf({ allows }: Pick<Checked, "allows">): AllowedFinding[] {
  return allows
    .map(({ code, reason, at, line }) => ({
      code,
      title: allChecks().byCode(code)?.title ?? code,
      reason,
      file: at.file,
      line: line + 1,
    }))
    .sort((a, b) => (a.file < b.file ? -1 : a.file > b.file ? 1 : a.line - b.line));
}

// What stands below a finding, line by line: each fact that makes it true, and its place. A fact that the finding's own sentence says
// already is not said again: the line that it comes from is shown instead.

import { sourceWord } from "../../findings/finding.ts";
import type { Place, Report, Reported } from "./report.ts";

export interface ReasonLine {
  /** Plain text; an author's words in it as written. */
  readonly says: string;
  readonly at?: Place;
  /** The line of the source at `at`, without the blanks around it, where the fact is told by showing it. */
  readonly shows?: string;
}

/** Of a longer source line only the beginning is shown. */
const widest = 100;

export function reasonLines(finding: Reported, report: Report): ReasonLine[] {
  const said = finding.says.toLowerCase();
  return finding.because.flatMap(({ says, at }): ReasonLine[] => {
    if (says.startsWith(sourceWord)) return [{ says }];
    if (!said.includes(says.toLowerCase())) return [{ says: `because ${says}`, ...(at ? { at } : {}) }];
    if (!at || samePlace(at, finding.at)) return [];
    const line = report.lineAt(at.file, at.line)?.trim() ?? "",
      shows = line.length > widest ? `${line.slice(0, widest)}…` : line;
    return [{ says: "see", at, shows }];
  });
}

const samePlace = (a: Place, b: Place): boolean => a.file === b.file && a.line === b.line;

/** The same for a format without marks: a line of plain text each. */
export function plainReasons(finding: Reported, report: Report): string[] {
  return reasonLines(finding, report).map(({ says, at, shows }) =>
    at && shows !== undefined ? `${says} ${at.file}:${at.line}: ${shows}` : says,
  );
}

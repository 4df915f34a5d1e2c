// The bench from a performance of an older text, where all that it follows from is as it was: a completion then waits for no performance.

import type { Project, SourceFile } from "../names/project.ts";
import type { Checked } from "../workspace/check-project.ts";
import { momentAt, performanceAt, type Moment } from "./bench-at.ts";

/**
 * The moment before `offset` as an older check knows it. Undefined unless every other file that this one sees is the same, the text up
 * to the offset is the same, and what differs behind it ends within the procedure: the strip up to there cannot have changed then.
 */
export function keptMoment(older: Checked, now: Project, file: SourceFile, offset: number): Moment | undefined {
  const before = older.project.files.get(file.path),
    performance = before && performanceAt(older, file.path, offset);
  if (!before || !performance || !othersAreSame(older.project, now, file)) return undefined;
  const { whole } = performance.procedure,
    had = before.text,
    has = file.text,
    most = Math.min(had.length, has.length);
  let same = 0,
    behind = 0;
  while (same < most && had.charCodeAt(same) === has.charCodeAt(same)) same++;
  while (behind < most - same && had.charCodeAt(had.length - 1 - behind) === has.charCodeAt(has.length - 1 - behind))
    behind++;
  const isSame = same === had.length && same === has.length;
  // The brace that closes the procedure stands behind what differs.
  if (!isSame && (same < offset || had.length - behind >= whole.end)) return undefined;
  const moment = momentAt(older, file.path, offset);
  // In the way back it hangs on the whole strip, which may reach behind the offset.
  return isSame || moment?.half !== "finish" ? moment : undefined;
}

/** Has every file that this one reaches the text that the older check saw? */
function othersAreSame(older: Project, now: Project, file: SourceFile): boolean {
  const reached = new Set([file.path]);
  for (const path of reached) {
    const one = now.files.get(path),
      had = older.files.get(path);
    if (one === undefined ? had !== undefined : had === undefined) return false;
    if (path !== file.path && one?.text !== had?.text) return false;
    if (one?.uses.length !== had?.uses.length) return false;
    for (const [i, use] of (one?.uses ?? []).entries()) {
      const was = had!.uses[i]!;
      if (use.path !== was.path || use.problem !== was.problem) return false;
      if (use.problem === undefined) reached.add(use.path);
    }
  }
  return true;
}

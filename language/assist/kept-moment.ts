// The bench from a performance of an older text, where all that it follows from is as it was: a completion then waits for no performance.

import type { Project, SourceFile } from "../names/project.ts";
import type { Tree } from "../syntax/tree.ts";
import type { Checked } from "../workspace/check-project.ts";
import { momentAt, performanceAt, type Moment } from "./bench-at.ts";
import { tokenIndexAt } from "./place.ts";

/**
 * The moment before `offset` as an older check knows it, at its places. Undefined unless every other file that this one sees is the
 * same, and of this one either nothing but blanks and comments differs, or only what stands behind the offset and ends within the
 * procedure: the strip up to there cannot have changed then.
 */
export function keptMoment(older: Checked, now: Project, file: SourceFile, offset: number): Moment | undefined {
  const before = older.project.files.get(file.path);
  if (!before) return undefined;
  const had = before.text,
    has = file.text,
    most = Math.min(had.length, has.length);
  let same = 0,
    behind = 0;
  while (same < most && had.charCodeAt(same) === has.charCodeAt(same)) same++;
  while (behind < most - same && had.charCodeAt(had.length - 1 - behind) === has.charCodeAt(has.length - 1 - behind))
    behind++;
  const then = same >= offset ? offset : sayingTheSame(before.tree, file.tree, offset),
    saysTheSame = same < offset || (same === had.length && same === has.length),
    performance = then === undefined ? undefined : performanceAt(older, file.path, then);
  if (then === undefined || !performance || !othersAreSame(older.project, now, file)) return undefined;
  // The brace that closes the procedure stands behind what differs.
  if (!saysTheSame && had.length - behind >= performance.procedure.whole.end) return undefined;
  const moment = momentAt(older, file.path, then);
  // In the way back it hangs on the whole strip, which may reach behind the offset.
  return saysTheSame || moment?.half !== "finish" ? moment : undefined;
}

/**
 * Where an offset stands in the older text, in front of the same token, if blanks and comments apart both texts say the same. Undefined
 * where they do not, and where one has a mistake of form: how that is mended goes by the indentation.
 */
function sayingTheSame(older: Tree, now: Tree, offset: number): number | undefined {
  const had = older.scan.tokens,
    has = now.scan.tokens;
  if (older.errors.length > 0 || now.errors.length > 0 || had.length !== has.length) return undefined;
  for (let i = 0; i < has.length; i++) {
    const a = had[i]!,
      b = has[i]!;
    if (a.tokenType !== b.tokenType || a.image !== b.image || a.opensLine !== b.opensLine || a.glued !== b.glued)
      return undefined;
  }
  const next = tokenIndexAt(has, offset + 1);
  return next < had.length ? Math.max(0, had[next]!.startOffset - 1) : older.scan.text.length;
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

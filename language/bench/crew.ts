// How many people a procedure is for: as it says so, else as its acts ask, else one. The one home of that default.

import type { Act } from "../model/act.ts";
import type { Around, Performance, RefitOp } from "./trace.ts";

/** Where nobody says anything, somebody works alone. */
export const crewAt = ({ crew }: Pick<Around, "crew">): number => crew ?? 1;

/** Of a procedure and the one that it is done by: the larger one that was said; undefined where neither says it. */
export const crewOfBoth = (outer: number | undefined, inner: number | undefined): number | undefined =>
  outer === undefined || inner === undefined ? (outer ?? inner) : Math.max(outer, inner);

/** Acts that somebody wrote, in whatever half of a performance, as they stand there. */
export function* writtenActs({ strip, refit, written, finish }: Performance): Generator<Written> {
  yield* strip;
  for (const { op } of refit) if (isWritten(op)) yield op;
  yield* written;
  yield* finish;
}

interface Written {
  readonly act: Act;
  readonly around: Around;
}
const isWritten = (op: RefitOp): op is RefitOp & Written => op.act !== undefined;

/** People that have to be there at least: the largest crew said, and what any line asks for. */
export function peopleFor(performance: Performance): number {
  let most = crewAt(performance.procedure);
  for (const { act, around } of writtenActs(performance)) most = Math.max(most, crewAt(around), act.people ?? 0);
  return most;
}

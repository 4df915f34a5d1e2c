// How many people a procedure is for: as it says so, else as its acts ask, else one. The one home of that default.

import type { Act } from "../model/act.ts";
import type { Around, Performance } from "./trace.ts";

/** Where nobody says anything, somebody works alone. */
export const crewAt = ({ crew }: Pick<Around, "crew">): number => crew ?? 1;

/** Of a procedure and the one that it is done by: the larger one that was said; undefined where neither says it. */
export const crewOfBoth = (outer: number | undefined, inner: number | undefined): number | undefined =>
  outer === undefined || inner === undefined ? (outer ?? inner) : Math.max(outer, inner);

/** An act that somebody wrote, in whatever half of a performance. */
type Written = { readonly act: Act; readonly around: Around };

export const writtenActs = ({ strip, refit, written, finish }: Performance): readonly Written[] => [
  ...strip,
  ...refit.flatMap(({ op }) => (op.act ? [{ act: op.act, around: op.around }] : [])),
  ...written,
  ...finish,
];

/** People that have to be there at least: the largest crew said, and what any line asks for. */
export const peopleFor = (performance: Performance): number =>
  writtenActs(performance).reduce(
    (most, { act, around }) => Math.max(most, crewAt(around), act.people ?? 0),
    crewAt(performance.procedure),
  );

// What `repeat from STEP` does: the steps from there up to the line that says so are done once more.

import type { Act } from "../model/act.ts";
import type { Entry, Procedure } from "../model/model.ts";
import { benchOf, type Bench } from "./bench.ts";
import type { Around } from "./trace.ts";
import { aroundOf, insideOf, walk } from "./walk.ts";

/** A line or a step of a procedure, with what is around it. */
export interface Unit {
  readonly entry: Entry;
  readonly around: Around;
}

/** The lines and steps of the procedure that an act stands in, in this build and in order. */
export function unitsOf(bench: Bench, around: Around): Unit[] {
  const { procedure } = around,
    scout = benchOf(bench.model, bench.state);
  const start: Around = { ...around, step: undefined, pieces: ownPieces(around, procedure), given: [] };
  const inside = (entries: readonly Entry[], at: Around): Unit[] =>
    entries.flatMap((entry): Unit[] =>
      entry.is === "act" || entry.kind === "step" || entry.kind === "refit"
        ? [{ entry, around: at }]
        : insideOf(scout, entry, at).flatMap((inner) => inside(entry.body, inner)),
    );
  return inside(procedure.body, start);
}

/** Pieces that the procedure was called for; those of its own `repeat for` come again on the way. */
const ownPieces = ({ pieces, prefix, on }: Around, procedure: Procedure): readonly string[] =>
  prefix === "" && on === undefined ? aroundOf(procedure).pieces : pieces;

/** The first step of that name, -1 for none. */
export const placeOf = (units: readonly Unit[], name: string | undefined): number =>
  units.findIndex(({ entry }) => entry.is === "block" && entry.kind === "step" && entry.name === name);

/** The step that an act stands in, -1 for none. */
export const placeOfStep = (units: readonly Unit[], { step, pieces }: Around): number =>
  units.findLastIndex(
    ({ entry, around }) =>
      entry.is === "block" &&
      step !== undefined &&
      entry.at.start === step.at.start &&
      around.pieces.at(-1) === pieces.at(-1),
  );

/**
 * `repeat from STEP` as an act: done once more, so that what follows finds the bench as it is then. Its lines are printed once, and what
 * cannot be done again is found apart (`repeats.ts`). The second time the reading is good: what stands in `otherwise` is passed over.
 */
export function doAgain(bench: Bench, act: Act, around: Around): void {
  if (bench.again || bench.computed) return;
  const units = unitsOf(bench, around),
    from = placeOf(units, act.names[0]?.text),
    to = placeOfStep(units, around);
  if (from < 0 || to < from) return;
  const { quiet } = bench,
    done = bench.performed.length,
    notes = bench.notes.length;
  bench.quiet = true;
  bench.again = bench.performed.slice();
  for (const unit of units.slice(from, to + 1)) walk(bench, [unit.entry], unit.around);
  bench.again = undefined;
  bench.quiet = quiet;
  bench.performed.length = done;
  bench.notes.length = notes;
}

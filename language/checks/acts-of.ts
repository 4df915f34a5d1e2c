// The acts of a procedure in one row, gathered once for all checks that look through them.

import type { Act } from "../model/act.ts";
import { kept } from "../model/kept.ts";
import type { Entry, Procedure } from "../model/model.ts";

const known = kept<Procedure, readonly Act[]>();

/** Of its steps, then of its own refit block, then of what finishes it, each in the order of the text. */
export const actsOf = (procedure: Procedure): readonly Act[] =>
  known(procedure, () => {
    const found: Act[] = [];
    gather(procedure.body, found);
    gather(procedure.refit, found);
    gather(procedure.finish, found);
    return found;
  });

function gather(entries: readonly Entry[], found: Act[]): void {
  for (let i = 0; i < entries.length; i++) {
    const entry = entries[i]!;
    if (entry.is === "block") gather(entry.body, found);
    else found.push(entry.act);
  }
}

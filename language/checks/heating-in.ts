// Acts that heat: the part is hot after them, and may have been given too much.

import type { Act } from "../model/act.ts";
import { kept } from "../model/kept.ts";
import type { Entry, Model } from "../model/model.ts";

const known = kept<Model, readonly Act[]>();

/** Each of them in all procedures of this unit, in the order of the text. */
export const heatingIn = (model: Model): readonly Act[] =>
  known(model, () => {
    const found: Act[] = [];
    for (const procedure of model.procedures.values())
      if (procedure.unit === model.unit)
        for (const entries of [procedure.body, procedure.refit, procedure.finish]) gather(entries, found);
    return found;
  });

function gather(entries: readonly Entry[], found: Act[]): void {
  for (const entry of entries)
    if (entry.is === "block") gather(entry.body, found);
    else if (entry.act.verb === "heat") found.push(entry.act);
}

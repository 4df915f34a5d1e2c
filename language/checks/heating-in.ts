// Acts that heat: the part is hot after them, and may have been given too much.

import type { Act } from "../model/act.ts";
import { kept } from "../model/kept.ts";
import type { Model } from "../model/model.ts";
import { actsOf } from "./acts-of.ts";

const known = kept<Model, readonly Act[]>();

/** Each of them in all procedures of this unit, in the order of the text. */
export const heatingIn = (model: Model): readonly Act[] =>
  known(model, () => {
    const found: Act[] = [];
    for (const procedure of model.procedures.values())
      if (procedure.unit === model.unit) for (const act of actsOf(procedure)) if (act.verb === "heat") found.push(act);
    return found;
  });

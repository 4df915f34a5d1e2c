// Why nothing was found. Either the changed line was the only statement of its fact, by the rules written here, which ask the text as it
// was; or the mutant survived, and that has a reason of its own.

import { isAlwaysNew } from "../../language/bench/new-parts.ts";
import type { Checked } from "../../language/workspace/check-project.ts";
import type { Mutant } from "./mutant.ts";

export interface Why {
  readonly only: boolean;
  readonly says: string;
}

const only = (says: string): Why => ({ only: true, says });
const survived = (says: string): Why => ({ only: false, says });

/**
 * `isAskedFor`: in the text as it was, an event that another line made needed what the changed line did, or the aim or the end of the
 * procedure names it. Where nothing does, nothing in the text can be held against the mutant.
 */
export function reasonFor(mutant: Mutant, before: Checked, isAskedFor: boolean): Why {
  switch (mutant.class) {
    case "drop an action":
    case "drop a precaution":
    case "drop a drain":
      if (othersTakeTheRest(mutant, before)) return only("the line with `rest of` takes these too");
      if (saysNewAgain(mutant, before))
        return only("the declaration says already that it is new every time: the text means the same");
      return isAskedFor
        ? survived("another line does as well what was asked of this one")
        : only("no other line asks for what it does");
    case "swap two neighbours":
      return isAskedFor
        ? survived("the second needs the first")
        : only("neither needs the other: their order is written here alone");
    case "count + 1":
    case "count - 1":
      if (mutant.declared) return only("no act counts them");
      if (othersTakeTheRest(mutant, before)) return only("the line with `rest of` makes up for it");
      return isAskedFor
        ? survived("the count is not held against anything")
        : only("no other line asks that all of them are out");
    case "halve a wait":
      return only("no longer wait follows from the figures of the hazard");
    case "torque unit swapped":
      return mutant.says.includes("(")
        ? survived("the author has allowed the two printed values of this line to disagree")
        : only("the torque is written once, and its thread bears it");
    case "change a position":
      return isAskedFor
        ? survived("a later act asks for a position")
        : only("no act up to the next turn asks for a position");
    case "fastener renamed":
      return isAskedFor ? survived("both names do here") : only("no other line asks for either");
    case "one-time part reused":
      return survived("nothing says that it must be new");
  }
}

/** `renew X` of what is declared `renew always`. */
function saysNewAgain(mutant: Mutant, before: Checked): boolean {
  return before.performances.some(({ model, strip, written }) =>
    [...strip, ...written].some(
      ({ act, things }) =>
        act.verb === "renew" &&
        act.at.file === mutant.file &&
        mutant.starts.includes(act.at.start) &&
        things.every((thing) => {
          const of = model.things[thing]!;
          return (of.is === "part" || of.is === "tie") && isAlwaysNew(of);
        }),
    ),
  );
}

/** `undo 6 of X` beside `undo rest of X`: six is the author's choice. */
function othersTakeTheRest(mutant: Mutant, before: Checked): boolean {
  return before.performances.some(({ strip }) => {
    const mine = strip.filter(({ act }) => act.at.file === mutant.file && mutant.starts.includes(act.at.start));
    return mine.some(
      ({ act, things }) =>
        act.count !== undefined &&
        strip.some((other) => other.act.rest && other.things.some((thing) => things.includes(thing))),
    );
  });
}

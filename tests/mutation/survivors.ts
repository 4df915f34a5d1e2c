// Why nothing was found: either the line was the only statement of its fact, by a rule that is written here and asks the text as it
// was, or the mutant survived, and that has a reason too.

import { machineOf } from "../../language/bench/machine.ts";
import type { Checked } from "../../language/workspace/check-project.ts";
import type { Mutant } from "./mutant.ts";

export interface Why {
  readonly only: boolean;
  readonly says: string;
}

const only = (says: string): Why => ({ only: true, says });
const survived = (says: string): Why => ({ only: false, says });

export function reasonFor(mutant: Mutant, before: Checked, _after: Checked, isAskedFor: boolean): Why {
  void machineOf; void before;
  switch (mutant.class) {
    case "drop an action": case "drop a precaution": case "drop a drain":
      return isAskedFor ? survived("another line asks for it") : only("no other line asks for what it does");
    case "swap two neighbours": return isAskedFor ? survived("one needs the other") : only("the order is written here alone");
    case "count + 1": case "count - 1": return mutant.declared ? only("no other line counts them") : survived("the count");
    case "halve a wait": return only("no figure of the hazard asks for longer");
    case "torque unit swapped": return only("the torque is written once");
    case "change a position": return isAskedFor ? survived("a position is asked for") : only("nothing up to the next turn asks for a position");
    case "fastener renamed": return isAskedFor ? survived("renamed") : only("no other line asks for it");
    case "one-time part reused": return survived("reused");
  }
}

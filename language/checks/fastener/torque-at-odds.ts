// Torques of one group of fasteners that do not go with each other, or with how many they are.

import type { Tie } from "../../model/model.ts";
import { check, type Say } from "../check.ts";

export default check({
  code: "fastener/torque-at-odds",
  title: "Torques that do not go with their fasteners",
  severity: "warning",
  why: "A torque for seven of four bolts, or for two of them and none for the others, is printed as it stands: whoever holds the wrench has to guess.",
  source: "common practice",
  fails: `
    unit pump "Pump" {
      base casing
      part casing "Casing"
      part cover "Cover"
      fastener cover-bolts bolt "Cover bolts" {
        count 4  size M12x40  joins cover to casing
        torque 60 N·m for 5
    #   ^^^^^^^^^^^^^^^^^^^ Cover bolts: a torque is given for 5, and there are 4
      }
    }
  `,
  mended: `
    unit pump "Pump" {
      base casing
      part casing "Casing"
      part cover "Cover"
      fastener cover-bolts bolt "Cover bolts" {
        count 4  size M12x40  joins cover to casing
        torque 60 N·m for 2
        torque 40 N·m for rest
      }
    }
  `,
  model(model, say) {
    for (const tie of model.ties) if (tie.torques.length > 0) atOdds(tie, say);
  },
});

function atOdds({ name, count, countUnknown, torques, stages }: Tie, say: Say): void {
  const whole = torques.find(({ is, forCount, while: during }) => is === "value" && forCount === undefined && !during);
  if (whole && stages.length > 0)
    say({
      at: whole.at,
      says: `${name}: a torque stands beside stages, which end at one of their own: give it as the last stage, or leave it out`,
    });
  if (countUnknown || torques.some(({ forCount }) => forCount === undefined)) return;
  const rest = torques.filter(({ forCount }) => forCount === "rest"),
    counted = torques.flatMap(({ forCount }) => (typeof forCount === "number" ? [forCount] : [])),
    given = counted.reduce((sum, one) => sum + one, 0),
    last = torques.at(-1)!;
  if (rest.length > 1) say({ at: rest[1]!.at, says: `${name}: the rest has a torque already` });
  else if (given > count) say({ at: last.at, says: `${name}: a torque is given for ${given}, and there are ${count}` });
  else if (rest.length === 0 && given < count)
    say({ at: last.at, says: `${name}: a torque is given for ${given} of ${count}: say what the rest takes` });
  else if (rest.length === 1 && given === count)
    say({ at: rest[0]!.at, says: `${name}: no rest is left, since a torque is given for all ${count}` });
}

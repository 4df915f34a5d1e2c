// An order of tightening, number by number, that does not take each fastener once before any of them again.

import { listedOrder } from "../../figures/tightening-order.ts";
import { check } from "../check.ts";

export default check({
  code: "fastener/sequence-listed",
  title: "A listed order that does not take each fastener",
  severity: "warning",
  why: "One that is left out of the list stays loose, and no drawing of the order can be made: it is not printed at all.",
  source: "common practice",
  fails: `
    unit pump "Pump" {
      base casing
      part casing "Casing"
      part cover "Cover"
      fastener cover-bolts bolt "Cover bolts" {
        count 4  size M12x40  torque 60 N·m
        sequence listed 1, 3, 3, 4
    #   ^^^^^^^^^^^^^^^^^^^^^^^^^^ Cover bolts, 4 off: in this list 3 stands twice. Name each of 1 to 4 once, then what is gone over again
        joins cover to casing
      }
    }
  `,
  mended: `
    unit pump "Pump" {
      base casing
      part casing "Casing"
      part cover "Cover"
      fastener cover-bolts bolt "Cover bolts" {
        count 4  size M12x40  torque 60 N·m
        sequence listed 1, 3, 2, 4
        joins cover to casing
      }
    }
  `,
  model(model, say) {
    for (const { name, count, countUnknown, sequence } of model.ties) {
      if (!sequence || sequence.listed.length === 0 || countUnknown) continue;
      const order = listedOrder(count, sequence.listed);
      if ("wrong" in order)
        say({
          at: sequence.at,
          says: `${name}, ${count} off: in this list ${order.wrong}. Name each of 1 to ${count} once, then what is gone over again`,
        });
    }
  },
});

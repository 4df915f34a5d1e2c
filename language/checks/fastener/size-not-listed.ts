// A thread that no table of the standards holds: a slip of the pen, or a special one that somebody has to know of.

import { isFigureError } from "../../figures/figure.ts";
import { check } from "../check.ts";
import { listed } from "../bench-check.ts";
import { knownThread } from "../known-threads.ts";

/** The tables at hand end at M64 (m); larger fine threads are in ISO 261 as well. */
const largest = 0.064;

export default check({
  code: "fastener/size-not-listed",
  title: "Is there such a thread?",
  severity: "question",
  why: "A size that no table holds is not in the drawer, has no spanner and no torque: mostly a figure is wrong. A special thread is allowed with its reason.",
  source: "ISO 261 (general plan of metric threads), ASME B1.1 (unified series)",
  fails: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid"
      fastener lid-screws screw "Lid screws" { count 4  size M9x30  joins lid to foot }
    #          ^^^^^^^^^^ Lid screws: M9 has no coarse pitch in ISO 261: listed are M9x1 and M9x0.75
    }
  `,
  mended: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid"
      fastener lid-screws screw "Lid screws" { count 4  size M8x30  joins lid to foot }
    }
  `,
  model(model, say) {
    for (const tie of model.ties) {
      if (!tie.size || (tie.size.diameter ?? 0) > largest) continue;
      const thread = knownThread(tie.size);
      // A pipe thread has no such table here.
      if (!isFigureError(thread) || !thread.nearest || thread.nearest.length === 0) continue;
      say({
        at: tie.at,
        says: `${tie.name}: ${thread.says}: listed are ${listed(thread.nearest)}`,
      });
    }
  },
});

// The value in brackets is not the value before it: `52 N·m (40 lb-ft)`.

import { comparePair, isProblem } from "../../quantities/index.ts";
import { check } from "../check.ts";
import { figuresIn } from "../figures-said.ts";

export default check({
  code: "figure/pair-disagrees",
  title: "Two printed values disagree",
  severity: "warning",
  why: "One of the two is wrong, and who reads the other one works to it. A rounding that is only coarse is a hint; more than 5 % is a warning.",
  source: "common practice",
  fails: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid"
      fastener lid-screws screw "Lid screws" { count 4  torque 9 N·m (60 lb-in)  joins lid to foot }
    #                                                          ^^^^^^^^^^^^^^^^ 9 N·m is 79.7 lbf·in, the bracket says 60 lb-in
    }
  `,
  mended: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid"
      fastener lid-screws screw "Lid screws" { count 4  torque 9 N·m (80 lb-in)  joins lid to foot }
    }
  `,
  file(file, say) {
    for (const { made, due, dimension, at } of figuresIn(file)) {
      if (isProblem(made) || (due.length > 0 && dimension !== undefined && !due.includes(dimension))) continue;
      const compared = comparePair(made);
      if (!compared || compared.level === "silent") continue;
      say({ at, says: compared.says, severity: compared.level === "hint" ? "hint" : "warning" });
    }
  },
});

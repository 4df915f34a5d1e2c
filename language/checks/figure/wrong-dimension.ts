// A figure in a unit of something else: a mass in newton metres, a torque in millimetres.

import { dimensionNames, type Dimension } from "../../quantities/index.ts";
import { check } from "../check.ts";
import { figuresIn } from "../figures-said.ts";
import { listed } from "../bench-check.ts";

/** What a figure of several kinds may measure, by place and word: a hoist carries a mass, a press a force, a bucket a volume. */
const carried: Readonly<Record<string, readonly Dimension[]>> = { "tool capacity": ["mass", "force", "volume"] };

export default check({
  code: "figure/wrong-dimension",
  title: "A unit of something else",
  severity: "error",
  why: "A figure in the wrong kind of unit was meant for another line, or the unit is a slip: the hand would set a torque that nobody wrote.",
  source: "common practice",
  fails: `
    unit box "Box" {
      base foot
      part foot "Foot" { mass 3 kg }
      part lid "Lid" { mass 5 N·m }
    #                       ^^^^^ 5 N·m is a figure of torque: "mass" takes mass
      fastener lid-screws screw "Lid screws" { count 4  joins lid to foot }
    }
  `,
  mended: `
    unit box "Box" {
      base foot
      part foot "Foot" { mass 3 kg }
      part lid "Lid" { mass 5 kg }
      fastener lid-screws screw "Lid screws" { count 4  joins lid to foot }
    }
  `,
  file(file, say) {
    for (const { item, due: one, dimension, text, at } of figuresIn(file)) {
      const due = one.length > 0 ? one : (carried[`${item.entry!.place} ${item.entry!.word}`] ?? one);
      if (due.length === 0 || dimension === undefined || due.includes(dimension)) continue;
      say({
        at,
        says: `${text} is a figure of ${dimensionNames[dimension].title}: "${item.entry!.word}" takes ${listed(
          due.map((one) => dimensionNames[one].title),
          "or",
        )}`,
      });
    }
  },
});

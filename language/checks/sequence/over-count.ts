// More pieces are undone or removed than are in.

import { benchCheck } from "../bench-check.ts";

export default benchCheck({
  code: "sequence/over-count",
  title: "More than there are",
  severity: "error",
  why: "A wrong count is how a screw stays in the casing, or how the reader looks for one that never was.",
  source: "common practice",
  fails: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid"
      part card "Card" { rests on foot  behind lid }
      fastener lid-screws screw "Lid screws" { count 4  joins lid to foot }
    }
    procedure strip "Strip" for box {
      aim lid off
      step "Open" {
        undo 5 of lid-screws
    #   ^^^^^^^^^^^^^^^^^^^^ 5 of Lid screws are asked for, and only 4 of 4 are in
        remove lid
      }
    }
  `,
  mended: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid"
      part card "Card" { rests on foot  behind lid }
      fastener lid-screws screw "Lid screws" { count 4  joins lid to foot }
    }
    procedure strip "Strip" for box {
      aim lid off
      step "Open" {
        undo 4 of lid-screws
        remove lid
      }
    }
  `,
  subject: () => "",
  reason: (reason, context) =>
    `${reason.numbers[0]} of ${context.name(reason.thing!)} are asked for, and only ${reason.numbers[1]} of ${reason.numbers[2]} are ${reason.words[0] === "fit" ? "out" : "in"}`,
});

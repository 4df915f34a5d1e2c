// A part that the strip takes off and puts back with nothing done between.

import { benchCheck } from "../bench-check.ts";

export default benchCheck({
  code: "removal/nothing-between",
  title: "Taken off and put back, nothing done between",
  severity: "hint",
  why: "Mostly a line is missing there: what the part was taken off for. If not, nobody needs to take it off.",
  source: "common practice",
  fails: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid"
      fastener lid-screws screw "Lid screws" { count 4  joins lid to foot }
    }
    procedure look "Look inside" for box {
      aim none
      step "Look" {
        undo lid-screws
        remove lid
        fit lid
    #   ^^^^^^^ Lid is taken off and put back, and nothing is done between
        fit lid-screws
      }
    }
  `,
  mended: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid"
      fastener lid-screws screw "Lid screws" { count 4  joins lid to foot }
    }
    procedure look "Look inside" for box {
      aim none
      step "Look" {
        undo lid-screws
        remove lid
        inspect inside on foot "No rust"
        fit lid
        fit lid-screws
      }
    }
  `,
  subject: () => "",
  reason: (reason, context) => `${context.name(reason.thing!)} is taken off and put back, and nothing is done between`,
});

// Taking off what the unit is said to stand on.

import { benchCheck } from "../bench-check.ts";

export default benchCheck({
  code: "sequence/base-stays",
  title: "The base is taken off",
  severity: "error",
  why: "The base is what everything else comes off and goes back on. Where it is to come off as well, another part is the base: what stays in the stand or on the foundation.",
  source: "common practice",
  fails: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid"
      fastener lid-screws screw "Lid screws" { count 4  joins lid to foot }
    }
    procedure strip "Strip" for box {
      aim lid off
      step "Open" {
        undo lid-screws
        remove lid
        remove foot
    #   ^^^^^^^^^^^ Foot stays on the stand: it is the base of this unit
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
    procedure strip "Strip" for box {
      aim lid off
      step "Open" {
        undo lid-screws
        remove lid
      }
    }
  `,
  subject: () => "",
  reason: (reason, context) => `${context.name(reason.thing!)} stays on the stand: it is the base of this unit`,
});

// Reported by allow.ts: no reason stands behind the code.

import { check } from "../check.ts";

export default check({
  code: "allow/no-reason",
  title: "An allow without its reason",
  severity: "warning",
  why: "Whoever reads the finding that is not shown has to know who decided it, and why. Without a reason it stays shown.",
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
        # allow sequence/blocked
    #   ^^^^^^^^^^^^^^^^^^^^^^^^ allow sequence/blocked needs its reason behind a colon
        undo lid-screws
        remove lid
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
});

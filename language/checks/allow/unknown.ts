// Reported by allow.ts: there is no check of that code.

import { check } from "../check.ts";

export default check({
  code: "allow/unknown",
  title: "An allow of a code that is no check",
  severity: "warning",
  why: "A mistyped code allows nothing, and the next reader believes that it does.",
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
        # allow sequence/blokced: the lid is open on the bench
    #   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ sequence/blokced is no check, so this allows nothing
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

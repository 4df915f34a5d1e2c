// Reported by allow.ts: nothing of that code is found on the line that it speaks of.

import { check } from "../check.ts";

export default check({
  code: "allow/unused",
  title: "An allow that silences nothing",
  severity: "hint",
  why: "An allow that outlives its finding hides the next one of its kind.",
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
        # allow sequence/blocked: the lid is open on the bench
    #   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ sequence/blocked is not found here, so this allows nothing
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

// A written refit that ends in another position than the start, or than `leaves turned` says.

import { benchCheck } from "../bench-check.ts";

export default benchCheck({
  code: "refit/position",
  title: "Not turned back",
  severity: "warning",
  why: "The unit is handed over lying the way it was worked on, not the way it stands in service.",
  source: "common practice",
  fails: `
    unit box "Box" {
      base foot
      positions upright, on-side
      part foot "Foot"
      part lid "Lid"
      fastener lid-screws screw "Lid screws" { count 4  joins lid to foot  needs on-side }
    }
    procedure strip "Strip" for box {
      aim lid off
      step "Open" {
        turn to on-side
        undo lid-screws
        remove lid
      }
    }
    procedure build "Put together" for box {
    #         ^^^^^ The unit ends on-side and not upright
      aim all in
      needs strip
      step "Close" {
        fit lid
        fit lid-screws
        note "Check all four."
      }
    }
  `,
  mended: `
    unit box "Box" {
      base foot
      positions upright, on-side
      part foot "Foot"
      part lid "Lid"
      fastener lid-screws screw "Lid screws" { count 4  joins lid to foot  needs on-side }
    }
    procedure strip "Strip" for box {
      aim lid off
      step "Open" {
        turn to on-side
        undo lid-screws
        remove lid
      }
    }
    procedure build "Put together" for box {
      aim all in
      needs strip
      step "Close" {
        fit lid
        fit lid-screws
        turn to upright
      }
    }
  `,
  subject: () => "",
  reason: (reason) => `the unit ends ${reason.words[0]} and not ${reason.words[1]}`,
});

// `align` of a mark that no act before it made.

import { benchCheck } from "../bench-check.ts";

export default benchCheck({
  code: "refit/mark-unmade",
  title: "Lined up by a mark that nobody made",
  severity: "error",
  why: "At the refit it is too late to make the mark.",
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
      }
    }
    procedure build "Put together" for box {
      aim all in
      needs strip
      step "Close" {
        fit lid
        align lid-mark
    #   ^^^^^^^^^^^^^^ Lid-mark was never marked
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
    procedure strip "Strip" for box {
      aim lid off
      step "Open" {
        mark lid, foot as lid-mark
        undo lid-screws
        remove lid
      }
    }
    procedure build "Put together" for box {
      aim all in
      needs strip
      step "Close" {
        fit lid
        align lid-mark
        fit lid-screws
      }
    }
  `,
  subject: () => "",
  reason: (reason) => `${reason.words[0]} was never marked`,
});

// Match marks made in the strip that the written refit does not line up in time.

import { benchCheck } from "../bench-check.ts";

export default benchCheck({
  code: "refit/mark-unused",
  title: "A mark that nobody lines up",
  severity: "warning",
  why: "Match marks are made for the way back: made and not used, the lid goes on half a turn round.",
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
        fit lid-screws
    #   ^^^^^^^^^^^^^^ Lid-mark is not lined up before this
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
  reason: ({ words: [label, how], by }, context) =>
    how === "alone"
      ? `${label} is on ${context.name(by[0]!)} alone: nothing is lined up by it. Name what it meets as well, mark A, B as ${label}`
      : how === "never"
        ? `${label} is never lined up`
        : `${label} is not lined up before this`,
});

// A part that lost its last tie and stays in place.

import { benchCheck } from "../bench-check.ts";

export default benchCheck({
  code: "removal/left-loose",
  title: "Left in place with nothing holding it",
  severity: "warning",
  why: "A part whose last screw is out and that nobody takes off, holds or moves aside falls when it likes.",
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
      aim none
      step "Open" {
        undo lid-screws
    #   ^^^^^^^^^^^^^^^ Lid is held by nothing after this, and stays where it is
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
      aim none
      step "Open" {
        undo lid-screws
        remove lid
      }
    }
  `,
  subject: () => "",
  reason: (reason, context) => `${context.name(reason.thing!)} is held by nothing after this, and stays where it is`,
});

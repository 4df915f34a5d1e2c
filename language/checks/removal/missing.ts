// A part of the aim that is still on at the end of the strip.

import { benchCheck } from "../bench-check.ts";
import { callAnswer } from "../one-call.ts";

export default benchCheck({
  code: "removal/missing",
  title: "The aim is not reached",
  severity: "error",
  why: "The procedure promises that this is off at its end, and no line takes it off.",
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
    # ^^^^^^^^^^^ Lid is not off at the end
      step "Open" {
        undo lid-screws
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
        undo lid-screws
        remove lid
      }
    }
  `,
  subject: () => "",
  reason: (reason, context) =>
    reason.words[0] === "apart"
      ? `${context.name(reason.thing!)} is not apart at the end`
      : `${context.name(reason.thing!)} is not off at the end`,
  answer: callAnswer,
});

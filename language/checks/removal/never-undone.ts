// With `aim all apart`, a tie that the strip leaves made.

import { benchCheck } from "../bench-check.ts";
import { callAnswer } from "../one-call.ts";

export default benchCheck({
  code: "removal/never-undone",
  title: "Never undone",
  severity: "warning",
  why: "With everything to come apart, a fastener that no line undoes is one that was forgotten.",
  source: "common practice",
  fails: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid"
      fastener lid-screws screw "Lid screws" { count 4  joins lid to foot }
    }
    procedure strip "Strip" for box {
      aim all apart
    # ^^^^^^^^^^^^^ Lid screws are never undone
      step "Open" {
        note "The lid stays."
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
      aim all apart
      step "Open" {
        undo lid-screws
        remove lid
      }
    }
  `,
  subject: () => "",
  reason: (reason, context) => `${context.name(reason.thing!)} is never undone`,
  answer: callAnswer,
});

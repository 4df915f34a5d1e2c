// The unit is turned with something on it that nothing fixes.

import { benchCheck } from "../bench-check.ts";

export default benchCheck({
  code: "sequence/loose-when-turned",
  title: "Something only lies there while the unit is turned",
  severity: "warning",
  why: "What only rests slides off when the unit goes over, and what is open runs out.",
  source: "common practice",
  fails: `
    unit box "Box" {
      base foot
      positions upright, on-side
      part foot "Foot"
      part lid "Lid" { rests on foot }
    }
    procedure strip "Strip" for box {
      step "Turn" {
        turn to on-side
    #   ^^^^^^^^^^^^^^^ Lid only rests on Foot, and the unit is turned to on-side
      }
    }
  `,
  mended: `
    unit box "Box" {
      base foot
      positions upright, on-side
      part foot "Foot"
      part lid "Lid" { rests on foot }
    }
    procedure strip "Strip" for box {
      step "Turn" {
        remove lid
        turn to on-side
      }
    }
  `,
  subject: () => "",
  reason: (reason, context) =>
    reason.words[0] === "runs out"
      ? `${context.name(reason.thing!)} would run out when the unit is turned to ${reason.words[1]}`
      : `${context.name(reason.thing!)} only rests on ${context.name(reason.by[0]!)}, and the unit is turned to ${reason.words[1]}`,
});

// A part that says how many people lift it is moved by fewer.

import { benchCheck } from "../bench-check.ts";

export default benchCheck({
  code: "lift/people",
  title: "Too few people for this part",
  severity: "error",
  why: "The part says how many people it takes. Say so in the act, or give the procedure its crew.",
  source: "common practice",
  fails: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid" { lift by 2 people }
      fastener lid-screws screw "Lid screws" { count 4  joins lid to foot }
    }
    procedure strip "Strip" for box {
      aim lid off
      step "Open" {
        undo lid-screws
        remove lid
    #   ^^^^^^^^^^ Lid takes 2 people, and one is planned here
      }
    }
  `,
  mended: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid" { lift by 2 people }
      fastener lid-screws screw "Lid screws" { count 4  joins lid to foot }
    }
    procedure strip "Strip" for box {
      aim lid off
      step "Open" {
        undo lid-screws
        remove lid by 2 people
      }
    }
  `,
  subject: () => "",
  reason: (reason, context) =>
    `${context.name(reason.thing!)} takes ${reason.numbers[0]} people, and ${reason.numbers[1] === 1 ? "one is" : `${reason.numbers[1]} are`} planned here`,
});

// A precaution that is behind something is done before that is away.

import { benchCheck } from "../bench-check.ts";

export default benchCheck({
  code: "hazard/proof-out-of-reach",
  title: "The place of the proof is not open yet",
  severity: "error",
  why: "A tester cannot reach what a cover hides; a tick for a reading nobody could take is worse than none.",
  source: "common practice",
  fails: `
    tool tester "Two-pole tester" { kind voltage-tester  range 0..1000 V }
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid"
      part bar "Bus bar" { rests on foot  behind lid }
      fastener lid-screws screw "Lid screws" { count 4  joins lid to foot }
      hazard bus electrical danger "Drive bus" {
        on bar  source mains  voltage 400 V ac
        precaution isolate "Open the isolator."
        precaution prove-dead behind lid "Test at the bus bars." with tester
      }
    }
    procedure strip "Strip" for box {
      aim bar off
      step "Open" {
        isolate bus
        prove-dead bus
    #   ^^^^^^^^^^^^^^ Lid is still in front of the place where prove-dead for Drive bus is done
        undo lid-screws
        remove lid
        remove bar
      }
    }
  `,
  mended: `
    tool tester "Two-pole tester" { kind voltage-tester  range 0..1000 V }
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid"
      part bar "Bus bar" { rests on foot  behind lid }
      fastener lid-screws screw "Lid screws" { count 4  joins lid to foot }
      hazard bus electrical danger "Drive bus" {
        on bar  source mains  voltage 400 V ac
        precaution isolate "Open the isolator."
        precaution prove-dead behind lid "Test at the bus bars." with tester
      }
    }
    procedure strip "Strip" for box {
      aim bar off
      step "Open" {
        isolate bus
        undo lid-screws
        remove lid
        prove-dead bus
        remove bar
      }
    }
  `,
  subject: () => "",
  reason: (reason, context) =>
    `${context.name(reason.by[0]!)} is still in front of the place where ${reason.words[0]} for ${context.name(reason.thing!)} is done`,
});

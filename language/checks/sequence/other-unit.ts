// A procedure is done on something that it is not written for: none of its names would be found there.

import { benchCheck } from "../bench-check.ts";

export default benchCheck({
  code: "sequence/other-unit",
  title: "A procedure for another unit",
  severity: "error",
  why: "The names of a procedure are those of its unit. Done on another one it speaks of nothing, and nothing is done.",
  source: "common practice",
  fails: `
    unit pump "Pump" {
      base housing
      part housing "Housing"
      part lid "Pump lid" { rests on housing }
    }
    unit box "Box" {
      base foot
      part foot "Foot"
      part motor "Motor" { rests on foot }
      part feed "Feed pump" { is unit pump  rests on foot }
    }
    procedure open-pump "Open the pump" for pump {
      step "Lid" { remove lid }
    }
    procedure strip "Strip" for box {
      step "Pump" {
        do open-pump on motor
    #   ^^^^^^^^^^^^^^^^^^^^^ Open the pump is for pump, and is done here on box: name the part that is one
      }
    }
  `,
  mended: `
    unit pump "Pump" {
      base housing
      part housing "Housing"
      part lid "Pump lid" { rests on housing }
    }
    unit box "Box" {
      base foot
      part foot "Foot"
      part motor "Motor" { rests on foot }
      part feed "Feed pump" { is unit pump  rests on foot }
    }
    procedure open-pump "Open the pump" for pump {
      step "Lid" { remove lid }
    }
    procedure strip "Strip" for box {
      step "Pump" {
        do open-pump on feed
      }
    }
  `,
  subject: () => "",
  reason: (reason) =>
    `${reason.words[0]} is for ${reason.words[1]}, and is done here on ${reason.words[2]}: name the part that is one`,
});

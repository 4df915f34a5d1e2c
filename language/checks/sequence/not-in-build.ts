// A line about something that is not there in one of the builds that it is performed in.

import { looksPlural } from "../../tables/plural-names.ts";
import { benchCheck } from "../bench-check.ts";

export default benchCheck({
  code: "sequence/not-in-build",
  title: "The line is about something that this build does not have",
  severity: "warning",
  why: "The reader of that build looks for a thing that is not there, or thinks that he has the wrong machine in front of him.",
  source: "common practice",
  fails: `
    unit box "Box" {
      base foot
      option heater "Cabinet heater"
      part foot "Foot"
      if heater {
        part coil "Heating coil" { rests on foot }
      }
    }
    procedure strip "Strip" for box {
      aim none
      step "Coil" {
        remove coil
    #   ^^^^^^^^^^^ Heating coil is not there: it is declared if heater
      }
    }
  `,
  mended: `
    unit box "Box" {
      base foot
      option heater "Cabinet heater"
      part foot "Foot"
      if heater {
        part coil "Heating coil" { rests on foot }
      }
    }
    procedure strip "Strip" for box {
      aim none
      step "Coil" {
        if heater {
          remove coil
        }
      }
    }
  `,
  subject: () => "",
  // Not there, so that its name is none of the model's.
  reason: ({ words: [name = "", condition = ""] }) =>
    looksPlural(name)
      ? `${name} are not there: they are declared ${condition}`
      : `${name} is not there: it is declared ${condition}`,
});

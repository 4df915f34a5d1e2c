// Found while braces are paired: this one has no partner.

import { check } from "../check.ts";

export default check({
  code: "syntax/brace-stray",
  title: "A brace too many",
  severity: "error",
  why: "It closes nothing, so one of the blocks before it ends sooner than it looks.",
  fails: `
    unit box "Box" {
      base foot
      part foot "Foot" { mass 2 kg }
      }
    # ^ This } closes nothing
      part lid "Lid" { rests on foot }
    }
  `,
  mended: `
    unit box "Box" {
      base foot
      part foot "Foot" { mass 2 kg }
      part lid "Lid" { rests on foot }
    }
  `,
});

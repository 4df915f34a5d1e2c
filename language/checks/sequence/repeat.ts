// A reading sends back to a step that cannot be done again from where the bench is then.

import { check } from "../check.ts";
import { repeatWords } from "../repeat-words.ts";

export default check({
  code: "sequence/repeat",
  title: "A step cannot be done again from here",
  severity: "warning",
  why: "Who goes back to an earlier step does it again on the machine as it stands then: with what was closed, fitted, filled or turned since.",
  source: "common practice",
  fails: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid" { rests on foot }
      part card "Card" { rests on foot  behind lid }
    }
    procedure look "Change the card" for box {
      aim card off
      step open-up "Open" { remove lid }
      step card-out "Card" { remove card }
      finish { test "The lamp is on" else repeat from card-out }
    #          ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ Card cannot be done again from here: Lid is in front of it
    }
  `,
  mended: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid" { rests on foot }
      part card "Card" { rests on foot  behind lid }
    }
    procedure look "Change the card" for box {
      aim card off
      step open-up "Open" { remove lid }
      step card-out "Card" { remove card }
      finish { test "The lamp is on" else repeat from open-up }
    }
  `,
  ...repeatWords,
});

// A reading sends back to a step whose precautions no longer stand then.

import { check } from "../check.ts";
import { repeatWords } from "../repeat-words.ts";

export default check({
  code: "hazard/repeat",
  title: "A step is done again without its precautions",
  severity: "error",
  why: "Who goes back to an earlier step does it again on the machine as it stands then. Precautions that were taken away since have to be taken again: the step to go back to is the one that takes them, or one before it.",
  source: "EN 50110-1 and ISO 14118 (each time that work begins again); the maker's and the local rules come first",
  fails: `
    unit pump "Pump" {
      base foot
      part foot "Foot"
      part lid "Lid" { rests on foot }
      hazard start rotating danger "Pump can start" {
        on lid
        precaution lock-out  "Open the isolator, lock it."  back "Take off your lock."
        precaution try-start "Press start: nothing may turn."
      }
    }
    procedure look "Look inside" for pump {
      aim lid off
      step make-still "Make still" { lock-out start  try-start start }
      step open-up "Open" { remove lid }
      finish { test "It runs without a knock" else repeat from open-up }
    #          ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ Open cannot be done again from here: Pump can start asks for lock-out and try-start first
    }
  `,
  mended: `
    unit pump "Pump" {
      base foot
      part foot "Foot"
      part lid "Lid" { rests on foot }
      hazard start rotating danger "Pump can start" {
        on lid
        precaution lock-out  "Open the isolator, lock it."  back "Take off your lock."
        precaution try-start "Press start: nothing may turn."
      }
    }
    procedure look "Look inside" for pump {
      aim lid off
      step make-still "Make still" { lock-out start  try-start start }
      step open-up "Open" { remove lid }
      finish { test "It runs without a knock" else repeat from make-still }
    }
  `,
  ...repeatWords,
});

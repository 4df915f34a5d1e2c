// The last group of ties of a part that hangs, or that is too heavy for bare hands, is touched while nothing holds it.

import { benchCheck, insertFix, written } from "../bench-check.ts";

export default benchCheck({
  code: "sequence/falls",
  title: "Nothing else holds it",
  severity: "error",
  why: "The last bolts of a part that hangs take its weight to the floor, or to a foot. Take the weight before the last group of its ties is touched.",
  source: "ISO 11228-1:2021 (25 kg reference mass); common practice for what hangs",
  fails: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part motor "Motor" { hangs }
      fastener motor-bolts bolt "Motor bolts" { count 4  joins motor to foot }
      no crushing "Held by a second person."
    }
    procedure strip "Strip" for box {
      aim motor off
      step "Take the motor off" {
        undo motor-bolts
    #   ^^^^^^^^^^^^^^^^ Motor bolts cannot be undone: nothing else holds Motor, and it hangs: take its weight first
        remove motor
      }
    }
  `,
  mended: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part motor "Motor" { hangs }
      fastener motor-bolts bolt "Motor bolts" { count 4  joins motor to foot }
      no crushing "Held by a second person."
    }
    procedure strip "Strip" for box {
      aim motor off
      step "Take the motor off" {
        support motor
        undo motor-bolts
        remove motor
      }
    }
  `,
  fixes: (problem, context) => {
    const part = written(problem.reasons.find((r) => r.rule === "sequence/falls")!.thing!, problem, context);
    return part === undefined ? [] : insertFix(problem, context, `Insert: support ${part}`, [`support ${part}`]);
  },
  reason: (reason, context) => {
    const mass = reason.numbers[0],
      name = context.name(reason.thing!);
    if (mass === undefined) return `nothing else holds ${name}, and it hangs: take its weight first`;
    const weighs =
      reason.words[0] === "with what is on it"
        ? `${Math.round(mass)} kg with its load`
        : `and it weighs ${Math.round(mass)} kg`;
    // What stands on its base falls nowhere; nothing but a word of the author tells the bench so.
    return `nothing else holds ${name}, ${weighs}: take its weight first, or, if it stands on something, say so: rests on`;
  },
});

// A powered test with a guard off.

import { benchCheck, listed } from "../bench-check.ts";

export default benchCheck({
  code: "hazard/guard-off",
  title: "Power back while a guard is off",
  severity: "error",
  why: "A test under power with the guard off is when fingers go in.",
  source:
    "ISO 12100 (guards in place for operation); a test that cannot be done with them needs its own risk assessment",
  fails: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part hood guard "Belt guard"
      part shaft "Shaft" { rests on foot  behind hood }
      fastener hood-screws screw "Guard screws" { count 2  joins hood to foot }
      hazard start rotating danger "Motor can start" {
        on hood-screws, shaft
        precaution lock-out "Open the isolator, lock it."
        precaution try-start "Press start: nothing may turn."
      }
    }
    procedure strip "Strip" for box {
      aim none
      step "Open" {
        lock-out start
        try-start start
        undo hood-screws
        remove hood
        restore start
    #   ^^^^^^^^^^^^^ Motor can start is restored while Belt guard is off
      }
    }
  `,
  mended: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part hood guard "Belt guard"
      part shaft "Shaft" { rests on foot  behind hood }
      fastener hood-screws screw "Guard screws" { count 2  joins hood to foot }
      hazard start rotating danger "Motor can start" {
        on hood-screws, shaft
        precaution lock-out "Open the isolator, lock it."
        precaution try-start "Press start: nothing may turn."
      }
    }
    procedure strip "Strip" for box {
      aim none
      step "Open" {
        lock-out start
        try-start start
        undo hood-screws
        remove hood
        inspect belt on shaft "No cracks"
        fit hood
        fit hood-screws
        restore start
      }
    }
  `,
  subject: () => "",
  reason: (reason, context) => {
    const isOne = reason.by.length === 1,
      how = reason.words[0] === "held by nothing" ? "held by nothing" : "off";
    return `${context.name(reason.thing!)} is restored while ${listed(reason.by.map((g) => context.name(g)))} ${isOne ? "is" : "are"} ${how}`;
  },
});

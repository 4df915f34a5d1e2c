// A thing is worked on while what it is behind is not away.

import { howOf } from "../../bench/how.ts";
import { benchCheck, listed, stillIn } from "../bench-check.ts";
import { callAnswer } from "../one-call.ts";

export default benchCheck({
  code: "sequence/blocked",
  title: "Something is in front of it",
  severity: "error",
  why: "What is behind a cover cannot be reached, however clear the drawing is: the hand finds out at the machine.",
  source: "common practice",
  fails: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid"
      part card "Card" { rests on foot  behind lid }
      fastener lid-screws screw "Lid screws" { count 4  joins lid to foot }
    }
    procedure strip "Strip" for box {
      aim lid off
      step "Open" {
        remove card
    #   ^^^^^^^^^^^ Card cannot come off: Lid is in front of it
        undo lid-screws
        remove lid
      }
    }
  `,
  mended: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid"
      part card "Card" { rests on foot  behind lid }
      fastener lid-screws screw "Lid screws" { count 4  joins lid to foot }
    }
    procedure strip "Strip" for box {
      aim lid off
      step "Open" {
        undo lid-screws
        remove lid
        remove card
      }
    }
  `,
  answer: callAnswer,
  reason: (reason, context) => {
    const name = (): string => context.name(reason.thing!),
      by = stillIn(reason, context),
      named = reason.by.map((thing) => context.name(thing)),
      areInFront = `${by} ${(reason.left[0] ?? 0) > 1 ? "are" : "is"} in front of`;
    switch (howOf("sequence/blocked", reason)) {
      case "starts on bench":
        return `${reason.words[1]} starts on the bench, and it is still on the unit`;
      case "not together":
        return `${listed(named)} ${named.length > 1 ? "are" : "is"} not in one sub-assembly with it, so they cannot come off together`;
      case "between":
        return `it lies between ${named[0]} and ${named[1]}, which are still together`;
      case "filler off":
        return `${name()} is off with ${listed(named)}`;
      case "covered":
        return `${areInFront} ${name()}`;
      case "comes along":
        return `${name()}, which comes along, is behind ${by}`;
      case "behind":
        return `${areInFront} it`;
    }
  },
});

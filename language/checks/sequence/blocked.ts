// A thing is worked on while what it is behind is not away.

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
    if (reason.words[0] === "starts on bench")
      return `${reason.words[1]} starts on the bench, and it is still on the unit`;
    if (reason.words[0] === "not together")
      return `${listed(reason.by.map((thing) => context.name(thing)))} ${reason.by.length > 1 ? "are" : "is"} not in one sub-assembly with it, so they cannot come off together`;
    if (reason.words[0] === "between")
      return `it lies between ${context.name(reason.by[0]!)} and ${context.name(reason.by[1]!)}, which are still together`;
    if (reason.words[0] === "filler off")
      return `${context.name(reason.thing!)} is off with ${listed(reason.by.map((thing) => context.name(thing)))}`;
    if (reason.words[0] === "covered")
      return `${stillIn(reason, context)} ${(reason.left[0] ?? 0) > 1 ? "are" : "is"} in front of ${context.name(reason.thing!)}`;
    const hider = stillIn(reason, context),
      who = reason.words[0] === "comes along" ? `${context.name(reason.thing!)}, which comes along, is behind` : "";
    return who === "" ? `${hider} ${(reason.left[0] ?? 0) > 1 ? "are" : "is"} in front of it` : `${who} ${hider}`;
  },
});

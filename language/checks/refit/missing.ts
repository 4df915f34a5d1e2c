// At the end of the refit something is off, out, loose or aside that was not so at the start.

import { nameFrom } from "../../model/named-inside.ts";
import { benchCheck, firstAndOthers, listed } from "../bench-check.ts";

export default benchCheck({
  code: "refit/missing",
  title: "Not put back",
  severity: "error",
  why: "What the strip took off is still on the bench when the refit says that it is finished.",
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
        undo lid-screws
    #   ^^^^^^^^^^^^^^^ Lid screws: 4 of 4 are not back in at the end
        remove lid
      }
    }
    procedure build "Put together" for box {
      aim all in
      needs strip
      step "Close" {
        fit lid
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
      }
    }
    procedure build "Put together" for box {
      aim all in
      needs strip
      step "Close" {
        fit lid
        fit lid-screws
      }
    }
  `,
  subject: () => "",
  first: firstAndOthers,
  reason: (reason, context) => {
    const name = context.name(reason.thing!),
      [how, ...words] = reason.words;
    switch (how) {
      case "off":
        return `${name} came off here and is not back on at the end`;
      case "still off":
        return `${name} is not back on at the end`;
      case "never fitted":
        return `${name} came off here and is never fitted`;
      case "out":
        return reason.numbers[1] === 1
          ? `${name} is undone here and not back in at the end`
          : `${name}: ${reason.numbers[0]} of ${reason.numbers[1]} are not back in at the end`;
      case "some":
        return `${name}: ${reason.numbers[0]} of ${reason.numbers[1]} went back on`;
      case "aside":
        return `${name} is still aside at the end`;
      case "stands":
        return `${listed(words)} for ${name} still ${words.length > 1 ? "stand" : "stands"} at the end: restore ${nameFrom("", context.model.things[reason.thing!]!)} takes ${words.length > 1 ? "them" : "it"} back`;
      default:
        return `${name} is left ${how} at the end`;
    }
  },
});

// An act on something that is out, off, loose or empty already.

import { howOf } from "../../bench/how.ts";
import { benchCheck } from "../bench-check.ts";

export default benchCheck({
  code: "sequence/already-undone",
  title: "Done already",
  severity: "error",
  why: "A line that cannot be done sends the reader looking for screws that are in the tray.",
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
        undo lid-screws
    #   ^^^^^^^^^^^^^^^ Lid screws are undone already
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
      }
    }
  `,
  subject: () => "",
  reason: (reason, context) => {
    const name =
      reason.thing === undefined
        ? (context.model.temporaries.get(reason.words[1] ?? "")?.name ?? reason.words[1] ?? "it")
        : context.name(reason.thing);
    switch (howOf("sequence/already-undone", reason)) {
      case "off":
        return `${name} is off already`;
      case "apart":
        return `${name} came apart when ${context.name(reason.by[0]!)} was taken off`;
      case "loosened":
        return `${name} is loose already`;
      case "backed out":
        return `${name} is backed out already`;
      case "drained":
        return `${name} is not aboard any more`;
      case "not held":
        return `${name} is not held by anything`;
      case "not put":
        return `${name} was never put on`;
      case "capped":
        return `${name} is capped already`;
      case "not capped":
        return `${name} is not capped`;
      case "mark":
        return `${name} is off already, and parts are marked while they are together`;
      case "mark aside":
        return `${name} is moved aside already, and parts are marked while they are together`;
      case "tag":
        return `${name} is undone already, and an end is tagged while still made`;
      case "undone":
        return `${name} is undone already`;
    }
  },
});

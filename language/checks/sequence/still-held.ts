// A part is taken off, or moved aside, while something that an action has to undo still ties it. The finding names the smallest set that would free it.

import { benchCheck, insertFix, stillIn, written } from "../bench-check.ts";
import { callAnswer } from "../one-call.ts";

export default benchCheck({
  code: "sequence/still-held",
  title: "Still held by a tie that nothing undid",
  severity: "error",
  why: "A cover pulled with two screws still in bends, tears its gasket, or comes away at once and falls.",
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
        undo 2 of lid-screws
        remove lid
    #   ^^^^^^^^^^ Lid cannot come off: still held by 2 of 4 Lid screws
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
  fixes: (problem, context) => {
    const ties = problem.reasons[0]!.by.map((tie) => written(tie, problem, context)),
      verb = problem.reasons[0]!.words.includes("aside") ? "loosen" : "undo";
    return insertFix(
      problem,
      context,
      `Insert: ${verb} ${ties.join(", ")}`,
      ties.length === 0 ? [] : [ties.includes(undefined) ? undefined : `${verb} ${ties.join(", ")}`],
    );
  },
  answer: callAnswer,
  reason: (reason, context) => {
    const ties = stillIn(reason, context);
    if (ties === "") return "it is part of what stays";
    return `still ${reason.words.includes("clamped") ? "clamped" : "held"} by ${ties}`;
  },
});

// A part is taken off, or moved aside, while something that an action has to undo still ties it. The finding names the smallest set that would free it.

import { isCaptive } from "../../bench/machine.ts";
import type { ThingIndex } from "../../model/model.ts";
import { benchCheck, insertFix, stillIn, written } from "../bench-check.ts";
import type { BenchContext } from "../check.ts";
import { callAnswer } from "../one-call.ts";

/** A captive one is backed out and stays where it is. */
const staysIn = ({ model }: BenchContext, thing: ThingIndex): boolean => {
  const tie = model.things[thing];
  return tie?.is === "tie" && isCaptive(tie);
};

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
    const { by, words } = problem.reasons[0]!,
      verbs = words.includes("aside") ? ["loosen"] : ["undo", "back-out"];
    const lines = verbs.flatMap((verb) => {
      const ties = by
        .filter((tie) => verb === "loosen" || staysIn(context, tie) === (verb === "back-out"))
        .map((tie) => written(tie, problem, context));
      return ties.length === 0 ? [] : [ties.includes(undefined) ? undefined : `${verb} ${ties.join(", ")}`];
    });
    return insertFix(problem, context, `Insert: ${lines.join(", ")}`, lines);
  },
  answer: callAnswer,
  reason: (reason, context) => {
    const ties = stillIn(reason, context);
    if (ties === "") return "it is part of what stays";
    return `still ${reason.words.includes("clamped") ? "clamped" : "held"} by ${ties}`;
  },
});

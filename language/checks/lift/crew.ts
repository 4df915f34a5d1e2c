// An act that takes more people than the procedure says it has.

import { writtenActs } from "../../bench/crew.ts";
import { check } from "../check.ts";

export default check({
  code: "lift/crew",
  title: "More people than the crew has",
  severity: "warning",
  why: "Who plans the work reads the crew. The second pair of hands is called for while the part already hangs.",
  source: "common practice",
  fails: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid" { mass 30 kg  rests on foot }
    }
    procedure strip "Strip" for box {
      aim lid off
      crew 1
      step "Open" {
        lift lid by 2 people
    #   ^^^^^^^^^^^^^^^^^^^^ 2 people are needed here, and the crew is 1: plan for as many
      }
    }
  `,
  mended: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid" { mass 30 kg  rests on foot }
    }
    procedure strip "Strip" for box {
      aim lid off
      crew 2
      step "Open" {
        lift lid by 2 people
      }
    }
  `,
  performance(performance, say) {
    for (const { act, around } of writtenActs(performance)) {
      const { people, at } = act,
        { crew } = around;
      if (people === undefined || crew === undefined || people <= crew) continue;
      // Said by the procedure of the line, or by the one that does it.
      const said = [around.procedure, performance.procedure].find((one) => one.crew === crew)?.crewAt;
      say({
        at,
        // One figure of the crew answers them all.
        answer: said && { key: `crew at ${said.file} ${said.start}`, again: "and here" },
        says: `${people} people are needed here, and the crew is ${crew}: plan for as many`,
        because: said ? [{ says: "the crew is said here", at: said }] : [],
      });
    }
  },
});

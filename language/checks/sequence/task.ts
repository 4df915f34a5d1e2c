// A task leaves out a step that its own steps rest on.

import { capital } from "../bench-check.ts";
import { check } from "../check.ts";

export default check({
  code: "sequence/task",
  title: "A task cannot be done alone",
  severity: "error",
  why: "A task is some of the steps done alone. Where they rest on a step that is not among them, the job stops at the bench, or a precaution is missing.",
  source: "common practice",
  fails: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid" { rests on foot }
      part card "Card" { rests on foot  behind lid }
    }
    procedure strip "Strip" for box {
      aim lid, card off
      task card-only "Change the card only" does card-out
    # ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ Change the card only cannot be done alone: Lid is in front of it
      step open-up "Open" { remove lid }
      step card-out "Card" { remove card }
    }
  `,
  mended: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid" { rests on foot }
      part card "Card" { rests on foot  behind lid }
    }
    procedure strip "Strip" for box {
      aim lid, card off
      task card-only "Change the card only" does open-up, card-out
      step open-up "Open" { remove lid }
      step card-out "Card" { remove card }
    }
  `,
  problem(problem, context) {
    const [task, ...reasons] = problem.reasons,
      because = reasons.map((reason) => context.because(reason));
    return {
      at: problem.at,
      says: capital(`${task!.words[0]} cannot be done alone${because[0] ? `: ${because[0].says}` : ""}`),
      because: [...(task!.at ? [{ says: "here it stops", at: task!.at }] : []), ...because],
    };
  },
  reason: (reason) => `${reason.words[0]} cannot be done alone`,
});

// A torque so far under what the thread carries that it may not hold.

import { assumed } from "../../figures/assumptions.ts";
import { rounded } from "../../quantities/index.ts";
import { check } from "../check.ts";
import { threadInDoubt } from "../thread-in-doubt.ts";
import { assumptionsOf, newtonMetres, sumLines } from "../sums.ts";
import { judgedTorques } from "../torque-judged.ts";

export default check({
  code: "fastener/torque-too-low",
  title: "Torque too low to hold?",
  severity: "question",
  why: "A bolt far under its preload works loose. It may be meant (a soft part, a seal): then allow it with the reason; mostly it is a wrong unit or a slipped point.",
  source: "common practice (a fifth of the torque at 90 % of yield, VDI 2230-1)",
  fails: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid"
      fastener lid-screws screw "Lid screws" { count 4  size M12x40  class 8.8  torque 8 N·m  joins lid to foot }
    #                                                                           ^^^^^^^^^^^^ Lid screws: 8 N·m is under 16.7 N·m, 20 % of what M12 8.8 carries
    }
  `,
  mended: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid"
      fastener lid-screws screw "Lid screws" { count 4  size M12x40  class 8.8  torque 80 N·m  joins lid to foot }
    }
  `,
  model(model, say, context) {
    const assumptions = assumptionsOf(context.settings),
      share = assumptions["least-torque-share"];
    for (const one of judgedTorques(model, context)) {
      const { tie, torque, judged } = one;
      if (judged.verdict !== "low") continue;
      say({
        at: torque.at,
        within: threadInDoubt(one, context),
        says: `${tie.name}: ${torque.value!.written} is under ${newtonMetres(judged.least)}, ${rounded(share * 100, 2)} % of what ${tie.size!.designation} ${tie.propertyClass ?? tie.grade} carries`,
        because: sumLines(
          {
            name: judged.name,
            formula: judged.formula,
            source: judged.source,
            steps: [
              `the limit is ${newtonMetres(judged.limit)}; that a torque under this share of it is low is common practice, no standard`,
            ],
            assumptions: [
              ...judged.assumptions,
              assumed(assumptions, "least-torque-share"),
              assumed(assumptions, "joint"),
            ],
          },
          tie.at,
        ),
      });
    }
  },
});

// A torque that takes the thread over the share of its yield that tightening may use.

import { check } from "../check.ts";
import { threadInDoubt } from "../thread-in-doubt.ts";
import { newtonMetres, sumLines } from "../sums.ts";
import { judgedTorques } from "../torque-judged.ts";

export default check({
  code: "fastener/torque-over-yield",
  title: "Torque over what the thread carries",
  severity: "error",
  why: "Over its yield a bolt stretches and stays long: it holds less than before, or breaks in the hand. Mostly the unit is wrong (lb-ft for lb-in) or the size.",
  source: "VDI 2230-1:2015 (90 % of yield); ISO 898-1, ISO 3506-1, SAE J429",
  fails: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid"
      fastener lid-screws screw "Lid screws" { count 4  size M6x20  class 8.8  torque 24 N·m  joins lid to foot }
    #                                                                          ^^^^^^^^^^^^^ Lid screws: 24 N·m is over 10.1 N·m, which takes M6 8.8 to its limit
    }
  `,
  mended: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid"
      fastener lid-screws screw "Lid screws" { count 4  size M6x20  class 8.8  torque 9 N·m  joins lid to foot }
    }
  `,
  model(model, say, context) {
    for (const one of judgedTorques(model, context)) {
      const { tie, torque, judged } = one;
      if (judged.verdict !== "over") continue;
      say({
        at: torque.at,
        within: threadInDoubt(one, context),
        says: `${tie.name}: ${torque.value!.written} is over ${newtonMetres(judged.limit)}, which takes ${tie.size!.designation} ${tie.propertyClass ?? tie.grade} to its limit`,
        because: sumLines(
          {
            name: judged.name,
            formula: judged.formula,
            source: judged.source,
            steps: [`this torque uses ${Math.round(judged.utilisation * 100)} % of the yield or proof stress`],
            assumptions: judged.assumptions,
          },
          tie.at,
        ),
      });
    }
  },
});

// Tightening in stages whose torque goes down: the wrench clicks at once, and nothing is tightened.

import { si } from "../../quantities/index.ts";
import { check } from "../check.ts";

export default check({
  code: "fastener/stages-fall",
  title: "A later stage under the one before",
  severity: "warning",
  why: "Stages go up: at a torque under that of the stage before, the wrench clicks at once and nothing moves. The two figures stand the wrong way round, or the fastener is to be slackened between them, which is another act.",
  source: "common practice",
  fails: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid"
      fastener lid-screws screw "Lid screws" { count 4  size M8x20  stages 22 N·m, 10 N·m  joins lid to foot }
    #          ^^^^^^^^^^ Lid screws: the stage of 10 N·m comes after 22 N·m, where nothing moves any more: let the stages go up
    }
  `,
  mended: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid"
      fastener lid-screws screw "Lid screws" { count 4  size M8x20  stages 10 N·m, 22 N·m  joins lid to foot }
    }
  `,
  model(model, say) {
    for (const { stages, name, at } of model.ties) {
      const torques = stages.length > 1 ? stages.filter(({ dimension }) => dimension === "torque") : [],
        fallen = torques.findIndex((stage, i) => i > 0 && si(stage).high < si(torques[i - 1]!).low);
      if (fallen < 0) continue;
      say({
        at,
        says: `${name}: the stage of ${torques[fallen]!.written} comes after ${torques[fallen - 1]!.written}, where nothing moves any more: let the stages go up`,
      });
    }
  },
});

// A fastener without any torque. Off unless a project asks for it: real manuals print a torque for less than half of their fasteners.

import { fastenerKinds, kindIn } from "../../tables/index.ts";
import { check } from "../check.ts";

export default check({
  code: "fastener/torque-missing",
  title: "No torque given",
  severity: "off",
  why: "Without a torque the reader tightens by feel. `torque none` says that this is meant; `torque standard` gives the shop's table.",
  source: "common practice",
  fails: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid"
      fastener lid-screws screw "Lid screws" { count 4  joins lid to foot }
    #          ^^^^^^^^^^ Lid screws have no torque
    }
  `,
  mended: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid"
      fastener lid-screws screw "Lid screws" { count 4  torque none  joins lid to foot }
    }
  `,
  model(model, say) {
    for (const tie of model.ties) {
      if (
        !tie.fastener ||
        tie.torques.length > 0 ||
        tie.stages.length > 0 ||
        kindIn(fastenerKinds, tie.kind)?.turned !== true
      )
        continue;
      say({ at: tie.at, says: `${tie.name} ${tie.count > 1 ? "have" : "has"} no torque` });
    }
  },
});

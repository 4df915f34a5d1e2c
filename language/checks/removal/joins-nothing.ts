// A group of fasteners or a joint that ties nothing together and sits in nothing.

import { check } from "../check.ts";
import { tiesOfNothing } from "../ties-of-nothing.ts";

export default check({
  code: "removal/joins-nothing",
  title: "It joins nothing",
  severity: "error",
  why: "Whatever it holds at the machine is free on the bench: a cover comes off with these screws still in, and nobody is told.",
  source: "common practice",
  fails: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid" { rests on foot }
      fastener lid-screws screw "Lid screws" { count 4 }
    #          ^^^^^^^^^^ Lid screws join nothing: say what they hold together, or what they sit in
    }
  `,
  mended: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid" { rests on foot }
      fastener lid-screws screw "Lid screws" { count 4  joins lid to foot }
    }
  `,
  model(model, say, { project }) {
    for (const tie of tiesOfNothing(project, model))
      say({
        at: tie.at,
        says: `${tie.name} ${tie.count > 1 ? "join" : "joins"} nothing: say what ${tie.count > 1 ? "they hold" : "it holds"} together, or what ${tie.count > 1 ? "they sit" : "it sits"} in`,
      });
  },
});

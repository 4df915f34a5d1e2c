// A group of fasteners or a joint that ties nothing together and sits in nothing.

import { wasReadWhole } from "../read-whole.ts";
import { check } from "../check.ts";

const joined = /\b(?:joins|into)\b/;

export default check({
  code: "removal/joins-nothing",
  title: "It joins nothing",
  severity: "warning",
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
  *model(model, { project }) {
    for (const tie of model.ties) {
      if (tie.lowers.length > 0 || tie.uppers.length > 0 || tie.into !== undefined) continue;
      // Where it says so and the names are not found, that is what is wrong.
      const source = project.files.get(tie.at.file);
      if (
        !source ||
        !wasReadWhole(project, tie.whole) ||
        joined.test(source.text.slice(tie.whole.start, tie.whole.end))
      )
        continue;
      yield {
        at: tie.at,
        says: `${tie.name} ${tie.count > 1 ? "join" : "joins"} nothing: say what ${tie.count > 1 ? "they hold" : "it holds"} together, or what ${tie.count > 1 ? "they sit" : "it sits"} in`,
      };
    }
  },
});

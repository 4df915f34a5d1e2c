// A part that nothing holds, carries or clamps, or a few that hold on to each other alone.

import { check } from "../check.ts";
import { unattached } from "../unattached.ts";

export default check({
  code: "names/part-unattached",
  title: "A part that nothing holds",
  severity: "hint",
  why: "Its fasteners are missing from the text, or one of them names another part: the bench lets it come off at any time.",
  source: "common practice",
  fails: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid"
    #      ^^^ Lid is tied to nothing, rests on nothing and lies between nothing: say what holds it
    }
  `,
  mended: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid"
      fastener lid-screws screw "Lid screws" { count 4  joins lid to foot }
    }
  `,
  asksAllFiles: true,
  model(model, say, { project }) {
    for (const [first, ...others] of unattached(project, model)) {
      const names = others.map((part) => part.name);
      say({
        at: first.at,
        says:
          others.length === 0
            ? `${first.name} is tied to nothing, rests on nothing and lies between nothing: say what holds it`
            : `${first.name} is tied to ${names.join(", ")} alone, and nothing holds ${others.length === 1 ? "the two" : "them"} to the rest: say what does`,
      });
    }
  },
});

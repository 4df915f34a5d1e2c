// A unit that does not say what stays on the stand.

import { check } from "../check.ts";
import { lacksBase } from "../lacks-base.ts";

export default check({
  code: "names/base-missing",
  title: "Nothing says what stays on the stand",
  severity: "question",
  why: "Without a base nothing hangs on anything that is fixed: a part that is still bolted to another may count as free, and weight that falls as lying.",
  source: "common practice",
  fails: `
    unit box "Box" {
    #    ^^^ Box has no base: say which part stays on the stand
      part foot "Foot"
      part lid "Lid"
      fastener lid-screws screw "Lid screws" { count 4  joins lid to foot }
    }
    procedure strip "Strip" for box {
      aim lid off
      step "Open" { undo lid-screws  remove lid }
    }
  `,
  mended: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid"
      fastener lid-screws screw "Lid screws" { count 4  joins lid to foot }
    }
    procedure strip "Strip" for box {
      aim lid off
      step "Open" { undo lid-screws  remove lid }
    }
  `,
  model(model, say, { project }) {
    if (lacksBase(project, model))
      say({ at: model.at, says: `${model.title} has no base: say which part stays on the stand` });
  },
});

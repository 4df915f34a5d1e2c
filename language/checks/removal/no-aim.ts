// A procedure that does not say what it is to reach.

import { unsaidAim } from "../aims.ts";
import { check } from "../check.ts";

export default check({
  code: "removal/no-aim",
  title: "Nothing says what is to be reached",
  severity: "question",
  why: "Without an aim nothing is missed at the end: a seal that stays in, a screw that nobody undoes. What puts together is taken for a strip unless its aim says all in.",
  source: "common practice",
  fails: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid"
      fastener lid-screws screw "Lid screws" { count 4  joins lid to foot }
    }
    procedure open "Open" for box {
      aim lid off
      step "Open" { undo lid-screws  remove lid }
    }
    procedure close "Close" for box {
    #         ^^^^^ Close only puts together and has no aim: aim all in says that it is the way back of another procedure
      needs open
      step "Close" { fit lid  fit lid-screws  tighten lid-screws }
    }
  `,
  mended: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid"
      fastener lid-screws screw "Lid screws" { count 4  joins lid to foot }
    }
    procedure open "Open" for box {
      aim lid off
      step "Open" { undo lid-screws  remove lid }
    }
    procedure close "Close" for box {
      needs open
      aim all in
      step "Close" { fit lid  fit lid-screws  tighten lid-screws }
    }
  `,
  file(file, say, { project }) {
    for (const declaration of file.declarations) {
      const unsaid = unsaidAim(project, file, declaration),
        name = declaration.name || declaration.id;
      if (unsaid === "builds up")
        say({
          at: declaration.at,
          says: `${name} only puts together and has no aim: aim all in says that it is the way back of another procedure`,
        });
      else if (unsaid)
        say({
          at: declaration.at,
          severity: "hint",
          says: `${name} has no aim: say what is off at its end, as in aim lid off, or aim all apart`,
        });
    }
  },
});

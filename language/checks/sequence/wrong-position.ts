// A thing that can be worked on in some positions only is worked on in another.

import { benchCheck, insertFix, listed } from "../bench-check.ts";

export default benchCheck({
  code: "sequence/wrong-position",
  title: "The unit lies the wrong way round",
  severity: "error",
  why: "Screws underneath cannot be reached standing, and a part taken out upside down drops out.",
  source: "common practice",
  fails: `
    unit box "Box" {
      base foot
      positions upright, on-side
      part foot "Foot"
      part lid "Lid"
      fastener lid-screws screw "Lid screws" { count 4  joins lid to foot  needs on-side }
    }
    procedure strip "Strip" for box {
      aim lid off
      step "Open" {
        undo lid-screws
    #   ^^^^^^^^^^^^^^^ Lid screws cannot be undone: they need on-side, and the unit is upright
        remove lid
      }
    }
  `,
  mended: `
    unit box "Box" {
      base foot
      positions upright, on-side
      part foot "Foot"
      part lid "Lid"
      fastener lid-screws screw "Lid screws" { count 4  joins lid to foot  needs on-side }
    }
    procedure strip "Strip" for box {
      aim lid off
      step "Open" {
        turn to on-side
        undo lid-screws
        remove lid
      }
    }
  `,
  fixes: (problem, context) => {
    const reason = problem.reasons.find((r) => r.rule === "sequence/wrong-position");
    return reason
      ? insertFix(problem, context, `Insert: turn to ${reason.words[1]}`, [`turn to ${reason.words[1]}`])
      : [];
  },
  reason: (reason, context) =>
    `it needs ${listed(reason.words.slice(1), "or")}, and ${reason.by[0] === undefined ? "the unit" : context.name(reason.by[0])} is ${reason.words[0]}`,
});

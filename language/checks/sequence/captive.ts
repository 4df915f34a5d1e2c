// `undo` of a fastener that cannot come out.

import { benchCheck } from "../bench-check.ts";

export default benchCheck({
  code: "sequence/captive",
  title: "A captive fastener stays in its part",
  severity: "warning",
  why: "A captive screw is loosened and stays where it is; whoever looks for it in the tray thinks that it is lost.",
  source: "common practice",
  fails: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid"
      fastener lid-screws captive-screw "Lid screws" { count 4  joins lid to foot }
    }
    procedure strip "Strip" for box {
      aim none
      step "Open" {
        undo lid-screws
    #   ^^^^^^^^^^^^^^^ Lid screws are captive: backed out, never taken out
        remove lid
      }
    }
  `,
  mended: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid"
      fastener lid-screws captive-screw "Lid screws" { count 4  joins lid to foot }
    }
    procedure strip "Strip" for box {
      aim none
      step "Open" {
        back-out lid-screws
        remove lid
      }
    }
  `,
  subject: () => "",
  fixes: (problem) =>
    problem.act?.verb === "undo"
      ? [
          {
            title: "Write back-out",
            certain: true,
            edits: [{ file: problem.at.file, start: problem.at.start, end: problem.act.wordEnd, text: "back-out" }],
          },
        ]
      : [],
  reason: (reason, context) => `${context.name(reason.thing!)} is captive: backed out, never taken out`,
});

// `drain` of a fluid that its kind or its own statement asks to recover.

import { benchCheck } from "../bench-check.ts";

export default benchCheck({
  code: "hazard/not-recovered",
  title: "A fluid that must be caught is let out",
  severity: "error",
  why: "Letting refrigerant out is forbidden nearly everywhere, and other fluids are declared to be caught for a reason.",
  source: "Regulation (EU) 2024/573, article 8; 40 CFR 82.154",
  fails: `
    unit box "Box" {
      base foot
      part foot "Foot"
      fastener port plug "Service port" { into foot }
      fluid gas refrigerant "Refrigerant" { amount 600 g  drains at port }
    }
    procedure strip "Strip" for box {
      step "Empty" {
        drain gas
    #   ^^^^^^^^^ Refrigerant is to be recovered, not drained
      }
    }
  `,
  mended: `
    unit box "Box" {
      base foot
      part foot "Foot"
      fastener port plug "Service port" { into foot }
      fluid gas refrigerant "Refrigerant" { amount 600 g  drains at port }
    }
    procedure strip "Strip" for box {
      step "Empty" {
        recover gas
      }
    }
  `,
  subject: () => "",
  fixes: (problem) =>
    problem.act?.verb === "drain"
      ? [
          {
            title: "Write recover",
            certain: true,
            edits: [{ file: problem.at.file, start: problem.at.start, end: problem.act.wordEnd, text: "recover" }],
          },
        ]
      : [],
  reason: (reason, context) =>
    `${context.name(reason.thing!)} is to be recovered${reason.words[1] === undefined ? ", not drained" : ` before it is ${reason.words[1] === "purge" ? "purged" : "evacuated"}`}`,
});

// `reuse` of a thing that must be new.

import { benchCheck } from "../bench-check.ts";

export default benchCheck({
  code: "fastener/one-time-reused",
  title: "A one-time part is used again",
  severity: "error",
  why: "What is declared to be new every time was stretched, crushed or cut when it came off.",
  source: "common practice",
  fails: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid"
      part ring o-ring "Lid ring" { between lid and foot  renew always }
      fastener lid-screws screw "Lid screws" { count 4  joins lid to foot }
    }
    procedure strip "Strip" for box {
      aim ring off
      step "Open" {
        undo lid-screws
        remove lid
        remove ring
        refit { reuse ring }
    #           ^^^^^^^^^^ Lid ring is to be new every time
      }
    }
  `,
  mended: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid"
      part ring o-ring "Lid ring" { between lid and foot  renew always }
      fastener lid-screws screw "Lid screws" { count 4  joins lid to foot }
    }
    procedure strip "Strip" for box {
      aim ring off
      step "Open" {
        undo lid-screws
        remove lid
        remove ring
        refit { note "The new ring dry." }
      }
    }
  `,
  subject: () => "",
  reason: (reason, context) =>
    `${context.name(reason.thing!)} ${reason.words[1] === "scrap" ? `was scrapped before` : `is to be new every time`}`,
});

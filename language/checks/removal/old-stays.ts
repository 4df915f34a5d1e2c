// A seal or gasket that must be new every time stays in a joint that was opened.

import { benchCheck } from "../bench-check.ts";

export default benchCheck({
  code: "removal/old-stays",
  title: "Must be new every time, and the old one stays in",
  severity: "warning",
  why: "Its joint was opened, and nothing takes the old one out: it goes back squeezed flat, or the new one goes in on top of it.",
  source: "common practice",
  fails: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid"
      part lid-ring o-ring "Lid ring" { between lid and foot  renew always }
      fastener lid-screws screw "Lid screws" { count 4  joins lid to foot }
    }
    procedure strip "Strip" for box {
      aim lid off
      step "Open" {
        undo lid-screws
        remove lid
    #   ^^^^^^^^^^ Lid ring must be new every time, and nothing takes the old one out of this joint
      }
    }
  `,
  mended: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid"
      part lid-ring o-ring "Lid ring" { between lid and foot  renew always }
      fastener lid-screws screw "Lid screws" { count 4  joins lid to foot }
    }
    procedure strip "Strip" for box {
      aim lid off
      step "Open" {
        undo lid-screws
        remove lid
        remove lid-ring
      }
    }
  `,
  subject: () => "",
  reason: (reason, context) =>
    `${context.name(reason.thing!)} must be new every time, and nothing takes the old one out of this joint`,
});

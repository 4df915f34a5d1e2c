// `back` for a part that was never moved aside.

import { benchCheck } from "../bench-check.ts";

export default benchCheck({
  code: "sequence/aside",
  title: "It is not aside",
  severity: "error",
  why: "Only what was slid, swung or opened can go back.",
  source: "common practice",
  fails: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part door "Door"
      fastener catch bolt "Catch" { joins door to foot }
    }
    procedure strip "Strip" for box {
      step "Open" {
        loosen catch
        swing door back
    #   ^^^^^^^^^^^^^^^ Door is not aside, so it cannot go back
      }
    }
  `,
  mended: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part door "Door"
      fastener catch bolt "Catch" { joins door to foot }
    }
    procedure strip "Strip" for box {
      step "Open" {
        loosen catch
        swing door
        swing door back
      }
    }
  `,
  subject: () => "",
  reason: (reason, context) => `${context.name(reason.thing!)} is not aside, so it cannot go back`,
});

// A fluid that is filled again by its declaration, and is missing at the end.

import { benchCheck, firstAndOthers } from "../bench-check.ts";

export default benchCheck({
  code: "refit/fluid-short",
  title: "Drained and not filled again",
  severity: "error",
  why: "A gearbox started without oil lasts minutes.",
  source: "common practice",
  fails: `
    unit box "Box" {
      base foot
      part foot "Foot"
      fastener plug plug "Drain plug" { into foot }
      fluid oil oil "Oil" { volume 2 L  drains at plug }
    }
    procedure strip "Strip" for box {
      aim none
      step "Drain" { drain oil }
    #                ^^^^^^^^^ Oil is let out and not filled again
    }
    procedure build "Put together" for box {
      aim all in
      needs strip
      step "Fill" {
        fit plug
        note "The level glass is at the back."
      }
    }
  `,
  mended: `
    unit box "Box" {
      base foot
      part foot "Foot"
      fastener plug plug "Drain plug" { into foot }
      fluid oil oil "Oil" { volume 2 L  drains at plug }
    }
    procedure strip "Strip" for box {
      aim none
      step "Drain" { drain oil }
    }
    procedure build "Put together" for box {
      aim all in
      needs strip
      step "Fill" {
        fit plug
        fill oil
      }
    }
  `,
  subject: () => "",
  first: firstAndOthers,
  reason: (reason, context) => `${context.name(reason.thing!)} is let out and not filled again`,
});

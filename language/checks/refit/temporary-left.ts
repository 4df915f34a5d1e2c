// A temporary thing or a cap that is still on at the end.

import { benchCheck } from "../bench-check.ts";

export default benchCheck({
  code: "refit/temporary-left",
  title: "A temporary thing is left on",
  severity: "error",
  why: "A rag, a cap or a strap that stays in is the classic reason for opening it all again.",
  source: "common practice",
  fails: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid"
      temporary felt "Felt sheet"
      fastener lid-screws screw "Lid screws" { count 4  joins lid to foot }
    }
    procedure strip "Strip" for box {
      aim lid off
      step "Open" {
        put felt on foot
    #   ^^^^^^^^^^^^^^^^ Felt sheet is put on here and never taken off
        undo lid-screws
        remove lid
        note "The felt protects the face."
      }
    }
  `,
  mended: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid"
      temporary felt "Felt sheet"
      fastener lid-screws screw "Lid screws" { count 4  joins lid to foot }
    }
    procedure strip "Strip" for box {
      aim lid off
      step "Open" {
        put felt on foot
        undo lid-screws
        remove lid
        take felt off
      }
    }
  `,
  subject: () => "",
  reason: (reason, context) =>
    reason.words[0] === "cap"
      ? `${context.name(reason.thing!)} is still capped at the end`
      : `${context.model.temporaries.get(reason.words[0] ?? "")?.name ?? reason.words[0]} is put on here and never taken off`,
});

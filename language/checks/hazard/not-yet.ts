// A thing is touched before the precautions of its hazard stand.

import { benchCheck, insertFix, listed, written } from "../bench-check.ts";

export default benchCheck({
  code: "hazard/not-yet",
  title: "A precaution is not in place yet",
  severity: "error",
  why: "This is the line where a hand goes in. What the hazard asks for has to stand before it.",
  source:
    "EN 50110-1 and ISO 14118 (order of isolating, securing, proving); the maker's and the local rules come first",
  fails: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid"
      fastener lid-screws screw "Lid screws" { count 4  joins lid to foot }
      hazard mains electrical danger "Mains" {
        on lid-screws  source mains  voltage 400 V ac
        precaution isolate "Open the isolator."
        precaution lock-out "Lock it, tag it."
        precaution prove-dead "Test all three phases to earth and to each other."
      }
    }
    procedure strip "Strip" for box {
      aim lid off
      step "Open" {
        undo lid-screws
    #   ^^^^^^^^^^^^^^^ Lid screws must not be touched yet: Mains asks for isolate, lock-out and prove-dead first
        remove lid
      }
    }
  `,
  mended: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid"
      fastener lid-screws screw "Lid screws" { count 4  joins lid to foot }
      hazard mains electrical danger "Mains" {
        on lid-screws  source mains  voltage 400 V ac
        precaution isolate "Open the isolator."
        precaution lock-out "Lock it, tag it."
        precaution prove-dead "Test all three phases to earth and to each other."
      }
    }
    procedure strip "Strip" for box {
      aim lid off
      step "Open" {
        isolate mains
        lock-out mains
        prove-dead mains
        undo lid-screws
        remove lid
      }
    }
  `,
  fixes: (problem, context) => {
    const reason = problem.reasons.find((r) => r.rule === "hazard/not-yet")!,
      hazard = written(reason.by[0]!, problem, context);
    return hazard === undefined
      ? []
      : insertFix(
          problem,
          context,
          `Insert: ${reason.words.join(", ")} ${hazard}`,
          reason.words.map((kind) => `${kind} ${hazard}`),
        );
  },
  subject: (problem, context) =>
    `${context.name(problem.reasons[0]!.thing ?? problem.about[0]!)} must not be touched yet`,
  reason: (reason, context) => `${context.name(reason.by[0]!)} asks for ${listed(reason.words)} first`,
});

// A thing is touched before the precautions of its hazard stand.

import type { Reason } from "../../bench/trace.ts";
import { benchCheck, insertFix, listed, written } from "../bench-check.ts";
import { callAnswer } from "../one-call.ts";
import { precautionsSaid } from "../precautions-said.ts";
import type { BenchContext } from "../check.ts";

export default benchCheck({
  code: "hazard/not-yet",
  title: "A precaution is not in place yet",
  severity: "error",
  why: "This is the line where a hand goes in. What the hazard asks for has to stand before it.",
  source:
    "EN 50110-1 and ISO 14118 (order of isolating, securing, proving); the maker's and the local rules come first",
  fails: `
    tool tester "Two-pole tester" { kind voltage-tester  range 0..1000 V }
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid"
      fastener lid-screws screw "Lid screws" { count 4  joins lid to foot }
      hazard mains electrical danger "Mains" {
        on lid-screws  source mains  voltage 400 V ac
        precaution isolate "Open the isolator."
        precaution lock-out "Lock it, tag it."
        precaution prove-dead "Test all three phases to earth and to each other." with tester
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
    tool tester "Two-pole tester" { kind voltage-tester  range 0..1000 V }
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid"
      fastener lid-screws screw "Lid screws" { count 4  joins lid to foot }
      hazard mains electrical danger "Mains" {
        on lid-screws  source mains  voltage 400 V ac
        precaution isolate "Open the isolator."
        precaution lock-out "Lock it, tag it."
        precaution prove-dead "Test all three phases to earth and to each other." with tester
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
    const lines = missingOf(problem.reasons).flatMap(({ words, by }) => {
      const hazard = written(by[0]!, problem, context);
      return words.map((kind) => hazard && `${kind} ${hazard}`);
    });
    return insertFix(problem, context, `Insert: ${lines.join(", ")}`, lines);
  },
  subject: (problem, context) =>
    `${context.name(problem.reasons[0]!.thing ?? problem.about[0]!)} must not be touched yet`,
  first: ({ reasons }, context) => asks(missingOf(reasons), context),
  answer: callAnswer,
  reason: (reason, context) =>
    `${context.name(reason.by[0]!)} asks for ${precautionsSaid(reason, context.model)} first`,
});

/** Each hazard once: several acts of one line may ask for the same. */
function missingOf(reasons: readonly Reason[]): readonly Reason[] {
  const missing = reasons.filter(({ rule, by }) => /^hazard\/(?:not-yet|lapsed)$/.test(rule) && by.length > 0);
  return missing.filter((one, i) => missing.findIndex(({ by }) => by[0] === one.by[0]) === i);
}

/** Every precaution that is missing stands in the line itself, with its hazard: "Mains and Charge ask for lock-out, Air asks for vent first". */
function asks(missing: readonly Reason[], context: BenchContext): string {
  const byKinds = new Map<string, string[]>();
  for (const reason of missing) {
    const kinds = precautionsSaid(reason, context.model);
    byKinds.set(kinds, [...(byKinds.get(kinds) ?? []), context.name(reason.by[0]!)]);
  }
  return `${[...byKinds].map(([kinds, names]) => `${listed(names)} ${names.length > 1 ? "ask" : "asks"} for ${kinds}`).join("; ")} first`;
}

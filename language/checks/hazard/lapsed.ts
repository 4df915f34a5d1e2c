// A thing is touched after a `restore`, or after a generator was turned, ended the precautions.

import { at } from "../../bench/vector.ts";
import { check } from "../check.ts";
import { benchCheck } from "../bench-check.ts";
import { precautionsSaid } from "../precautions-said.ts";

const ended = benchCheck({
  code: "hazard/lapsed",
  title: "A precaution has lapsed",
  severity: "error",
  why: "A proof is true for the moment it was made: power back, a rotor turned, or a lock off ends it.",
  source: "EN 50110-1; ISO 14118",
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
        isolate mains
        lock-out mains
        prove-dead mains
        restore mains
        undo lid-screws
    #   ^^^^^^^^^^^^^^^ Lid screws must not be touched: isolate, lock-out and prove-dead for Mains ended before this, and must be taken again
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
        restore mains
        isolate mains
        lock-out mains
        prove-dead mains
        undo lid-screws
        remove lid
      }
    }
  `,
  subject: (problem, context) =>
    problem.reasons[0]!.by.length === 0
      ? ""
      : `${context.name(problem.reasons[0]!.thing ?? problem.about[0]!)} must not be touched`,
  reason: (reason, context) =>
    reason.words[0] === "nothing stands"
      ? `nothing stands against ${context.name(reason.thing!)}, so there is nothing to restore`
      : `${precautionsSaid(reason, context.model)} for ${context.name(reason.by[0]!)} ended before this, and must be taken again`,
});

export default check({
  ...ended,
  // Behind the way back it may be meant as a reminder before the power comes: all was taken away there.
  performance({ model, finish }, say) {
    for (const { act, things, before } of finish) {
      if (act.verb !== "restore") continue;
      for (const hazard of model.hazards) {
        if (
          !things.includes(hazard.index) ||
          hazard.precautions.some(({ number }) => at(before.standing, number) !== 0)
        )
          continue;
        say({
          at: act.at,
          severity: "hint",
          says: `Nothing stands against ${hazard.name} any more: the way back has taken it away, so there is nothing to restore`,
        });
      }
    }
  },
});

// A precaution is done, or declared, before one that has to come first.

import { howOf } from "../../bench/how.ts";
import { benchCheck } from "../bench-check.ts";
import { precautionsSaid } from "../precautions-said.ts";

export default benchCheck({
  code: "hazard/order",
  title: "Precautions in the wrong order",
  severity: "error",
  why: "Isolate, lock, let the charge go, and only then prove: a proof before that proves nothing.",
  source: "EN 50110-1 (isolate, secure, prove, earth, screen); ISO 14118",
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
        prove-dead mains
    #   ^^^^^^^^^^^^^^^^ Isolate and lock-out of Mains come before this
        isolate mains
        lock-out mains
        undo lid-screws
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
  subject: () => "",
  reason: (reason, context) => {
    const name = context.name(reason.thing!),
      words = reason.words.slice(1);
    switch (howOf("hazard/order", reason)) {
      case "undeclared":
        return `${name} declares no ${words[0]}`;
      case "declared":
        return `${name} declares ${words[1]} after ${words[0]}, and it belongs before it`;
      case "before":
        return `${precautionsSaid(reason, context.model)} of ${name} ${words.length > 1 ? "come" : "comes"} before this`;
    }
  },
});

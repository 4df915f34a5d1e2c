// An electrical proof, and nothing says what it is made with: neither the precaution nor the act names an instrument.

import { check } from "../check.ts";

export default check({
  code: "hazard/no-tester",
  title: "A proof, and nothing to make it with",
  severity: "question",
  why: "Voltage is not seen. Where no instrument is named, none is laid out in the morning, and the first one at hand is taken or none.",
  source:
    "29 CFR 1910.333(b)(2)(iv)(B): test equipment is used to verify; EN 50110-1, 6.2.4: voltage detectors (both from memory)",
  fails: `
    tool tester "Two-pole tester" { kind voltage-tester  range 0..1000 V }
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid"
      fastener lid-screws screw "Lid screws" { count 4  joins lid to foot }
      hazard mains electrical danger "Mains" {
        on lid  source mains
        precaution lock-out "Open the isolator, lock it."
        precaution prove-dead "Test all phases."
    #   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ Mains: nothing says what prove-dead is done with; write prove-dead … with a voltage tester of the shop
      }
    }
    procedure strip "Strip" for box {
      aim lid off
      step "Open" {
        lock-out mains
        prove-dead mains
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
        on lid  source mains
        precaution lock-out "Open the isolator, lock it."
        precaution prove-dead "Test all phases." with tester
      }
    }
    procedure strip "Strip" for box {
      aim lid off
      step "Open" {
        lock-out mains
        prove-dead mains
        undo lid-screws
        remove lid
      }
    }
  `,
  performance({ model, events }, say) {
    for (const { kind, act, assumed, precautions } of events) {
      if (kind !== "stands" || assumed || act.verb !== "prove-dead" || act.tools.length > 0) continue;
      for (const number of precautions) {
        const precaution = model.precautions[number]!;
        if (precaution.kind !== "prove-dead" || precaution.tools.length > 0) continue;
        say({
          at: precaution.at,
          says: `${model.things[precaution.hazard]!.name}: nothing says what prove-dead is done with; write prove-dead … with a voltage tester of the shop`,
        });
      }
    }
  },
});

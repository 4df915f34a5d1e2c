// A proof that no voltage, pressure or force is left, and nothing says what it is made with: neither the precaution nor the act names an
// instrument. Which proofs ask for one is a field of the table of precautions. A proof by hand or eye is the author's to say: he allows
// the question, and his reason is printed among what the procedure allows.

import { kindIn, precautions } from "../../tables/index.ts";
import { check } from "../check.ts";

export default check({
  code: "hazard/no-tester",
  title: "A proof, and nothing to make it with",
  severity: "question",
  why: "Neither voltage nor what is left of a pressure or a force is seen. Where no instrument is named, none is laid out in the morning, and the first one at hand is taken or none.",
  source:
    "29 CFR 1910.333(b)(2)(iv)(B): test equipment is used to verify; EN 50110-1, 6.2.4: voltage detectors (both from memory); pressure and force: common practice",
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
    for (const { kind, act, assumed, precautions: stand } of events) {
      if (kind !== "stands" || assumed || act.tools.length > 0) continue;
      const means = kindIn(precautions, act.verb)?.provedWith;
      if (means === undefined) continue;
      for (const number of stand) {
        const { kind: proof, hazard, tools, at } = model.precautions[number]!;
        if (proof !== act.verb || tools.length > 0) continue;
        const { name } = model.things[hazard]!;
        say({ at, says: `${name}: nothing says what ${proof} is done with; write ${proof} … with ${means}` });
      }
    }
  },
});

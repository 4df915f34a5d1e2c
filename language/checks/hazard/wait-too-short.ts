// A stored charge that is waited for too shortly, or not at all. A computed time only ever lengthens a wait, and no wait stands for a proof.

import { chargeOf } from "../../bench/placement.ts";
import { requiredWait } from "../../figures/required-wait.ts";
import { si } from "../../quantities/index.ts";
import { check } from "../check.ts";
import { sumLines } from "../sums.ts";

export default check({
  code: "hazard/wait-too-short",
  title: "The wait is shorter than the charge needs",
  severity: "error",
  why: "A capacitor gives no sign. Half of the wait leaves far more than half of the danger.",
  source: "IEC 60204-1 cl. 6.2.4 (60 V), ISO 6469-4 (0.2 J); C +20 %, R +5 % common practice",
  fails: `
    unit drive "Drive" {
      base frame
      part frame "Frame"
      part lid "Lid" { rests on frame }
      part bus capacitor "Capacitors" { rests on frame  behind lid }
      hazard charge electrical danger "Capacitors of the drive" {
        on bus  source capacitor  voltage 560 V dc  capacitance 1200 uF  bleeder 22 kohm
        precaution isolate "Open the isolator."
        precaution lock-out "Lock it." wait 1 min
    #   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ Capacitors of the drive: 1 min is shorter than the 117 s that its charge needs to 0.2 J
        precaution prove-dead behind lid "Test at the capacitors." at most 50 V dc
      }
    }
  `,
  mended: `
    unit drive "Drive" {
      base frame
      part frame "Frame"
      part lid "Lid" { rests on frame }
      part bus capacitor "Capacitors" { rests on frame  behind lid }
      hazard charge electrical danger "Capacitors of the drive" {
        on bus  source capacitor  voltage 560 V dc  capacitance 1200 uF  bleeder 22 kohm
        precaution isolate "Open the isolator."
        precaution lock-out "Lock it." wait 5 min
        precaution prove-dead behind lid "Test at the capacitors." at most 50 V dc
      }
    }
  `,
  model(model, say) {
    for (const hazard of model.hazards) {
      const charge = chargeOf(hazard);
      if (!charge) continue;
      const needed = requiredWait(charge);
      const waits = hazard.precautions.filter((p) => p.wait),
        longest = Math.max(0, ...waits.map((p) => si(p.wait!).low));
      if (needed.seconds === undefined || longest >= needed.seconds) continue;
      const first = waits[0],
        seconds = Math.ceil(needed.seconds);
      say({
        at: first?.at ?? hazard.at,
        says: first
          ? `${hazard.name}: ${first.wait!.written} is shorter than the ${seconds} s that its charge needs ${needed.decidedBy!.name}`
          : `${hazard.name} names no wait, and its charge needs ${seconds} s ${needed.decidedBy!.name}`,
        because: sumLines(
          { name: "wait after isolation", formula: needed.formula, source: needed.source, steps: needed.steps },
          hazard.at,
        ),
      });
    }
  },
});

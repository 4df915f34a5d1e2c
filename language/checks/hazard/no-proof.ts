// An electrical, pressure, spring or rotating hazard whose precautions end in no proof.

import { benchCheck, listed } from "../bench-check.ts";

export default benchCheck({
  code: "hazard/no-proof",
  title: "Nothing proves that the energy is gone",
  severity: "error",
  why: "Electricity, pressure, springs and what turns give no sign. Without a test at the place, the precautions are a hope.",
  source: "EN 50110-1, ISO 14118; 29 CFR 1910.147(d)(6) verification",
  fails: `
    unit box "Box" {
      base foot
      part foot "Foot"
      hazard mains electrical danger "Mains" {
    #        ^^^^^ Mains ends in no proof: prove-dead, or a reading with its limits
        on foot
        source mains
        precaution isolate "Open the isolator, lock it."
      }
    }
  `,
  mended: `
    unit box "Box" {
      base foot
      part foot "Foot"
      hazard mains electrical danger "Mains" {
        on foot
        source mains
        precaution isolate "Open the isolator, lock it."
        precaution prove-dead "Test all phases."
      }
    }
  `,
  subject: () => "",
  severityOf: (problem) => (problem.reasons[0]!.words[0] === "battery" ? "hint" : "error"),
  reason: (reason, context) =>
    `${context.name(reason.thing!)} ends in no proof: ${listed(reason.words.slice(1), "or")}, or a reading with its limits`,
});

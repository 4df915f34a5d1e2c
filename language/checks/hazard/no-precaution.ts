// A hazard without any precaution.

import { benchCheck } from "../bench-check.ts";

export default benchCheck({
  code: "hazard/no-precaution",
  title: "A hazard with nothing against it",
  severity: "error",
  why: "Naming a danger and saying nothing about it leaves the reader alone with it.",
  source: "ANSI Z535.6 (a safety message says how to avoid the hazard)",
  fails: `
    unit box "Box" {
      base foot
      part foot "Foot"
      hazard mains electrical danger "Mains" {
    #        ^^^^^ Mains has no precaution
        on foot
        source mains
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
  reason: (reason, context) => `${context.name(reason.thing!)} has no precaution`,
});

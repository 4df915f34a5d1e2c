// A hazard of which nothing says how badly it hurts.

import { check } from "../check.ts";

export default check({
  code: "hazard/signal-missing",
  title: "A hazard without a signal word",
  severity: "hint",
  why: "The manual prints it as a hazard of no rank, without the colour by which readers tell a burn from an arm lost: danger, warning or caution, by how badly and how likely it hurts.",
  source: "ANSI Z535.6, ISO 3864-2 (signal words)",
  fails: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid" { rests on foot }
      hazard rim sharp "Sharp rim" {
    #        ^^^ Sharp rim has no signal word: say danger, warning or caution
        on lid
        precaution other "Hold it by the handle."
      }
    }
  `,
  mended: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid" { rests on foot }
      hazard rim sharp caution "Sharp rim" {
        on lid
        precaution other "Hold it by the handle."
      }
    }
  `,
  model(model, say) {
    for (const hazard of model.hazards)
      if (hazard.signal === undefined)
        say({ at: hazard.at, says: `${hazard.name} has no signal word: say danger, warning or caution` });
  },
});

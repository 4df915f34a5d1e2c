// A kind of hazard that the unit says it does not have, and that it declares as well.

import { hazardKinds, kindIn } from "../../tables/index.ts";
import { check } from "../check.ts";

export default check({
  code: "hazard/dismissed",
  title: "A hazard both declared and dismissed",
  severity: "warning",
  why: "The manual prints both: here is the danger, and there is none of its kind. Whoever reads the second believes it.",
  source: "common practice",
  fails: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid" { rests on foot }
      no pressure "Open to air."
    # ^^^^^^^^^^^^^^^^^^^^^^^^^^ Pressure is dismissed here, and Compressed air is declared: one of the two is wrong
      hazard air pressure danger "Compressed air" {
        on lid
        precaution vent "Open the cock."
        precaution prove-zero "Read the gauge."
      }
    }
  `,
  mended: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid" { rests on foot }
      hazard air pressure danger "Compressed air" {
        on lid
        precaution vent "Open the cock."
        precaution prove-zero "Read the gauge."
      }
    }
  `,
  model(model, say) {
    for (const [kind, { at }] of model.dismissed) {
      const declared = model.hazards.find((hazard) => hazard.kind === kind && hazard.prefix === "");
      if (!declared) continue;
      const title = kindIn(hazardKinds, kind)?.title ?? kind;
      say({
        at,
        says: `${title} is dismissed here, and ${declared.name} is declared: one of the two is wrong`,
        because: [{ says: `${declared.name} is declared here`, at: declared.at }],
      });
    }
  },
});

// A hazard of a weight that speaks of less mass than a part that it is on is said to have. More is no slip: what falls may be another
// thing than what must not be touched under it. Of another hazard the mass is that of what it comes from: 2 kg of gas in a compressor.

import { massKg } from "../../bench/load.ts";
import { si } from "../../quantities/index.ts";
import { hazardKinds, kindIn } from "../../tables/index.ts";
import { check } from "../check.ts";

/** Masses on a plate are rounded: so much more is no contradiction. Common practice. */
const rounding = 1.05;

export default check({
  code: "figure/load-disagrees",
  title: "The load of a hazard is not that of its parts",
  severity: "warning",
  why: "The crane, the slings and the distance that others keep are chosen by the mass that the hazard names. If the part on the hook is given another one, one of the two figures is wrong, and the load may be the heavier one.",
  source: "arithmetic",
  fails: `
    unit winch "Winch" {
      base frame
      part frame "Frame" { mass 180 kg }
      part drum "Drum" { mass 148 kg  rests on frame }
      hazard load overhead danger "Drum on the crane" {
    #        ^^^^ Drum on the crane speaks of 48 kg, and Drum weighs 148 kg: look at both
        on drum  mass 48 kg
        precaution barrier "Rope the place off."  back "Clear the rope away."
      }
    }
  `,
  mended: `
    unit winch "Winch" {
      base frame
      part frame "Frame" { mass 180 kg }
      part drum "Drum" { mass 148 kg  rests on frame }
      hazard load overhead danger "Drum on the crane" {
        on drum  mass 148 kg
        precaution barrier "Rope the place off."  back "Clear the rope away."
      }
    }
  `,
  model(model, say) {
    for (const hazard of model.hazards) {
      const mass = hazard.figures.get("mass");
      if (mass?.dimension !== "mass" || kindIn(hazardKinds, hazard.kind)?.isWeight !== true) continue;
      for (const thing of hazard.on) {
        const part = model.things[thing];
        if (part?.is !== "part" || (massKg(part) ?? 0) <= si(mass).high * rounding) continue;
        say({
          at: hazard.at,
          says: `${hazard.name} speaks of ${mass.written}, and ${part.name} weighs ${part.mass!.written}: look at both`,
          because: [{ says: `the mass of ${part.name} is given here`, at: part.at }],
        });
        break;
      }
    }
  },
});

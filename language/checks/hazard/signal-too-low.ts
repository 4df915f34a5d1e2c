// A signal word that makes less of a hazard than it is.

import { fromSource } from "../../findings/finding.ts";
import { voltageClass } from "../../figures/voltage-limits.ts";
import { si } from "../../quantities/index.ts";
import { check } from "../check.ts";

/** Pressure over that of the air around from which equipment counts as under pressure, Pa. Source: Directive 2014/68/EU, Article 1 (from memory). */
const PRESSURE_EQUIPMENT = 0.5e5;

export default check({
  code: "hazard/signal-too-low",
  title: "The signal word is too low",
  severity: "warning",
  why: "Notice speaks of damage to the machine only, caution of minor injury. What can maim or kill is a warning or a danger.",
  source: "ANSI Z535.6; ISO 3864-2; Directive 2014/68/EU, Article 1 (its limit from memory)",
  fails: `
    unit box "Box" {
      base foot
      part foot "Foot"
      hazard mains electrical caution "Mains" {
    #        ^^^^^ Mains: 400 V ac can kill, and caution speaks of minor injury
        on foot  source mains  voltage 400 V ac
        precaution isolate "Open the isolator, lock it."
        precaution prove-dead "Test all phases."
      }
    }
  `,
  mended: `
    unit box "Box" {
      base foot
      part foot "Foot"
      hazard mains electrical danger "Mains" {
        on foot  source mains  voltage 400 V ac
        precaution isolate "Open the isolator, lock it."
        precaution prove-dead "Test all phases."
      }
    }
  `,
  model(model, say) {
    for (const hazard of model.hazards) {
      if (hazard.signal === "notice")
        say({
          at: hazard.at,
          says: `${hazard.name}: notice is for damage to the machine only, and a hazard can hurt someone`,
        });
      if (hazard.signal !== "caution") continue;
      if (hazard.kind === "overhead")
        say({
          at: hazard.at,
          says: `${hazard.name}: a load overhead can kill, and caution speaks of minor injury`,
          because: [fromSource("ANSI Z535.6, the word goes by the worst injury that could be")],
        });
      const pressure = hazard.figures.get("pressure");
      if (hazard.kind === "pressure" && pressure && si(pressure).high > PRESSURE_EQUIPMENT)
        say({
          at: hazard.at,
          severity: "question",
          says: `${hazard.name}: ${pressure.written} can throw parts and cut with its jet, and caution speaks of minor injury: is it no more?`,
          because: [
            fromSource("Directive 2014/68/EU counts pressure equipment from 0.5 bar over the air around; ANSI Z535.6"),
          ],
        });
      const voltage = hazard.figures.get("voltage");
      if (hazard.kind !== "electrical" || !voltage) continue;
      if (voltageClass(si(voltage).high, voltage.unit === "V ac" ? "ac" : "dc") === "A") continue;
      say({
        at: hazard.at,
        says: `${hazard.name}: ${voltage.written} can kill, and caution speaks of minor injury`,
        because: [fromSource("ISO 6469 voltage classes; ANSI Z535.6")],
      });
    }
  },
});

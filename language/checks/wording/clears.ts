// Words that give an assurance beside a hazard. Nobody can promise that on paper.

import type { Span } from "../../findings/finding.ts";
import { check } from "../check.ts";

/** Words that say that a danger is gone; `dead` and `discharged` as a state only. */
const clearing =
  /\b(?:made safe|is safe|are safe|now safe|safe to|all clear|certified|complies|compliant|passed|(?:is|are|now) (?:dead|discharged)|no danger|harmless|OK)\b/i;

export default check({
  code: "wording/clears",
  title: "A word that clears a danger",
  severity: "warning",
  why: "Text beside a hazard says what to do and what to read off, never that it is safe: the reader believes it on the day when it is not so.",
  source: "IEC/IEEE 82079-1; ANSI Z535.6",
  fails: `
    unit box "Box" {
      base foot
      part foot "Foot"
      hazard mains electrical danger "Mains" {
        on foot  source mains
        precaution isolate "Open the isolator: the box is now safe."
    #   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ "now safe" clears a danger: say what to do, or what to read off
        precaution prove-dead "Test all phases."
      }
    }
  `,
  mended: `
    unit box "Box" {
      base foot
      part foot "Foot"
      hazard mains electrical danger "Mains" {
        on foot  source mains
        precaution isolate "Open the isolator, lock it."
        precaution prove-dead "Test all phases."
      }
    }
  `,
  *model(model) {
    const texts: { text: string; at: Span }[] = [];
    for (const hazard of model.hazards) {
      texts.push({ text: `${hazard.name} ${hazard.about}`, at: hazard.at });
      for (const p of hazard.precautions) texts.push({ text: `${p.text} ${p.back}`, at: p.at });
    }
    for (const { why, at } of model.dismissed.values()) texts.push({ text: why, at });
    for (const thing of model.things)
      for (const message of thing.messages) texts.push({ text: message.text, at: message.at });
    for (const { text, at } of texts) {
      const found = clearing.exec(text);
      if (found) yield { at, says: `"${found[0]}" clears a danger: say what to do, or what to read off` };
    }
  },
});

// Words that give an assurance beside a hazard. Nobody can promise that on paper.

import { check } from "../check.ts";
import { clearingWord } from "../clearing-words.ts";
import { textsBesideHazards } from "../texts-beside.ts";

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
    #                      ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ "safe" clears a danger: say what to do, or what to read off
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
  file(file, say) {
    for (const { text, start, end } of textsBesideHazards(file)) {
      const word = clearingWord(text);
      if (word === undefined) continue;
      say({
        at: { file: file.path, start, end },
        says: `"${word}" clears a danger: say what to do, or what to read off`,
      });
    }
  },
});

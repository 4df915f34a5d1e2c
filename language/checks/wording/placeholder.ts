// What is left over from drafting, in a text that will be printed.

import { check } from "../check.ts";
import { allTexts } from "../texts-beside.ts";

/** `XXX` alone: in a part number it may be a number's own. */
const leftOver = /\b(?:TODO|TBD|TBC|FIXME)\b|\?{3,}|(?<![\w-])X{3,}(?![\w-])/;

export default check({
  code: "wording/placeholder",
  title: "A gap left from drafting",
  severity: "warning",
  why: "It is printed as it stands, and the reader finds a gap where the instruction was to be.",
  source: "common practice",
  fails: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid" { rests on foot }
    }
    procedure strip "Strip" for box {
      aim lid off
      step "Lid off" {
        remove lid "Lift it by TODO."
    #              ^^^^^^^^^^^^^^^^^^ "TODO" is left from drafting: write what is meant, or take it out
      }
    }
  `,
  mended: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid" { rests on foot }
    }
    procedure strip "Strip" for box {
      aim lid off
      step "Lid off" {
        remove lid "Lift it by its rim."
      }
    }
  `,
  file(file, say) {
    if (!leftOver.test(file.text)) return;
    for (const { text, start, end } of allTexts(file)) {
      const [word] = leftOver.exec(text) ?? [];
      if (word === undefined) continue;
      say({
        at: { file: file.path, start, end },
        says: `"${word}" is left from drafting: write what is meant, or take it out`,
      });
    }
  },
});

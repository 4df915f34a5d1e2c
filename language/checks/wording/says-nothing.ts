// A message beside a danger that tells the reader to take care, and nothing else.

import { check } from "../check.ts";
import { textsBesideHazards } from "../texts-beside.ts";

const empty =
  /^(?:please )?(?:(?:be|stay) (?:very )?(?:careful|cautious|alert|aware)|take (?:great )?care|(?:take|have) caution|careful|caution|attention|danger|dangerous|warning|beware|watch out|look out|mind out|danger of (?:death|life|injury))[.! ]*$/i;

export default check({
  code: "wording/says-nothing",
  title: "A warning that says nothing",
  severity: "question",
  why: "A safety message says what the danger is and what is done against it. To be careful is what everybody is already.",
  source: "ANSI Z535.6 (a safety message says how to avoid the hazard)",
  fails: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid" { rests on foot }
    }
    procedure strip "Strip" for box {
      aim lid off
      step "Lid off" {
        warning "Be careful!"
    #           ^^^^^^^^^^^^^ This says neither what the danger is nor what to do against it
        remove lid
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
        warning "The lid falls shut: prop it open before you reach in."
        remove lid
      }
    }
  `,
  file(file, say) {
    for (const { text, start, end } of textsBesideHazards(file)) {
      if (!empty.test(text.trim())) continue;
      say({
        at: { file: file.path, start, end },
        says: "This says neither what the danger is nor what to do against it",
      });
    }
  },
});

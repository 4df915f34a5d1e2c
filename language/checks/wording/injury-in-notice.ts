// A message for damage alone that speaks of an injury.

import type { Item } from "../../syntax/index.ts";
import { check } from "../check.ts";
import { itemsWith } from "../items-of.ts";
import { textsOf } from "../texts-beside.ts";

/** Words for a hurt person that no damage to a machine is told with; a denial in the same clause is left alone. */
const injury =
  /\b(?:injur(?:y|ies|e[sd]?|ing)|electric shock|kills? (?:you|people|somebody|a person)|fatal|death|maim\w*|(?:cuts?|crush(?:es)?|traps?|burns?|pinch(?:es)?|hits?|hurts?) (?:your|the|a|somebody'?s?) (?:hands?|fingers?|skin|eyes?|arms?|feet|foot|face|head)|lose (?:a|your) (?:hand|finger|eye)s?)\b/i;

export default check({
  code: "wording/injury-in-notice",
  title: "An injury under a notice",
  severity: "warning",
  why: "A notice is for damage to things: it has no sign, and readers pass over it. What hurts a person is a caution, a warning or a danger, by how badly and how likely.",
  source: "ANSI Z535.6 (signal words)",
  fails: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid" { rests on foot }
    }
    procedure strip "Strip" for box {
      aim lid off
      step "Lid off" {
        notice "The lid falls shut and crushes the hand."
    #          ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ "crushes the hand" is an injury: a notice is for damage only
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
        warning "The lid falls shut and crushes the hand: prop it."
        remove lid
      }
    }
  `,
  file(file, say) {
    const { tokens } = file.tree.scan;
    const isNotice = ({ arguments: given }: Item): boolean =>
      given.some(({ first }) => tokens[first]!.text === "notice" && tokens[first]!.text === tokens[first]!.image);
    for (const item of [
      ...itemsWith(file, "notice"),
      ...itemsWith(file, "warn").filter(isNotice),
      ...itemsWith(file, "hazard").filter(isNotice),
    ]) {
      for (const { text, start, end } of textsOf(file, item)) {
        const match = injury.exec(text);
        if (match && !/\b(?:no|not|never|nobody)\b[^.:;]*$/i.test(text.slice(0, match.index)))
          say({
            at: { file: file.path, start, end },
            says: `"${match[0]}" is an injury: a notice is for damage only`,
          });
      }
    }
  },
});

// One name twice in one list: it means nothing, and mostly another name was meant.

import { check } from "../check.ts";
import { itemsOf } from "../items-of.ts";

export default check({
  code: "names/listed-twice",
  title: "The same name twice in one list",
  severity: "warning",
  why: "The second one does nothing. Where it was written for another name, that thing is left in, unmarked or uncleaned, and the line looks as if it were not.",
  source: "common practice",
  fails: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid" { rests on foot }
      part hood "Hood" { rests on foot }
    }
    procedure look "Look" for box {
      aim none
      step "Clean" {
        clean lid, lid
    #              ^^^ lid stands twice in this list: leave one out, or write the name that was meant
      }
    }
  `,
  mended: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid" { rests on foot }
      part hood "Hood" { rests on foot }
    }
    procedure look "Look" for box {
      aim none
      step "Clean" {
        clean lid, hood
      }
    }
  `,
  file(file, say) {
    const { tokens } = file.tree.scan,
      items = itemsOf(file);
    for (let at = 0; at < items.length; at++) {
      const item = items[at]!,
        given = item.arguments;
      // A path may end where it began.
      if (given.length < 2 || !item.entry || item.broken || item.entry.word === "path") continue;
      // What is parted by commas is one list.
      let from = 0;
      for (let i = 1; i < given.length; i++) {
        const { first, last } = given[i]!;
        if (tokens[first - 1]!.text !== ",") {
          from = i;
          continue;
        }
        const { text, startOffset, endOffset } = tokens[first]!;
        // Figures may stand twice, and so may the places of a pattern.
        if (first !== last || !/^\p{L}/u.test(text)) continue;
        for (let k = from; k < i; k++) {
          if (given[k]!.first !== given[k]!.last || tokens[given[k]!.first]!.text !== text) continue;
          say({
            at: { file: file.path, start: startOffset, end: endOffset! + 1 },
            says: `${text} stands twice in this list: leave one out, or write the name that was meant`,
          });
          break;
        }
      }
    }
  },
});

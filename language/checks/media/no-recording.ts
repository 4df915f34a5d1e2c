// A part of a recording that nobody names.

import { headSpan } from "../../model/cursor.ts";
import { eachItem, type Item } from "../../syntax/index.ts";
import { check } from "../check.ts";
import { holdsWord } from "../items-of.ts";

const namesFile = (item: Item): boolean => item.entry?.word === "video" && item.arguments[0]?.slot === "string";

export default check({
  code: "media/no-recording",
  title: "A part of a recording that is not named",
  severity: "warning",
  why: "The line prints two times of a recording, and nobody can tell which one to look into.",
  source: "common practice",
  fails: `
    unit box "Box" {
      base foot
      part foot "Foot"
    }
    procedure look "Look" for box {
      aim none
      step "Look" {
        work foot "Wipe it."
        video from 12:04 to 12:40
    #   ^^^^^^^^^^^^^^^^^^^^^^^^^ no recording is named: write video "FILE" in the procedure, or the file between video and from
      }
    }
  `,
  mended: `
    #- main.strip
    unit box "Box" {
      base foot
      part foot "Foot"
    }
    procedure look "Look" for box {
      aim none
      video "look.mp4"
      step "Look" {
        work foot "Wipe it."
        video from 12:04 to 12:40
      }
    }
    #- look.mp4
  `,
  file(file, say) {
    if (!holdsWord(file, "video")) return;
    for (const procedure of file.tree.items) {
      const own = procedure.block?.items ?? [];
      // One that is half-written may be the name of it.
      if (procedure.entry?.word !== "procedure" || own.some(({ entry }) => entry?.word === "video")) continue;
      const parts: Item[] = [];
      eachItem(own, (item) => {
        if (item.entry?.word === "video" && !item.broken && !namesFile(item)) parts.push(item);
      });
      for (const item of parts)
        say({
          at: headSpan({ item, source: file }),
          says: `no recording is named: write video "FILE" in the procedure, or the file between video and from`,
        });
    }
  },
});

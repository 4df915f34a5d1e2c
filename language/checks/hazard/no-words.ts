// A precaution, a message or a reason for a danger that is not there, with nothing between its quotes.

import { signals } from "../../tables/index.ts";
import { check } from "../check.ts";
import { itemsWith } from "../items-of.ts";
import { textsOf } from "../texts-beside.ts";

const spoken: readonly string[] = ["no", "precaution", "warn", ...Object.keys(signals)];

export default check({
  code: "hazard/no-words",
  title: "A text about a danger with nothing in it",
  severity: "error",
  why: "The manual prints the line without what is to be done, and a kind of danger that is dismissed without a reason counts as answered for.",
  source: "common practice",
  fails: `
    unit box "Box" {
      base foot
      no pressure ""
    #             ^^ This text is empty: say what the reader has to know, or take the line out
      part foot "Foot"
    }
  `,
  mended: `
    unit box "Box" {
      base foot
      no pressure "Open to air."
      part foot "Foot"
    }
  `,
  file(file, say) {
    for (const word of spoken)
      for (const item of itemsWith(file, word))
        for (const { text, start, end } of textsOf(file, item))
          if (text.trim() === "")
            say({
              at: { file: file.path, start, end },
              says: "This text is empty: say what the reader has to know, or take the line out",
            });
  },
});

// A precaution, a message or a reason for a danger that is not there, with nothing between its quotes.

import { signals } from "../../tables/index.ts";
import { check } from "../check.ts";
import { allTexts } from "../texts-beside.ts";

const spoken: ReadonlySet<string> = new Set(["no", "precaution", "warn", ...Object.keys(signals)]);

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
  *file(file) {
    for (const { text, word, start, end } of allTexts(file))
      if (spoken.has(word) && text.trim() === "")
        yield {
          at: { file: file.path, start, end },
          says: "This text is empty: say what the reader has to know, or take the line out",
        };
  },
});

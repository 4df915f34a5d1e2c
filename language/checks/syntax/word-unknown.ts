// Found by the parser: no word of that name.

import { check } from "../check.ts";

export default check({
  code: "syntax/word-unknown",
  title: "A word that the language does not have",
  severity: "error",
  why: "The line would be left out of what is performed and printed.",
  fails: `
    part lid "Lid" {
      rests on frame
      wieght 2 kg
    # ^^^^^^ Unknown word wieght: every line begins with a word of the language, such as mass, fits, rests, between, behind or renew
    }
  `,
  mended: `
    part lid "Lid" { rests on frame  mass 2 kg }
  `,
});

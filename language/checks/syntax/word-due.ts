// Found by the parser: a figure, a text or a sign stands where a word is due.

import { check } from "../check.ts";

export default check({
  code: "syntax/word-due",
  title: "A line that does not begin with a word",
  severity: "error",
  why: "Every line begins with what it is about: a part, a fastener, an action.",
  fails: `
    part lid "Lid" {
      2 kg
    # ^ A word of the language is due here, not 2: a figure stands behind its word, as in mass 2 kg or count 4; steps and acts are numbered in print
      rests on frame
    }
  `,
  mended: `
    part lid "Lid" {
      mass 2 kg
      rests on frame
    }
  `,
});

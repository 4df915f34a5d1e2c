// Found by the parser: a word's arguments end too soon.

import { check } from "../check.ts";

export default check({
  code: "syntax/argument-missing",
  title: "A word without what it needs",
  severity: "error",
  why: "A line without its figure or its name says nothing to the hand that reads it.",
  fails: `
    part lid "Lid" { rests on frame  mass }
    #                                    ^ mass needs a figure, as in: mass 3.1 kg
  `,
  mended: `
    part lid "Lid" { rests on frame  mass 2 kg }
  `,
});

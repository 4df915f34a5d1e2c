// Found while braces are paired by the indentation: one is missing here.

import { check } from "../check.ts";

export default check({
  code: "syntax/brace-missing",
  title: "A brace left out",
  severity: "error",
  why: "A block that ends in the wrong place moves the lines after it into another part.",
  fails: `
    part lid "Lid" {
      rests on frame
      mass 2 kg
    #          ^ The block opened in line 4 ends here: } is missing
    part card "Card" { rests on frame }
  `,
  mended: `
    part lid "Lid" {
      rests on frame
      mass 2 kg
    }
    part card "Card" { rests on frame }
  `,
});

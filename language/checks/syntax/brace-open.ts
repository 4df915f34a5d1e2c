// Found while braces are paired: the file ends inside a block.

import { check } from "../check.ts";

export default check({
  code: "syntax/brace-open",
  title: "A block that is never closed",
  severity: "error",
  why: "The rest of the file would belong to it.",
  fails: `
    unit box "Box" {
      base foot
      part foot "Foot"
    #                 ^ A block is not closed: } is missing
  `,
  mended: `
    unit box "Box" {
      base foot
      part foot "Foot"
    }
  `,
});

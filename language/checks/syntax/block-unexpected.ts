// Found by the parser: a word that takes no block has one.

import { check } from "../check.ts";

export default check({
  code: "syntax/block-unexpected",
  title: "A block where none can be",
  severity: "error",
  why: "What stands in a block that nothing holds would be read by nobody.",
  fails: `
    part lid "Lid" { rests on frame  mass 2 kg { about "Cast." } }
    #                                          ^ mass takes no block: what belongs to it stands behind it on its line, as in mass 3.1 kg
  `,
  mended: `
    part lid "Lid" { rests on frame  mass 2 kg  about "Cast." }
  `,
});

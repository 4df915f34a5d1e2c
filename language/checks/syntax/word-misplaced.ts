// Found by the parser: the word stands in a block that cannot hold it.

import { check } from "../check.ts";

export default check({
  code: "syntax/word-misplaced",
  title: "A word in the wrong place",
  severity: "error",
  why: "The word is known, but not here: its line would belong to something that cannot hold it.",
  fails: `
    part lid "Lid" {
      rests on frame
      torque 9 N·m
    # ^^^^^^ torque cannot stand in a part: it stands in a fastener
    }
  `,
  mended: `
    part lid "Lid" { rests on frame  mass 9 kg }
  `,
});

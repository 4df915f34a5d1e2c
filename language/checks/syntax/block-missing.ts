// Found by the parser: a word that holds others has no braces.

import { check } from "../check.ts";

export default check({
  code: "syntax/block-missing",
  title: "A word without its block",
  severity: "error",
  why: "A unit or a step without a block holds nothing, and what was meant to be in it belongs to something else.",
  fails: `
    unit box "Box"
    #             ^ unit needs a block { }
  `,
  mended: `
    unit box "Box" {
      base foot
      part foot "Foot"
    }
  `,
});

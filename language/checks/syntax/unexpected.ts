// Found by the parser: the arguments of a word go on where they should end.

import { check } from "../check.ts";

export default check({
  code: "syntax/unexpected",
  title: "Something that does not belong here",
  severity: "error",
  why: "What a line says beyond its word cannot be performed, so it would be left out in silence.",
  fails: `
    part lid "Lid" { rests on frame  mass 2 kg 3 kg }
    #                                          ^ 3 is out of place after kg: whatever else is said begins with a word, such as mass, fits, rests, between, behind or renew
  `,
  mended: `
    part lid "Lid" { rests on frame  mass 2 kg }
  `,
});

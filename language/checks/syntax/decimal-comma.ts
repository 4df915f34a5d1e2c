// Found by the parser: a figure goes on after a comma.

import { check } from "../check.ts";

export default check({
  code: "syntax/decimal-comma",
  title: "A comma in a figure",
  severity: "error",
  why: "1,5 is one and a half to one reader and two figures to the next. Figures have a decimal point here.",
  fails: `
    part lid "Lid" { rests on frame  mass 2,5 kg }
    #                                      ^ A decimal point is due here, not a comma
  `,
  mended: `
    part lid "Lid" { rests on frame  mass 2.5 kg }
  `,
});

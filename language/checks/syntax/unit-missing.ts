// Found by the parser: a figure that needs a unit stands alone.

import { check } from "../check.ts";

export default check({
  code: "syntax/unit-missing",
  title: "A figure without its unit",
  severity: "error",
  why: "A bare 24 is N·m to one hand and lbf·ft to the next.",
  fails: `
    part lid "Lid" { rests on frame  mass 11 }
    #                                     ^^ 11 has no unit: mass takes g, kg, lb or oz
  `,
  mended: `
    part lid "Lid" { rests on frame  mass 11 kg }
  `,
});

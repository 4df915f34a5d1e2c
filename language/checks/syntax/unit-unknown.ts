// Found by the parser: no unit of that name for this figure.

import { check } from "../check.ts";

export default check({
  code: "syntax/unit-unknown",
  title: "A unit that is not known here",
  severity: "error",
  why: "A unit that the tool cannot read is one that it cannot check.",
  fails: `
    part lid "Lid" { rests on frame  mass 11 stone }
    #                                        ^^^^^ stone is no unit: mass takes g, kg, lb or oz
  `,
  mended: `
    part lid "Lid" { rests on frame  mass 70 kg }
  `,
});

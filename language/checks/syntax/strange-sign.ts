// Found by the scanner: a sign outside texts that the language does not know.

import { check } from "../check.ts";

export default check({
  code: "syntax/strange-sign",
  title: "A sign that has no meaning here",
  severity: "error",
  why: "A sign that nobody reads may hide what was meant.",
  fails: `
    part lid "Lid" { rests on frame  mass 2 kg; }
    #                                         ^ ";" has no meaning here
  `,
  mended: `
    part lid "Lid" { rests on frame  mass 2 kg }
  `,
});

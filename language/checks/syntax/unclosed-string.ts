// Found by the scanner: the line ends inside a text.

import { check } from "../check.ts";

export default check({
  code: "syntax/unclosed-string",
  title: "A text without its closing quote",
  severity: "error",
  why: "Everything up to the end of the line would be printed as its name.",
  fails: `
    part lid "Lid { rests on frame }
    #        ^^^^ This text has no closing quote
  `,
  mended: `
    part lid "Lid" { rests on frame }
  `,
});

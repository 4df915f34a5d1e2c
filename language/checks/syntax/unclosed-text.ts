// Found by the scanner: the file ends inside a text block.

import { check } from "../check.ts";

export default check({
  code: "syntax/unclosed-text",
  title: "A text block without its end",
  severity: "error",
  why: "Everything up to the end of the file would be printed as its text.",
  fails: `
    role fitter """Fitter, with a ticket for lifting
    #           ^^^ This text block has no closing """
  `,
  mended: `
    role fitter """Fitter, with a ticket for lifting"""
  `,
});

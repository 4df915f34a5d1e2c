// Found by the scanner: typographic quotes stand where straight ones are due.

import { check } from "../check.ts";

export default check({
  code: "syntax/curly-quote",
  title: "Curly quotes around a text",
  severity: "error",
  why: "A word processor turns quotes; a text that is not closed swallows the lines after it.",
  fails: `
    part lid “Lid” { rests on frame }
    #        ^^^^^ Texts stand in straight quotes: "…"
  `,
  mended: `
    part lid "Lid" { rests on frame }
  `,
});

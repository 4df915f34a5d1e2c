// Found before anything is read: a byte of value 0, or half a character.

import { check } from "../check.ts";

export default check({
  code: "syntax/not-text",
  title: "A file that is no text",
  severity: "error",
  why: "A picture or a file of another program cannot be performed.",
  fails: `
    # Made from the drawing \u0000
    #                       ^ This is no text file: it holds a byte of value 0
    part lid "Lid" { rests on frame }
  `,
  mended: `
    # Made from the drawing
    part lid "Lid" { rests on frame }
  `,
});

// Found while braces are paired: lines of a block stand there, and its end, and nothing opens it.

import { check } from "../check.ts";

export default check({
  code: "syntax/head-missing",
  title: "A block that no line opens",
  severity: "error",
  why: "What its lines say is said of nothing: nobody can tell which screws, which hazard or which step they belong to.",
  fails: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid"
        count 4
    #   ^^^^^ No line opens the block that begins here: a line is missing, as fastener screws "Screws" {
        joins lid to foot
      }
    }
  `,
  mended: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid"
      fastener lid-screws screw "Lid screws" {
        count 4
        joins lid to foot
      }
    }
  `,
});

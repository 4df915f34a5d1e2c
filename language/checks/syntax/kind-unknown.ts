// Found by the parser: no kind of that name.

import { check } from "../check.ts";

export default check({
  code: "syntax/kind-unknown",
  title: "A kind that is not in the table",
  severity: "error",
  why: "The kind says how a thing is undone, what it uses up and whether it goes back: it has to be one of those.",
  fails: `
    fastener lid-screws cap-screw "Lid screws" { count 4  joins lid to frame }
    #                   ^^^^^^^^^ cap-screw is no kind of fastener: here it is called screw (it is turned by its head into a thread; with a nut behind it, write bolt)
    part lid "Lid"
  `,
  mended: `
    fastener lid-screws screw "Lid screws" { count 4  joins lid to frame }
    part lid "Lid"
  `,
});

// Found by the parser: all, none, rest, each, on, to, tray and bag are no names.

import { check } from "../check.ts";

export default check({
  code: "syntax/name-reserved",
  title: "A word that cannot be a name",
  severity: "error",
  why: "A few small words join others in a line, so a part of that name could not be told from them.",
  fails: `
    part rest "Arm rest" { rests on frame }
    #    ^^^^ rest cannot be a name, since it is a word of the language
  `,
  mended: `
    part arm-rest "Arm rest" { rests on frame }
  `,
});

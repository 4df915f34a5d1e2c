// Found before anything is read: the file is larger than any procedure.

import { check } from "../check.ts";

export default check({
  code: "syntax/too-large",
  title: "A file that is too large",
  severity: "error",
  why: "No procedure has millions of lines: something else was saved under this name.",
  fails: `
    #... 8000001 more
    #< This file is too large: 8 million characters, and at most 8 million are read
  `,
  mended: `
    unit pump "Pump" { }
  `,
});

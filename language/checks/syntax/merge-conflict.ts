// Found by the scanner: the marker lines of a version control system.

import { check } from "../check.ts";

export default check({
  code: "syntax/merge-conflict",
  title: "A merge conflict left in the file",
  severity: "error",
  why: "Two versions of the same lines stand one after the other; nobody has said which one holds.",
  fails: `
    unit box "Box" {
      base foot
      part foot "Foot" {
    <<<<<<< mine
    #<^^^^^^^^^^^ A merge conflict was left here: keep the lines that are right and delete the marker lines
        mass 2 kg
    =======
        mass 3 kg
    >>>>>>> theirs
      }
    }
  `,
  mended: `
    unit box "Box" {
      base foot
      part foot "Foot" {
        mass 3 kg
      }
    }
  `,
});

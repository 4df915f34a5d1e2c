// Found while items are read: a line that goes on, and nothing above it that it could go on from.

import { check } from "../check.ts";

export default check({
  code: "syntax/line-missing",
  title: "A line that goes on from none",
  severity: "error",
  why: "What it says belongs to an act or a declaration that is not there: a limit without its reading, a text without its precaution.",
  fails: `
    unit box "Box" {
      base foot
      part foot "Foot"
    }
    procedure look "Look" for box {
      aim none
      step "Look" {
        clean foot
          else renew foot
    #     ^^^^ else goes on from a line above it that begins with measure, inspect, test or set, and none stands there
      }
    }
  `,
  mended: `
    unit box "Box" {
      base foot
      part foot "Foot"
    }
    procedure look "Look" for box {
      aim none
      step "Look" {
        clean foot
        inspect face on foot "Face whole"
          else renew foot
      }
    }
  `,
});

// A picture or recording that is not there.

import { check } from "../check.ts";
import { mediaIn } from "../media-said.ts";

export default check({
  code: "media/missing",
  title: "A picture that is not there",
  severity: "warning",
  why: "The manual goes out with a gap where the reader needed to see. A recording is large and often kept elsewhere, so a missing one is a hint.",
  source: "common practice",
  fails: `
    unit box "Box" {
      base foot
      part foot "Foot"
    }
    procedure look "Look" for box {
      aim none
      step "Look" {
        photo "photos/lost.jpg" "Foot from the left"
    #         ^^^^^^^^^^^^^^^^^ photos/lost.jpg is not there: put the picture in its place, or take the line out
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
        note "Look at the foot from the left."
      }
    }
  `,
  file(file, say, { world }) {
    for (const { written, what, path, inside, at } of mediaIn(file, world)) {
      if (inside && !world.exists(path))
        say({
          at,
          says: `${written} is not there: put the ${what} in its place, or take the line out`,
          ...(what === "recording" ? { severity: "hint" as const } : {}),
        });
    }
  },
});

// A picture or recording from outside the project.

import { check } from "../check.ts";
import { mediaIn } from "../media-said.ts";

export default check({
  code: "media/outside-folder",
  title: "A picture from outside the project",
  severity: "error",
  why: "What lies elsewhere is not kept with the text: it changes or goes without anybody being told, and it is not put into the manual.",
  source: "common practice",
  fails: `
    unit box "Box" {
      base foot
      part foot "Foot"
    }
    procedure look "Look" for box {
      aim none
      step "Look" {
        photo "http://pictures.example/foot.jpg" "Foot from the left"
    #         ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ http://pictures.example/foot.jpg lies outside the project: copy the picture into its folder
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
    for (const { written, what, inside, at } of mediaIn(file, world)) {
      if (!inside) say({ at, says: `${written} lies outside the project: copy the ${what} into its folder` });
    }
  },
});

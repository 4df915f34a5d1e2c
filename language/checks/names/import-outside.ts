// A file that is used and lies outside the project.

import { check } from "../check.ts";

export default check({
  code: "names/import-outside",
  title: "A file from outside the project",
  severity: "error",
  why: "What lies outside the project's folder is not checked in with it: on another machine it is missing or another one. It is not read.",
  source: "common practice",
  fails: `
    use "../elsewhere/shop.strip"
    #   ^^^^^^^^^^^^^^^^^^^^^^^^^ "../elsewhere/shop.strip" cannot be used: it lies outside the project
    unit box "Box" {
      base foot
      part foot "Foot"
    }
  `,
  mended: `
    unit box "Box" {
      base foot
      part foot "Foot"
    }
  `,
  file(file, say) {
    for (const { at, problem, says } of file.uses) {
      if (problem === "outside") say({ at, says: `${file.text.slice(at.start, at.end)} cannot be used: ${says}` });
    }
  },
});

// A file that is used and cannot be read.

import { check } from "../check.ts";

export default check({
  code: "names/import-missing",
  title: "A file that is used and is not there",
  severity: "error",
  why: "All that the file declares is missing too: tools, consumables, types, whole units.",
  source: "common practice",
  fails: `
    use "shop.strip"
    #   ^^^^^^^^^^^^ "shop.strip" cannot be used: there is no such file
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
      if (problem === "missing" || problem === "unreadable")
        say({ at, says: `${file.text.slice(at.start, at.end)} cannot be used: ${says}` });
    }
  },
});

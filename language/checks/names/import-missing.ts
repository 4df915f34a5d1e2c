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
    #   ^^^^^^^^^^^^ "shop.strip" cannot be used: there is no such file, seen from the folder of this one: mend the name, or put it there
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
      const written = file.text.slice(at.start, at.end);
      if (problem === "unreadable") say({ at, says: `${written} cannot be used: ${says}` });
      if (problem !== "missing") continue;
      const mend = /[*?]/.test(written) ? "name each file in a line of its own" : "mend the name, or put it there";
      say({ at, says: `${written} cannot be used: ${says}, seen from the folder of this one: ${mend}` });
    }
  },
});

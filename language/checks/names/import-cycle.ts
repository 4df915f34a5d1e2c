// Files that use each other in a ring. Each still sees what the others declare, so it is no error.

import { check } from "../check.ts";

export default check({
  code: "names/import-cycle",
  title: "Files that use each other in a ring",
  severity: "warning",
  why: "Each file sees the others all the same, but none of them can be taken over alone: move what both need into a file of its own.",
  source: "common practice",
  fails: `
use "shop.strip"
#   ^^^^^^^^^^^^ main.strip uses shop.strip uses main.strip: the files go round in a ring
unit box "Box" {
  base foot
  part foot "Foot"
}
#- shop.strip
use "main.strip"
tool vice "Vice" { kind vice }
`,
  mended: `
use "shop.strip"
unit box "Box" {
  base foot
  part foot "Foot"
}
#- shop.strip
tool vice "Vice" { kind vice }
`,
  file(file, say) {
    for (const { at, problem, path, ring } of file.uses) {
      // Every file of the ring has the ring; the first by name speaks for it.
      if (problem !== "cycle" || ring.some((other) => other < file.path) || path !== (ring[1] ?? file.path)) continue;
      const names = [...ring, file.path].map(lastOf);
      say({
        at,
        says: ring.length < 2 ? `${names[0]} uses itself` : `${names.join(" uses ")}: the files go round in a ring`,
      });
    }
  },
});

const lastOf = (path: string): string => path.slice(path.lastIndexOf("/") + 1);

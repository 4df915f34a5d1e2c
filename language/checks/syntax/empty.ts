// A file that says nothing: saved too early, or lost.

import { check } from "../check.ts";

export default check({
  code: "syntax/empty",
  title: "Nothing stands in this file",
  severity: "warning",
  why: "A file without a line of the language is mostly one that was saved empty or half copied: nothing in it was checked, and what uses it finds nothing.",
  source: "common practice",
  fails: `
    # The casing comes off last.
    #<^^^^^^^^^^^^^^^^^^^^^^^^^^^ Nothing stands in this file
  `,
  mended: `
    # The casing comes off last.
    unit pump "Pump" { }
  `,
  file(file, say) {
    if (file.tree.items.length > 0 || file.tree.errors.length > 0) return;
    const end = /^[^\r\n]*/.exec(file.text)![0].length;
    say({ at: { file: file.path, start: 0, end }, says: "Nothing stands in this file" });
  },
});

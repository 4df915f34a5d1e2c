// A signature under another revision than the one that the text has now.

import type { Procedure } from "../../model/model.ts";
import type { Signed } from "../../model/instructions.ts";
import { check } from "../check.ts";

export default check({
  code: "issue/other-revision",
  title: "Signed for another revision",
  severity: "warning",
  why: "Whoever approved the earlier text has not seen what was changed since. Every page, sheet and label says DRAFT until this very revision is approved.",
  source: "ISO 9001:2015, 7.5.3 (approval of changes to documents; from memory)",
  fails: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid"
      fastener screws screw "Screws" { count 4  torque 2 N·m  joins lid to foot }
    }
    procedure open "Open" for box {
      revision B
      approved "N. N." "2026-11-20" of A
    # ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ Approved for revision A, and this is revision B: have this one approved; until then every page says DRAFT
      aim lid off
      step "Open" { undo screws  remove lid }
    }
  `,
  mended: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid"
      fastener screws screw "Screws" { count 4  torque 2 N·m  joins lid to foot }
    }
    procedure open "Open" for box {
      revision B
      approved "N. N." "2026-11-25" of B
      aim lid off
      step "Open" { undo screws  remove lid }
    }
  `,
  performance({ procedure }, say) {
    const { issue, revision } = procedure;
    for (const by of ["prepared", "checked", "approved"] as const) {
      const signed = issue[by];
      if (!signed || !isOther(by, signed, procedure)) continue;
      const of = signed.revision === undefined ? "without a revision" : `for revision ${signed.revision}`,
        now = revision === undefined ? "the procedure names none" : `this is revision ${revision}`;
      say({
        at: signed.at,
        says: `${titles[by]} ${of}, and ${now}: have this one ${by}${by === "approved" ? "; until then every page says DRAFT" : " again"}`,
      });
    }
  },
});

const titles = { prepared: "Prepared", checked: "Checked", approved: "Approved" } as const;

/** Only an approval has to name its revision; a place to sign that is still empty is no signature. */
function isOther(by: keyof typeof titles, { who, when, revision }: Signed, procedure: Procedure): boolean {
  if (who.trim() === "" || when.trim() === "") return false;
  return revision === undefined
    ? by === "approved" && procedure.revision !== undefined
    : revision !== procedure.revision;
}

// An order of tightening that the way the fasteners stand does not have.

import { kindIn, sequences } from "../../tables/index.ts";
import { check } from "../check.ts";

export default check({
  code: "fastener/sequence-pattern",
  title: "An order of tightening that these fasteners do not have",
  severity: "warning",
  why: "On a circle there are no rows and nothing stands in the middle: whoever takes the order at its word pulls one side of the joint down first, and the flange tilts on its gasket.",
  source: "common practice; crosswise on a circle: ASME PCC-1 (legacy pattern), from memory",
  fails: `
    unit pump "Pump" {
      base casing
      part casing "Casing"
      part cover "Cover"
      fastener cover-bolts bolt "Cover bolts" {
        count 8  size M12x40  torque 60 N·m  pattern circle 210 mm
        sequence rows
    #   ^^^^^^^^^^^^^ Cover bolts stand on a circle, and rows goes row by row, from one end: sequence star goes crosswise
        joins cover to casing
      }
    }
  `,
  mended: `
    unit pump "Pump" {
      base casing
      part casing "Casing"
      part cover "Cover"
      fastener cover-bolts bolt "Cover bolts" {
        count 8  size M12x40  torque 60 N·m  pattern circle 210 mm
        sequence star
        joins cover to casing
      }
    }
  `,
  model(model, say) {
    for (const { name, pattern, sequence } of model.ties) {
      if (pattern?.is !== "circle" || !sequence) continue;
      const order = kindIn(sequences, sequence.kind);
      if (order?.asksPattern !== true) continue;
      say({
        at: sequence.at,
        says: `${name} stand on a circle, and ${sequence.kind} goes ${order.about.charAt(0).toLowerCase()}${order.about.slice(1, -1)}: sequence star goes crosswise`,
        fixes: [
          {
            title: "Write sequence star",
            certain: false,
            edits: [{ file: sequence.at.file, start: sequence.at.start, end: sequence.at.end, text: "sequence star" }],
          },
        ],
      });
    }
  },
});

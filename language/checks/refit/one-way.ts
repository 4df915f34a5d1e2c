// Something undone that cannot be made again: said at the strip act, before it is too late.

import { check } from "../check.ts";

export default check({
  code: "refit/one-way",
  title: "This cannot be made again",
  severity: "warning",
  why: "A weld cut is cut. If it is meant to stay open, say `leaves out`; if not, look for another way in.",
  source: "common practice",
  fails: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid"
      joint seam weld "Lid seam" { joins lid to foot }
    }
    procedure strip "Strip" for box {
      aim lid off
      step "Open" {
        undo seam
    #   ^^^^^^^^^ Lid seam is undone here and cannot be made again
        remove lid
      }
    }
  `,
  mended: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid"
      joint seam weld "Lid seam" { joins lid to foot }
    }
    procedure strip "Strip" for box {
      aim lid off
      leaves out seam "Welded again by the welding shop."
      leaves off lid
      step "Open" {
        undo seam
        remove lid
      }
    }
  `,
  performance(performance, say, context) {
    const left = new Set(performance.leaves.flatMap(({ things }) => things));
    for (const event of performance.events) {
      const tie = performance.model.things[event.thing]!;
      if (event.kind !== "out" || event.assumed || tie.is !== "tie" || !tie.oneWay || left.has(tie.index)) continue;
      say({
        at: event.act.at,
        says: `${context.name(tie.index)} is undone here and cannot be made again`,
        because: [{ says: `it is a ${tie.kind}`, at: tie.at }],
      });
    }
  },
});

// A tool size that no head standard gives this thread: mostly the spanner was taken for the thread.

import { fromSource } from "../../findings/finding.ts";
import { listed } from "../bench-check.ts";
import { check } from "../check.ts";
import { againstDrive } from "../thread-in-doubt.ts";

export default check({
  code: "fastener/drive-mismatch",
  title: "The spanner does not go with the thread",
  severity: "warning",
  why: "The trade names a bolt by its spanner: a ten mil is an M6. Written down as the thread, it sends the wrong screw from the stores and the wrong torque to the wrench.",
  source: "ISO 4014, ISO 4762, ISO 10664 and the inch head standards, by the published tables",
  fails: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid"
      fastener lid-screws screw "Lid screws" { count 4  size M10x30  drive hex 10  joins lid to foot }
    #                                                                ^^^^^^^^^^^^ Lid screws: M10 takes 16 mm, 17 mm, 13 mm, 15 mm or 14 mm, not 10 mm; that tool goes with M6 or M8
    }
  `,
  mended: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid"
      fastener lid-screws screw "Lid screws" { count 4  size M6x30  drive hex 10  joins lid to foot }
    }
  `,
  model(model, say) {
    for (const tie of model.ties) {
      const found = againstDrive(tie);
      if (!found) continue;
      const meant = found.threads.length > 0 ? `; that tool goes with ${listed(found.threads.slice(0, 4), "or")}` : "";
      say({
        at: tie.drive!.at,
        says: `${tie.name}: ${tie.size!.designation} takes ${listed(found.usual, "or")}, not ${tie.drive!.size!.written}${meant}`,
        because: [{ says: `the thread is said here`, at: tie.at }, fromSource(found.source)],
      });
    }
  },
});

// An O-ring squeezed too little or too much by its groove.

import { glandFor, squeezeFinding, type GlandKind } from "../../figures/o-rings.ts";
import { rounded, si, type Quantity } from "../../quantities/index.ts";
import { check } from "../check.ts";
import { sumLines } from "../sums.ts";

export default check({
  code: "figure/squeeze",
  title: "O-ring squeeze out of range",
  severity: "warning",
  why: "Too little and it weeps; too much and it is cut while the joint closes, or takes a set within weeks.",
  source: "published gland tables for O-rings (ISO 3601-2 sizes)",
  fails: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid"
      part ring o-ring "Lid ring" { size 183.82 x 2.62 mm  groove 2.5 mm  between lid and foot }
    #      ^^^^ Lid ring: a groove of 2.5 mm squeezes it by 5 %, less than the usual 19 % to 29 %
      fastener lid-screws screw "Lid screws" { count 4  joins lid to foot }
    }
  `,
  mended: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid"
      part ring o-ring "Lid ring" { size 183.82 x 2.62 mm  groove 2 mm  between lid and foot }
      fastener lid-screws screw "Lid screws" { count 4  joins lid to foot }
    }
  `,
  model(model, say) {
    for (const part of model.parts) {
      const { size, groove } = part;
      if (!groove || !Array.isArray(size) || size.length < 2) continue;
      const section = si((size as readonly Quantity[])[1]!).high,
        kind: GlandKind = part.between ? "static-face" : "static-radial",
        // The shallowest groove squeezes most, the deepest least.
        depth = squeezeFinding(kind, section, si(groove).low)?.is === "much" ? si(groove).low : si(groove).high,
        found = squeezeFinding(kind, section, depth),
        gland = glandFor(kind, section);
      if (!found) continue;
      const share = (value: number): string => `${Math.round(value * 100)} %`;
      say({
        at: part.at,
        says: `${part.name}: a groove of ${groove.written} squeezes it by ${share(found.squeeze)}, ${found.is === "much" ? "more" : "less"} than the usual ${share(found.range[0])} to ${share(found.range[1])}`,
        because: sumLines({
          name: "squeeze of an O-ring",
          formula: `squeeze = (section - depth) / section = (${rounded(section * 1000, 3)} - ${rounded(depth * 1000, 3)}) mm / ${rounded(section * 1000, 3)} mm`,
          source: gland ? "published gland table" : "published squeeze ranges",
        }),
      });
    }
  },
});

// A screw too short to hold, or so long that it bottoms, for what it clamps.

import { boltLength, lengthFinding, screwLength, tappedMaterials } from "../../figures/engagement.ts";
import { isFigureError } from "../../figures/figure.ts";
import { rounded, si } from "../../quantities/index.ts";
import { check } from "../check.ts";
import { knownThread } from "../known-threads.ts";
import { sumLines } from "../sums.ts";

export default check({
  code: "fastener/length-implausible",
  title: "Length does not go with what it clamps",
  severity: "warning",
  why: "Too short, the thread strips; too long, the screw bottoms and clamps nothing while the wrench clicks.",
  source: "published thread engagement guides; Naval Ships' Technical Manual ch. 075 as quoted",
  fails: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid"
      fastener lid-screws screw "Lid screws" { count 4  size M8x20  clamps 16 mm  joins lid to foot }
    #          ^^^^^^^^^^ Lid screws: 20.0 mm is short for 16 mm clamped and a thread in steel, where 24.0 mm to 48.0 mm is usual
    }
  `,
  mended: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid"
      fastener lid-screws screw "Lid screws" { count 4  size M8x30  clamps 16 mm  joins lid to foot }
    }
  `,
  model(model, say) {
    for (const tie of model.ties) {
      const grip = tie.figures.get("clamps"),
        { size } = tie;
      if (typeof grip !== "object" || size?.length === undefined) continue;
      const thread = knownThread(size),
        into = tie.figures.get("tapped"),
        material = tappedMaterials.find((m) => m === into) ?? "steel";
      if (isFigureError(thread)) continue;
      const range =
        into === "nut"
          ? boltLength(si(grip).high, thread.diameter, thread.pitch)
          : screwLength(si(grip).high, thread.diameter, material);
      const found = lengthFinding(size.length, range);
      if (!found) continue;
      const mm = (metres: number): string => `${rounded(metres * 1000, 3)} mm`;
      say({
        at: tie.at,
        says: `${tie.name}: ${mm(size.length)} is ${found} for ${grip.written} clamped ${into === "nut" ? "and a nut" : `and a thread in ${material}`}, where ${mm(range.least)} to ${mm(range.most)} is usual`,
        because: sumLines({
          name: into === "nut" ? "length of a bolt with a nut" : "length of a screw in a tapped hole",
          formula:
            into === "nut"
              ? "grip + 0.8 d + 1 pitch to grip + 0.9 d + 5 pitches"
              : "grip + engagement to grip + engagement + 3 d",
          source: "published thread engagement guides",
        }),
      });
    }
  },
});

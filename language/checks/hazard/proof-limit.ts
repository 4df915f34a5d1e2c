// A proof whose limit proves nothing: a voltage that is still dangerous, the hazard's own figure, or a lower limit.

import { si, type Quantity } from "../../quantities/index.ts";
import type { Hazard, Precaution } from "../../model/model.ts";
import { check } from "../check.ts";

/** Highest voltages that may be left where a thing counts as dead, in V. */
const mostLeft = { dc: 60, ac: 50 } as const;

export default check({
  code: "hazard/proof-limit",
  title: "A proof that lets the danger through",
  severity: "error",
  why: "Whoever reads a figure inside the limit puts his hands in. A limit that the live part, the full line or the loaded spring keeps as well is no proof of anything.",
  source:
    "60 V dc: IEC 60204-1:2016, 6.2.4; 50 V ac: IEC 60364-4-41, extra-low voltage (both from memory); the maker's and the local rules come first",
  fails: `
    tool tester "Two-pole tester" { range 0..1000 V }
    unit box "Box" {
      base foot
      part foot "Foot"
      hazard bus electrical danger "Drive bus" {
        on foot
        source capacitor
        voltage 560 V dc
        precaution isolate   "Open the isolator, lock it."
        precaution discharge "Let the bleeder work." wait 5 min
        precaution prove-dead "Plus to minus." at most 500 V dc with tester
    #   ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ Drive bus is proved by at most 500 V dc, and no more than 60 V dc or 50 V ac may be left
      }
    }
  `,
  mended: `
    tool tester "Two-pole tester" { range 0..1000 V }
    unit box "Box" {
      base foot
      part foot "Foot"
      hazard bus electrical danger "Drive bus" {
        on foot
        source capacitor
        voltage 560 V dc
        precaution isolate   "Open the isolator, lock it."
        precaution discharge "Let the bleeder work." wait 5 min
        precaution prove-dead "Plus to minus." at most 60 V dc with tester
      }
    }
  `,
  *model(model) {
    for (const hazard of model.hazards)
      for (const precaution of hazard.precautions) {
        const why = flaw(hazard, precaution);
        if (why !== undefined) yield { at: precaution.at, says: `${hazard.name} is proved by ${why}` };
      }
  },
});

function flaw({ figures }: Hazard, { kind, limits }: Precaution): string | undefined {
  if ((kind !== "prove-dead" && kind !== "prove-zero") || !limits) return undefined;
  if (limits.atLeast)
    return `at least ${limits.atLeast.written}: what has to be gone is proved by an upper limit, at most`;
  const limit = limits.atMost ?? limits.value;
  if (!limit) return undefined;
  const said = `${limits.atMost ? "at most " : ""}${limit.written}`,
    { high } = si(limit);
  if (limit.dimension === "voltage" && high > (limit.unit.endsWith("ac") ? mostLeft.ac : mostLeft.dc))
    return `${said}, and no more than ${mostLeft.dc} V dc or ${mostLeft.ac} V ac may be left`;
  const full = [...figures].find(([, figure]) => figure.dimension === limit.dimension && high >= si(figure).low);
  return full && `${said}, and that is what the hazard has itself: ${full[0]} ${(full[1] satisfies Quantity).written}`;
}

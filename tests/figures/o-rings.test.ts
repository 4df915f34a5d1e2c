// O-rings and glands against ISO 3601-1 / AS568 tables and a published gland table. Sources: S18, S19, S38, S39 of the source pages.

import fc from "fast-check";
import { expect, test } from "vitest";
import {
  glandFor,
  glands,
  nearestORings,
  oRing,
  squeeze,
  squeezeFinding,
  type GlandKind,
} from "../../language/figures/o-rings.ts";
import { oRings } from "../../language/figures/o-ring-table.ts";
import { expectPrinted } from "./printed.ts";
import { referenceRows, lookUp, tally } from "./reference-rows.ts";

const rows = referenceRows("o-rings.csv"),
  count = tally("o-rings.csv", rows.length, lookUp.byRule);
for (const row of rows) {
  count.row(`ring ${row["dash"]}`, () => {
    const ring = oRing(row["dash"]!)!;
    expect([ring.inside, ring.section, ring.insideTolerance, ring.sectionTolerance]).toEqual(
      ["id_mm", "section_mm", "id_tol_mm", "section_tol_mm"].map((name) => Number(row[name])),
    );
    expectPrinted(ring.inside + 2 * ring.section, row["od_mm_computed"]!, "outside diameter");
    expectPrinted(ring.inside / 25.4, row["id_in_computed"]!, "inside diameter in inches");
    expectPrinted(ring.section / 25.4, row["section_in_computed"]!, "section in inches");
    const [nearest] = nearestORings(ring.inside / 1e3, ring.section / 1e3);
    expect(nearest!.ring).toBe(ring);
    expect(nearest!.withinTolerance).toBe(true);
    // What the notes call wrong in another source is further off than the ring's tolerance; what they call rounding is not.
    for (const [, source, print, why] of row["note"]!.matchAll(/(S\d+) prints ([\d.]+)(?:: | \()(wrong|rounding)/g)) {
      const off = Math.abs(Number(print) - ring.inside);
      if (why === "rounding") expect(off, source).toBeLessThan(0.13);
      else expect(off, source).toBeGreaterThan(0.05);
    }
  });
}

const glandRows = referenceRows("o-ring-glands.csv"),
  glandTally = tally("o-ring-glands.csv", glandRows.length, lookUp.alone);
const kinds: Readonly<Record<string, GlandKind>> = {
  "static radial": "static-radial",
  "static axial (face)": "static-face",
  "dynamic radial": "dynamic-radial",
};
for (const row of glandRows) {
  glandTally.row(`${row["gland"]} ${row["section_mm"]}`, () => {
    const kind = kinds[row["gland"]!]!,
      section = Number(row["section_mm"]),
      gland = glandFor(kind, section / 1e3)!,
      of = (name: string): number => Number(row[name]);
    expect(gland).toEqual({
      section,
      depth: [of("depth_min_mm"), of("depth_max_mm")],
      squeeze: [of("squeeze_min_mm"), of("squeeze_max_mm")],
      squeezePercent: [of("squeeze_min_pct"), of("squeeze_max_pct")],
      width: of("groove_width_mm"),
    });
    expectPrinted(
      squeeze(section, gland.depth[1]) * 100,
      row["nominal_section_squeeze_min_pct_computed"]!,
      "least squeeze, nominal",
    );
    expectPrinted(
      squeeze(section, gland.depth[0]) * 100,
      row["nominal_section_squeeze_max_pct_computed"]!,
      "most squeeze, nominal",
    );
    // The printed range takes the ring's tolerance in: the nominal squeeze of both depths lies inside it.
    for (const depth of gland.depth) expect(squeezeFinding(kind, section / 1e3, depth / 1e3)).toBeUndefined();
    expect(squeezeFinding(kind, section / 1e3, (section * 0.97) / 1e3)?.is).toBe("little");
    expect(squeezeFinding(kind, section / 1e3, (section * 0.55) / 1e3)?.is).toBe("much");
    // Squeeze in mm is section less depth with the section's tolerance: least from the deepest groove and the thinnest ring.
    const tolerance = oRings.find((ring) => ring.section === section)!.sectionTolerance;
    expect(
      Math.abs(section - tolerance - gland.depth[1] - gland.squeeze[0]),
      "least squeeze in mm",
    ).toBeLessThanOrEqual(0.055);
    expect(Math.abs(section + tolerance - gland.depth[0] - gland.squeeze[1]), "most squeeze in mm").toBeLessThanOrEqual(
      0.055,
    );
  });
}

test("a measured ring finds its size", () => {
  expect(nearestORings(0.1838, 0.0026)[0]!.ring.dash).toBe("-168");
  expect(oRing("999")).toBeUndefined();
  expect(squeezeFinding("static-radial", 0.003, 0.0024)).toBeUndefined();
});

test("the nearest ring is no worse than any other of its section", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 1, max: 450, noNaN: true }),
      fc.constantFrom(1.78, 2.62, 3.53, 5.33, 6.99),
      (inside, section) => {
        const [best] = nearestORings(inside / 1e3, section / 1e3, 1),
          off = Math.abs(best!.ring.inside - inside);
        if (best!.ring.section === section)
          for (const ring of oRings)
            if (ring.section === section) expect(Math.abs(ring.inside - inside)).toBeGreaterThanOrEqual(off - 1e-9);
      },
    ),
    { seed: 20, numRuns: 200 },
  );
  expect(Object.keys(glands)).toHaveLength(3);
});

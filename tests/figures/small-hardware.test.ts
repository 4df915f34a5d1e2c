// Circlips, retaining washers, keys and pins against published tables. Sources: S17, S18 of the source page; rows from memory say so.

import { expect, test } from "vitest";
import {
  boreCirclips,
  circlipFor,
  circlipGrooveDepth,
  keyClearance,
  keyFor,
  parallelKeys,
  pins,
  retainingWashers,
  retainingWashersFor,
} from "../../language/figures/small-hardware.ts";
import { referenceRows, lookUp, tally } from "./reference-rows.ts";

const rows = referenceRows("small-hardware.csv"),
  count = tally("small-hardware.csv", rows.length, lookUp.byRule);
rows.forEach((row, i) =>
  count.row(`${row["standard"]} ${row["nominal_mm"]}, row ${i + 2} (${row["status"]})`, () => {
    const n = (name: string): number => Number(row[name]),
      nominal = n("nominal_mm");
    switch (row["standard"]) {
      case "DIN 471":
      case "DIN 472": {
        const ring = circlipFor(row["standard"] === "DIN 471" ? "shaft" : "bore", nominal)!;
        expect([ring.thickness, ring.grooveDiameter, ring.freeDiameter, ring.lugHole]).toEqual([
          n("ring_or_key_thickness_mm"),
          n("groove_dia_mm"),
          n("free_dia_mm"),
          n("lug_hole_mm"),
        ]);
        expect(ring.grooveWidth).toBe(row["groove_width_min_mm"] === "" ? undefined : n("groove_width_min_mm"));
        expect(circlipGrooveDepth(ring)).toBeCloseTo(n("groove_depth_mm"), 9);
        if (ring.grooveWidth !== undefined)
          expect(ring.grooveWidth - ring.thickness, "the ring goes into its groove").toSatisfy(
            (gap: number) => gap > 0.05 && gap < 0.2,
          );
        return;
      }
      case "DIN 6799": {
        const ring = retainingWashers.find((each) => each.groove === nominal)!,
          [, from, to] = /shaft ([\d.]+) to ([\d.]+)/.exec(row["fits_mm"]!)!;
        expect(ring).toEqual({
          groove: n("groove_dia_mm"),
          thickness: n("ring_or_key_thickness_mm"),
          shaft: [Number(from), Number(to)],
          mouth: n("free_dia_mm"),
        });
        expect(retainingWashersFor(Number(to))).toContain(ring);
        return;
      }
      case "DIN 6885-1 (ISO 773)": {
        const [, over, upTo] = /over ([\d.]+) to ([\d.]+)/.exec(row["fits_mm"]!)!,
          key = keyFor(Number(upTo))!;
        expect([key.name, key.width, key.height, key.over, key.upTo]).toEqual([
          row["nominal_mm"],
          n("width_b_mm"),
          n("ring_or_key_thickness_mm"),
          Number(over),
          Number(upTo),
        ]);
        expect(key.shaftDepth).toBe(n("groove_depth_mm"));
        expect(keyClearance(key)).toBeCloseTo(Number(/= ([\d.]+) clearance/.exec(row["groove_depth_check"]!)![1]), 9);
        expect(key.status).toBe(row["status"]);
        return;
      }
      default: {
        const pin = pins.find((each) => each.standard === row["standard"] && each.hole === nominal)!;
        expect(`hole ${pin.hole}${pin.tolerance ? ` ${pin.tolerance}` : ""}`).toBe(row["fits_mm"]);
        expect(pin.free).toBe(row["free_dia_mm"] === "" ? undefined : n("free_dia_mm"));
      }
    }
  }),
);

test("slips of the sources stay out", () => {
  // S18: ring thickness 2 for a 48 mm shaft and 3 for an 82 mm bore; S17: grooves 49.5, 20.4 and 103.0.
  expect(circlipFor("shaft", 48)!.thickness).toBe(1.75);
  expect(circlipFor("bore", 82)!.thickness).toBe(2.5);
  expect(
    [circlipFor("shaft", 52)!, circlipFor("bore", 28)!, circlipFor("bore", 100)!].map((ring) => ring.grooveDiameter),
  ).toEqual([49, 29.4, 103.5]);
});

test("keys leave no gap between their shaft ranges and nothing is tabled outside", () => {
  parallelKeys.forEach((key, i) => i > 0 && expect(key.over).toBe(parallelKeys[i - 1]!.upTo));
  expect(keyFor(6)).toBeUndefined();
  expect(keyFor(111)).toBeUndefined();
  expect(boreCirclips.every((ring) => ring.grooveDiameter > ring.nominal)).toBe(true);
});

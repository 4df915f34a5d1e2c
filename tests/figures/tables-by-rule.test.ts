// The tables of the figures were typed from the same published pages that their row tests read: those tests prove the look-up. Here each table is
// held to a second thing, a rule of its standard that gives its values again, or nearly. The rules are named where they stand; those from memory
// say so. Tables without such a rule (eyebolts, shackles, published times, touch limits, drives of cross recesses) have their source page alone.

import { expect, test } from "vitest";
import { bearingRows } from "../../language/figures/head-geometry.ts";
import { driveRows, type DriveRow } from "../../language/figures/drive-table.ts";
import { hexalobularSockets, rowWidth } from "../../language/figures/drives.ts";
import { oRings } from "../../language/figures/o-ring-table.ts";
import { inchGrades, metricClasses } from "../../language/figures/property-classes.ts";
import { CHAIN_SLINGS, LEG_FACTORS, ROPE_SLINGS } from "../../language/figures/sling-tables.ts";
import {
  boreCirclips,
  parallelKeys,
  pins,
  retainingWashers,
  shaftCirclips,
  type Circlip,
} from "../../language/figures/small-hardware.ts";
import { coarsePitches } from "../../language/figures/thread-tables.ts";
import { parseNumber } from "../../language/quantities/index.ts";
import { thread } from "./printed.ts";

test("O-rings (AS568): the bore is a whole number of 1/32 in less one allowance a series: 0.011, 0.013, 0.016, 0.025 in", () => {
  const allowance: Readonly<Record<string, number>> = { 0: 0.011, 1: 0.013, 2: 0.016, 3: 0.025, 4: 0.025 };
  let held = 0;
  for (const ring of oRings) {
    const number = Number(ring.dash.slice(1));
    // The first five have sections and steps of their own; from -282 the allowance is 0.045 in.
    if (number < 6) continue;
    const nominal = (ring.inside / 25.4 + (number >= 282 && number < 300 ? 0.045 : allowance[ring.dash[1]!]!)) * 32;
    expect(Math.abs(nominal - Math.round(nominal)) / 32, ring.dash).toBeLessThan(0.0012);
    held++;
  }
  expect(held).toBe(oRings.length - 5);
});

test("O-rings (AS568): sections are 0.070, 0.103, 0.139, 0.210 and 0.275 in by series, and bores grow with the number", () => {
  const section: Readonly<Record<string, number>> = { 0: 0.07, 1: 0.103, 2: 0.139, 3: 0.21, 4: 0.275 };
  for (const [at, ring] of oRings.entries()) {
    if (Number(ring.dash.slice(1)) >= 4)
      expect(Math.abs(ring.section / 25.4 - section[ring.dash[1]!]!)).toBeLessThan(5e-4);
    const before = oRings[at - 1];
    if (before?.section === ring.section) expect(ring.inside).toBeGreaterThan(before.inside);
  }
});

/** Widths across flats of ISO 272; key sizes of ISO 2936, and 7 mm as DIN 7984 has it for M10. From memory. */
const isoFlats = [
  3.2, 4, 5, 5.5, 7, 8, 10, 13, 16, 18, 21, 24, 27, 30, 34, 36, 41, 46, 50, 55, 60, 65, 70, 75, 80, 85, 90, 95,
];
const isoKeys = [0.7, 0.9, 1.3, 1.5, 2, 2.5, 3, 4, 5, 6, 7, 8, 10, 12, 14, 17, 19, 22, 24, 27, 32, 36];
const nominal = (row: DriveRow): number => Number(row.thread.slice(1));
const table = (standard: string, item: RegExp = /./): readonly DriveRow[] =>
  driveRows.filter((row) => row.standard === standard && item.test(row.item));

test("metric hexagons: widths of ISO 272 that rise with the thread, about 1.5 d", () => {
  for (const standard of ["ISO 4014", "ISO 4017", "ISO 4032"]) {
    const rows = table(standard);
    expect(rows.length).toBeGreaterThan(15);
    for (const [at, row] of rows.entries()) {
      const width = Number(row.size);
      expect(isoFlats, `${standard} ${row.thread}`).toContain(width);
      expect(Math.abs(width - 1.5 * nominal(row)), `${standard} ${row.thread}`).toBeLessThanOrEqual(
        Math.max(1.25, 0.04 * width),
      );
      if (at > 0) expect(width).toBeGreaterThan(Number(rows[at - 1]!.size));
    }
  }
});

test("metric socket heads: keys of ISO 2936 that never fall with the thread and go into a head of 1.5 d", () => {
  for (const standard of ["ISO 4762", "ISO 7380-1", "ISO 10642", "DIN 7984", "DIN 6912"]) {
    const rows = table(standard);
    for (const [at, row] of rows.entries()) {
      const key = Number(row.size);
      expect(isoKeys, `${standard} ${row.thread}`).toContain(key);
      expect((key * 2) / Math.sqrt(3), `${standard} ${row.thread}`).toBeLessThan(1.5 * nominal(row));
      if (at > 0) expect(key).toBeGreaterThanOrEqual(Number(rows[at - 1]!.size));
    }
  }
});

test("inch hexagons (ASME B18.2.1): 1.5 d within 1/16 in, in sixteenths; socket caps (B18.3): keys of 0.65 to 0.86 d", () => {
  for (const row of table("ASME B18.2.1", /^hex/)) {
    const width = rowWidth(row)! / 0.0254,
      d = parseNumber(row.thread)!.value;
    expect(width * 16 - Math.round(width * 16), row.thread).toBeCloseTo(0, 9);
    expect(Math.abs(width - 1.5 * d), row.thread).toBeLessThanOrEqual(1 / 16 + 1e-9);
  }
  for (const row of table("ASME B18.3", /^socket head cap/)) {
    if (row.thread.startsWith("#")) continue;
    const share = rowWidth(row)! / 0.0254 / parseNumber(row.thread)!.value;
    expect(share > 0.65 && share < 0.86, `${row.thread}: ${share}`).toBe(true);
  }
});

test("hexalobular sockets (ISO 10664): one shape, its inner diameter 0.69 to 0.72 of the outer, rising with the number", () => {
  let last = 0;
  for (const [number, { over, between }] of [...hexalobularSockets].sort(([a], [b]) => a - b)) {
    const share = between / over;
    expect(share > 0.685 && share < 0.72, `${number}: ${share}`).toBe(true);
    expect(over).toBeGreaterThan(last);
    last = over;
  }
});

test("circlips (DIN 471, DIN 472): the groove is a tenth wider than the ring, 0.15 mm from 2 mm on; the free ring grips; the nominal is met", () => {
  const check = (rings: readonly Circlip[], sign: 1 | -1): void => {
    for (const [at, ring] of rings.entries()) {
      const { nominal, thickness, grooveDiameter, grooveWidth, freeDiameter } = ring;
      if (grooveWidth !== undefined)
        expect(grooveWidth - thickness, `${nominal}`).toBeCloseTo(thickness < 2 ? 0.1 : 0.15, 6);
      // A ring for a shaft is smaller than its groove, one for a bore larger.
      expect(sign * (freeDiameter - grooveDiameter), `${nominal}`).toBeGreaterThan(0);
      expect(sign * (grooveDiameter - nominal), `${nominal}`).toBeGreaterThan(0);
      const before = rings[at - 1];
      if (before === undefined) continue;
      for (const of of ["nominal", "grooveDiameter", "freeDiameter"] as const)
        expect(ring[of], `${of} at ${nominal}`).toBeGreaterThan(before[of]);
      expect(thickness, `${nominal}`).toBeGreaterThanOrEqual(before.thickness);
    }
  };
  check(shaftCirclips, -1);
  check(boreCirclips, 1);
});

test("keys and pins: keyways hold the key with 0.2 to 0.6 mm of play, keys rise with the shaft; a spring pin is larger than its hole", () => {
  for (const [at, key] of parallelKeys.entries()) {
    const play = key.shaftDepth + key.hubDepth - key.height;
    expect(play >= 0.2 - 1e-9 && play <= 0.6 + 1e-9, `${key.name}: ${play}`).toBe(true);
    expect(key.width / key.upTo).toBeGreaterThan(0.2);
    expect(key.width / key.upTo).toBeLessThan(0.35);
    if (at > 0) expect(key.width).toBeGreaterThan(parallelKeys[at - 1]!.width);
  }
  for (const pin of pins) if (pin.free !== undefined) expect(pin.free / pin.hole).toBeGreaterThan(1.05);
  for (const { groove, shaft, mouth } of retainingWashers) {
    expect(mouth).toBeLessThan(groove);
    expect(shaft[0]).toBeGreaterThanOrEqual(groove);
  }
});

test("property classes (ISO 898-1 cl. 5): the first figure is a hundredth of the strength, the two multiplied a tenth of the yield", () => {
  for (const { name, tensileNominal, tensile, yield: yielding, proof } of metricClasses) {
    const figures = /^(\d+)\.(\d+)$/.exec(name);
    if (!figures) {
      // ISO 3506-1: the number behind the dash is a tenth of the strength.
      expect(tensile / 1e7, name).toBe(Number(/-(\d+)$/.exec(name)![1]));
      continue;
    }
    const [strength, share] = [Number(figures[1]), Number(figures[2])];
    expect(tensileNominal! / 1e8, name).toBeCloseTo(strength, 9);
    expect(tensile).toBeGreaterThanOrEqual(tensileNominal!);
    // The least yield of Table 3 is the nominal one or a little above it: 340 for 320 at 4.8 is the most.
    const overNominal = yielding! / 1e7 / (strength * share);
    expect(overNominal, name).toBeGreaterThanOrEqual(1 - 1e-9);
    expect(overNominal, name).toBeLessThan(1.063);
    expect(proof! / yielding!, `${name}: ISO 898-1 Table 3, Sp at 0.88 to 0.94 of the yield`).toBeGreaterThan(0.875);
    expect(proof! / yielding!).toBeLessThan(0.945);
  }
  for (const { name, proof, yield: yielding, tensile } of inchGrades)
    if (proof !== undefined && yielding !== undefined) {
      expect(proof / yielding, name).toBeGreaterThan(0.87);
      expect(proof, name).toBeLessThan(yielding);
      expect(yielding, name).toBeLessThan(tensile);
    }
});

test("chain slings (EN 818-2): grade 8 bears 800 MPa on both sides of a link and works at a quarter of it, less what preferred numbers take", () => {
  for (const { size, one } of CHAIN_SLINGS) {
    const tonnes = (2 * (Math.PI / 4) * size ** 2 * 200) / 9806.65;
    expect(one / tonnes, `${size} mm`).toBeGreaterThan(0.955);
    expect(one / tonnes, `${size} mm`).toBeLessThan(1.01);
  }
});

test("chain and rope slings: several legs are one leg times the factor of the uniform load method, to the next preferred number", () => {
  for (const row of [...CHAIN_SLINGS, ...ROPE_SLINGS])
    for (const legs of ["twoTo45", "twoTo60", "threeTo45", "threeTo60", "endless"] as const) {
      const limit = row[legs];
      if (limit !== undefined)
        expect(Math.abs(limit / (row.one * LEG_FACTORS[legs]) - 1), `${row.size} ${legs}`).toBeLessThan(0.045);
    }
});

test("clearance holes (ISO 273): close, medium, loose in that order, medium about a tenth over the thread; a head bears on more than its hole", () => {
  for (const [d, row] of bearingRows) {
    expect(row.close).toBeGreaterThan(d);
    expect(row.medium).toBeGreaterThan(row.close);
    expect(row.loose).toBeGreaterThan(row.medium);
    expect(Math.abs(row.medium - 1.1 * d), `M${d}`).toBeLessThanOrEqual(Math.max(0.4, 0.031 * d));
    expect(row.hex).toBeGreaterThan(row.medium);
    // ISO 4759-1: the washer face is a little smaller than the width across flats.
    const flats = table("ISO 4014").find((each) => nominal(each) === d);
    if (flats && d >= 5) {
      expect(row.hex / Number(flats.size), `M${d}`).toBeGreaterThan(0.85);
      expect(row.hex / Number(flats.size), `M${d}`).toBeLessThan(0.96);
    }
  }
});

test("stress areas are the formula of ISO 898-1, 9.1.6.1, on ISO 724 diameters: 0.7854 (d - 0.9382 P)²", () => {
  for (const [d, pitch] of coarsePitches) {
    const of = thread(`M${d}`);
    expect((of.stressArea * 1e6) / (0.7854 * (d - 0.9382 * pitch) ** 2), `M${d}`).toBeCloseTo(1, 3);
    expect(of.nominalStressArea / of.stressArea, `M${d}`).toBeGreaterThan(0.985);
    expect(of.nominalStressArea / of.stressArea, `M${d}`).toBeLessThan(1.015);
  }
});

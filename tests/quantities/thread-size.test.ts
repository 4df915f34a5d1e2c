// Thread designations as ISO 965-1, ASME B1.1, ISO 228-1 and ASME B1.20.1 write them (the standards from memory; sizes from the reference tables).

import fc from "fast-check";
import { expect, test } from "vitest";
import { isThreadSize, parseThreadSize, unifiedDiameter, type ThreadSize } from "../../language/quantities/index.ts";
import { coarsePitches, finePitches } from "../../language/figures/thread-tables.ts";

const read = (text: string): ThreadSize => {
  const found = parseThreadSize(text);
  if (!isThreadSize(found)) throw new Error(found.problem);
  return found;
};

test("metric sizes", () => {
  expect(read("M8")).toMatchObject({
    system: "metric",
    designation: "M8",
    diameter: 0.008,
    pitch: undefined,
    coarse: true,
    length: undefined,
    leftHand: false,
  });
  expect(read("M8x35")).toMatchObject({ designation: "M8", coarse: true, length: 0.035 });
  expect(read("M8x1x35")).toMatchObject({ designation: "M8x1", pitch: 0.001, coarse: false, length: 0.035 });
  expect(read("M8x1")).toMatchObject({ designation: "M8x1", pitch: 0.001, length: undefined });
  expect(read("M8x35-8.8")).toMatchObject({ length: 0.035, propertyClass: "8.8" });
  expect(read("M8 × 35 - A2-70")).toMatchObject({ length: 0.035, propertyClass: "A2-70" });
  expect(read("M24x1.5-LH")).toMatchObject({ designation: "M24x1.5", leftHand: true });
  expect(read("M10x1-6g")).toMatchObject({ pitch: 0.001, tolerance: "6g", propertyClass: undefined });
  expect(read("M3x3").length).toBeCloseTo(0.003, 12);
});

test("unified sizes", () => {
  expect(read("3/8-16 UNC x 1.25 in")).toMatchObject({
    system: "unified",
    designation: "3/8-16 UNC",
    nominal: "3/8",
    series: "UNC",
    threadsPerInch: 16,
  });
  expect(read("3/8-16 UNC x 1.25 in").length).toBeCloseTo(0.03175, 12);
  expect(read("#10-32 UNF x 1/2 in").diameter).toBeCloseTo(0.19 * 0.0254, 12);
  expect(read("1-1/4-12 UNF").diameter).toBeCloseTo(0.03175, 12);
  expect(read("1-1/8-8 8UN").series).toBe("8UN");
  expect(read("1/2-13 UNC-2A x 1-1/2 in")).toMatchObject({ tolerance: "2A" });
  expect(read("1/2-13 UNC-2A-LH").leftHand).toBe(true);
  expect(read("3/8-16 x 30 mm").length).toBeCloseTo(0.03, 12);
  expect([unifiedDiameter("#0"), unifiedDiameter("#12"), unifiedDiameter("1-3/8"), unifiedDiameter("x")]).toEqual([
    0.06,
    0.216,
    1.375,
    undefined,
  ]);
});

test("pipe sizes carry no diameter", () => {
  for (const [text, designation] of [
    ["G1/4", "G1/4"],
    ["G 1-1/4", "G1-1/4"],
    ["R1/2", "R1/2"],
    ["Rp3/4", "Rp3/4"],
    ["1/4 NPT", "1/4 NPT"],
    ["1/4-18 NPT", "1/4 NPT"],
  ] as const) {
    expect(read(text)).toMatchObject({ system: "pipe", designation, diameter: undefined });
  }
});

test("anything else is a problem that shows how sizes look", () => {
  for (const text of ["", "M", "8", "T8", "M0", "x35", "M8x", "3/8-0", "M8-banana"])
    expect(parseThreadSize(text), text).toMatchObject({ problem: expect.stringContaining("M8x35") });
});

test("every pitch of ISO 261 reads as a pitch and every usual length as a length", () => {
  for (const table of [[...coarsePitches].map(([d, pitch]) => [d, [pitch]] as const), [...finePitches]])
    for (const [d, pitches] of table)
      for (const pitch of pitches) {
        expect(read(`M${d}x${pitch}`), `M${d}x${pitch}`).toMatchObject({ length: undefined, coarse: false });
        expect(read(`M${d}x${pitch}x${d * 4}`).pitch).toBeCloseTo(pitch / 1e3, 12);
      }
  fc.assert(
    fc.property(fc.constantFrom(...coarsePitches.keys()), fc.double({ min: 0.5, max: 20, noNaN: true }), (d, share) => {
      const length = Math.max(1, Math.round(d * share * 2) / 2);
      expect(read(`M${d}x${length}`)).toMatchObject({ coarse: true });
      expect(read(`M${d}x${length}`).length).toBeCloseTo(length / 1e3, 9);
    }),
    { seed: 20, numRuns: 300 },
  );
});

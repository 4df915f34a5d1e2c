// Beads, packs and thread gaps against the published and computed cases. Source: sealant-threadlocker.md (S34).

import fc from "fast-check";
import { expect, test } from "vitest";
import { answerWords, isAnswer } from "../../language/calc/answer.ts";
import { beadSection, beadVolume, packLength, packsFor, threadGapVolume } from "../../language/figures/bead.ts";
import { expectNear, thread } from "./printed.ts";

test("cross-sections as volume a metre (read, S34a)", () => {
  expect(beadSection("rectangle", 0.01, 0.005) * 1e6).toBeCloseTo(50, 9);
  expect(beadSection("triangle", 0.01, 0.005) * 1e6).toBeCloseTo(25, 9);
  expect(beadSection("half-round", 0.01) * 1e6).toBeCloseTo((Math.PI / 8) * 100, 9);
});

test("round beads and packs (computed on the page)", () => {
  const three = beadSection("round", 0.003);
  expectNear(three * 1e6, 7.069, 1e-4, "ml a metre");
  expectNear(beadVolume(three, 0.64) * 1e6, 4.524, 1e-4, "640 mm");
  expectNear(beadVolume(beadSection("round", 0.002), 1) * 1e6, 3.142, 2e-4, "2 mm, 1 m");
  expectNear(packLength(310e-6, three), 43.86, 1e-4, "cartridge");
  expectNear(packLength(310e-6, three, 0.1), 39.87, 1e-4, "cartridge with waste");
  expect(packsFor(12 * 4.524e-6, 50e-6, 0.1)).toBe(2);
});

// Geometry: a bead without depth has no content, and no pack is ever used up.
test("a bead without depth is asked for its depth", () => {
  const answer = answerWords("bead", ["3 mm 640 mm shape rectangle depth 0 mm pack 50 ml"]);
  expect(!isAnswer(answer) && answer.error.says).toBe("width, length, depth and count are above 0");
});

test("inch cartridges: 24.3 ft from the formula; the coverage table of S34c prints twice that and is not used", () => {
  const feet = packLength(10.1 * 29.5735295625e-6, beadSection("rectangle", 0.00635)) / 0.3048;
  expectNear(feet, 24.3, 0.002, "10.1 fl oz at 1/4 x 1/4 in");
  expect(50 / feet).toBeGreaterThan(2);
});

test("gap in a thread (geometry, a lower bound; computed on the page)", () => {
  for (const [size, ml] of [
    ["M6", 0.0081],
    ["M8", 0.0145],
    ["M10", 0.0227],
    ["M12", 0.0328],
    ["M16", 0.0591],
  ] as const) {
    const of = thread(size);
    expect(Math.abs(threadGapVolume(of.pitchDiameter, 0.8 * of.diameter, 1e-4) * 1e6 - ml), size).toBeLessThanOrEqual(
      0.00006,
    );
  }
});

test("packs never fall short and never are one too many", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 0, max: 1e-2, noNaN: true }),
      fc.double({ min: 1e-6, max: 1e-3, noNaN: true }),
      fc.double({ min: 0, max: 1, noNaN: true }),
      (volume, pack, waste) => {
        const packs = packsFor(volume, pack, waste)!,
          due = volume * (1 + waste);
        expect(packs * pack).toBeGreaterThanOrEqual(due * (1 - 1e-11) - 1e-15 * pack);
        expect((packs - 1) * pack).toBeLessThan(due + 1e-9 * pack);
        expect(Number.isInteger(packs)).toBe(true);
      },
    ),
    { seed: 20, numRuns: 500 },
  );
  expect(packsFor(1e-3, 1e-4)).toBe(10);
  expect(packsFor(1e-3, 0)).toBeUndefined();
});

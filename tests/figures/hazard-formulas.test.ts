// Properties and second reckonings of the hazard formulas that the reference files have few rows for: magnets by summing dipoles, slings by statics,
// discharge by small steps, gas by its models.

import fc from "fast-check";
import { expect, test } from "vitest";
import { dischargeTime } from "../../language/figures/capacitor-discharge.ts";
import { criticalPath } from "../../language/figures/critical-path.ts";
import { STATIC_FIELD_LIMITS, magnetKeepOut } from "../../language/figures/magnets.ts";
import { CHAIN_SLINGS, LEG_FACTORS } from "../../language/figures/sling-tables.ts";
import { slingTension, twoLegsUnderHook } from "../../language/figures/slings.ts";
import { gasEnergy } from "../../language/figures/stored-energy.ts";
import { TOUCH_LIMITS, touchLimit } from "../../language/figures/touch-temperature.ts";

const settings = { seed: 20261125, numRuns: 200 };

/** Field of a block magnet on its axis at a distance from its face, summed over small dipoles (textbook dipole field). */
function fieldOfBlock(remanence: number, side: number, length: number, distance: number): number {
  const cells = 12;
  const moment = (remanence * (side / cells) ** 2 * (length / cells)) / 1;
  let along = 0;
  for (let i = 0; i < cells; i++)
    for (let j = 0; j < cells; j++)
      for (let k = 0; k < cells; k++) {
        const [x, y, z] = [
          ((i + 0.5) / cells - 0.5) * side,
          ((j + 0.5) / cells - 0.5) * side,
          distance + ((k + 0.5) / cells) * length,
        ];
        const r = Math.hypot(x, y, z);
        along += (moment / (4 * Math.PI)) * ((3 * z * z) / r ** 5 - 1 / r ** 3);
      }
  return along;
}

test("the keep-out distance is an upper bound: blocks of any proportion are at or below the limit there", () => {
  for (const [side, length] of [
    [0.02, 0.05],
    [0.05, 0.01],
    [0.1, 0.1],
    [0.01, 0.2],
  ] as const) {
    const distance = magnetKeepOut(1.3, side * side * length);
    expect(fieldOfBlock(1.3, side, length, distance)).toBeLessThanOrEqual(STATIC_FIELD_LIMITS.implant);
  }
  // Far from a small cube the bound is close to the sum: it is not merely large.
  const distance = magnetKeepOut(1.3, 1e-6);
  expect(fieldOfBlock(1.3, 0.01, 0.01, distance - 0.005)).toBeGreaterThan(0.9 * STATIC_FIELD_LIMITS.implant);
});

test("discharge by small steps agrees with the logarithm", () => {
  let volts = 560;
  let seconds = 0;
  for (; volts > 60; seconds += 0.001) volts -= (volts / (22e3 * 1200e-6)) * 0.001;
  expect(dischargeTime(560, 60, 22e3, 1200e-6)).toBeCloseTo(seconds, 1);
});

test("the legs of a sling carry the load: the upright parts sum to it", () => {
  fc.assert(
    fc.property(
      fc.double({
        min: 1,
        max: 1e5,
        noNaN: true,
      }),
      fc.integer({ min: 1, max: 3 }),
      fc.double({ min: 5, max: 90, noNaN: true }),
      (load, legs, degrees) => {
        const angle = (degrees * Math.PI) / 180;
        const { tension, tooFlat } = slingTension(load, legs, angle);
        expect(legs * tension * Math.sin(angle)).toBeCloseTo(load, 6);
        expect(tooFlat).toBe(degrees < 30 - 1e-6);
      },
    ),
    settings,
  );
});

test("of four legs three are reckoned", () => {
  expect(slingTension(3000, 4, Math.PI / 2)).toMatchObject({ tension: 1000, legsCounted: 3 });
});

test("unequal legs are in balance, upright and sideways", () => {
  const length = fc.double({ min: 0.1, max: 10, noNaN: true });
  fc.assert(
    fc.property(fc.double({ min: 1, max: 1e4, noNaN: true }), length, length, length, (load, a, b, height) => {
      const two = twoLegsUnderHook(load, a, b, height);
      expect(two.tensionA * Math.sin(two.angleA) + two.tensionB * Math.sin(two.angleB)).toBeCloseTo(load, 4);
      expect(two.tensionA * Math.cos(two.angleA)).toBeCloseTo(two.tensionB * Math.cos(two.angleB), 4);
    }),
    settings,
  );
});

test("EN 818-4 rows are the single limit times the factor, rounded to preferred numbers: 3.6 % below to 4.2 % above", () => {
  for (const row of CHAIN_SLINGS) {
    for (const [printed, factor] of [
      [row.twoTo45, LEG_FACTORS.twoTo45],
      [row.twoTo60, LEG_FACTORS.twoTo60],
      [row.threeTo45, LEG_FACTORS.threeTo45],
      [row.threeTo60, LEG_FACTORS.threeTo60],
      [row.endless!, LEG_FACTORS.endless],
    ] as const) {
      const off = printed / (row.one * factor) - 1;
      expect(off).toBeGreaterThanOrEqual(-0.0365);
      expect(off).toBeLessThanOrEqual(0.0425);
    }
  }
});

test("the gas models stand in their order, and all fall to nothing without pressure", () => {
  fc.assert(
    fc.property(fc.double({ min: 1.02e5, max: 3e7, noNaN: true }), (pressure) => {
      const [isentropic, brode, isothermal] = (["isentropic", "brode", "isothermal"] as const).map((model) =>
        gasEnergy(model, pressure, 101325, 0.05),
      );
      expect(isentropic!).toBeLessThanOrEqual(isothermal! + 1e-6);
      expect(isentropic!).toBeLessThanOrEqual(brode! + 1e-6);
    }),
    settings,
  );
  expect(gasEnergy("isothermal", 101325, 101325, 1)).toBe(0);
});

test("a longer touch never has a higher limit", () => {
  for (const material of Object.keys(TOUCH_LIMITS) as (keyof typeof TOUCH_LIMITS)[]) {
    const limits = [0, 0.99, 1, 10, 10.1, 60, 60.1, 3600].map((seconds) => touchLimit(seconds, material));
    expect(limits).toEqual([...limits].sort((a, b) => b - a));
  }
});

test("tasks in a ring, or after one that is not there, have no critical path", () => {
  expect(
    criticalPath([
      { name: "a", time: 1, after: ["b"] },
      { name: "b", time: 1, after: ["a"] },
    ]),
  ).toBeUndefined();
  expect(criticalPath([{ name: "a", time: 1, after: ["c"] }])).toBeUndefined();
  expect(criticalPath([])).toMatchObject({ total: 0, critical: [] });
});

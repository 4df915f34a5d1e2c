// The lifting guideline that checks, hovers and the manual ask. NIOSH 94-110 for one person, HSE guidance for teams (sources H01, H04 in
// tests/reference/sources-hazards.md); properties of the equation over its range.

import fc from "fast-check";
import { expect, test } from "vitest";
import { liftLimit, teamLimit } from "../../language/figures/lift-limit.ts";
import { compositeLiftingIndex, recommendedWeightLimit, type Lift } from "../../language/figures/niosh-lift.ts";
import { FREQUENCY_ROWS, frequencyMultiplier } from "../../language/figures/niosh-multipliers.ts";

const settings = { seed: 20261125, numRuns: 300 };
const lifts: fc.Arbitrary<Lift> = fc.record({
  reach: fc.double({ min: 0, max: 0.8, noNaN: true }),
  height: fc.double({ min: 0, max: 2, noNaN: true }),
  travel: fc.double({ min: 0, max: 2, noNaN: true }),
  twist: fc.double({ min: 0, max: Math.PI, noNaN: true }),
  perMinute: fc.double({ min: 0, max: 20, noNaN: true }),
  duration: fc.constantFrom("short" as const, "moderate" as const, "long" as const),
  coupling: fc.constantFrom("good" as const, "fair" as const, "poor" as const),
});

test("the stated bases: one person 23 kg, two 2/3 and three 1/2 of the sum, more as three", () => {
  expect(liftLimit(1).kilograms).toBe(23);
  expect(liftLimit(2).kilograms).toBeCloseTo((2 * 23 * 2) / 3, 9);
  expect(liftLimit(3).kilograms).toBeCloseTo(34.5, 9);
  for (const people of [4, 5, 12]) {
    expect(liftLimit(people)).toMatchObject({ kilograms: liftLimit(3).kilograms, counted: 3, people });
    expect(liftLimit(people).basis).toContain("more than three");
  }
});

test("at arm's length the guideline falls: two people at 63 cm are asked for 12.2 kg at most", () => {
  expect(liftLimit(2, { reach: 0.63 }).kilograms).toBeCloseTo((2 / 3) * 2 * 23 * (25 / 63), 9);
  expect(liftLimit(2, { reach: 0.64 }).kilograms).toBe(0);
});

test("a team is as good as its weakest: unequal people, the lower ones counted", () => {
  expect(teamLimit(2, [20, 30]).kilograms).toBeCloseTo((2 / 3) * 50, 9);
  expect(teamLimit(4, [10, 20, 30, 40]).kilograms).toBeCloseTo(30, 9);
});

test("every situation lowers the guideline, none lifts it above the base", () => {
  fc.assert(
    fc.property(lifts, fc.integer({ min: 1, max: 6 }), (lift, people) => {
      const limit = liftLimit(people, lift);
      expect(limit.kilograms).toBeLessThanOrEqual(liftLimit(people).kilograms + 1e-9);
      expect(limit.eachAlone).toBeCloseTo(recommendedWeightLimit(lift), 12);
    }),
    settings,
  );
});

test("farther, longer, oftener, more twisted, worse gripped: never a higher limit", () => {
  fc.assert(
    fc.property(lifts, fc.double({ min: 0, max: 1, noNaN: true }), (lift, more) => {
      const base = recommendedWeightLimit(lift);
      const worse: readonly Lift[] = [
        { ...lift, reach: lift.reach + more },
        { ...lift, travel: lift.travel + more },
        { ...lift, twist: lift.twist + more },
        {
          ...lift,
          perMinute: lift.perMinute + more,
        },
        { ...lift, duration: "long" },
        { ...lift, coupling: "poor" },
      ];
      for (const one of worse) expect(recommendedWeightLimit(one)).toBeLessThanOrEqual(base + 1e-9);
    }),
    settings,
  );
});

test("the frequency multiplier goes through its rows and falls between them", () => {
  for (const duration of ["short", "moderate", "long"] as const) {
    for (let at = 1; at < FREQUENCY_ROWS.length; at++) {
      const [low, high] = [FREQUENCY_ROWS[at - 1]!, FREQUENCY_ROWS[at]!];
      const middle = frequencyMultiplier((low + high) / 2, duration, 1);
      expect(middle).toBeCloseTo(
        (frequencyMultiplier(low, duration, 1) + frequencyMultiplier(high, duration, 1)) / 2,
        12,
      );
    }
  }
});

test("the composite index does not depend on the order of the tasks", () => {
  const tasks = fc.array(
    fc.record({
      load: fc.integer({ min: 1, max: 20 }),
      perMinute: fc.integer({ min: 1, max: 3 }),
      frequencyIndependentLimit: fc.integer({ min: 10, max: 23 }),
    }),
    { minLength: 1, maxLength: 4 },
  );
  fc.assert(
    fc.property(tasks, (drawn) => {
      const named = drawn.map((task, at) => ({ ...task, name: String(at) }));
      const forward = compositeLiftingIndex(named, "short").index!;
      const backward = compositeLiftingIndex([...named].reverse(), "short").index!;
      const alone = Math.max(
        ...named.map(
          (task) => task.load / (task.frequencyIndependentLimit * frequencyMultiplier(task.perMinute, "short", 0.762)),
        ),
      );
      expect(forward).toBeGreaterThanOrEqual(alone - 1e-9);
      // Tasks that tie in their single index may swap and change the sum; without ties it is one figure.
      const singles = named.map((task) =>
        (task.load / (task.frequencyIndependentLimit * frequencyMultiplier(task.perMinute, "short", 0.762))).toFixed(9),
      );
      if (new Set(singles).size === singles.length) expect(backward).toBeCloseTo(forward, 9);
    }),
    settings,
  );
});

test("figures that make no sense are refused", () => {
  expect(() => liftLimit(0)).toThrow(RangeError);
  expect(() => liftLimit(1.5)).toThrow(RangeError);
  expect(() => liftLimit(1, { reach: -0.1 })).toThrow(RangeError);
});

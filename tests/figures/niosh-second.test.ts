// The NIOSH equation a second time, in inches and pounds straight from the constants of the manual (DHHS (NIOSH) 94-110, H01), and held against the
// figures over the whole range. No kept library of a registry has this equation: this is a reformulation of our own, in other units, with its own
// table and its own search in it. It finds slips of code and of units; what it cannot find is a misreading of the manual, which the published
// worksheets of lifting-examples.csv are there for.

import fc from "fast-check";
import { expect, test } from "vitest";
import { recommendedWeightLimit, type Lift } from "../../language/figures/niosh-lift.ts";
import type { Coupling, LiftDuration } from "../../language/figures/niosh-multipliers.ts";

interface UsLift {
  readonly reachIn: number;
  readonly heightIn: number;
  readonly travelIn: number;
  readonly degrees: number;
  readonly perMinute: number;
  readonly duration: LiftDuration;
  readonly coupling: Coupling;
}

/** Lifts a minute: up to 1 h, up to 2 h, up to 8 h, each below 30 in and from 30 in. Table 5, row by row as printed. */
const table5 = `
  0.2 1.00 1.00 .95 .95 .85 .85
  0.5 .97 .97 .92 .92 .81 .81
  1 .94 .94 .88 .88 .75 .75
  2 .91 .91 .84 .84 .65 .65
  3 .88 .88 .79 .79 .55 .55
  4 .84 .84 .72 .72 .45 .45
  5 .80 .80 .60 .60 .35 .35
  6 .75 .75 .50 .50 .27 .27
  7 .70 .70 .42 .42 .22 .22
  8 .60 .60 .35 .35 .18 .18
  9 .52 .52 .30 .30 0 .15
  10 .45 .45 .26 .26 0 .13
  11 .41 .41 0 .23 0 0
  12 .37 .37 0 .21 0 0
  13 0 .34 0 0 0 0
  14 0 .31 0 0 0 0
  15 0 .28 0 0 0 0`
  .trim()
  .split("\n")
  .map((line) => line.trim().split(" ").map(Number));

function pounds(lift: UsLift): number {
  const { reachIn, heightIn, travelIn, degrees, perMinute, duration, coupling } = lift;
  if (reachIn > 25 || heightIn > 70 || travelIn > 70 || degrees > 135 || perMinute > 15) return 0;
  const low = heightIn < 30;
  const column = { short: 1, moderate: 3, long: 5 }[duration] + (low ? 0 : 1);
  let frequency = table5[0]![column]!;
  for (let i = 1; i < table5.length; i++) {
    const [from, to] = [table5[i - 1]!, table5[i]!];
    if (perMinute > from[0]! && perMinute <= to[0]!)
      frequency = (from[column]! * (to[0]! - perMinute) + to[column]! * (perMinute - from[0]!)) / (to[0]! - from[0]!);
  }
  const horizontal = reachIn <= 10 ? 1 : 10 / reachIn;
  const vertical = low ? 0.775 + 0.0075 * heightIn : 1.225 - 0.0075 * heightIn;
  const distance = travelIn <= 10 ? 1 : (0.82 * travelIn + 1.8) / travelIn;
  const asymmetry = (625 - 2 * degrees) / 625;
  const grip = coupling === "poor" ? 0.9 : coupling === "fair" && low ? 0.95 : 1;
  return 51 * horizontal * vertical * distance * asymmetry * frequency * grip;
}

/** Whole and half units, so that edges are met, and figures between. */
const upTo = (max: number): fc.Arbitrary<number> =>
  fc.oneof(
    fc.integer({ min: 0, max: 2 * max }).map((n) => n / 2),
    fc.double({ min: 0, max, noNaN: true }),
  );
const lifts: fc.Arbitrary<UsLift> = fc.record({
  reachIn: upTo(28),
  heightIn: upTo(75),
  travelIn: upTo(75),
  degrees: upTo(150),
  perMinute: upTo(17),
  duration: fc.constantFrom("short" as const, "moderate" as const, "long" as const),
  coupling: fc.constantFrom("good" as const, "fair" as const, "poor" as const),
});
const inSi = (lift: UsLift): Lift => ({
  reach: lift.reachIn * 0.0254,
  height: lift.heightIn * 0.0254,
  travel: lift.travelIn * 0.0254,
  twist: (lift.degrees * Math.PI) / 180,
  perMinute: lift.perMinute,
  duration: lift.duration,
  coupling: lift.coupling,
});
const POUND = 0.45359237;

test("the equation in inches and pounds gives the same limit as the figures, edges and all", () => {
  fc.assert(
    fc.property(lifts, (lift) => {
      expect(recommendedWeightLimit(inSi(lift), "us") / POUND).toBeCloseTo(pounds(lift), 6);
    }),
    { seed: 20261125, numRuns: 20_000 },
  );
});

test("the metric set differs from the inch set by the manual's rounding alone: 23 kg for 51 lb, 25 cm for 10 in, 75 cm for 30 in, 4.5 for 4.57 cm", () => {
  fc.assert(
    fc.property(lifts, (lift) => {
      const us = pounds(lift) * POUND,
        metric = recommendedWeightLimit(inSi(lift), "metric");
      // Between 63 cm and 25 in, 175 cm and 70 in, 75 cm and 30 in the two sets draw their edges at different places.
      const near = (value: number, edge: number): boolean => Math.abs(value - edge) < 1.2;
      if (near(lift.reachIn, 25) || near(lift.heightIn, 70) || near(lift.heightIn, 30) || near(lift.travelIn, 70))
        return;
      if (us === 0) expect(metric).toBe(0);
      else expect(Math.abs(metric / us - 1)).toBeLessThan(0.035);
    }),
    { seed: 20261125, numRuns: 5_000 },
  );
});

// Torque wrench facts, thread engagement and used nuts against published rows. Sources: S21 to S32, S40 and T17 to T21 of the source pages.

import fc from "fast-check";
import { expect, test } from "vitest";
import {
  boltLength,
  engagementInWeaker,
  engagementLength,
  leastEngagement,
  lengthFinding,
  screwLength,
  type TappedMaterial,
} from "../../language/figures/engagement.ts";
import { selfLockingLimits } from "../../language/figures/self-locking-nuts.ts";
import { isFigureError } from "../../language/figures/figure.ts";
import {
  adapterSetting,
  bestRange,
  leastSetting,
  settingWithDrag,
  testPoints,
  wrenchDeviation,
  wrenchFinding,
  type WrenchClass,
} from "../../language/figures/torque-wrench.ts";
import { toSi } from "../../language/quantities/index.ts";
import { expectNear, known, thread } from "./printed.ts";
import { referenceRows, tally, type Row } from "./reference-rows.ts";

const wrench = referenceRows("torque-wrench.csv"),
  wrenchTally = tally("torque-wrench.csv", wrench.length);
wrench.forEach((row, i) => {
  const name = `${row["topic"]} ${row["applies_to"]}, row ${i + 2} (${row["status"]})`;
  if (row["topic"] === "procedure" || row["topic"] === "interval")
    return wrenchTally.leave(name, "a rule for the calibration laboratory or a date, no figure of a wrench in use");
  if (row["fact"] === "lowest test point" || row["value"] === "lowest value marked on the scale") {
    return wrenchTally.row(name, () =>
      expect(wrenchFinding(9, { low: 10, high: 100 })).toEqual({ is: "under", limit: 10 }),
    );
  }
  if (row["note"]!.includes("do not use as a check value"))
    return wrenchTally.row(name, () => expect(bestRange(600).low).toBe(150));
  wrenchTally.row(name, () => wrenchRow(row));
});

function wrenchRow(row: Row): void {
  const applies = row["applies_to"]!;
  if (row["topic"] === "tolerance") {
    const type = applies.includes("type II") ? "II" : "I",
      letters = /class(?:es)? ([A-G](?:, [A-G])*)/.exec(applies)![1]!.split(", ");
    for (const letter of letters) {
      const at = (torque: number): number => wrenchDeviation(`${type}-${letter}` as WrenchClass, torque) * 100;
      if (applies.includes("at or below")) expect(at(10)).toBe(6);
      else if (applies.includes("above 10")) expect(at(10.01)).toBe(4);
      else if (row["value"] === "±6") expect([at(5), at(10), at(50)]).toEqual([6, 6, 6]);
      else expect([at(5), at(10), at(50)]).toEqual([6, 6, 4]);
    }
  } else if (row["topic"] === "test points") expect(testPoints(100)).toEqual(row["value"]!.split(", ").map(Number));
  else if (row["value"] === "20 % of maximum" || row["value"] === "20 % of full scale") {
    expect(leastSetting(50)).toBeCloseTo(10, 9);
    expect(wrenchFinding(9.9, { low: undefined, high: 50 })?.is).toBe("below-a-fifth");
    expect(wrenchFinding(10, { low: undefined, high: 50 })).toBeUndefined();
  } else if (row["fact"] === "most effective range") {
    const [low, high] = row["value"]!.split("..").map(Number) as [number, number],
      full = Number(/0\.\.(\d+)/.exec(applies)![1]),
      range = bestRange(full);
    expect(Math.abs(range.low - low) / full).toBeLessThan(0.02);
    expect(Math.abs(range.high - high) / full).toBeLessThan(0.03);
  } else {
    const [L, E] = [0.4, 0.05],
      deg = Math.PI / 180;
    if (applies.startsWith("straight adapter, pointing away"))
      expect(adapterSetting(80, L, E, 0)).toBeCloseTo((80 * L) / (L + E), 9);
    else if (applies.includes("pointing back"))
      expect(adapterSetting(80, L, E, 180 * deg)).toBeCloseTo((80 * L) / (L - E), 9);
    else if (applies.includes("at angle a"))
      expect(adapterSetting(80, L, E, 37 * deg)).toBeCloseTo((80 * L) / (L + E * Math.cos(37 * deg)), 9);
    else if (applies.includes("at 90 degrees")) expect(adapterSetting(80, L, E, 90 * deg)).toBeCloseTo(80, 9);
    else if (applies.includes("extension")) expect(adapterSetting(80, L, 0, 0)).toBe(80);
    else
      expect([
        settingWithDrag(60, 6),
        settingWithDrag(60, 6, "from-a-third"),
        settingWithDrag(60, 20, "from-a-third"),
      ]).toEqual([66, 60, 80]);
  }
}

const reuse = referenceRows("reuse-and-engagement.csv"),
  reuseTally = tally("reuse-and-engagement.csv", reuse.length);
reuse.forEach((row, i) => {
  const name = `${row["topic"]} ${row["applies_to"]}, row ${i + 2} (${row["status"]})`;
  const notFigures =
    /finger test|condition|prevailing-off|reuse|uses|example/.test(row["quantity"]!) ||
    row["note"]!.includes("cautious outlier");
  if (notFigures)
    return reuseTally.leave(
      name,
      "a rule in words, which the language keeps as a statement of the author, or an outlier",
    );
  reuseTally.row(name, () => reuseRow(row));
});

function reuseRow(row: Row): void {
  if (row["quantity"] === "least breakaway torque" || row["quantity"] === "least prevailing torque") {
    const nut = /thread (\S+)/.exec(row["applies_to"]!)![1]!,
      limits = known(selfLockingLimits(nut));
    const limit = row["quantity"] === "least breakaway torque" ? limits.breakaway! : limits.prevailing!;
    expect(limit).toBeCloseTo(toSi(Number(row["value"]), "lbf·in"), 12);
    expectNear(limit, Number.parseFloat(row["value_si"]!), 0.006, "in N·m");
  } else if (row["quantity"] === "least engagement" && row["unit"] === "x d") {
    const into = row["applies_to"]!,
      materials: readonly TappedMaterial[] = into.includes("aluminium")
        ? ["aluminium"]
        : into.includes("brass")
          ? ["cast-iron", "brass"]
          : into.includes("cast iron")
            ? ["steel", "cast-iron"]
            : ["steel"];
    // An engine maker asks for 1.25 d in steel and cast iron where the common rule asks for 1.0 and 1.5: both are printed, the table lies between.
    for (const material of materials)
      expect(Math.abs(leastEngagement[material] - Number(row["value"]))).toBeLessThanOrEqual(
        into.includes("engine maker") ? 0.25 : 0,
      );
  } else if (row["quantity"] === "least engagement") {
    for (const size of ["M2", "M2.5", "M3"])
      expect((leastEngagement.steel * thread(size).diameter) / thread(size).pitch).toBeGreaterThanOrEqual(
        Number(row["value"]),
      );
  } else if (row["quantity"] === "Le") expectNear(engagementLength(0.01, 0.0015) * 1e3, 8.18, 0.001, "M10");
  else if (row["quantity"] === "Le1") expect(engagementInWeaker(0.008, 800e6, 400e6)).toBeCloseTo(0.016, 12);
  else if (row["topic"] === "thread protrusion") {
    const range = boltLength(0.03, 0.01, 0.0015),
      nut = 0.03 + 0.85 * 0.01,
      threads = Number(row["value"]);
    if (row["quantity"] === "least" && threads === 1) expect((range.least - (nut - 0.0005)) / 0.0015).toBeCloseTo(1, 9);
    else if (row["quantity"] === "least") expect((range.most - nut) / 0.0015).toBeGreaterThan(threads);
    else expect((range.most - (nut + 0.0005)) / 0.0015).toBeCloseTo(threads, 9);
  } else if (row["applies_to"] === "screw into tapped hole") {
    const range = screwLength(0.02, 0.008);
    expect([range.least, range.most].map((metres) => Math.round(metres * 1e6))).toEqual([28000, 52000]);
    expect([lengthFinding(0.025, range), lengthFinding(0.035, range), lengthFinding(0.06, range)]).toEqual([
      "short",
      undefined,
      "long",
    ]);
  } else {
    const range = boltLength(0.03, 0.01, 0.0015);
    expect([range.least, range.most].map((metres) => Math.round(metres * 1e6))).toEqual([39500, 46500]);
  }
}

test("the two sets for used nuts stay apart: civil limits are 0.41 to 0.67 of the army's", () => {
  for (const nut of ["1/2-20", "3/4-16", "1-8", "1/2-13"]) {
    const { breakaway, prevailing } = known(selfLockingLimits(nut));
    expect(prevailing! / breakaway!).toSatisfy((share: number) => share > 0.4 && share < 0.68);
  }
  expect(isFigureError(selfLockingLimits("M8"))).toBe(true);
});

test("an adapter lowers the setting, mirrored at 90 degrees, and one that reaches past the grip has none", () => {
  fc.assert(
    fc.property(
      fc.double({ min: 1, max: 500, noNaN: true }),
      fc.double({ min: 0.1, max: 2, noNaN: true }),
      fc.double({ min: 0.01, max: 0.09, noNaN: true }),
      fc.double({ min: 0, max: 1.5, noNaN: true }),
      (wanted, lever, adapter, angle) => {
        const out = adapterSetting(wanted, lever, adapter, angle)!,
          back = adapterSetting(wanted, lever, adapter, Math.PI - angle)!;
        expect(out).toBeLessThanOrEqual(wanted);
        expect(back).toBeGreaterThanOrEqual(wanted);
        expectNear(1 / out + 1 / back, 2 / wanted, 1e-9, "mean of the inverses");
      },
    ),
    { seed: 20, numRuns: 200 },
  );
  expect(adapterSetting(80, 0.1, 0.2, Math.PI)).toBeUndefined();
});

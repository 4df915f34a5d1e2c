// Every row of lifting.csv against the multipliers and tables of the figures. Sources H01 to H08 in tests/reference/sources-hazards.md: NIOSH 94-110 read
// through a page-by-page specification, HSE guide and filter, team handling guidance. Rows marked memory are compared and counted, and are no oracle
// by themselves.

import { expect } from "vitest";
import {
  FILTER_ROWS,
  ISO_REFERENCE_MASS,
  PUSH_PULL,
  repetitionReduction,
  twistReduction,
} from "../../language/figures/handling-filter.ts";
import { TEAM_SHARES, teamLimit } from "../../language/figures/lift-limit.ts";
import { GOOD_HANDLE, OPTIMAL_CONTAINER, gripCoupling } from "../../language/figures/niosh-coupling.ts";
import { NIOSH_NOT_FOR, estimatedReach } from "../../language/figures/niosh-lift.ts";
import {
  ASYMMETRY_MOST,
  FREQUENCY_LEAST,
  NIOSH,
  asymmetryMultiplier,
  couplingMultiplier,
  distanceMultiplier,
  frequencyMultiplier,
  horizontalMultiplier,
  loadConstant,
  verticalMultiplier,
  type Coupling,
  type LiftDuration,
  type NioshConstants,
} from "../../language/figures/niosh-multipliers.ts";
import { halfUp, referenceRows, tally, type Row } from "./reference-rows.ts";

const file = "lifting.csv";
const rows = referenceRows(file);
const count = tally(file, rows.length);

const setOf = (unit: string): NioshConstants => (unit.startsWith("in") ? "us" : "metric");
const metres = (value: number, unit: string): number => value * NIOSH[setOf(unit)].unit;
const radians = (degrees: number): number => (degrees * Math.PI) / 180;

/** Three printed values that are not the rounded formula: misprints of the manual by its own formula (sources-hazards.md, disagreement 1). */
const misprints: Readonly<Record<string, number>> = { "HM in 22": 0.45, "HM in 23": 0.43, "DM cm 130": 0.85 };

function multiplier(table: string, value: number, unit: string): number {
  switch (table) {
    case "HM":
      return horizontalMultiplier(metres(value, unit), setOf(unit));
    case "VM":
      return verticalMultiplier(metres(value, unit), setOf(unit));
    case "DM":
      return distanceMultiplier(metres(value, unit), setOf(unit));
    default:
      return asymmetryMultiplier(radians(value));
  }
}

function checkMultiplier(row: Row): void {
  const { table, unit, row: key, value } = row as Record<"table" | "unit" | "row" | "value", string>;
  if (key.startsWith(">")) return expect(multiplier(table, Number(key.slice(1)) + 0.1, unit)).toBe(0);
  const got = multiplier(table, Number(key), unit);
  if (row["formula_value"] !== "")
    expect(Math.abs(got - Number(row["formula_value"]))).toBeLessThanOrEqual(0.00005 + 1e-9);
  const misprint = misprints[`${table} ${unit} ${key}`];
  if (misprint === undefined) return expect(halfUp(got, 2)).toBe(Number(value));
  expect(halfUp(got, 2)).toBe(misprint);
  expect(misprint).not.toBe(Number(value));
}

function checkFrequency(row: Row): void {
  const [, word, place] = /^(short|moderate|long) .*; V (<|>=) 75/.exec(row["column"]!)!;
  const key = row["row"]!;
  const rate = key.startsWith("<=") ? 0.1 : key.startsWith(">") ? 15.1 : Number(key);
  for (const [height, set] of [
    [place === "<" ? 0.5 : 0.75, "metric"],
    [place === "<" ? 0.7 : 0.762, "us"],
  ] as const) {
    expect(frequencyMultiplier(rate, word as LiftDuration, height, set)).toBeCloseTo(Number(row["value"]), 12);
  }
}

/** Text rows: the formulas, limits and rules, each with what the program has for it. */
const rules: Readonly<Record<string, () => void>> = {
  "formula cm, kg LC": () => expect(loadConstant("metric")).toBe(23),
  "formula in, lb LC": () => expect(loadConstant("us")).toBeCloseTo(51 * 0.45359237, 12),
  "formula cm, kg HM": () => expect(horizontalMultiplier(0.4)).toBeCloseTo(25 / 40, 12),
  "formula in, lb HM": () => expect(horizontalMultiplier(16 * 0.0254, "us")).toBeCloseTo(10 / 16, 12),
  "formula cm, kg VM": () =>
    [0.2, 1.4].forEach((v) => expect(verticalMultiplier(v)).toBeCloseTo(1 - 0.003 * Math.abs(v * 100 - 75), 12)),
  "formula in, lb VM": () =>
    [8, 60].forEach((v) => expect(verticalMultiplier(v * 0.0254, "us")).toBeCloseTo(1 - 0.0075 * Math.abs(v - 30), 12)),
  "formula cm, kg DM": () => expect(distanceMultiplier(0.9)).toBeCloseTo(0.82 + 4.5 / 90, 12),
  "formula in, lb DM": () => expect(distanceMultiplier(36 * 0.0254, "us")).toBeCloseTo(0.82 + 1.8 / 36, 12),
  "formula cm, kg AM": () => expect(asymmetryMultiplier(radians(50))).toBeCloseTo(1 - 0.0032 * 50, 12),
  "formula in, lb AM": () => expect(asymmetryMultiplier(radians(50))).toBeCloseTo(1 - 0.0032 * 50, 12),
  "limit cm F max": () => expect(frequencyMultiplier(16, "short", 1)).toBe(0),
  "limit in F max": () => expect(frequencyMultiplier(16, "short", 1, "us")).toBe(0),
  "HSE filter 1-2 a minute": () => [1, 2].forEach((rate) => expect(repetitionReduction(rate)).toBe(0.3)),
  "HSE filter 5-8 a minute": () => [5, 8].forEach((rate) => expect(repetitionReduction(rate)).toBe(0.5)),
  "HSE filter over 12 a minute": () => expect(repetitionReduction(12.5)).toBe(0.8),
  "HSE filter twist beyond 45 deg": () => expect(twistReduction(radians(46))).toBe(0.1),
  "HSE filter twist beyond 90 deg": () => expect(twistReduction(radians(91))).toBe(0.2),
  "HSE filter basis": () => expect([repetitionReduction(0.5), repetitionReduction(0.51)]).toEqual([0, 0.3]),
  "team persons 2": () => expect(TEAM_SHARES[2]).toBe(2 / 3),
  "team persons 3": () => expect(TEAM_SHARES[3]).toBe(1 / 2),
  "team persons > 4": () => expect(teamLimit(5).counted).toBe(3),
  "HSE push or pull m distance without rest": () => expect(PUSH_PULL.distanceWithoutRest).toBe(20),
  "ISO 11228-1 kg reference mass, ideal conditions": () => expect(ISO_REFERENCE_MASS.ideal).toBe(25),
  "ISO 11228-1 kg women 20-45": () => expect(ISO_REFERENCE_MASS.women).toBe(20),
  "ISO 11228-1 kg scope from": () => expect(ISO_REFERENCE_MASS.scopeFrom).toBe(3),
};

/** Rows of the decision tree and of what counts as optimal. */
function checkGrip(name: string, column: string, value: string): void {
  const sizes: Readonly<Record<string, readonly [number, string]>> = {
    "container length": [OPTIMAL_CONTAINER.lengthMost, "<= 40 cm"],
    "container height": [OPTIMAL_CONTAINER.heightMost, "<= 30 cm"],
    "handle diameter": [GOOD_HANDLE.diameterLeast, "1.9-3.8 cm"],
    "handle length": [GOOD_HANDLE.lengthLeast, ">= 11.5 cm"],
    "handle clearance": [GOOD_HANDLE.clearanceLeast, "5 cm"],
  };
  const size = sizes[name];
  if (size !== undefined) {
    expect(column).toBe("optimal");
    expect(size[0] * 100).toBeCloseTo(Number(/[\d.]+/.exec(value)![0]), 9);
    if (name === "handle diameter") expect(GOOD_HANDLE.diameterMost * 100).toBeCloseTo(3.8, 9);
    return;
  }
  const hold = name.includes("not flexed")
    ? "fingers not flexed"
    : name.includes("flexed")
      ? "fingers flexed 90°"
      : "good";
  const object = name.startsWith("container") ? "container" : "loose object";
  const tooLarge =
    name === "container, not optimal" ? [{ length: 0.41 }, { height: 0.31 }] : [{ length: 0.4, height: 0.3 }];
  for (const at of tooLarge)
    expect(gripCoupling({ object, hold, bulky: name === "loose object, bulky", ...at }), name).toBe(
      column === "" ? value : column,
    );
}

const limits: Readonly<Record<string, (set: NioshConstants) => number>> = {
  "H min": (set) => NIOSH[set].horizontal,
  "H max": (set) => NIOSH[set].horizontalMost,
  "V max": (set) => NIOSH[set].verticalMost,
  "D min": (set) => NIOSH[set].travelLeast,
  "D max": (set) => NIOSH[set].travelMost,
  "A max": () => ASYMMETRY_MOST,
  "F min": () => FREQUENCY_LEAST,
};

const left: Readonly<Record<string, string>> = {
  duration: "checked by niosh-duration in lifting-examples.csv",
  index: "an opinion on indices; the program gives the figure alone",
  "HSE filter carry": "a sentence of the guide",
};

/** Rows of ISO 11228-1 that are memory or sentences. */
const isLeft = (row: Row, key: string): string | undefined =>
  left[row["table"]!] ??
  left[key] ??
  (row["table"] === "ISO 11228-1" && rules[key] === undefined ? "memory, or the scope in words" : undefined);

for (const row of rows) {
  const {
    table,
    unit,
    row: name,
    column,
    value,
  } = row as Record<"table" | "unit" | "row" | "column" | "value", string>;
  const key = [table, unit, name].filter((part) => part !== "").join(" ");
  const title = column === "" ? key : `${key}, ${column}`;
  const why = isLeft(row, key);
  if (why !== undefined) {
    count.leave(title, why);
    continue;
  }
  count.row(title, () => {
    const rule = rules[key];
    if (rule !== undefined) return rule();
    if (table === "limit") return expect(limits[name]!(setOf(unit))).toBe(Number(value));
    if (table === "H estimate") {
      const [, base] = /^(\d+) \+ W\/2$/.exec(value)!;
      const scale = NIOSH[setOf(unit)].unit;
      const height = (name.includes(">=") ? 30 : 5) * scale;
      return expect(estimatedReach(40 * scale, height, setOf(unit))).toBeCloseTo((Number(base) + 20) * scale, 12);
    }
    if (["HM", "VM", "DM", "AM"].includes(table)) return checkMultiplier(row);
    if (table === "FM") return checkFrequency(row);
    if (table === "CM")
      return expect(couplingMultiplier(name as Coupling, column.includes(">=") ? 0.75 : 0.74)).toBe(Number(value));
    if (table === "not applicable") {
      const listed = NIOSH_NOT_FOR.map((one) => one.replace("°C", "degC").replace(/(\d) to (\d)/g, "$1-$2"));
      return expect(listed).toContainEqual(name.replace(/ \((30 in\/s|friction below 0.4)\)/, ""));
    }
    if (table === "coupling") return checkGrip(name, column, value);
    if (table === "HSE filter") {
      const [who, arms] = column.split(", ") as ["men" | "women", string];
      return expect(
        FILTER_ROWS.find((one) => one.height === name)?.[who][arms === "close" ? "close" : "extended"],
      ).toBe(Number(value));
    }
    if (table === "HSE push or pull") {
      return expect(PUSH_PULL[name === "start or stop" ? "startOrStop" : "keepMoving"][column as "men" | "women"]).toBe(
        Number(value),
      );
    }
    throw new Error(`no check for ${title}`);
  });
}

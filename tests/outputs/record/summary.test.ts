// Spread of readings against published data sets, and what is left out of it.

import { expect, test } from "vitest";
import { write } from "../../../language/outputs/output.ts";
import { spreadOf } from "../../../language/outputs/record/spread.ts";
import { recordSummary, summaryData } from "../../../language/outputs/record/summary.ts";
import { options } from "../outputs-of.ts";
import { full, input, lineWhere, withLine } from "./machine.ts";

// NIST Statistical Reference Datasets, univariate: NumAcc1, NumAcc2, NumAcc3, NumAcc4 (definitions and certified values from memory).
test.each([
  ["NumAcc1", [10000001, 10000003, 10000002], 10000002, 1],
  ["NumAcc2", [1.2, ...Array.from({ length: 1000 }, (_, i) => (i % 2 === 0 ? 1.1 : 1.3))], 1.2, 0.1],
  [
    "NumAcc3",
    [1000000.2, ...Array.from({ length: 1000 }, (_, i) => (i % 2 === 0 ? 1000000.1 : 1000000.3))],
    1000000.2,
    0.1,
  ],
  [
    "NumAcc4",
    [10000000.2, ...Array.from({ length: 1000 }, (_, i) => (i % 2 === 0 ? 10000000.1 : 10000000.3))],
    10000000.2,
    0.1,
  ],
] as const)("%s: mean and standard deviation as certified", (_, values, mean, deviation) => {
  const spread = spreadOf(values)!;
  expect(Math.abs(spread.mean / mean - 1)).toBeLessThan(1e-14);
  expect(Math.abs(spread.deviation! / deviation - 1)).toBeLessThan(1e-7);
});

test("one figure has no deviation, none has no spread, and the median of an even number lies between", () => {
  expect(spreadOf([4])).toEqual({ count: 1, lowest: 4, highest: 4, median: 4, mean: 4, deviation: undefined });
  expect(spreadOf([])).toBeUndefined();
  expect(spreadOf([4, 1, 3, 2])!.median).toBe(2.5);
});

const reading = lineWhere(({ readings }) => readings[0]?.isFigure === true),
  measured = (value: number, unit = "mm") =>
    withLine(reading.id, { readings: [{ reading: 1, tries: [{ value, unit }] }] });

test("the last try of each unit counts, in the reading's own unit; records of another revision are left out and named", () => {
  const records = [
    measured(13),
    measured(12),
    measured(0.6, "in"),
    { ...measured(99), content: "0".repeat(64) },
    withLine(reading.id, { readings: [] }),
  ].map((record, i) => ({ file: `r${i}.json`, record }));
  const data = summaryData(records, input, options),
    [bore] = data.readings.filter(({ line }) => line === reading.id);
  expect(data.leftOut).toEqual(["r3.json"]);
  expect([bore!.unit, bore!.spread!.count, bore!.outside, bore!.missing]).toEqual(["in", 3, 1, 1]);
  expect(bore!.values.map(({ value }) => Number(value.toFixed(4)))).toEqual([0.5118, 0.4724, 0.6]);
  const svg = write(recordSummary(records), "svg", input, options);
  expect(svg.match(/<circle /g)).toHaveLength(2);
  expect(svg.match(/<rect /g)).toHaveLength(1);
  expect(svg).toContain("DRAFT");
  expect(svg).toContain("Left out, since made from another revision: r3.json");
  expect(summaryData(records, input, options).readings).toEqual(summaryData(records, input, options).readings);
  expect(full().procedures).toHaveLength(1);
});

// What a proof may leave, on both sides of the published figures: 60 V dc (IEC 60204-1:2016, 6.2.4) and 50 V ac (IEC 60364-4-41), from memory.

import { expect, test } from "vitest";
import { check, stage } from "../bench/refit/stage.ts";

const all = (hazard: string): string[] =>
  check(stage(`part lid "Lid" { rests on b }\n ${hazard}`, "step { remove lid }", "aim none"))
    .findings.filter(({ code }) => code === "hazard/proof-limit")
    .map(({ says }) => says);
const bus = (limit: string): string[] =>
  all(
    `hazard bus electrical danger "Bus" { voltage 560 V dc  on lid  precaution lock-out "Lock." precaution prove-dead "Test." ${limit} }`,
  );
const air = (limit: string): string[] =>
  all(
    `hazard air pressure danger "Air" { pressure 10 bar  on lid  precaution vent "Open." precaution prove-zero "Gauge." ${limit} }`,
  );

test("of a voltage no more than 60 V dc or 50 V ac may be left", () => {
  for (const limit of ["", "at most 60 V dc", "at most 60 V", "at most 50 V ac", "5 V"])
    expect(bus(limit), limit).toEqual([]);
  for (const limit of ["at most 61 V dc", "at most 51 V ac", "at most 500 V", "400 V"])
    expect(bus(limit), limit).toHaveLength(1);
});

test("a limit that the hazard keeps as well proves nothing, and neither does a lower one", () => {
  expect(air("at most 0.1 bar")).toEqual([]);
  expect(air("at most 10 bar")).toEqual([
    "Air is proved by at most 10 bar, and that is what the hazard has itself: pressure 10 bar",
  ]);
  expect(air("at least 0.1 bar")).toEqual([
    "Air is proved by at least 0.1 bar: what has to be gone is proved by an upper limit, at most",
  ]);
  expect(bus("at least 5 V")).toHaveLength(1);
});

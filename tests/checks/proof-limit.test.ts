// What a proof may leave, on both sides of the published figures: 60 V dc (IEC 60204-1:2016, 6.2.4) and 50 V ac (IEC 60364-4-41), from memory.

import { expect, test } from "vitest";
import { check, stage } from "../bench/refit/stage.ts";

const all = (hazard: string): string[] =>
  check(stage(`part lid "Lid" { rests on b }\n ${hazard}`, "step { remove lid }", "aim none"))
    .findings.filter(({ code }) => code === "hazard/proof-limit")
    .map(({ says }) => says);
const bus = (limit: string): string[] =>
  all(
    `hazard bus electrical danger "Bus" { voltage ${limit.endsWith("ac") ? "400 V ac" : "560 V dc"}  on lid  precaution lock-out "Lock." precaution prove-dead "Test." ${limit} }`,
  );
const air = (limit: string): string[] =>
  all(
    `hazard air pressure danger "Air" { pressure 10 bar  on lid  precaution vent "Open." precaution prove-zero "Gauge." ${limit} }`,
  );

test("a limit that lets more than 60 V dc or 50 V ac pass is asked about", () => {
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

test("a vacuum, cold and air that lacks oxygen are proved from below", () => {
  const from = (kind: string, figure: string, limit: string): string[] =>
    all(`hazard h ${kind} "H" { ${figure}  on lid  precaution other "Wait."  precaution prove-zero "Read." ${limit} }`);
  for (const limit of ["at least -0.05 bar", "-0.05..0.05 bar", "at least -0.05 bar at most 0.05 bar"])
    expect(from("pressure", "pressure -0.8 bar", limit), limit).toEqual([]);
  expect(from("pressure", "pressure -0.8 bar", "at most 0.1 bar")).toEqual([
    "H is proved by at most 0.1 bar: what lacks here is proved by a lower limit, at least",
  ]);
  expect(from("pressure", "pressure -0.8 bar", "at least -0.8 bar")).toHaveLength(1);
  expect(from("cold", "temperature -190 °C", "at least 5 °C")).toEqual([]);
  expect(from("cold", "temperature -190 °C", "at most 5 °C")).toHaveLength(1);
  expect(from("hot", "temperature 90 °C", "at most 40 °C")).toEqual([]);
  expect(from("pressure", "pressure 10 bar", "at least -0.1 bar at most 0.1 bar")).toEqual([]);
});

test("alternating voltage is not proved gone by a direct one, nor the other way round (common practice)", () => {
  const of = (full: string, limit: string): string[] =>
    all(
      `hazard bus electrical danger "Bus" { voltage ${full}  on lid  precaution lock-out "Lock." precaution prove-dead "Test." ${limit} }`,
    );
  expect(of("400 V ac", "at most 5 V dc")).toEqual([
    "Bus is proved by at most 5 V dc, and an instrument that is set to dc does not show voltage 400 V ac",
  ]);
  expect(of("560 V dc", "at most 5 V ac")).toHaveLength(1);
  // Without a word of its own the limit is of the hazard's kind: 50 V ac.
  expect(of("400 V ac", "at most 55 V")).toHaveLength(1);
  expect(of("400 V ac", "at most 50 V")).toEqual([]);
});

test("far above nothing is no zero: a tenth of its own figure, and 0.5 bar where a gauge can tell it", () => {
  const at = (pressure: string, limit: string): string[] =>
    check(
      stage(
        `part lid "Lid" { rests on b }\n hazard air pressure danger "Air" { ${pressure} on lid precaution vent "Open." precaution prove-zero "Gauge." at most ${limit} }`,
        "step { remove lid }",
        "aim none",
      ),
    )
      .findings.filter(({ code }) => code === "hazard/proof-limit")
      .map(({ severity }) => severity);
  expect(at("pressure 80 bar", "79 bar")).toEqual(["error"]);
  expect(at("pressure 80 bar", "8.1 bar")).toEqual(["error"]);
  expect(at("pressure 80 bar", "2 bar")).toEqual(["question"]);
  // 1.6 % of 80 bar is 1.28 bar (EN 837-1, class 1.6, from memory).
  expect(at("pressure 80 bar", "1.2 bar")).toEqual([]);
  expect(at("pressure 10 bar", "0.6 bar")).toEqual(["question"]);
  expect(at("pressure 10 bar", "0.5 bar")).toEqual([]);
  expect(at("", "3 bar")).toEqual(["question"]);
  // A tenth of a low pressure may be less than a gauge can tell.
  expect(at("pressure 0.8 bar", "0.1 bar")).toEqual(["question"]);
  expect(at("pressure 0.8 bar", "0.05 bar")).toEqual([]);
  const spring = (limit: string): string[] =>
    all(
      `hazard s spring danger "Spring" { force 2000 N on lid precaution let-down "Screw it out." precaution prove-zero "Balance." at most ${limit} }`,
    );
  expect(spring("1900 N")).toEqual([
    "Spring is proved by at most 1900 N, which lets more than a tenth of its force of 2000 N pass; the maker and local rules may ask for less",
  ]);
  expect(spring("100 N")).toEqual([]);
});

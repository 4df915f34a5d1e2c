// One slip of the hand is one finding, where another check would say the same again in other words.

import { expect, test } from "vitest";
import { check, codes, stage } from "../bench/refit/stage.ts";

const all = (text: string): string[] => check(text).findings.map((finding) => finding.code);
const screws = `fastener screws screw "Screws" { count 4 size M6x20 class 8.8 torque TORQUE joins lid to b }`;
const lid = `no electrical "None."\n part lid "Lid"\n ${screws.replace("TORQUE", "9 N·m")}`;

test("a misspelt tool is not said to be missing and the right one to be unused as well", () => {
  const text = (tool: string): string =>
    `tool sledge "Sledge"\n${stage(lid, `step { undo screws remove lid with ${tool} }`, "aim lid off")}`;
  expect(all(text("sledge"))).toEqual([]);
  expect(all(text("sledg"))).toEqual(["tool/missing"]);
  expect(all(text(""))).toEqual(["syntax/argument-missing"]);
});

test("a torque that the thread does not carry is looked for on no wrench", () => {
  const text = (torque: string): string =>
    `tool wrench "Wrench" { kind torque-wrench range 5..25 N·m }\n${stage(
      lid.replace("9 N·m", torque),
      "step { undo screws remove lid }",
      "aim lid off",
    )}`;
  expect(all(text("9 N·m"))).toEqual([]);
  expect(all(text("90 N·m"))).toEqual(["fastener/torque-over-yield"]);
  expect(all(text("2.5 N·m"))).toContain("tool/wrench-range");
});

test("of two things that are each behind the other only the ring is said", () => {
  const facts = `part lid "Lid" { rests on b behind hood }\n part hood "Hood" { rests on b behind lid }`;
  expect(codes(stage(facts, "step { remove lid remove hood }"))).toEqual(["sequence/cycle"]);
});

test("a thing behind itself is a ring of one", () => {
  const facts = `part lid "Lid" { rests on b behind lid }`;
  expect(check(stage(facts, "step { remove lid }")).findings.map((one) => one.says)).toContain(
    "Lid is behind itself: it can never be reached",
  );
});

test("a removal that stands twice is said, in the same step too; what came along with another is not", () => {
  const facts = `part lid "Lid" { rests on b }\n part knob "Knob" { fits lid }`;
  expect(codes(stage(facts, "step { remove lid remove lid }"))).toEqual(["sequence/already-undone"]);
  expect(codes(stage(facts, "step { remove lid remove knob }"))).toEqual([]);
});

test("a hazard without a place is asked about where hands wait for its proof, and not where it fills the room", () => {
  const text = (hazard: string): string => stage(`${lid}\n${hazard}`, "step { undo screws remove lid }", "aim lid off");
  const pressure = `hazard air pressure danger "Air" { PLACE precaution vent "Open." precaution prove-zero "Gauge." }`;
  expect(all(text(pressure.replace("PLACE", "")))).toEqual(["hazard/on-missing"]);
  expect(all(text(pressure.replace("PLACE", "pushes lid")))).not.toContain("hazard/on-missing");
  expect(all(text(`hazard din noise caution "Noise" { precaution barrier "Keep away." wear ear-protection }`))).toEqual(
    [],
  );
});

test("a unit that says nothing of what stays on the stand is asked about, once it has a procedure", () => {
  const unit = `unit u "U" { part b "Base"\n part lid "Lid"\n ${screws.replace("TORQUE", "9 N·m")} }\n`;
  const procedure = `procedure p "P" for u { aim lid off step { undo screws remove lid } }`;
  expect(all(unit)).not.toContain("names/base-missing");
  expect(all(unit + procedure)).toEqual(["names/base-missing"]);
});

test("an instrument is held against the limits that it has to show", () => {
  const text = (range: string, limit: string): string =>
    `tool t "Gauge" { range ${range} }\n${stage(lid, `step { measure gap on lid "Gap" ${limit} with t undo screws remove lid }`, "aim lid off")}`;
  expect(all(text("0..1 mm", "at most 0.4 mm"))).toEqual([]);
  // Leaves of a feeler gauge are laid together; a gauge of pressure stays at its end.
  expect(all(text("0..1 mm", "0.8..1.2 mm"))).toEqual([]);
  expect(all(text("0..16 bar", "8..30 bar"))).toEqual(["measure/tool-range"]);
  expect(all(text("1..16 bar", "0.5..8 bar"))).toEqual([]);
  expect(all(text("0..1 in", "at most 25.4 mm"))).toEqual([]);
  expect(all(text("0..1 mm", "at most 4 mm"))).toEqual(["measure/tool-range"]);
  expect(all(text("0..16 bar", "at most 4 mm"))).toEqual(["measure/tool-range"]);
  // A spring balance on a lever reads a torque, a multimeter has more than one scale.
  expect(all(text("0..250 N", "at most 5 N·m"))).toEqual([]);
  expect(all(text("0..600 V", "at least 5 Mohm"))).toEqual([]);
  expect(all(text("0.05..1 mm", "at least 5 Mohm"))).toEqual(["measure/tool-range"]);
  expect(all(text("10..500 Hz", "at most 4 mm"))).toEqual(["measure/tool-range"]);
  // So little of a gauge's scale that its finger does not leave the stop.
  expect(all(text("0..16 bar", "at most 2 mbar"))).toEqual(["measure/tool-range"]);
  expect(all(text("0..16 bar", "at most 0.05 bar"))).toEqual([]);
  expect(all(text("0..16 bar", "at most 0 bar"))).toEqual([]);
  expect(all(text("0.01..1000 mbar", "at most 0.02 mbar"))).toEqual([]);
});

test("a proof that is made with another instrument than its hazard names is held against the limit of the hazard", () => {
  const text = (limit: string, tool: string): string =>
    `tool tester "Tester" { kind voltage-tester range 12..1000 V }\ntool gauge "Gauge" { range 0..16 bar }\n${stage(
      `part lid "Lid" { rests on b }\n hazard mains electrical danger "Mains" { voltage 400 V ac on lid precaution isolate "Off." precaution prove-dead "Test." with tester ${limit} }`,
      `step { isolate mains prove-dead mains with ${tool} remove lid }`,
      "aim lid off",
    )}`;
  for (const limit of ["at most 25 V", ""]) {
    expect(all(text(limit, "tester"))).not.toContain("measure/tool-range");
    expect(all(text(limit, "gauge")).filter((code) => code === "measure/tool-range")).toHaveLength(1);
  }
});

test("the instrument of a proof bears what may still stand there", () => {
  const text = (figure: string, proof: string, range: string): string =>
    `tool t "Tester" { range ${range} }\n${stage(`part lid "Lid" { rests on b }\n hazard h ${figure} on lid precaution ${proof} with t }`, "step { remove lid }", "aim none")}`;
  const volts = 'electrical danger "Bus" { voltage 6000 V ac',
    bars = 'pressure danger "Oil" { pressure 160 bar';
  for (const [figure, proof, small, large] of [
    [volts, 'lock-out "Lock." precaution prove-dead "Test."', "12..1000 V", "100..12000 V"],
    [bars, 'vent "Open." precaution prove-zero "Gauge."', "0..16 bar", "0..250 bar"],
  ] as const) {
    expect(all(text(figure, proof, large))).not.toContain("measure/tool-range");
    expect(all(text(figure, proof, small))).toContain("measure/tool-range");
  }
});

test("a temporary thing taken off before it is put on is one mistake", () => {
  const facts = `temporary felt "Felt"\n part lid "Lid" { rests on b }`;
  expect(codes(stage(facts, "step { put felt on b take felt off remove lid }"))).toEqual([]);
  expect(codes(stage(facts, "step { take felt off put felt on b remove lid }"))).toEqual(["sequence/already-undone"]);
  expect(codes(stage(facts, "step { put felt on b remove lid }"))).toEqual(["refit/temporary-left"]);
});

test("an order in numbers gives each of the pieces its turn before any has another; some may be gone over again", () => {
  const text = (count: string, order: string): string =>
    `unit u "U" { base b\n part b "Base"\n part lid "Lid"\n fastener ls screw "Screws" { ${count} size M6x16 torque 9 N·m sequence listed ${order} joins lid to b }\n}\n`;
  expect(all(text("count 4", "1, 3, 2, 4"))).toEqual([]);
  expect(all(text("count 4", "1, 3, 2, 4, 1, 2, 3, 4"))).toEqual([]);
  expect(all(text("count 4", "1, 3, 2, 4, 1"))).toEqual([]);
  expect(all(text("count 4  pieces left, right", "1, 3, 2, 4"))).toEqual([]);
  expect(all(text("count unknown", "1, 3, 2"))).toEqual([]);
  for (const order of ["1, 3, 2", "1, 3, 2, 5", "1, 3, 3, 2, 4", "0, 1, 2, 3"])
    expect(all(text("count 4", order)), order).toEqual(["fastener/sequence-listed"]);
});

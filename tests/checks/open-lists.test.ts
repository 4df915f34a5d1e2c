// Names of open lists: a slip of the hand is told, the shop's own name is taken. And strength classes by their standards.

import { expect, test } from "vitest";
import { strengthFinding } from "../../language/figures/strength-names.ts";
import { check } from "../bench/refit/stage.ts";

const said = (text: string): string[] =>
  check(text)
    .findings.filter((one) => one.code === "names/misspelt" || one.code === "fastener/strength-unknown")
    .map((one) => one.says);
const worn = (name: string): string[] => said(`hazard rim sharp caution "Rim" { wear ${name} }`);

test("what is worn: slips are told, with the usual name", () => {
  for (const [slip, usual] of [
    ["glovs", "gloves"],
    ["googles", "goggles"],
    ["face-sheild", "face-shield"],
    ["Gloves", "gloves"],
    ["earprotection", "ear-protection"],
    ["insulatng-gloves", "insulating-gloves"],
  ] as const)
    expect(worn(slip)).toEqual([`${slip} is no usual name of what is worn, but ${usual} is`]);
});

test("what is worn: a name of the shop's own is taken, a declared tool too", () => {
  for (const own of ["knee-pads", "arm-protection", "oil-gloves", "chemical-goggles", "hood", "gloves"])
    expect(worn(own)).toEqual([]);
  expect(said(`tool glovs "Shop gloves"\nhazard rim sharp caution "Rim" { wear glovs }`)).toEqual([]);
});

test("kinds of tool: slips are told, others are taken", () => {
  const kind = (name: string): string[] => said(`tool w "W" { kind ${name} }`);
  expect(kind("torqe-wrench")).toEqual(["torqe-wrench is no usual name of what a tool is, but torque-wrench is"]);
  expect(kind("torque-wrench")).toEqual([]);
  expect(kind("honing-mandrel")).toEqual([]);
});

const fastener = (facts: string, kind = "screw"): string[] =>
  said(`unit u "U" { base b part b "B" part lid "Lid" fastener f ${kind} "Screws" { ${facts} joins lid to b } }`);

test("a grade on a metric thread and a class on an inch thread are told", () => {
  expect(fastener("size M8x25 grade 5")).toEqual([
    "Screws: a grade is for inch threads, and M8 is a metric thread: write its class",
  ]);
  expect(fastener("size 3/8-16 UNC grade 8.8")).toEqual([
    "Screws: 8.8 is a class of metric threads, and 3/8-16 UNC is an inch thread",
  ]);
  expect(fastener("size 3/8-16 UNC class 8.8")).toEqual([
    "Screws: a class is for metric threads, and 3/8-16 UNC is an inch thread: write its grade",
  ]);
  expect(fastener("size M8x25 class A574")).toEqual([
    "Screws: A574 is a grade of inch threads, and M8 is a metric thread",
  ]);
});

test("right ones, and those of the shop's own, are taken", () => {
  for (const facts of [
    "size M8x25 class 8.8",
    "size M8x25 class A2-70",
    "size M8x25 class brass",
    "size 3/8-16 UNC grade 5",
    "size G1/4 class 8.8",
    "class 88",
  ])
    expect(fastener(facts)).toEqual([]);
  expect(fastener("size M8 class 8", "nut")).toEqual([]);
  expect(fastener("size M8x25 class 8")).toEqual(["Screws: 8 is a grade of inch threads, and M8 is a metric thread"]);
  expect(fastener("size M8x25 class 8.9")).toEqual([
    "Screws: 8.9 is no strength class of a metric thread; 8.8 and 9.8 are",
  ]);
});

// Designations as the standards print them: ISO 898-1:2013 table 1 (bolts and screws), ISO 3506-1 (stainless), SAE J429 (inch).
test("every designation of the standards is known on its thread and on no thread of the other system", () => {
  for (const name of [
    "4.6",
    "4.8",
    "5.6",
    "5.8",
    "6.8",
    "8.8",
    "9.8",
    "10.9",
    "12.9",
    "A2-50",
    "A2-70",
    "A4-70",
    "A4-80",
  ]) {
    expect(strengthFinding(name, "metric", "other")).toBeUndefined();
    if (/^[5-9]\.|^1\d\./.test(name)) expect(strengthFinding(name, "unified", "other")?.says).toBe("other system");
  }
  for (const name of ["1", "2", "5", "5.2", "8", "8.2"])
    expect(strengthFinding(name, "unified", "other")).toBeUndefined();
});

// The index of the manual: a number is looked up in the procedure that it is of.

import { expect, test } from "vitest";
import { manual } from "../../language/outputs/manual/manual.ts";
import { write } from "../../language/outputs/output.ts";
import { compiledExample, compiledText, options } from "./outputs-of.ts";

const procedure = (id: string, title: string): string =>
  `procedure ${id} "${title}" for box { aim lid off  step "Open" { undo screws  remove lid } }\n`;
const machine = `unit box "Box" { base foot  part foot "Foot"  part lid "Lid"  fastener screws screw "Screws" { count 2  joins lid to foot } }\n`;
const lidIn = (text: string): string[] =>
  manual
    .data(compiledText(machine + text), options)
    .index.find(({ name }) => name === "Lid")!
    .lines.map(({ line }) => line);

test("with one procedure the numbers stand alone, with several the first of each says which it is of", () => {
  expect(lidIn(procedure("one", "First"))).toEqual(["1.2", "R1.1"]);
  expect(lidIn(procedure("one", "First") + procedure("two", "Second"))).toEqual([
    "First: 1.2",
    "R1.1",
    "Second: 1.2",
    "R1.1",
  ]);
  const page = write(
    manual,
    "html",
    compiledText(machine + procedure("one", "First") + procedure("two", "Second")),
    options,
  );
  expect(page).toMatch(/<a href="#p1-line-1\.2">First: 1\.2<\/a>/);
  expect(page).toMatch(/<a href="#p2-line-1\.2">Second: 1\.2<\/a>/);
});

test("a plug that is opened to let a fluid out stands in the index with that line", () => {
  const { index } = manual.data(compiledExample("dairy-pump/pump.strip"), options);
  expect(index.find(({ name }) => name === "Drain plug")!.lines.map(({ line }) => line)).toEqual(["2.1", "R2.5"]);
});

test("where one procedure asks for more people than another, each number says which it is of", () => {
  const box = (id: string, crew: string): string =>
    `procedure ${id} "Procedure ${id}" for box { aim none  ${crew} step "Look" { inspect lid "No crack." } }`;
  const { who } = manual.data(
    compiledText(`unit box "Box" { base foot  part foot "Foot"  part lid "Lid" { fits foot } }
${box("one", "")}
${box("two", "crew 2")}`),
    options,
  );
  expect(who.filter((line) => line.includes("At least"))).toEqual([
    "Procedure one: At least 1 person.",
    "Procedure two: At least 2 people.",
  ]);
  const alike = manual.data(compiledExample("valve-actuator/actuator.strip"), options).who;
  expect(alike.filter((line) => line.startsWith("At least"))).toEqual(["At least 2 people."]);
});

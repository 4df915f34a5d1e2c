// What a line asks of the lines before it: by the bench's own facts, on the flagship and on small machines.

import { expect, test } from "vitest";
import { lineNeeds, type LineNeeds } from "../../language/outputs/lines/line-needs.ts";
import { linesOf } from "../../language/outputs/lines/groups.ts";
import type { ActionLine } from "../../language/outputs/lines/line.ts";
import { compiledExample, compiledText, options, type Compiled } from "../outputs/outputs-of.ts";

interface Known extends LineNeeds {
  readonly line: ActionLine;
}

function needsIn(input: Compiled, procedure: string): Known[] {
  const performance = input.performances.find((each) => each.procedure.id === procedure)!,
    lines = linesOf(performance, options),
    needs = lineNeeds(lines);
  return [...lines.strip, ...lines.refit, ...lines.finish]
    .flatMap((group) => group.lines)
    .flatMap((line) => (line.is === "action" ? [{ line, ...needs.get(line.id)! }] : []));
}

const machine = (body: string): string => `
unit box "Box" { base frame  part frame "Frame"  part lid "Lid"  part fan "Fan"
  fastener screws screw "Lid screws" { count 4  joins lid to frame }
  fastener bolts screw "Fan bolts" { count 2  joins fan to frame }
  hazard mains electrical danger "Mains" { on lid, screws
    precaution isolate "Open the switch." back "Close the switch."
    precaution lock-out "Own lock." back "Lock off."
    precaution prove-dead "All poles." at most 12 V dc }
}
procedure strip "Strip" for box { ${body} }`;
const plain = machine(
  'aim lid off  step one "One" { isolate mains  lock-out mains  prove-dead mains  undo screws  remove lid }',
);

test("an act on what a hazard is on needs every precaution of it, in their order", () => {
  const needs = needsIn(compiledText(plain), "strip"),
    undo = needs.find(({ line }) => line.verb === "undo")!;
  expect(undo.precautions).toEqual(["1.1", "1.2", "1.3"]);
  expect(needs.find(({ line }) => line.id === "1.3")).toMatchObject({ precautions: ["1.1", "1.2"], takes: "proof" });
  expect(needs.find(({ line }) => line.id === "1.1")).toMatchObject({ precautions: [], takes: "precaution" });
});

test("what has nothing to do with the hazard needs nothing", () => {
  const needs = needsIn(
    compiledText(
      machine(
        'aim lid, fan off  step one "One" { isolate mains  lock-out mains  prove-dead mains  undo screws  remove lid  undo bolts  remove fan }',
      ),
    ),
    "strip",
  );
  const bolts = needs.find(({ line }) => line.verb === "undo" && line.items[0]!.id === "bolts")!;
  expect(bolts.precautions).toEqual([]);
});

test("on the way back a precaution still counts, and is taken back only after all that needs it", () => {
  const needs = needsIn(compiledText(plain), "strip"),
    fit = needs.filter(({ line }) => line.half === "refit" && line.verb !== "lift"),
    back = needs.filter(({ line }) => line.verb === "lift");
  expect(fit.length).toBeGreaterThan(0);
  expect(fit.some(({ precautions }) => precautions.length === 3)).toBe(true);
  expect(back).toHaveLength(2);
  for (const each of back) {
    expect(each.precautions).toEqual([]);
    for (const { line, precautions } of fit) if (precautions.length > 0) expect(each.before).toContain(line.id);
  }
  expect(back[1]!.before).toContain(back[0]!.line.id);
});

test("after a test under power the precautions of before no longer count: those taken again do", () => {
  const needs = needsIn(
    compiledText(
      machine(`aim lid off  step one "One" { isolate mains  lock-out mains  prove-dead mains }
  step two "Two" { restore mains  test "Fan runs."  isolate mains  lock-out mains  prove-dead mains  undo screws  remove lid }`),
    ),
    "strip",
  );
  const undo = needs.find(({ line }) => line.verb === "undo")!;
  expect(undo.precautions).toEqual(["2.3", "2.4", "2.5"]);
});

test("the point where the work stops counts for every line after it", () => {
  const needs = needsIn(
    compiledText(
      machine(
        'aim lid off  step one "One" { isolate mains  lock-out mains  prove-dead mains  hold-point "Released by the foreman."  undo screws  remove lid }',
      ),
    ),
    "strip",
  );
  const point = needs.find(({ line }) => line.verb === "hold-point")!;
  expect(point.hold).toBeUndefined();
  for (const { line, hold } of needs.slice(needs.indexOf(point) + 1)) expect(hold, line.id).toBe(point.line.id);
});

test("flagship: the needed lines stand before, take a precaution, and nothing needs itself", () => {
  const needs = needsIn(compiledExample("mooring-winch/strip.strip"), "winch-strip");
  const place = new Map(needs.map(({ line }, i) => [line.id, i]));
  expect(needs.filter(({ precautions }) => precautions.length > 0).length).toBeGreaterThan(60);
  for (const { line, precautions, before } of needs)
    for (const id of [...precautions, ...before]) {
      expect(place.get(id)!, `${line.id} needs ${id}`).toBeLessThan(place.get(line.id)!);
      if (precautions.includes(id)) expect(needs[place.get(id)!]!.takes, id).toBeDefined();
    }
});

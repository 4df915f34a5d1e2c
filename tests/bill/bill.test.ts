// The bill of small machines, counted by hand.

import { expect, test } from "vitest";
import { billOf, type BillLine } from "../../language/bill/bill.ts";
import { bill } from "../../language/outputs/bill/bill.ts";
import { billData } from "../../language/outputs/bill/data.ts";
import { manual } from "../../language/outputs/manual/manual.ts";
import { write } from "../../language/outputs/output.ts";
import { refit } from "../../language/outputs/refit/refit.ts";
import { torqueSheetData } from "../../language/outputs/torque-sheet/data.ts";
import { compiledText, options, type Compiled } from "../outputs/outputs-of.ts";

const machine = (of: {
  readonly unit?: string;
  readonly more?: string;
  readonly steps: string;
  readonly top?: string;
}): Compiled =>
  compiledText(`
unit box "Box" {
  base case
  ${of.unit ?? ""}
  part case "Case" { mass 4 kg }
  part lid "Lid" { mass 1 kg }
  fastener screws screw "Lid screws" { count 6  size M6x20  class 8.8  drive hex 10  torque 9 N·m  joins lid to case  ${of.more ?? ""} }
}
${of.top ?? ""}
procedure open-it "Open the box" for box {
  aim lid off
  step "Lid" { ${of.steps} }
}
`);

const lines = (input: Compiled, units = 1, beadWaste = 0.1): readonly BillLine[] =>
  billOf(input.performances, { units, beadWaste }).lines;
const short = (input: Compiled, units = 1): string[] =>
  billData(input, { ...options, units }).lines.map(
    (line) => `${line.grade} ${line.name}: ${line.total.text}${line.packs ? `, ${line.packs.text}` : ""}`,
  );

test("a procedure that renews nothing has an empty bill", () => {
  expect(short(machine({ steps: "undo screws remove lid" }))).toEqual([]);
});

test("one-time fasteners are bought as many as are fitted, for every unit", () => {
  expect(short(machine({ more: "renew always", steps: "undo screws remove lid" }), 12)).toEqual([
    "certain Lid screws: 72 off",
  ]);
});

test("the standing rule of the unit renews a kind, and only what this procedure takes off", () => {
  const input = machine({
    unit: `renew always gasket, o-ring
      part seal gasket "Lid gasket" { between lid and case }
      part foot "Foot" { }  part pad gasket "Foot pad" { between foot and case }
      fastener foot-screw screw "Foot screw" { joins foot to case }`,
    steps: "undo screws remove lid remove seal",
  });
  expect(short(input, 2)).toEqual(["certain Lid gasket: 2 off"]);
  expect(lines(input)[0]!.reasons).toEqual(["standing-rule"]);
});

test("renew when worn is bought only if found worn", () => {
  expect(short(machine({ more: "renew when worn", steps: "undo screws remove lid" }))).toEqual([
    "worn Lid screws: 6 off",
  ]);
});

test("a gasket that nobody calls new or old is asked for, never passed over in silence", () => {
  const input = machine({
    unit: `part seal gasket "Lid gasket" { between lid and case }`,
    steps: "undo screws remove lid remove seal",
  });
  expect(lines(input).map((line) => [line.grade, line.reasons])).toEqual([["worn", ["kind-not-said"]]]);
});

test("reuse in the refit takes a gasket off the bill", () => {
  const input = machine({
    unit: `part seal gasket "Lid gasket" { between lid and case }`,
    steps: "undo screws remove lid remove seal refit { reuse seal reverse }",
  });
  expect(lines(input)).toEqual([]);
});

test("a reading that may ask for a new part puts it in the grade of what is found", () => {
  const input = machine({ steps: `undo screws remove lid inspect lid-face on lid "No scratch" else renew lid` });
  expect(lines(input).map((line) => [line.name, line.grade, line.reasons, line.perUnit.pieces])).toEqual([
    ["Lid", "worn", ["reading"], 1],
  ]);
});

test("washers follow their screw, one a piece or so many in all", () => {
  const top = `part rings washer "Sealing washers" { count 6 renew always }`;
  expect(short(machine({ unit: top, more: "with rings", steps: "undo screws remove lid" }), 3)).toEqual([
    "certain Sealing washers: 18 off",
  ]);
});

// Volume of a round bead, and packs of twelve joints with 10 % left in the nozzle: the row "packs: 12 units x 4.524 mL, 10 % waste,
// 50 mL tubes: 59.72 mL, 2 tubes" of the collection on sealants; geometry pi d²/4 x l, computed.
test("sealant comes from the bead, with its waste, in whole packs", () => {
  const input = machine({
    unit: `joint face sealant "Lid face" { joins lid to case  bead 3 mm x 640 mm  uses paste }`,
    top: `consumable paste "Face sealant" { pack 50 ml  part-no "S-1"  lead 5 day }`,
    steps: "undo screws remove lid",
  });
  const [line] = lines(input, 12);
  expect(line!.perUnit.amounts[0]!.value).toBeCloseTo(4.524 * 1.1, 2);
  expect(line!.total.amounts[0]!.value).toBeCloseTo(59.72, 1);
  expect(line!.packs).toEqual({ count: 2, atLeast: false });
  expect(lines(input, 12, 0)[0]!.total.amounts[0]!.value).toBeCloseTo(12 * 4.524, 1);
});

test("a sum that is whole but for its last bits is no pack more, and one drop over is", () => {
  const fluid = (volume: string): Compiled =>
    machine({
      unit: `fluid oil oil "Oil" { volume ${volume}  uses oil-46  drains at plug  fills at plug }  fastener plug plug "Plug" { into case }`,
      top: `consumable oil-46 "Oil 46" { pack 0.1 L }`,
      steps: "drain oil undo screws remove lid",
    });
  expect(short(fluid("0.1 L"), 3)).toEqual(["certain Oil 46: 0.3 L, 3 packs"]);
  expect(short(fluid("0.101 L"), 3)).toEqual(["certain Oil 46: 0.303 L, 4 packs"]);
  expect(short(fluid("0.09..0.101 L"), 3)).toEqual(["certain Oil 46: 0.303 L, 4 packs"]);
});

test("an amount that nobody gave is said, and the packs are at least so many", () => {
  const input = machine({
    more: "thread-locker locker",
    top: `consumable locker "Thread-locker" { pack 50 ml }`,
    steps: "undo screws remove lid",
  });
  expect(short(input, 12)).toEqual(["certain Thread-locker: amount not given, at least 1 pack"]);
  const noPack = machine({
    more: "lubricant grease",
    top: `consumable grease "Grease"`,
    steps: "undo screws remove lid refit { apply grease to lid reverse }",
  });
  expect(short(noPack)).toEqual(["certain Grease: amount not given for 2 uses"]);
});

test("several procedures are one bill, each use with its place", () => {
  const input = machine({ more: "renew always", steps: "undo screws remove lid" });
  const twice = billOf([...input.performances, ...input.performances], { units: 1, beadWaste: 0 });
  expect(twice.lines.map((line) => line.total.pieces)).toEqual([12]);
  expect(twice.lines[0]!.uses.map((use) => use.step)).toEqual(["Lid", "Lid"]);
});

test("a number of units that is none is a fault of the caller", () => {
  const input = machine({ steps: "undo screws remove lid" });
  for (const units of [0, -1, 1.5, Number.NaN])
    expect(() => billOf(input.performances, { units, beadWaste: 0 })).toThrow(RangeError);
});

test("two parts of one name in two units are told apart by their unit, in every paper; one that stands alone is not", () => {
  const unit = (id: string, title: string): string => `
unit ${id} "${title}" { base a  part a "Case"  part b "Lid"  part g gasket "Cover gasket" { size 80 x 2 mm  between b and a  renew always }  part w o-ring "Ring of ${title}" { between b and a  renew always }  fastener f screw "Screws" { count 2  joins b to a } }
procedure open-${id} "Open" for ${id} { aim b off  step "S" { undo f  remove b  remove g, w } }`,
    input = compiledText(unit("pump", "Pump") + unit("fan", "Fan")),
    rows = billData(input, options).lines.map(({ name, within }) => [name, within]);
  expect(rows).toContainEqual(["Cover gasket", "Pump"]);
  expect(rows).toContainEqual(["Cover gasket", "Fan"]);
  expect(rows.filter(([name]) => name!.startsWith("Ring")).map(([, within]) => within)).toEqual(["", ""]);
  expect(write(bill, "text", input, options)).toContain("Cover gasket (Pump), 80 x 2 mm");
  expect(write(bill, "csv", input, options)).toContain("Cover gasket (Fan)");
  expect(write(manual, "html", input, options)).toContain("<bdi>Cover gasket (Fan)</bdi>");
});

test("one consumable that is named as locker and as lubricant is one use, and stands once on the torque sheet", () => {
  const input = machine({
    top: `consumable paste "Locking paste"`,
    more: "thread-locker paste  lubricant paste",
    steps: "undo screws  remove lid",
  });
  expect(lines(input).map(({ name, uses }) => [name, uses.length])).toEqual([["Locking paste", 1]]);
  const [row] = torqueSheetData(input, options).procedures[0]!.rows;
  expect(row!.notes).toEqual(["on the thread: locking paste"]);
  expect(write(refit, "text", input, options).match(/locking paste/g)).toHaveLength(1);
});

test("what is put on several pieces at once is told for all of them, on one for that one", () => {
  const of = (what: string): readonly string[] =>
    lines(
      machine({
        unit: `part pads "Pads" { pieces left, right  fits case }`,
        top: `consumable grease "Grease"`,
        steps: `undo screws remove lid refit { apply grease to ${what} reverse }`,
      }),
    ).flatMap(({ uses }) => uses.flatMap(({ on }) => on));
  expect(of("pads")).toEqual(["Pads"]);
  expect(of("pads.left")).toEqual(["Pads left"]);
});

// What a fluid is filled at: each rule of the bench on a small stage, named after the rule.

import { expect, test } from "vitest";
import { billOf } from "../../language/bill/bill.ts";
import { linesOf } from "../../language/outputs/lines/groups.ts";
import { askedOf } from "../../language/outputs/record/asked.ts";
import { torqueSheet } from "../../language/outputs/torque-sheet/torque-sheet.ts";
import { compiledText, options } from "../outputs/outputs-of.ts";
import { codes, findings, firstRefusedLine, perform, refit, stage } from "./refit/stage.ts";

const machine = (filler = "", more = ""): string => `positions flat, upside
 part pan "Pan"\n fastener pan-screws screw "Pan screws" { count 4 joins pan to b }
 part lid "Lid"\n fastener lid-screws screw "Lid screws" { count 2 joins lid to b }
 fastener plug plug "Plug" { into pan }\n fastener filler plug "Filler" { into b ${filler} }\n${more}
 fluid oil oil "Oil" { volume 1 L drains at plug fills at filler path pan }`;
const strip = "step { drain oil undo pan-screws remove pan }";
const says = (text: string): string[] => findings(text).map((finding) => finding.says);

test("`fill` opens and closes what the fluid fills at: no line of its own is needed", () => {
  expect(codes(stage(machine(), strip))).toEqual([]);
  expect(refit(stage(machine(), strip)).filter((line) => line.includes("Filler"))).toEqual([]);
});

test("a filler that is covered when it is filled is found, once, at the drain that asks for the fill", () => {
  const text = stage(machine("behind lid"), strip);
  expect(says(text)).toEqual(["Oil cannot be filled: Lid is in front of Filler"]);
  expect(text.slice(findings(text)[0]!.at.start)).toMatch(/^drain oil/);
});

test("the way back fills before what covers the filler goes on, whatever line of it is taken", () => {
  for (const acts of [
    "drain oil undo pan-screws remove pan undo lid-screws remove lid",
    "undo lid-screws remove lid drain oil undo pan-screws remove pan",
  ]) {
    const text = stage(machine("behind lid"), `step { ${acts} }`);
    expect(codes(text), acts).toEqual([]);
    const line = refit(text);
    expect(line.indexOf("filling Oil"), acts).toBeGreaterThan(line.indexOf("fitting Plug"));
    expect(line.indexOf("filling Oil"), acts).toBeLessThan(line.indexOf("fitting Lid"));
    expect(firstRefusedLine(perform(text), 200), acts).toBeUndefined();
  }
});

test("a lid that swings aside is swung back after the fill", () => {
  const text = stage(
    `part lid "Lid"\n joint pins hinge "Hinge" { joins lid to b }\n fastener plug plug "Plug" { into b }\n fastener filler plug "Filler" { into b behind lid }
 fluid oil oil "Oil" { volume 1 L drains at plug fills at filler }`.replace("joint pins hinge", "joint pins slide-fit"),
    "step { drain oil swing lid }",
    "aim none",
  );
  const line = refit(text);
  expect(line.indexOf("filling Oil")).toBeLessThan(line.indexOf("putting back Lid"));
});

test("the unit is turned to the position that the filler needs, or it is a finding in a written refit", () => {
  const turned = "step { drain oil turn upside undo pan-screws remove pan }";
  const computed = perform(stage(machine("needs flat"), turned));
  expect(computed.problems).toEqual([]);
  expect(computed.refit.find(({ op }) => op.verb === "fill")?.turn).toBe("flat");
  const written = (acts: string): string[] =>
    says(
      `${stage(machine("needs flat"), turned, "refit by back")}procedure back "Back" for u { aim all in needs p step { ${acts} } }`,
    );
  expect(written("fit pan fit pan-screws fit plug turn flat fill oil")).toEqual([]);
  expect(written("fit pan fit pan-screws fit plug fill oil turn flat")).toEqual([
    "Oil cannot be filled: it needs flat, and the unit is upside",
  ]);
});

test("in a written refit the filler has to be on and in reach", () => {
  const facts = machine("behind lid").replace('"Filler" { into b', '"Filler" { into pan');
  const back = (acts: string): string[] =>
    says(
      `${stage(facts, "step { undo lid-screws remove lid drain oil undo pan-screws remove pan }", "refit by back")}procedure back "Back" for u { aim all in needs p step { ${acts} } }`,
    );
  expect(back("fit pan fit pan-screws fit plug fill oil fit lid fit lid-screws")).toEqual([]);
  expect(back("fit pan fit pan-screws fit plug fit lid fit lid-screws fill oil")).toEqual([
    "Oil cannot be filled: Lid is in front of Filler",
  ]);
});

test("a filler on a part that is still off cannot be filled at", () => {
  const facts = machine(
    "",
    'part tank "Tank" { }\n fastener tank-bolts bolt "Tank bolts" { count 2 joins tank to b }',
  ).replace('"Filler" { into b', '"Filler" { into tank');
  const acts = "drain oil undo pan-screws remove pan undo tank-bolts remove tank";
  const back = (order: string): string[] =>
    says(
      `${stage(facts, `step { ${acts} }`, "refit by back")}procedure back "Back" for u { aim all in needs p step { ${order} } }`,
    );
  expect(back("fit pan fit pan-screws fit plug fit tank fit tank-bolts fill oil")).toEqual([]);
  expect(back("fit pan fit pan-screws fit plug fill oil fit tank fit tank-bolts")).toEqual([
    "Oil cannot be filled: Filler is not on the unit yet: Tank is still off",
  ]);
  const text = stage(facts, `step { undo tank-bolts remove tank drain oil undo pan-screws remove pan }`);
  expect(codes(text)).toEqual([]);
  expect(refit(text).indexOf("filling Oil")).toBeGreaterThan(refit(text).indexOf("fitting Tank"));
});

test("what is filled at its lid is filled while the lid is off, or in passing where it stays on", () => {
  const facts = `part tank "Tank"\n fastener feet screw "Feet" { joins tank to b }
   part lid "Lid"\n fastener lid-screws screw "Lid screws" { count 4 joins lid to tank }
   fastener plug plug "Plug" { into tank }\n fluid oil oil "Oil" { volume 4 L drains at plug fills at lid }`;
  const opened = stage(facts, "step { drain oil undo lid-screws remove lid }");
  expect(codes(opened)).toEqual([]);
  expect(refit(opened).indexOf("filling Oil")).toBeLessThan(refit(opened).indexOf("fitting Lid"));
  expect(refit(opened).indexOf("filling Oil")).toBeGreaterThan(refit(opened).indexOf("fitting Plug"));
  expect(firstRefusedLine(perform(opened), 200)).toBeUndefined();
  expect(codes(stage(facts, "step { drain oil }", "aim none"))).toEqual([]);
});

test("a filler that was undone by an act of its own is closed after the fill", () => {
  for (const acts of [
    "undo filler drain oil undo pan-screws remove pan",
    "drain oil undo filler, pan-screws remove pan",
  ]) {
    const text = stage(machine(), `step { ${acts} }`);
    expect(codes(text), acts).toEqual([]);
    const line = refit(text);
    expect(line.indexOf("filling Oil"), acts).toBeLessThan(line.indexOf("fitting Filler"));
    expect(line.indexOf("filling Oil"), acts).toBeGreaterThan(line.indexOf("fitting Plug"));
    expect(firstRefusedLine(perform(text), 200), acts).toBeUndefined();
  }
});

test("one opening for both is closed after the fill", () => {
  const text = stage(machine().replace("drains at plug", "drains at filler"), strip);
  const line = refit(text);
  expect(codes(text)).toEqual([]);
  expect(line.indexOf("filling Oil")).toBeLessThan(line.indexOf("fitting Filler"));
});

test("what seals the filler is asked for, or bought, like that of any plug that is opened", () => {
  const facts = (rule: string): string => machine("with washer", `part washer gasket "Filler washer" { ${rule} }`);
  expect(codes(stage(facts(""), strip))).toEqual(["refit/seal-reused"]);
  const performance = perform(stage(facts("renew always"), strip));
  expect(performance.problems).toEqual([]);
  const bill = billOf([performance], { units: 2, beadWaste: 0 });
  expect(bill.lines.find(({ name }) => name === "Filler washer")?.total.pieces).toBe(2);
});

test("of several fillers each is closed to its own torque: in the line, in the torque sheet, in the record", () => {
  const text = stage(
    `fastener plug plug "Drain plug" { into b }
 fastener front plug "Front filler" { into b  drive hex 17  torque 20 N·m }\n fastener rear plug "Rear filler" { into b  drive hex 22  torque 35 N·m }
 fluid oil oil "Oil" { volume 1 L drains at plug fills at front, rear }`,
    "step { drain oil }",
    "aim none",
  );
  const input = compiledText(text),
    lines = linesOf(input.performances[0]!, options).refit.flatMap((group) => group.lines),
    fill = lines.find((line) => line.is === "action" && line.verb === "fill");
  if (fill?.is !== "action") throw new Error("no fill");
  expect(fill.torque?.text).toBe("Front filler: 20 N·m (15 lbf·ft); Rear filler: 35 N·m (26 lbf·ft)");
  expect(fill.details.filter(({ sort }) => sort === "torque").map(({ says: told }) => told)).toEqual([
    "Torque: 20 N·m (15 lbf·ft).",
    "Torque: 35 N·m (26 lbf·ft).",
  ]);
  expect(
    torqueSheet
      .data(input, options)
      .procedures[0]!.rows.filter(({ id }) => id !== "plug")
      .map(({ id, metric }) => [id, ...metric]),
  ).toEqual([
    ["front", "20 N·m"],
    ["rear", "35 N·m"],
  ]);
  expect(askedOf(fill, input.performances[0]!.model).torques.map(({ item }) => item)).toEqual(["front", "rear"]);
});

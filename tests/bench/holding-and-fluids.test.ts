// Holding, lifting, fluids: each rule of the bench on a small stage, named after the rule.

import { expect, test } from "vitest";
import { codes, findings, refit, stage } from "./refit/stage.ts";

const tools = `\ntool hoist "Hoist" { kind hoist capacity 100 kg }\n`;
const heavy = `no heavy "By gear." part motor "Motor" { mass 60 kg }\n fastener left bolt "Left" { count 2 joins motor to b }\n fastener right bolt "Right" { count 2 joins motor to b }`;
const pipe = `part pipe "Pipe"\n joint union pipe-union "Union" { joins pipe to b opens oil }\n fastener plug plug "Plug" { into b }\n fluid oil oil "Oil" { volume 1 L drains at plug fills at plug path pipe }`;

test("a heavy part is held before the last group of its ties is touched, not before the last bolt", () => {
  expect(
    codes(
      stage(
        heavy,
        "step { undo left undo 1 of right support motor with hoist undo rest of right lift motor with hoist }",
      ) + tools,
    ),
  ).toEqual(["sequence/falls"]);
  expect(
    codes(stage(heavy, "step { undo left support motor with hoist undo right lift motor with hoist }") + tools),
  ).toEqual([]);
});

test("a part that hangs must be held whatever it weighs", () => {
  const facts = `part lamp "Lamp" { mass 1 kg hangs }\n fastener screws screw "Screws" { joins lamp to b }`;
  expect(codes(stage(facts, "step { undo screws remove lamp }"))).toEqual(["sequence/falls"]);
  expect(codes(stage(facts, "step { support lamp undo screws remove lamp }"))).toEqual([]);
});

test("what was taken off with its screws backed out falls no more", () => {
  const facts = 'part lamp "Lamp" { hangs }\n fastener screws screw "Screws" { count 4 joins lamp to b }';
  expect(codes(stage(facts, "step { support lamp back-out screws remove lamp release lamp undo screws }"))).toEqual([]);
  expect(codes(stage(facts, "step { support lamp back-out screws release lamp undo screws }"))).toEqual([
    "sequence/falls",
  ]);
});

test("a light part falls with the heavy one that is on it", () => {
  const facts = `no heavy "By gear." part bell "Bell housing" { mass 6 kg }
    part motor "Motor" { mass 47 kg }
    fastener bs screw "Bell screws" { count 4 joins bell to b }
    fastener ms bolt "Motor bolts" { count 4 joins motor to bell }`;
  const found = findings(stage(facts, "step { undo bs lift bell with hoist }") + tools);
  expect(found.map((f) => f.says)).toEqual([
    "Bell screws cannot be undone: nothing else holds Bell housing, 53 kg with its load: take its weight first, or, if it stands on something, say so: rests on",
  ]);
  for (const held of ["bell", "motor"])
    expect(codes(stage(facts, `step { support ${held} with hoist undo bs lift bell with hoist }`) + tools)).toEqual([]);
  // Without the motor it is no heavy thing.
  const motorOff = "support motor with hoist undo ms lift motor with hoist";
  expect(codes(stage(facts, `step { ${motorOff} undo bs remove bell }`) + tools)).toEqual([]);
  // Held by more than one thing, it falls with neither of them.
  const both = `${facts} part rail "Rail"\n fastener rail-screws screw "More screws" { joins rail to b }\n fastener rs screw "Rail screws" { joins motor to rail }`;
  expect(
    codes(stage(both, `step { undo bs support motor with hoist undo rs lift motor with hoist }`) + tools),
  ).not.toContain("sequence/falls");
  // What moves with it is no support of it, and no load either.
  const ring = `no heavy "By gear." part bearing "Bearing" { mass 3 kg fits b by slide-fit }
    part carrier "Carrier" { mass 26 kg fits bearing by slide-fit }
    fastener nut nut "Bearing nut" { joins bearing to carrier }`;
  expect(codes(stage(ring, "step { undo nut lift carrier with hoist remove bearing }") + tools)).toEqual([]);
});

test("to loosen is to touch", () => {
  expect(
    codes(
      stage(heavy, "step { undo left loosen right support motor with hoist undo right lift motor with hoist }") + tools,
    ),
  ).toEqual(["sequence/falls"]);
});

test("lift with a tool asks its capacity", () => {
  const facts = heavy.replace("60 kg", "160 kg");
  expect(
    codes(stage(facts, "step { undo left support motor with hoist undo right lift motor with hoist }") + tools),
  ).toContain("lift/capacity");
});

test("a part's own `lift by 2 people` binds every removal and fit of it", () => {
  const facts = `part lid "Lid" { mass 12 kg lift by 2 people }\n fastener screws screw "Screws" { joins lid to b }`;
  expect(codes(stage(facts, "step { undo screws remove lid }"))).toEqual(["lift/people"]);
  expect(codes(stage(facts, "step { undo screws remove lid by 2 people }"))).toEqual([]);
  expect(codes(stage(facts, "step { undo screws remove lid }", "crew 2"))).toEqual([]);
});

test("over the lifting guideline with so many people", () => {
  const facts = `no heavy "By gear." part block "Block" { mass 40 kg rests on b }`;
  expect(codes(stage(facts, "step { remove block }"))).toEqual(["lift/over-guideline"]);
  expect(codes(stage(facts, "step { lift block with hoist }") + tools)).toEqual([]);
});

test("what is released and was not held is a finding", () => {
  expect(
    codes(
      stage(heavy, "step { release motor undo left support motor with hoist undo right lift motor with hoist }") +
        tools,
    ),
  ).toEqual(["sequence/already-undone"]);
});

test("a joint that opens a fluid cannot be opened while it is aboard", () => {
  expect(codes(stage(pipe, "step { undo union remove pipe }"))).toEqual(["sequence/fluid-aboard"]);
  expect(codes(stage(pipe, "step { drain oil undo union remove pipe }"))).toEqual([]);
});

test("a part on its path cannot be taken off while it is aboard", () => {
  const facts = `part tank "Tank"\n fastener bolts bolt "Bolts" { joins tank to b }\n fastener plug plug "Plug" { into tank }\n fluid oil oil "Oil" { volume 1 L drains at plug fills at plug path tank }`;
  expect(codes(stage(facts, "step { undo bolts remove tank }"))).toEqual(["sequence/fluid-aboard"]);
});

test("what leaves with the whole path of a fluid, closed as it was, opens nothing; open somewhere, or parted, it does", () => {
  const facts = `part box "Box"\n part lid "Lid"\n fastener bolts bolt "Bolts" { joins box to b }\n fastener screws screw "Screws" { joins lid to box }\n fastener plug plug "Plug" { into box }\n fluid oil oil "Oil" { volume 1 L fills at plug path box, lid }`;
  expect(codes(stage(facts, "step { undo bolts remove box }"))).toEqual([]);
  expect(codes(stage(facts, "step { undo plug undo bolts remove box }"))).toEqual(["sequence/fluid-aboard"]);
  expect(codes(stage(facts, "step { undo screws remove lid undo bolts remove box }"))).toEqual([
    "sequence/fluid-aboard",
  ]);
  expect(codes(stage(facts, "step { undo bolts remove box undo screws remove lid }"))).toEqual([
    "sequence/fluid-aboard",
  ]);
});

test("said once: what was missing is then assumed drained", () => {
  const facts = pipe + `\n part hose hose "Hose"\n joint end hose "End" { joins hose to b opens oil }`;
  expect(codes(stage(facts, "step { undo union remove pipe undo end remove hose }"))).toEqual([
    "sequence/fluid-aboard",
  ]);
});

test("drain opens what the fluid drains at, and its refit closes that before the fill", () => {
  const facts = pipe.replace("fills at plug", "fills at filler") + `\n fastener filler plug "Filler" { into b }`;
  const line = refit(stage(facts, "step { drain oil undo union remove pipe }"));
  expect(line.indexOf("fitting Plug")).toBeGreaterThanOrEqual(0);
  expect(line.indexOf("fitting Plug")).toBeLessThan(line.indexOf("filling Oil"));
  expect(line.indexOf("fitting Union")).toBeLessThan(line.indexOf("filling Oil"));
});

test("what it drains at must be reached", () => {
  const facts = pipe.replace("{ into b }", "{ into b behind cover }") + `\n part cover "Cover" { fits b by slide-fit }`;
  expect(codes(stage(facts, "step { drain oil undo union remove pipe }"))).toEqual(["sequence/blocked"]);
});

test("drained twice is a finding", () => {
  expect(codes(stage(pipe, "step { drain oil drain oil undo union remove pipe }"))).toEqual([
    "sequence/already-undone",
  ]);
});

test("drain of a fluid to be recovered is a finding", () => {
  const facts = pipe.replace("fluid oil oil", "fluid oil refrigerant");
  const found = findings(stage(facts, "step { drain oil undo union remove pipe }")).map(({ code }) => code);
  expect(found).toContain("hazard/not-recovered");
  expect(findings(stage(facts, "step { recover oil undo union remove pipe }")).map(({ code }) => code)).not.toContain(
    "hazard/not-recovered",
  );
});

test("a part that is a unit weighs what that unit says, else its base and what is inside", () => {
  const machine = (mass: string) => `unit head "Head" {
  base case
  ${mass}
  part case "Case" { mass 60 kg }
  part lid "Lid" { mass 50 kg }
  fastener ls screw "Lid screws" { count 4 joins lid to case }
}
tool hoist "Hoist" { kind hoist capacity 105 kg }
${stage(
  `no heavy "By gear." part gear "Gear" { is unit head }\n fastener feet bolt "Feet" { count 4 joins gear to b }`,
  "step { support gear with hoist undo feet lift gear with hoist }",
)}`;
  const loads = (text: string) => findings(text).map((f) => /weighs .*?kg/.exec(f.says)?.[0]);
  expect(loads(machine(""))).toContain("weighs 110 kg");
  expect(loads(machine("mass 120 kg"))).toContain("weighs 120 kg");
  expect(loads(machine("mass 104 kg"))).toEqual([]);
});

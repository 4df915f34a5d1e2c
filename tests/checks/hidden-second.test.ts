// What is found beside something else keeps its words: a second sling, the proof with a spanner beside the gauge, another mistake in a
// unit inside.

import { expect, test } from "vitest";
import { check, stage } from "../bench/refit/stage.ts";

const instruments = `tool gauge "Gauge" { range 5..20 bar }
tool fine "Fine gauge" { range 0..16 bar }
tool spanner "Spanner"
tool torque-spanner "Torque spanner" { range 5..50 N·m }
`;
const proof = (tools: string): string[] =>
  check(
    instruments +
      stage(
        `part lid "Lid" { rests on b }
  hazard air pressure danger "Air" { pressure 10 bar  on lid  precaution vent "Open." precaution prove-zero "Gauge." at most 0.1 bar ${tools} }`,
        "step { vent air  prove-zero air  remove lid }",
        "aim none",
      ),
  )
    .findings.filter(({ code }) => code === "measure/tool-range")
    .map(({ says }) => says);

test("a tool that shows no such figure does not read the proof for the gauge that cannot", () => {
  const said = ["The range of Gauge is 5..20 bar, and the limit is 0.1 bar"];
  expect(proof("with gauge")).toEqual(said);
  expect(proof("with gauge with spanner")).toEqual(said);
  expect(proof("with spanner with gauge")).toEqual(said);
  expect(proof("with torque-spanner with gauge")).toEqual(said);
  expect(proof("with gauge with fine")).toEqual([]);
  expect(proof("with spanner")).toEqual([]);
});

test("hoist and sling that are both too weak are both told, on one line too", () => {
  const { findings } = check(
    `tool hoist "Hoist" { capacity 100 kg }\ntool sling "Sling" { capacity 50 kg }\n` +
      stage(`part lid "Lid" { mass 200 kg  rests on b }`, "step { lift lid with hoist with sling }", "aim lid off"),
  );
  const found = findings.find(({ code }) => code === "lift/capacity");
  expect([found?.says, ...(found?.because ?? []).map(({ says }) => says)]).toEqual(
    expect.arrayContaining([
      "Lid weighs 200 kg, over the 100 kg of Hoist",
      "Lid weighs 200 kg, over the 50 kg of Sling",
    ]),
  );
});

test("what is in the way in a unit inside is told at its own line, where other parts are so on that unit's bench", () => {
  const text = (own: string): string =>
    `unit pump "Pump" {
  base body
  part body "Body"
  part cap "Cap" { rests on body }
  part rotor "Rotor" { rests on body  behind cap }
  part plate "Plate" { rests on body }
  part pin "Pin" { rests on body  behind plate }
}
procedure own "Own" for pump {
  aim none
  step { ${own} }
}
` + stage(`part p "Pump" { is unit pump  rests on b }`, "step { remove p.pin }", "aim none");
  const blocked = (own: string): string[] =>
    check(text(own))
      .findings.filter(({ code }) => code === "sequence/blocked")
      .map(({ says }) => says);
  expect(blocked("remove rotor")).toEqual([
    "Rotor cannot come off: Cap is in front of it",
    "Pin cannot come off: Plate is in front of it",
  ]);
  expect(blocked("remove pin")).toEqual(["Pin cannot come off: Plate is in front of it"]);
});

test("a hazard stands in front of what the same call would have done, in each procedure that lacks the call", () => {
  const text = `tool tester "Tester"
unit box "Box" {
  base foot
  part foot "Foot"
  part lid "Lid"
  part card "Card" { rests on foot }
  fastener screws screw "Screws" { count 4  joins lid to foot }
  hazard bus electrical danger "Bus" {
    on card
    voltage 400 V ac
    precaution isolate "Off." back "On."
    precaution prove-dead "Read." at most 5 V ac with tester
  }
}
procedure open "Open" for box {
  aim lid off
  step { isolate bus  prove-dead bus  undo screws  remove lid }
}
procedure one "One" for box {
  aim lid, card off
  step { remove card }
}
procedure two "Two" for box {
  aim lid, card off
  step { remove card }
}
`;
  const found = check(text).findings.filter(({ code }) => /^(?:hazard|removal)\//.test(code));
  expect(found.map(({ code, severity }) => [code, severity])).toEqual([
    ["hazard/not-yet", "error"],
    ["hazard/not-yet", "error"],
  ]);
  for (const { because } of found)
    expect(because.map(({ says }) => says)).toContain("Open does all of this, and is not called before");
});

test("what rests on a fault is never put below another finding at its place that the author allows", () => {
  const { findings } = check(`unit box "Box" {
  base foot
  part foot "Foot"
  part lid "Lid" { rests on foot }
  part card "Card" { rests on foot  behind lid }
  # allow fastener/size-not-listed: made for this machine
  fastener screws screw "Screws" { count 4  size M11x20 }
}
procedure p "P" for box {
  aim card off
  step { undo screws  remove card }
}
`);
  const [first, ...more] = findings.filter(({ code }) => /^(?:fastener|removal|sequence)\//.test(code));
  expect(more).toEqual([]);
  expect(first).toMatchObject({ code: "removal/joins-nothing", severity: "error" });
  expect(first!.because.map(({ says }) => says)).toContain("Card cannot come off: Lid is in front of it");
});

test("an aim that is missed, and allowed so, in one procedure is found in the next", () => {
  const text = (allow: string): string => `unit box "Box" {
  base foot
  part foot "Foot"
  part lid "Lid" { rests on foot }
}
procedure one "One" for box {
  ${allow}
  aim lid off
  step { clean foot }
}
procedure two "Two" for box {
  aim lid off
  step { clean foot }
}
`;
  const lines = (allow: string): number[] =>
    check(text(allow))
      .findings.filter(({ code }) => code === "removal/missing")
      .map(({ at }) => text(allow).slice(0, at.start).split("\n").length);
  expect(lines("")).toEqual([8]);
  expect(lines("# allow removal/missing: done by the maker")).toEqual([12]);
});

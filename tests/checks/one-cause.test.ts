// One slip of a tired hand that shows in several checks: one finding, the gravest in front, the others among its reasons.

import { expect, test } from "vitest";
import { check, codes, findings, stage } from "../bench/refit/stage.ts";

const all = (text: string, family: RegExp): string[] =>
  check(text)
    .findings.map(({ code }) => code)
    .filter((code) => family.test(code));
const figures = /^(?:fastener|figure|tool|lift)\//;

const screws = (torque: string): string =>
  `tool wrench "Wrench" { kind torque-wrench range 5..25 N·m }\n` +
  stage(
    `part lid "Lid"\n fastener screws screw "Screws" { count 4 size M8x20 class 8.8 drive hex 13 torque ${torque} joins lid to b }`,
    "step { undo screws remove lid }",
  );

test("a figure that is wrong is one finding at its place, the gravest in front", () => {
  expect(all(screws("20 N·m (15 lb-ft)"), figures)).toEqual([]);
  expect(all(screws("45 lb-ft (33 N·m)"), figures)).toEqual(["fastener/torque-over-yield"]);
  expect(all(screws("2.4 N·m"), figures)).toEqual(["tool/wrench-range"]);
  const found = check(screws("45 lb-ft (33 N·m)")).findings.find(({ code }) => code === "fastener/torque-over-yield");
  expect(found!.because.map(({ says }) => says)).toContain("45 lb-ft is 61.0 N·m, the bracket says 33 N·m");
});

test("what the author allows at that place does not take the other with it", () => {
  const text = (code: string): string =>
    screws("2.4 N·m").replace(" torque 2.4", `\n # allow ${code}: as the maker says\n torque 2.4`);
  expect(all(text("tool/wrench-range"), figures)).toEqual(["fastener/torque-too-low"]);
  expect(all(text("fastener/torque-too-low"), figures)).toEqual(["tool/wrench-range"]);
});

test("torques in the same gap of the shop's wrenches want one more wrench", () => {
  const text = (second: string): string =>
    `tool small "Small" { kind torque-wrench range 5..25 N·m }\n tool large "Large" { kind torque-wrench range 60..200 N·m }\n` +
    stage(
      `part lid "Lid"\n fastener one screw "One" { torque 30 N·m joins lid to b }\n fastener two screw "Two" { torque ${second} joins lid to b }`,
      "step { undo one undo two remove lid }",
    );
  expect(all(text("40 N·m"), /^tool/)).toEqual(["tool/wrench-range"]);
  expect(all(text("300 N·m"), /^tool/)).toEqual(["tool/wrench-range", "tool/wrench-range"]);
});

test("gear that is too weak is told once for what it holds and then lifts", () => {
  const text = `tool hoist "Hoist" { kind hoist capacity 20 kg }\n${stage(
    `part motor "Motor" { mass 28 kg rests on b }\n no heavy "By gear."`,
    "step { support motor with hoist lift motor with hoist }",
  )}`;
  expect(all(text, figures)).toEqual(["lift/capacity"]);
});

test("an act that is refused is not weighed as well with what it should have left behind", () => {
  const facts = `part motor "Motor" { mass 28 kg }\n part cover "Cover" { mass 6 kg }\n fastener mb bolt "Motor bolts" { count 4 joins motor to cover }\n joint plug connector "Motor plug" { joins motor to b }\n fastener cs screw "Cover screws" { joins cover to b }\n no heavy "By gear."`;
  const found = findings(stage(facts, "step { undo cs remove cover }"));
  expect(found.map(({ code }) => code)).toEqual(["sequence/still-held"]);
  expect(found[0]!.because.map(({ says }) => says).join()).toContain("over the guideline");
});

const mains = (kind: string, act: string): string =>
  stage(
    `part motor motor "Motor" { supply 400 V ac rests on b }\n hazard mains ${kind} danger "Mains" { on motor source mains voltage 400 V ac precaution isolate "Open it." back "Close it." precaution prove-dead "Test it." with tester }`,
    `step { ${act} mains\n prove-dead mains\n remove motor }`,
  );

test("a precaution that is misspelt is that slip, with what it leaves open among the reasons", () => {
  expect(codes(mains("electrical", "isolate"))).toEqual([]);
  const found = findings(mains("electrical", "isolat"));
  expect(found.map(({ code }) => code)).toEqual(["syntax/word-unknown"]);
  expect(found[0]!.because.map(({ says }) => says)).toEqual(["Isolate of Mains comes before this"]);
});

test("a hazard whose kind is misspelt is not missed as well on the thing that it is on", () => {
  expect(codes(mains("electric", "isolate"))).toEqual(["syntax/kind-unknown"]);
});

test("what two of one name show at the bench is that slip", () => {
  const facts = `part cap "Cap"\n part lid "Lid"\n part ring o-ring "Ring" { between cap and b renew always }\n part ring o-ring "Other ring" { between lid and b renew always }\n fastener cs screw "Cs" { joins cap to b }\n fastener ls screw "Ls" { joins lid to b }`;
  expect(codes(stage(facts, "step { undo cs remove cap remove ring undo ls remove lid remove other-ring }"))).toEqual([
    "names/duplicate",
  ]);
});

test("what was taken off by an act that was refused is not off twice", () => {
  const facts = `part pump "Pump"\n fastener screws screw "Screws" { count 2 joins pump to b }`;
  expect(codes(stage(facts, "step { undo pump }  step { remove pump }"))).toEqual(["sequence/still-held"]);
  expect(codes(stage(facts, "step { undo screws remove pump } step { remove pump }"))).toEqual([
    "sequence/already-undone",
  ]);
});

test("what hangs on a part that was assumed away is as unknown, however far out", () => {
  const facts = `part cover "Cover"\n part ring gasket "Ring" { between cover and b renew always }\n part bell "Bell"\n part pump "Pump" { behind b }\n fastener cs screw "Cover screws" { joins cover to b }\n fastener bs screw "Bell screws" { joins bell to cover }\n fastener ps screw "Pump screws" { joins pump to bell behind b }`;
  expect(codes(stage(facts, "step { undo cs remove cover remove ring undo ps remove pump }"))).toEqual([]);
  expect(codes(stage(facts, "step { undo cs remove ring undo ps remove pump }"))).toEqual(["sequence/blocked"]);
});

test("the base is no aim", () => {
  const text = stage(`part lid "Lid" { rests on b }`, "step { remove lid }", "aim lid, b off");
  expect(findings(text).map(({ says }) => says)).toEqual(["Base stays on the stand: it is the base of this unit"]);
});

const hazardOn = (on: string, acts: string, more = ""): string[] =>
  all(
    stage(
      `part lid "Lid" { rests on b }\n part vent "Vent"\n fastener plug plug "Plug" { into b }\n fluid oil oil "Oil" { drains at plug }\n hazard heat hot warning "Hot oil" { on ${on} precaution cool "Let it stand." }\n ${more}`,
      `step { cool heat ${acts} }`,
    ),
    /^hazard\/never-touched/,
  );

test("a hazard on things that no line touches is told; drained, opened or named it is near", () => {
  expect(hazardOn("b", "remove lid")).toEqual(["hazard/never-touched"]);
  expect(hazardOn("lid", "remove lid")).toEqual([]);
  expect(hazardOn("plug", "drain oil remove lid")).toEqual([]);
  expect(hazardOn("vent, lid", "clean lid")).toEqual([]);
  // The line that is missing may be the one that touches it.
  const held = `fastener screws screw "Screws" { joins vent to b }`;
  expect(hazardOn("b", "undo screws remove vent", held)).toEqual(["hazard/never-touched"]);
  expect(hazardOn("b", "remove vent", held)).toEqual([]);
  // A line that cannot be read may be the one that touches it.
  expect(hazardOn("b", "remove ldi")).toEqual([]);
});

const signal = (kind: string, figures: string): string[] =>
  check(stage(`hazard h ${kind} "H" { on b ${figures} precaution other "So." }`, 'step { note "Nothing." }'))
    .findings.filter(({ code }) => code === "hazard/signal-too-low")
    .map(({ severity }) => severity);

// ANSI Z535.6: the word goes by the worst injury. Directive 2014/68/EU, Article 1: pressure equipment from 0.5 bar on (from memory).
test("caution on a pressure of more than half a bar is a question, on a load overhead a warning", () => {
  expect(signal("pressure caution", "pressure 10 bar")).toEqual(["question"]);
  expect(signal("pressure warning", "pressure 10 bar")).toEqual([]);
  expect(signal("pressure caution", "pressure 0.5 bar")).toEqual([]);
  expect(signal("pressure caution", "")).toEqual([]);
  expect(signal("overhead caution", "")).toEqual(["warning"]);
});

test("a second refit block in one step is told, and one for another build is none", () => {
  const blocks = (text: string): string[] =>
    all(stage(`option long "Long"\n part lid "Lid" { rests on b }`, `step { remove lid ${text} }`), /^refit\/second/);
  expect(blocks('refit { note "Dry." } refit { clean b }')).toEqual(["refit/second-block"]);
  expect(blocks('refit { note "Dry." } refit { clean b } refit { clean lid }')).toHaveLength(2);
  expect(blocks('if long { refit { note "Dry." } } refit { clean b }')).toEqual([]);
});

test("mistakes of their own that stand at one place are told each", () => {
  const text = stage(
    `hazard h pressure caution "H" { on b pressure 10 bar precaution other "So." }`,
    "step { clean b }",
  );
  expect(all(text, /^hazard\/(?:no-proof|signal)/)).toEqual(["hazard/no-proof", "hazard/signal-too-low"]);
});

test("a block whose first line is lost is that slip, with the names that the line would have declared", () => {
  const whole = `unit u "U" {
  base b
  part b "Base"
  part lid "Lid" { mass 2 kg }
  fastener screws screw "Screws" {
    count 4
    joins lid to b
  }
  hazard start rotating danger "Motor can start" {
    on lid
    precaution lock-out
    precaution try-start
  }
}
procedure p "P" for u {
  aim lid off
  task look "Only look" does safe
  step safe "Make safe" {
    lock-out start
    try-start start
  }
  step "Lid" {
    undo screws
    remove lid
  }
}
`;
  const said = (line: number): string[] => {
    const lines = whole.split("\n");
    lines[line - 1] = "";
    return check(lines.join("\n"))
      .findings.filter(({ severity }) => severity === "error" || severity === "warning")
      .map(({ code }) => code);
  };
  expect(said(0)).toEqual([]);
  for (const line of [1, 5, 9, 15, 18, 22]) expect(said(line), `line ${line}`).toEqual(["syntax/head-missing"]);
});

test("screws of which nothing says what they hold are that mistake: the part without them, and what the bench then finds, are not said as well", () => {
  const text = stage(
    `part lid "Lid"\n part ring o-ring "Ring" { between lid and b renew always }\n fastener screws screw "Screws" { count 4 joins lid to b }\n part fan "Fan" { fits b behind lid }`,
    "step { undo screws remove lid remove ring remove fan }",
    "aim ring, fan off",
  );
  expect(codes(text)).toEqual([]);
  const without = check(text.replace("count 4 joins lid to b", "count 4")).findings.filter(
    ({ code }) => !code.startsWith("tool/"),
  );
  expect(without.map(({ code }) => code)).toEqual(["removal/joins-nothing"]);
});

test("a missing base makes no error of the bench a question: what is still held is among its reasons, and as grave", () => {
  const text = (before: string): string =>
    `${before}unit box "Box" {\n part foot "Foot"\n part lid "Lid"\n fastener screws screw "Screws" { count 4 joins lid to foot }\n}\nprocedure p "P" for box {\n aim lid off\n step "Lid" { remove lid }\n}\n`;
  const [found, ...more] = findings(text(""));
  expect(more).toEqual([]);
  expect(found).toMatchObject({ code: "names/base-missing", severity: "error" });
  expect(found!.because.map(({ says }) => says)).toEqual(["Lid cannot come off: still held by 4 of 4 Screws"]);
  // With the question allowed the error stands by itself.
  expect(codes(text("# allow names/base-missing: the stand takes any part\n"))).toEqual(["sequence/still-held"]);
});

test("what is missing again in the procedure that calls this one makes the finding as grave as it is there", () => {
  const text = (calling: string): string =>
    `unit box "Box" {\n base foot\n part foot "Foot"\n part lid "Lid"\n part ring o-ring "Ring" { between lid and foot renew always }\n fastener screws screw "Screws" { count 4 joins lid to foot }\n}\nprocedure p "P" for box {\n aim lid off\n step "Lid" { undo screws remove lid }\n}\n${calling}`;
  expect(findings(text(""))).toMatchObject([{ code: "removal/old-stays", severity: "warning" }]);
  expect(findings(text(`procedure q "Q" for box {\n aim ring off\n step "All" { do p }\n}\n`))).toMatchObject([
    { code: "removal/old-stays", severity: "error" },
  ]);
});

test("a push that only shows since nothing says what the screws hold stands among the reasons of that", () => {
  const text = stage(
    `part cover "Cover"\n part plate "Plate" { rests on b }\n part filter "Filter"\n joint vent screwed "Vent" { joins filter to cover }\n fastener screws screw "Screws" { count 4 joins cover to b }\n hazard push spring warning "Spring" { on screws, cover pushes cover precaution block }`,
    "step { undo vent remove filter block push undo screws remove cover }",
  );
  expect(codes(text)).toEqual([]);
  const found = check(text.replace("count 4 joins cover to b", "count 4")).findings.filter(
    ({ severity }) => severity === "error",
  );
  expect(found.map(({ code }) => code)).toEqual(["removal/joins-nothing"]);
  expect(found[0]!.because.map(({ says }) => says).join()).toContain("Spring asks for block first");
});

test("a part of which nothing says what holds it is that mistake, as grave as what it shows as", () => {
  const text = stage(
    `part carrier "Carrier" { fits b by slide-fit }\n part wheel "Wheel" { fits carrier by slide-fit behind pin }\n part pin pin "Pin" { fits carrier }`,
    "step { remove carrier }",
  );
  expect(codes(text)).toEqual([]);
  const found = check(text.replace('"Pin" { fits carrier }', '"Pin"')).findings.filter(({ code }) =>
    /^(?:names|sequence)/.test(code),
  );
  expect(found.map(({ code, severity }) => [code, severity])).toEqual([["names/part-unattached", "error"]]);
});

test("a step that is missing takes with it what its name, its readings and its precautions are missed by", () => {
  const text = stage(
    `part lid "Lid"\n fastener screws screw "Screws" { count 4 joins lid to b }\n hazard heat hot "Heat" { on lid temperature 80 °C precaution cool }`,
    `step first "First" { cool heat inspect state on lid "Flat" }\n step "Off" { undo screws remove lid if state fails { note "Tell." } }`,
  );
  expect(codes(text)).toEqual([]);
  expect(codes(text.replace(/step first .*/, ""))).toEqual(["names/unknown"]);
});

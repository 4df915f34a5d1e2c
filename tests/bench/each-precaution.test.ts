// Precautions and fluids on the bench, rule by rule: each on the smallest text that meets it, beside one that differs in that alone.

import { expect, test } from "vitest";
import { check, findings, firstRefusedLine, perform, refit, stage } from "./refit/stage.ts";

const lines = (text: string): string[] =>
  findings(text).map((f) => `${f.code}: ${f.says} @ ${text.slice(f.at.start, f.at.end)}`);
const says = (facts: string, steps: string, head = "aim none"): string[] =>
  lines(stage(facts, `step { ${steps} }`, head));
const way = (facts: string, steps: string): string[] => refit(stage(facts, `step { ${steps} }`, "aim none"));

// --- what is turned, and what stands under power -----------------------------------------------------------------------------

const magnets = (on: string, more = ""): string =>
  `part rotor "Rotor" { fits b }\n part pulley "Pulley" { fits rotor }\n part leads "Leads" { rests on b }\n part vice "Vice" { rests on b }\n fastener nut nut "Nut" { joins pulley to rotor }
   hazard pm electrical danger "Magnets turn" { on ${on} ${more} source generator voltage 300 V ac precaution isolate "Open." back "Close." precaution prove-dead "Prove." with tester }`;

test("turning a part of a generator, or what hangs together with one, ends its proof; turning anything else does not", () => {
  const after = (facts: string, turned: string): string[] =>
      says(facts, `isolate pm prove-dead pm rotate ${turned} 1 turn remove leads`),
    lapsed = [
      "hazard/lapsed: Leads must not be touched: prove-dead for Magnets turn ended before this, and must be taken again @ remove leads",
    ];
  for (const of of ["leads, rotor", "leads, nut"])
    for (const turned of ["rotor", "pulley"]) expect(after(magnets(of), turned), `${of}: ${turned}`).toEqual(lapsed);
  expect(after(magnets("leads", "pushes rotor"), "rotor")).toEqual(lapsed);
  expect(after(magnets("leads, rotor"), "vice")).toEqual([]);
  expect(after(magnets("leads, nut"), "vice")).toEqual([]);
  expect(after(magnets("leads, rotor").replace("generator", "mains"), "rotor")).toEqual([]);
  // Off the rotor it turns nothing.
  expect(
    says(magnets("leads, rotor"), "isolate pm prove-dead pm undo nut remove pulley rotate pulley 1 turn remove leads"),
  ).toEqual([]);
});

const guarded = (kind: string, proof: string): string =>
  `part guard guard "Guard"\n fastener gs screw "Guard screws" { count 2 joins guard to b }\n part hinge hinge "Hinge" { fits b }\n part flap guard "Flap" { fits hinge }\n part x "X" { rests on b }
   hazard h ${kind} danger "H" { on x precaution isolate "A." back "B." precaution ${proof} "T." with tester }`;

test("under power every guard is on and none is aside; what is not under power asks for none", () => {
  const restored = (kind: string, proof: string, acts: string): string[] =>
    says(guarded(kind, proof), `isolate h ${proof} h ${acts} restore h isolate h ${proof} h remove x`);
  for (const [kind, proof] of [
    ["rotating", "try-start"],
    ["electrical", "prove-dead"],
  ] as const) {
    expect(restored(kind, proof, "undo gs remove guard fit guard fit gs")).toEqual([]);
    expect(restored(kind, proof, "undo gs remove guard")).toEqual([
      "hazard/guard-off: H is restored while Guard is off @ restore h",
    ]);
  }
  expect(restored("rotating", "try-start", "swing flap swing flap back")).toEqual([]);
  expect(restored("rotating", "try-start", "swing flap")).toEqual([
    "hazard/guard-off: H is restored while Flap is off @ restore h",
  ]);
  for (const [kind, proof] of [
    ["pressure", "prove-zero"],
    ["hot", "cool"],
  ] as const)
    expect(restored(kind, proof, "undo gs remove guard"), kind).toEqual([]);
});

test("only what stands is restored, and only what is declared is taken", () => {
  const facts = guarded("rotating", "try-start");
  expect(says(facts, "restore h isolate h try-start h remove x")).toEqual([
    "hazard/lapsed: Nothing stands against H, so there is nothing to restore @ restore h",
  ]);
  expect(says(facts, "isolate h try-start h remove x restore h restore h")).toEqual([
    "hazard/lapsed: Nothing stands against H, so there is nothing to restore @ restore h",
  ]);
  expect(says(facts, "lock-out h isolate h try-start h remove x")).toEqual([
    "hazard/order: H declares no lock-out @ lock-out h",
  ]);
});

// --- what throws, what a precaution is behind, what is assumed -----------------------------------------------------------------

test("what is thrown is on the last group of ties that is tight; one that parts in passing holds nothing back", () => {
  const facts = (of = "pushes lid"): string =>
      `part lid "Lid"\n fastener s1 screw "S1" { count 2 joins lid to b }\n fastener s2 screw "S2" { count 2 joins lid to b }\n joint pin dowel "Pin" { joins lid to b }
       hazard spring spring warning "Spring" { ${of} precaution block "Block it." back "Take it out." }`,
    yet = (tie: string): string =>
      `hazard/not-yet: ${tie.toUpperCase()} must not be touched yet: Spring asks for block first @ undo ${tie}`;
  expect(says(facts(), "undo s1 block spring undo s2 remove lid")).toEqual([]);
  expect(says(facts(), "undo s1 undo s2 remove lid")).toEqual([yet("s2")]);
  expect(says(facts(), "loosen s1 block spring undo s2 undo s1 remove lid")).toEqual([]);
  expect(says(facts(), "loosen s1 undo s2 undo s1 remove lid")).toEqual([yet("s2")]);
  expect(says(facts("on s1 pushes lid"), "undo s1 undo s2 remove lid")).toEqual([yet("s1")]);
});

const bus = (behind: string): string =>
  `part cover "Cover"\n fastener cs screw "Cover screws" { count 2 joins cover to b }\n part board "Board" { fits b behind cover }
   hazard mains electrical danger "Mains" { on board source mains voltage 230 V ac precaution isolate "Open it." back "Close it." precaution prove-dead behind ${behind} "All poles." with tester }`;

test("a proof is done when what it is behind is off, aside or out: not loose", () => {
  const at = (behind: string, acts: string): string[] => says(bus(behind), `isolate mains ${acts} remove board`),
    stops = (what: string): string[] => [
      `hazard/proof-out-of-reach: ${what} still in front of the place where prove-dead for Mains is done @ prove-dead mains`,
    ];
  expect(at("cover", "undo cs remove cover prove-dead mains")).toEqual([]);
  expect(at("cover", "undo cs slide cover prove-dead mains")).toEqual([]);
  expect(at("cover", "prove-dead mains undo cs remove cover")).toEqual(stops("Cover is"));
  expect(at("cs", "undo cs prove-dead mains remove cover")).toEqual([]);
  expect(at("cs", "loosen cs prove-dead mains undo cs remove cover")).toEqual(stops("Cover screws are"));
  // What was refused before is assumed, and no second finding.
  expect(at("cover", "remove cover prove-dead mains")).toEqual([
    "sequence/still-held: Cover cannot come off: still held by 2 of 2 Cover screws @ remove cover",
  ]);
  for (const behind of ["cover", "cs"])
    expect(way(bus(behind), "isolate mains undo cs prove-dead mains remove cover remove board")).toEqual([
      "fitting Board",
      "fitting Cover",
      "fitting Cover screws",
      "taking the precaution away for Mains",
    ]);
});

const two = `part x "X" { rests on b }\n part y "Y" { rests on b }
  hazard h rotating danger "H" { on x, y precaution isolate "A." back "B." precaution lock-out "L." back "M." precaution try-start "T." }`;

test("a precaution that is forgotten is one finding, and it is taken as done from there on", () => {
  const first =
    "hazard/not-yet: X must not be touched yet: H asks for isolate, lock-out and try-start first @ remove x";
  for (const acts of [
    "remove x remove y",
    "remove x try-start h remove y",
    "remove x isolate h lock-out h try-start h remove y",
  ])
    expect(says(two, acts), acts).toEqual([first]);
  expect(says(two, "try-start h remove x remove y")).toEqual([
    "hazard/order: Isolate and lock-out of H come before this @ try-start h",
  ]);
  expect(says(two, "lock-out h try-start h remove x")).toEqual([
    "hazard/order: Isolate of H comes before this @ lock-out h",
  ]);
  // In the way back it is taken away like one that was written.
  expect(way(two, "remove x")).toEqual([
    "fitting X",
    ...Array.from({ length: 2 }, () => "taking the precaution away for H"),
  ]);
});

test("what a precaution out of turn should have come after is taken as done, and taken away on the way back as well", () => {
  const away = (acts: string): string[] =>
    refit(stage(two, `step { ${acts} }`, "aim none")).filter((line) => line === "taking the precaution away for H");
  for (const [acts, times] of [
    ["lock-out h try-start h remove x", 2], // that the isolator is open was assumed at the lock-out
    ["try-start h remove x", 2],
    ["lock-out h isolate h try-start h remove x", 2], // done after all: it is closed once
    ["lock-out h try-start h remove x restore h", 2], // and taken again for what was touched before the test
  ] as const) {
    expect(away(acts), acts).toHaveLength(times);
    expect(firstRefusedLine(perform(stage(two, `step { ${acts} }`, "aim none")), 100), acts).toBeUndefined();
  }
});

test("`restore` ends what was only assumed as well: the next touch asks again", () => {
  const all = "isolate h lock-out h try-start h";
  expect(says(two, `${all} remove x restore h ${all} remove y`)).toEqual([]);
  const again =
    "hazard/lapsed: Y must not be touched: isolate, lock-out and try-start for H ended before this, and must be taken again @ remove y";
  expect(says(two, `${all} remove x restore h remove y`)).toEqual([again]);
  expect(says(two, "remove x restore h remove y")).toContain(again);
});

// --- fluids ------------------------------------------------------------------------------------------------------------------

const pipe = `part pipe "Pipe"\n joint union pipe-union "Union" { joins pipe to b opens oil }\n fastener plug plug "Plug" { into b }\n fastener filler plug "Filler" { into b }\n fluid oil oil "Oil" { volume 1 L drains at plug fills at filler path pipe }`;

test("what is aboard runs out of a union and of a part on its path, once for each that is not capped", () => {
  const out = (what: string): string => `sequence/fluid-aboard: ${what}: Oil is still aboard and would run out`;
  expect(says(pipe, "undo union remove pipe")).toEqual([`${out("Union cannot be undone")} @ undo union`]);
  expect(says(pipe, "cap pipe undo union remove pipe")).toEqual([]);
  expect(says(pipe, "cap union undo union uncap union remove pipe")).toEqual([
    `${out("Pipe cannot come off")} @ remove pipe`,
  ]);
  expect(says(pipe, "drain oil undo union remove pipe")).toEqual([]);
  expect(says(pipe, "undo union drain oil remove pipe")).toEqual([`${out("Union cannot be undone")} @ undo union`]);
});

test("a drain that is opened and the fluid never drained: it ran out; drained in another line it did not", () => {
  const found = ["sequence/fluid-aboard: Plug cannot be undone: Oil is still aboard and would run out @ undo plug"];
  expect(says(pipe, "undo plug")).toEqual(found);
  expect(says(pipe, "undo plug drain oil")).toEqual([]);
  expect(says(pipe, "undo plug", "aim none starts drained oil")).toEqual([]);
  expect(says(pipe, "undo filler")).toEqual([]);
  // An opening for both may be above its level.
  expect(says(pipe.replace("fills at filler", "fills at plug"), "undo plug")).toEqual([]);
  const text = stage(pipe, "step { undo plug }", "aim none"),
    fixes = check(text).findings.find(({ code }) => code === "sequence/fluid-aboard")!.fixes!;
  expect(fixes.map(({ title }) => title)).toEqual(["Write drain oil"]);
  const [edit] = fixes[0]!.edits;
  expect(lines(text.slice(0, edit!.start) + edit!.text + text.slice(edit!.end))).toEqual([]);
});

test("drained, filled and drained again is no fault; drained twice is", () => {
  expect(says(pipe, "drain oil fit plug fill oil drain oil undo union remove pipe")).toEqual([]);
  expect(says(pipe, "drain oil fit plug fill oil undo union remove pipe")).toEqual([
    "sequence/fluid-aboard: Union cannot be undone: Oil is still aboard and would run out @ undo union",
  ]);
  expect(says(pipe, "drain oil drain oil")).toEqual([
    "sequence/already-undone: Oil is not aboard any more @ drain oil",
  ]);
});

test("in a written way back the drain is closed before the fill", () => {
  const back = (acts: string): string[] =>
    lines(`${stage(pipe, "step { drain oil }")}procedure q "Q" for u { aim all in needs p step { ${acts} } }`);
  expect(back("fit plug fill oil")).toEqual([]);
  expect(back("fill oil fit plug")).toEqual(["refit/impossible: Oil cannot be filled: Plug is still open @ fill oil"]);
});

test("what was opened by a drain and by a line of its own is closed after what let it out", () => {
  expect(way(pipe, "undo plug drain oil undo union remove pipe")).toEqual([
    "fitting Pipe",
    "fitting Union",
    "fitting Plug",
    "filling Oil",
  ]);
});

test("a proof that was never done does not end as well: what is turned afterwards is no second finding", () => {
  const facts = `${magnets("leads, rotor, vice")}`;
  expect(says(facts, "isolate pm remove leads rotate rotor 1 turn remove vice")).toEqual([
    "hazard/not-yet: Leads must not be touched yet: Magnets turn asks for prove-dead first @ remove leads",
  ]);
});

test("a hazard that is on a fluid is touched by whatever lets it out", () => {
  const facts = `${pipe}\n hazard hot-oil hot warning "Hot oil" { on oil precaution cool "Let it stand." back "Sign off." }`;
  expect(says(facts, "cool hot-oil drain oil undo union remove pipe")).toEqual([]);
  expect(says(facts, "drain oil undo union remove pipe")).toEqual([
    "hazard/not-yet: Oil must not be touched yet: Hot oil asks for cool first @ drain oil",
  ]);
});

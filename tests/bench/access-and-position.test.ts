// Access and position: each rule of the bench on a small stage, named after the rule.

import { expect, test } from "vitest";
import { codes, findings, perform, refit, stage } from "./refit/stage.ts";

const says = (text: string): string[] => findings(text).map((f) => f.says);
const lidAndCard = `part lid "Lid"\n part card "Card" { rests on b behind lid }\n fastener screws screw "Screws" { count 4 joins lid to b }`;
const positions = `positions flat, upside\n part lid "Lid" { needs upside }\n fastener screws screw "Screws" { joins lid to b needs upside }`;

test("an item behind others can be worked on only when each is away", () => {
  expect(says(stage(lidAndCard, "step { remove card }"))).toEqual(["Card cannot come off: Lid is in front of it"]);
  expect(codes(stage(lidAndCard, "step { undo screws remove lid remove card }"))).toEqual([]);
});

test("a tie in front is away when it is out or backed out, not when it is loose", () => {
  const facts = `part lid "Lid" { fits b by slide-fit }\n part pin pin "Pin" { fits b behind bolt }\n fastener bolt bolt "Bolt" { joins lid to b }`;
  expect(codes(stage(facts, "step { loosen bolt remove pin }"))).toEqual(["sequence/blocked"]);
  expect(codes(stage(facts, "step { back-out bolt remove pin }"))).toEqual([]);
  expect(codes(stage(facts, "step { undo bolt remove pin }"))).toEqual([]);
});

test("a part in front is away when it is aside", () => {
  expect(codes(stage(lidAndCard, "step { loosen screws swing lid remove card }"))).toEqual([]);
});

test("behind its own host, an item can be worked on once the host is off the unit", () => {
  const facts = `part box "Box"\n part seal-ring seal "Seal" { fits box behind box renew always }\n fastener bs screw "Box screws" { joins box to b }`;
  expect(codes(stage(facts, "step { remove seal-ring }"))).toEqual(["sequence/blocked"]);
  expect(codes(stage(facts, "step { undo bs remove box remove seal-ring }"))).toEqual([]);
});

test("behind what carries it, an item can be worked on once that is off the unit", () => {
  const facts = `part plate "Plate"
    part pump "Pump"
    part strainer filter "Strainer" { behind plate renew always }
    fastener ps screw "Plate screws" { joins plate to b }
    fastener pumps screw "Pump screws" { joins pump to plate behind plate }
    joint thread screwed "Strainer" { joins strainer to pump behind plate }`;
  const inside = "undo thread remove strainer undo pumps remove pump";
  expect(codes(stage(facts, `step { ${inside} undo ps remove plate }`)).slice(0, 1)).toEqual(["sequence/blocked"]);
  const apart = stage(facts, `step { undo ps remove plate } step { ${inside} }`);
  expect(says(apart)).toEqual([]);
  expect(refit(apart)).toEqual([
    "fitting Pump",
    "fitting Pump screws",
    "fitting Strainer",
    "fitting Strainer",
    "fitting Plate",
    "fitting Plate screws",
  ]);
});

test("what its host only slides on hides it on the bench as well", () => {
  const facts = `part rod "Rod"
    part gland "Gland"
    part packing seal "Packing" { fits gland behind rod renew always }
    fastener rs screw "Rod screws" { joins rod to b }
    joint slide slide-fit "Gland on the rod" { joins gland to rod }`;
  expect(codes(stage(facts, "step { undo rs remove rod } step { remove packing }"))).toEqual(["sequence/blocked"]);
  expect(codes(stage(facts, "step { undo rs remove rod } step { remove gland remove packing }"))).toEqual([]);
});

test("before a sub-assembly leaves, no member may be behind something that stays", () => {
  const facts = `part box "Box"\n part pin pin "Pin" { fits box behind bar }\n part bar "Bar" { fits b by slide-fit }\n fastener bs screw "Box screws" { joins box to b }`;
  expect(says(stage(facts, "step { undo bs remove box }"))).toEqual([
    "Box cannot come off: Pin, which comes along, is behind Bar",
  ]);
  expect(codes(stage(facts, "step { remove bar undo bs remove box }"))).toEqual([]);
});

test("readings do not ask that the things named can be reached", () => {
  expect(
    codes(
      stage(lidAndCard, `step { inspect card "Dry" measure gap on card "Gap" at most 1 mm undo screws remove lid }`),
    ),
  ).toEqual([]);
});

test("mark and work ask access", () => {
  expect(says(stage(lidAndCard, `step { mark card, b as M1 undo screws remove lid remove card }`))).toEqual([
    "Card cannot be marked: Lid is in front of it",
  ]);
  expect(says(stage(lidAndCard, `step { work card "Bend the tab up." undo screws remove lid remove card }`))).toEqual([
    "Card cannot be worked on: Lid is in front of it",
  ]);
});

test("a tie is tagged while it is made", () => {
  const facts = `part wire cable "Wire"\n fastener lead screw "Lead" { joins wire to b }`;
  expect(codes(stage(facts, "step { undo lead tag lead as U remove wire }"))).toEqual(["sequence/already-undone"]);
  expect(codes(stage(facts, "step { tag lead as U undo lead remove wire }"))).toEqual([]);
});

test("turn to the position that it is in does nothing", () => {
  const once = perform(stage(positions, "step { turn to upside undo screws remove lid turn to flat }")),
    twice = perform(stage(positions, "step { turn to upside turn to upside undo screws remove lid turn to flat }"));
  expect(twice.problems).toEqual([]);
  expect(twice.refit.map(({ turn }) => turn)).toEqual(once.refit.map(({ turn }) => turn));
});

test("needs POSITION binds each act on the item while it is on the base's assembly", () => {
  expect(codes(stage(positions, "step { undo screws remove lid }"))).toEqual(["sequence/wrong-position"]);
  expect(codes(stage(positions, "step { turn to upside undo screws remove lid turn to flat }"))).toEqual([]);
  const inside = `${positions}\n part pad "Pad" { needs upside }\n fastener ps screw "Pad screws" { joins pad to lid }`;
  expect(
    codes(stage(inside, "step { turn to upside undo screws remove lid turn to flat undo ps remove pad }")),
  ).toEqual([]);
});

test("turns are inserted into the refit where acts need them, and the unit is turned back", () => {
  const performance = perform(stage(positions, "step { turn to upside undo screws remove lid turn to flat }"));
  expect(performance.refit.flatMap(({ turn }) => turn ?? [])).toEqual(["upside"]);
  expect(performance.endTurn).toBe("flat");
});

test("turn with something that only rests is a finding, unless it is caught behind something", () => {
  const facts = `positions flat, upside\n part cup "Cup" { rests on b }`;
  expect(codes(stage(facts, "step { turn to upside turn to flat remove cup }"))).toEqual([
    "sequence/loose-when-turned",
  ]);
  const caught = `positions flat, upside\n part lid "Lid"\n part cup "Cup" { rests on b behind lid }\n fastener screws screw "Screws" { joins lid to b }`;
  expect(codes(stage(caught, "step { turn to upside turn to flat undo screws remove lid remove cup }"))).toEqual([]);
});

test("turn with a part that nothing holds any more is a finding, unless its weight is taken", () => {
  const facts = `positions flat, upside\n part lid "Lid"\n fastener screws screw "Screws" { count 4 joins lid to b }`;
  const found = findings(stage(facts, "step { undo screws turn to upside turn to flat remove lid }"));
  expect(found.map(({ code }) => code)).toEqual(["sequence/loose-when-turned"]);
  expect(found[0]!.says).toBe("Lid is held by nothing any more, and the unit is turned to upside");
  expect(codes(stage(facts, "step { undo screws remove lid turn to upside turn to flat }"))).toEqual([]);
  expect(codes(stage(facts, "step { support lid undo screws turn to upside turn to flat remove lid }"))).toEqual([]);
});

test("turn with a part on the last piece of its ties is a finding, said once; what always hung by one is none", () => {
  const facts = `positions flat, upside\n part lid "Lid"\n fastener screws screw "Screws" { count 4 joins lid to b }\n part tag "Tag"\n fastener ts screw "Tag screw" { joins tag to b }`;
  const found = findings(
    stage(facts, "step { undo 3 of screws turn to upside turn to flat undo rest of screws remove lid }"),
  );
  expect(found.map(({ says }) => says)).toEqual(["Lid hangs by 1 of 4 Screws alone, and the unit is turned to upside"]);
  expect(
    codes(stage(facts, "step { undo 2 of screws turn to upside turn to flat undo rest of screws remove lid }")),
  ).toEqual([]);
  const written = `positions flat, upside\n part lid "Lid"\n fastener screws screw "Screws" { count 4 joins lid to b }`;
  expect(
    codes(
      `${stage(written, "step { undo screws remove lid refit { } }", "refit by back")}procedure back "Back" for u { aim all in needs p step { fit lid turn to upside turn to flat fit screws } }`,
    ),
  ).toEqual(["sequence/loose-when-turned"]);
});

test("a cable, hose or loom hangs by one end; with nothing to hold it, it is tied back or taken off before the turn", () => {
  const facts = (kind: string): string =>
    `positions flat, upside\n part loom ${kind} "Loom"\n joint plug connector "Plug" { joins loom to b }\n joint ties cable-tie "Ties" { count 3 joins loom to b }`;
  const said = (kind: string, acts: string): string[] =>
    findings(stage(facts(kind), `step { ${acts} turn to upside turn to flat remove loom }`)).map(({ says }) => says);
  for (const kind of ["loom", "cable", "hose"]) {
    expect(said(kind, "undo ties").filter((one) => one.includes("turned"))).toEqual([]);
    expect(said(kind, "undo ties, plug")).toEqual([
      "Loom is held by nothing any more, and the unit is turned to upside",
    ]);
    expect(said(kind, 'undo ties, plug slide loom "Tie it back."')).toEqual([]);
  }
  const written = (kind: string): string[] =>
    findings(stage(facts(kind), "step { undo ties turn to upside turn to flat undo plug remove loom }")).map(
      ({ says }) => says,
    );
  expect(written("loom")).toEqual([]);
  expect(written("guard")).toEqual(["Loom hangs by Plug alone, and the unit is turned to upside"]);
});

test("turn with a fluid that would run out of what is open is a finding, once; what is capped lets nothing out", () => {
  const facts = `positions flat, upside\n part pipe "Pipe"\n joint union pipe-union "Union" { joins pipe to b opens oil }\n fastener plug plug "Plug" { into b }\n fastener filler plug "Filler" { into b }\n fluid oil oil "Oil" { volume 1 L drains at plug fills at filler path pipe }`,
    turns = "turn to upside turn to flat",
    says = (steps: string): string[] =>
      findings(stage(facts, `step { ${steps} }`, "aim none")).map((f) => `${f.code}: ${f.says}`),
    runs = (of: string): string[] => [
      `sequence/loose-when-turned: Oil would run out of ${of} when the unit is turned to upside`,
    ];
  expect(says(turns)).toEqual([]);
  expect(says(`undo filler ${turns}`)).toEqual(runs("Filler"));
  expect(says(`undo filler ${turns} drain oil`)).toEqual(runs("Filler"));
  expect(says(`undo plug ${turns}`)).toEqual(runs("Plug"));
  expect(says(`undo filler drain oil ${turns}`)).toEqual([]);
  expect(says(`cap pipe undo union remove pipe ${turns}`)).toEqual([]);
  expect(says(`cap pipe undo union remove pipe uncap pipe ${turns}`)).toEqual(runs("Union"));
  expect(codes(stage(facts, `step { drain oil undo union remove pipe ${turns} }`))).toEqual([]);
});

test("undoing a captive fastener is a finding, once, taken as backed out, whether it was loosened before or not", () => {
  const facts = `part lid "Lid"\n fastener captives captive-screw "Captive screws" { count 4 joins lid to b }`;
  expect(codes(stage(facts, "step { undo captives }", "aim none"))).toEqual(["sequence/captive"]);
  for (const before of ["", "loosen captives"]) {
    expect(codes(stage(facts, `step { ${before} back-out captives remove lid }`))).toEqual([]);
    expect(codes(stage(facts, `step { ${before} undo captives remove lid }`))).toEqual(["sequence/captive"]);
  }
  expect(codes(stage(facts, "step { back-out captives undo captives remove lid }"))).toEqual([
    "sequence/already-undone",
  ]);
  expect(refit(stage(facts, "step { loosen captives back-out captives remove lid }"))).toEqual([
    "fitting Lid",
    "tightening Captive screws",
  ]);
});

test("a ring of behind is found in the declarations, with each link", () => {
  const facts = `part x "X" { fits b behind y }\n part y "Y" { fits b behind z }\n part z "Z" { fits b behind x }`;
  const found = findings(stage(facts, "step { }", "aim none"));
  expect(found.map(({ code }) => code)).toEqual(["sequence/cycle"]);
  expect(found[0]!.because.length).toBeGreaterThanOrEqual(3);
});

test("a ring may run through a fastener", () => {
  const facts = `part lid "Lid" { behind screws }\n fastener screws screw "Screws" { joins lid to b behind lid }`;
  expect(codes(stage(facts, "step { }", "aim none"))).toEqual(["sequence/cycle"]);
});

// Refusals of the bench that no page of a check shows: each on the smallest text that meets it, beside a text that differs in that alone
// and is clean.

import { expect, test } from "vitest";
import { codes, findings, firstRefusedLine, perform, refit, stage } from "./refit/stage.ts";

const says = (facts: string, steps: string): string[] =>
  findings(stage(facts, steps)).map((f) => `${f.code}: ${f.says}`);
const lid = `part lid "Lid"\n fastener screws screw "Screws" { count 4 joins lid to b }`;
const pins = `part pin pin "Pins" { count 2 fits b }`;

test("a line is capped once, and only what is capped is uncapped", () => {
  const hose = `part hose "Hose"\n joint union screwed "Union" { joins hose to b }`;
  expect(says(hose, "step { undo union cap union uncap union remove hose }")).toEqual([]);
  expect(says(hose, "step { undo union cap union cap union }")).toEqual([
    "sequence/already-undone: Union is capped already",
  ]);
  expect(says(hose, "step { undo union uncap union }")).toEqual(["sequence/already-undone: Union is not capped"]);
});

test("what is to be recovered is not purged, evacuated or drained while it is aboard", () => {
  const gas = `fluid gas refrigerant "Gas" { recover fills at port }\n part cap "Cap"\n fastener port screw "Port" { count 1 joins cap to b }`;
  expect(says(gas, "step { recover gas evacuate gas }")).toEqual([]);
  expect(says(gas, "step { evacuate gas }")).toEqual([
    "hazard/not-recovered: Gas is to be recovered before it is evacuated",
  ]);
  expect(says(gas, "step { purge gas }")).toEqual(["hazard/not-recovered: Gas is to be recovered before it is purged"]);
  expect(says(gas, "step { drain gas }")).toEqual(["hazard/not-recovered: Gas is to be recovered, not drained"]);
});

test("what was scrapped is not used again", () => {
  const [found, ...more] = says(lid, "step { undo screws remove lid scrap screws refit { reuse screws } }");
  expect(found).toMatch(/^fastener\/one-time-reused: Screws .* scrapped before$/);
  expect(more).toEqual([]);
});

test("only what is put on is taken off", () => {
  const felt = `${lid}\n temporary felt "Felt"`;
  expect(says(felt, "step { put felt on lid take felt off }")).toEqual([]);
  expect(says(felt, "step { take felt off }")).toEqual(["sequence/already-undone: Felt was never put on"]);
});

test("nothing is applied to what goes on dry", () => {
  const dry = lid.replace(`"Lid"`, `"Lid" { dry }`),
    steps = "step { undo screws remove lid refit { apply grease to lid } }";
  expect(says(lid, steps)).toEqual([]);
  expect(says(dry, steps)).toEqual(["refit/contradiction: Lid goes on dry, and this puts something on it"]);
});

test("of a part of several pieces no more come off, and no more go on, than there are", () => {
  expect(says(pins, "step { remove 1 of pin remove rest of pin }")).toEqual([]);
  expect(says(pins, "step { remove 1 of pin remove 2 of pin }")).toEqual([
    "sequence/over-count: 2 of Pins are asked for, and only 1 of 2 are in",
  ]);
  expect(says(pins, "step { remove pin refit { fit 1 of pin fit 1 of pin } }")).toEqual([]);
  expect(says(pins, "step { remove pin refit { fit 3 of pin } }")).toEqual([
    "sequence/over-count: 3 of Pins are asked for, and only 2 of 2 are out",
  ]);
  expect(says(pins, "step { remove pin refit { fit 1 of pin fit 2 of pin } }")).toEqual([
    "sequence/over-count: 2 of Pins are asked for, and only 1 of 2 are out",
  ]);
});

test("a count of a part in a refit block leaves the rest to the reverse", () => {
  const steps = "step { remove pin refit { fit 1 of pin } }";
  expect(says(pins, steps)).toEqual([]);
  expect(refit(stage(pins, steps))).toEqual(["fitting Pins", "fitting Pins"]);
});

test("what a refit block fits twice is in already, and the second stands after the first", () => {
  const twice = "step { undo screws remove lid refit { fit lid fit screws fit screws } }";
  expect(refit(stage(lid, twice))).toEqual(["fitting Lid", "fitting Screws", "fitting Screws"]);
  expect(says(lid, twice)).toEqual(["refit/impossible: Screws cannot go on: Screws are in already"]);
  // A try: in, out, and in again.
  expect(says(lid, "step { undo screws remove lid refit { fit lid fit screws undo screws fit screws } }")).toEqual([]);
});

test("a stage of tightening that comes too early is named with the one that is due", () => {
  const staged = lid.replace("count 4", "count 4 stages 5 N·m, 10 N·m, 15 N·m");
  expect(
    says(staged, "step { undo screws remove lid refit { fit lid fit screws tighten screws to stage 3 } }"),
  ).toEqual(["refit/impossible: Screws cannot be tightened: stage 1 comes before stage 3"]);
});

test("what is slid aside is reached, and in its position", () => {
  const cable = `joint cable connector "Cable" { joins lid to b }`,
    guard = `part guard "Guard"\n fastener gs screw "Guard screws" { count 2 joins guard to b }`,
    slide = "loosen cable slide lid";
  expect(says(`${guard}\n part lid "Lid" { behind guard }\n ${cable}`, `step { ${slide} }`)).toEqual([
    "sequence/blocked: Lid cannot be slid aside: Guard is in front of it",
  ]);
  expect(says(`positions flat, up\n part lid "Lid" { needs up }\n ${cable}`, `step { ${slide} }`)).toEqual([
    "sequence/wrong-position: Lid cannot be slid aside: it needs up, and the unit is flat",
  ]);
  expect(says(`positions flat, up\n part lid "Lid"\n ${cable}`, `step { ${slide} refit { slide lid } }`)).toEqual([]);
});

test("loosened twice is a finding at the second", () => {
  expect(says(lid, "step { loosen screws }")).toEqual([]);
  expect(says(lid, "step { loosen screws loosen screws }")).toEqual([
    "sequence/already-undone: Screws are loose already",
  ]);
});

test("loosened after it was backed out is a finding: it is looser than that", () => {
  expect(says(lid, "step { back-out screws loosen screws }")).toEqual([
    "sequence/already-undone: Screws are backed out already",
  ]);
  expect(says(lid, "step { back-out 1 of screws loosen rest of screws undo screws remove lid }")).toEqual([]);
  // The rest of them further out is no act of its own: they go in once.
  const text = stage(lid, "step { back-out screws remove lid undo 1 of screws back-out screws }", "aim none");
  expect(codes(text)).toEqual([]);
  expect(firstRefusedLine(perform(text), 100)).toBeUndefined();
});

test("what is off is not slid aside: what is moved there is on", () => {
  const off = "sequence/already-undone: Lid is off already";
  expect(says(lid, "step { undo screws slide lid }")).toEqual([]);
  for (const verb of ["slide", "swing", "open"])
    expect(says(lid, `step { undo screws remove lid ${verb} lid }`), verb).toEqual([off]);
  // What rides on what is off may be moved there.
  const card = `${lid}\n part flap "Flap"\n fastener fs screw "Flap screw" { joins flap to lid }`;
  expect(says(card, "step { undo screws remove lid loosen fs slide flap }")).toEqual([]);
  expect(says(card, "step { undo screws remove lid loosen fs slide lid }")).toEqual([off]);
});

test("a joint that let go in passing is not undone once more", () => {
  const ring = `part ring "Ring"\n joint seat press-fit "Seat" { joins ring to b }\n part hub "Hub" { fits ring }`;
  const apart = "sequence/already-undone: Seat came apart when Ring was taken off";
  expect(says(ring, "step { undo seat remove ring }")).toEqual([]);
  expect(says(ring, "step { loosen seat remove ring }")).toEqual([]);
  for (const verb of ["undo", "loosen", "back-out"])
    expect(says(ring, `step { remove ring ${verb} seat }`), verb).toEqual([apart]);
  // Screws that were backed out come out of what is off.
  expect(says(lid, "step { back-out screws remove lid undo screws }")).toEqual([]);
});

test("together come off only parts of one sub-assembly", () => {
  const box = `part box "Box"\n fastener bs screw "Box screws" { joins box to b }\n part card "Card" { fits box }\n ${lid}`;
  expect(says(box, "step { undo bs remove box undo screws remove card, lid together }")).toEqual([
    "sequence/blocked: Card cannot come off: Lid is not in one sub-assembly with it, so they cannot come off together",
  ]);
});

// --- declarations and procedures that rest on one another ----------------------------------------------------------------------

test("only what is made safe after a proof is declared after it: earth, screen, barrier, and what no rule knows", () => {
  const declares = (last: string): string[] =>
    says(
      `part x "X" { rests on b }\n hazard h electrical danger "H" { on x source mains voltage 230 V ac precaution isolate "A." precaution prove-dead "P." precaution ${last} "L." }`,
      "",
    ).filter((line) => line.startsWith("hazard/"));
  for (const last of ["earth", "screen", "barrier", "other"]) expect(declares(last), last).toEqual([]);
  for (const last of ["block", "cool", "ventilate"])
    expect(declares(last)).toEqual([`hazard/order: H declares ${last} after prove-dead, and it belongs before it`]);
});

test("two orders of the unit that say the opposite are found in the declarations, once", () => {
  const orders = (list: string): string[] =>
    says(
      `part x "X" { rests on b }\n part y "Y" { rests on b }\n part z "Z" { rests on b }\n ${list}`,
      "step { remove x remove y }",
    );
  expect(orders("order x after y order x after y")).toEqual([]);
  expect(orders("order x after y order y after z")).toEqual([]);
  const found = ["refit/contradiction: Y goes after x here, and before it in another statement (the same for X)"];
  for (const list of [
    "order x after y order y after x",
    "order x after y order x before y",
    "order x after y, z order y after x",
  ])
    expect(orders(list), list).toEqual(found);
});

test("a procedure that starts on the bench is done on a part that is there, in both halves", () => {
  const facts = `${lid}\n part card "Card"\n fastener cs screw "Card screws" { count 2 joins card to lid }`,
    more = (id: string, head: string, acts: string): string =>
      `procedure ${id} "${id.toUpperCase()}" for u { ${head} step { ${acts} } }\n`;
  const strip = (before: string): string[] =>
    findings(
      stage(facts, `step { ${before} do q on lid }`, "aim none") + more("q", "starts on bench", "undo cs remove card"),
    ).map((f) => f.says);
  expect(strip("undo screws remove lid")).toEqual([]);
  expect(strip("")).toEqual(["Lid cannot be worked on: Q starts on the bench, and it is still on the unit"]);
  const back = (acts: string): string[] =>
    findings(
      stage(facts, "step { undo screws remove lid undo cs remove card }", "refit by r") +
        more("r", "aim all in", acts) +
        more("q", "starts on bench", "fit card fit cs"),
    ).map((f) => f.says);
  expect(back("do q on lid fit lid fit screws")).toEqual([]);
  expect(back("fit lid fit screws do q on lid")).toEqual([
    "Lid cannot be worked on: Q starts on the bench, and it is on the unit",
  ]);
});

test("what a procedure of the way back needs is done before it there, too", () => {
  const text = (before: string): string =>
    stage(lid, "step { undo screws remove lid }", "refit by r") +
    `procedure r "R" for u { aim all in step { ${before} do q fit lid fit screws } }\n` +
    `procedure q "Q" for u { needs s step { inspect x on b "Clean" } }\n` +
    `procedure s "S" for u { aim none step { inspect y on b "Clean" } }\n`;
  expect(findings(text("do s"))).toEqual([]);
  expect(findings(text("")).map((f) => f.says)).toEqual(["Q needs S done before it"]);
});

// --- one slip, two traces -------------------------------------------------------------------------------------------------------

test("of two things with like names one done twice and the other never is one finding, wherever the second trace turns up", () => {
  const hoods = `${lid}\n part hood "Hood"\n fastener hs screw "Hood screws" { count 2 joins hood to b }`,
    strip = "undo screws remove lid undo hs remove hood";
  const back = (acts: string): string[] =>
    findings(`${stage(hoods, `step { ${strip} }`)}procedure q "Q" for u { aim all in needs p step { ${acts} } }\n`).map(
      (f) => `${f.code} ${f.says}`,
    );
  expect(back("fit lid fit screws fit hood fit hs")).toEqual([]);
  expect(back("fit lid fit screws fit hood fit screws")).toHaveLength(1);
  expect(back("fit lid fit screws fit hood tighten screws")).toHaveLength(1);
  expect(back("fit lid tighten screws fit hood fit hs")).toEqual([
    "refit/impossible Screws cannot be tightened: Screws are not in",
  ]);
  for (const acts of [
    "undo screws undo screws undo screws remove lid",
    "undo screws remove lid undo screws undo screws",
    "undo screws remove lid remove hood undo screws",
    "remove hood undo screws remove lid undo screws",
  ])
    expect(says(hoods, `step { ${acts} }`), acts).toHaveLength(1);
});

test("`align X` names a mark, or a part that says what it is aligned by", () => {
  const back = (facts: string): string[] =>
    findings(
      `${stage(facts, "step { undo screws remove lid }")}procedure q "Q" for u { aim all in needs p step { fit lid align lid fit screws } }\n`,
    ).map((f) => f.says);
  expect(back(lid.replace(`"Lid"`, `"Lid" { align by "Arrow to the front." }`))).toEqual([]);
  expect(back(lid)).toEqual(["Lid was never marked"]);
});

test("an end is tagged while it is made", () => {
  expect(says(lid, 'step { tag screws "One" undo screws remove lid }')).toEqual([]);
  expect(says(lid, 'step { undo screws tag screws "One" remove lid }')).toEqual([
    "sequence/already-undone: Screws are undone already, and an end is tagged while still made",
  ]);
});

test("a plug hides what is behind it until it is out, or the part that it sits in is away", () => {
  const facts = `${lid}\n fastener plug plug "Plug" { into lid }\n part pin "Pin" { rests on b behind plug }`;
  expect(says(facts, "step { remove pin }")).toEqual(["sequence/blocked: Pin cannot come off: Plug is in front of it"]);
  expect(says(facts, "step { undo plug remove pin }")).toEqual([]);
  expect(says(facts, "step { undo screws remove lid remove pin }")).toEqual([]);
});

test("what was loosened and then undone or backed out is tightened once on the way back", () => {
  const way = (acts: string): string[] => refit(stage(lid, `step { ${acts} remove lid }`));
  expect(way("loosen screws back-out screws")).toEqual(["fitting Lid", "tightening Screws"]);
  expect(way("back-out screws loosen screws")).toEqual(["fitting Lid", "tightening Screws"]);
  expect(way("loosen 2 of screws undo screws")).toEqual([
    "fitting Lid",
    "fitting finger-tight Screws",
    "tightening Screws",
  ]);
});

test("a fastener that is removed is undone, and a part that is undone is removed: the trade says either", () => {
  expect(says(lid, "step { remove screws, lid }")).toEqual([]);
  expect(says(lid, "step { undo screws, lid }")).toEqual([]);
  expect(says(lid, "step { undo lid }")).toEqual([
    "sequence/still-held: Lid cannot be undone: still held by 4 of 4 Screws",
  ]);
  expect(refit(stage(lid, "step { remove screws, lid }"))).toEqual(["fitting Lid", "fitting Screws"]);
});

test("what undoing destroys is not used again, and a lock-wire stays a question whatever the reason", () => {
  const plate = (tie: string): string => `part plate "Plate"\n ${tie} { joins plate to b }`,
    back = (tie: string, words: string): string[] =>
      says(plate(tie), `step { undo t remove plate refit { reuse t ${words} reverse } }`);
  expect(back('fastener t rivet "Rivet"', '"As good as new."')[0]).toContain("fastener/one-time-reused");
  expect(back('fastener t screw "Screw"', "")).toEqual([]);
  expect(back('joint t lock-wire "Wire"', '"As good as new."').map((one) => one.split(":")[0])).toEqual([
    "refit/seal-reused",
  ]);
  // One that only holds, and says why it goes back, is none.
  expect(back('joint t pinch-clamp "Clamp"', '"Not cut."')).toEqual([]);
});

// What the strip puts together for a while and takes apart again (a trial assembly, safe keeping) is no part of the way back.

import { expect, test } from "vitest";
import { check, codes, findings, firstRefusedLine, perform, refit, stage } from "./stage.ts";

const lid = `part lid "Lid"\n fastener ls screw "Lid screws" { count 4 joins lid to b }`;

/** The printed way back of a clean strip, of which every other line can be performed as well. */
function wayBack(facts: string, acts: string): string[] {
  const text = stage(facts, `step "S" { ${acts} }`, "aim none");
  expect(codes(text), acts).toEqual([]);
  expect(firstRefusedLine(perform(text), 100), acts).toBeUndefined();
  return refit(text);
}
const counts = (facts: string, acts: string): number[] => {
  const { line, ops } = perform(stage(facts, `step "S" { ${acts} }`, "aim none")).order!;
  return line.map((n) => ops[n]!.count);
};

test("a trial assembly is not in the way back, in however many goes it is made and undone", () => {
  for (const trial of [
    "fit lid fit ls undo ls remove lid",
    "fit lid fit ls undo 2 of ls undo rest of ls remove lid",
    "fit lid fit 2 of ls fit 2 of ls undo ls remove lid",
    "fit lid fit 2 of ls fit 2 of ls undo 1 of ls undo 3 of ls remove lid",
    "fit lid fit 3 of ls finger-tight undo 2 of ls undo rest of ls remove lid",
    "fit lid fit ls loosen ls undo ls remove lid",
    "fit lid fit ls loosen ls undo 2 of ls undo rest of ls remove lid",
    "fit lid remove lid fit lid fit ls undo ls remove lid",
  ])
    expect(wayBack(lid, `undo ls remove lid ${trial}`), trial).toEqual(["fitting Lid", "fitting Lid screws"]);
});

test("what could be done only after the trial came apart again rests on the first time", () => {
  const facts = `${lid}\n part card "Card" { rests on b behind lid }\n part cable cable "Cable"\n fastener cs screw "Cable screw" { joins cable to b behind ls }`,
    trial = "undo ls remove lid fit lid fit ls undo 2 of ls undo rest of ls remove lid";
  expect(wayBack(facts, `${trial} remove card undo cs remove cable`)).toEqual([
    "fitting Cable",
    "fitting Cable screw",
    "fitting Card",
    "fitting Lid",
    "fitting Lid screws",
  ]);
});

test("what of a trial stays in is undone first on the way back, and no more than that", () => {
  const card = `${lid}\n part card "Card" { rests on b behind lid }`,
    acts = "undo ls remove lid remove card fit lid fit ls undo 3 of ls";
  expect(wayBack(card, acts)).toEqual([
    "undoing Lid screws",
    "removing Lid",
    "fitting Card",
    "fitting Lid",
    "fitting Lid screws",
  ]);
  expect(counts(card, acts)).toEqual([1, 1, 1, 1, 4]);
  // The pieces that went in last come out first: of two that stayed and two that were tried the way back fits four.
  const two = "undo 2 of ls fit 2 of ls loosen ls undo ls remove lid";
  expect(wayBack(lid, two)).toEqual([
    "fitting Lid",
    "fitting finger-tight Lid screws",
    "tightening Lid screws",
    "fitting Lid screws",
  ]);
  expect(counts(lid, two)).toEqual([1, 2, 4, 2]);
});

test("several tried on one by one and taken off together are tried on", () => {
  const two = `part x "X" { rests on b }\n part y "Y" { rests on b }`;
  expect(wayBack(two, "remove x remove y fit x fit y remove x, y together")).toEqual(["fitting Y", "fitting X"]);
  // Taken off together, of which one alone was off and on again before: both are fitted.
  expect(wayBack(two, "remove x fit x remove x, y together")).toEqual(["fitting X, Y"]);
});

test("what came off a part while that was tried on goes on there, and the lid once", () => {
  const facts = `${lid}\n part fan "Fan" { rests on lid }`,
    acts = "undo ls remove lid fit lid fit ls remove fan undo ls remove lid";
  expect(wayBack(facts, acts)).toEqual(["fitting Lid", "fitting Fan", "fitting Lid screws"]);
  // Something is still apart that was reached while it was off: it is taken off again for that.
  const card = `${facts}\n part card "Card" { rests on b behind lid }`,
    apart = acts.replace("fit lid", "remove card fit lid");
  expect(wayBack(card, apart)).toEqual([
    "fitting Lid",
    "fitting Fan",
    "removing Lid",
    "fitting Card",
    "fitting Lid",
    "fitting Lid screws",
  ]);
});

test("what the strip takes off and puts back itself is no part of the way back", () => {
  const card = `${lid}\n part card "Card" { rests on b behind lid }`,
    look = 'undo ls remove lid inspect inside on b "No rust" fit lid fit ls';
  expect(wayBack(lid, look)).toEqual([]);
  // What was done under it and put right again does not matter, and what was loosened first is tight.
  expect(wayBack(card, "loosen ls undo ls remove lid remove card fit card fit lid fit ls")).toEqual([]);
  // What is still apart was reached while it was off.
  expect(wayBack(card, "undo ls remove lid remove card fit lid fit ls")).toEqual([
    "undoing Lid screws",
    "removing Lid",
    "fitting Card",
    "fitting Lid",
    "fitting Lid screws",
  ]);
  // Not as it was: finger-tight, one screw fewer, or with something that is used up by coming apart.
  expect(wayBack(lid, "undo ls remove lid fit lid fit ls finger-tight")).toContain("undoing Lid screws");
  expect(counts(lid, "undo ls remove lid fit lid fit 3 of ls")).toEqual([1]);
  const ring = `part ring o-ring "Ring" { fits b renew always }`;
  expect(wayBack(ring, "remove ring renew ring fit ring")).toEqual(["removing Ring", "fitting Ring"]);
  // With more than came off, it is another part that is put on.
  const two = `part x "X" { rests on b }\n part y "Y" { rests on x }`;
  expect(wayBack(two, "remove y remove x fit y fit x")).toContain("fitting X");
});

test("taken off and put back with nothing done between is a hint; with anything done, or as a trial, it is none", () => {
  const hints = (acts: string): string[] =>
    check(stage(`${lid}\n part card "Card" { rests on b behind lid }`, `step "S" { ${acts} }`, "aim none"))
      .findings.filter(({ code }) => code === "removal/nothing-between")
      .map(({ says, severity }) => `${severity} ${says}`);
  const hint = ["hint Lid is taken off and put back, and nothing is done between"];
  expect(hints("undo ls remove lid fit lid fit ls")).toEqual(hint);
  expect(hints("undo ls remove lid fit lid fit 2 of ls tighten ls")).toEqual(hint);
  for (const between of ['inspect inside on b "No rust"', "remove card", "clean b", 'note "Look inside."', "renew lid"])
    expect(hints(`undo ls remove lid ${between} fit lid fit ls`), between).toEqual([]);
  expect(hints('undo ls remove lid "Turn it over." fit lid fit ls')).toEqual([]);
  expect(hints("undo ls remove lid fit lid remove lid")).toEqual([]);
});

test("a joint that parts in passing and is undone after a trial is made when its part is on", () => {
  const seat = `part lid "Lid"\n joint seat press-fit "Seat" { joins lid to b }`;
  expect(wayBack(seat, "remove lid fit lid undo seat remove lid")).toEqual(["fitting Lid", "fitting Seat"]);
});

test("a weight that was let go for the trial and taken again is let go once", () => {
  const motor = `part m "Motor" { mass 40 kg hangs }\n fastener ms screw "Motor screws" { count 4 joins m to b }`,
    off = "support m with hoist undo ms remove m";
  expect(wayBack(motor, `${off} fit m fit ms release m ${off}`)).toEqual([
    "fitting Motor",
    "fitting Motor screws",
    "letting go Motor",
  ]);
});

test("swung back and aside again is swung back once", () => {
  const door = `part door "Door"\n part lock "Lock" { rests on b behind door }\n fastener catch bolt "Catch" { joins door to b }`;
  expect(wayBack(door, "loosen catch swing door swing door back swing door remove lock")).toEqual([
    "fitting Lock",
    "putting back Door",
    "tightening Catch",
  ]);
});

test("what was tightened for a while and is loose again is tightened once", () => {
  const captive = `part lid "Lid"\n fastener ls captive-screw "Lid screws" { count 4 joins lid to b }`;
  expect(wayBack(captive, "back-out ls remove lid fit lid tighten ls back-out ls remove lid")).toEqual([
    "fitting Lid",
    "tightening Lid screws",
  ]);
  const strap = `part x "X" { rests on b behind strap }\n part strap "Strap"\n fastener ss screw "Strap screws" { count 2 joins strap to b }`;
  expect(wayBack(strap, "loosen ss slide strap remove x slide strap back tighten ss loosen ss slide strap")).toEqual([
    "fitting X",
    "putting back Strap",
    "tightening Strap screws",
  ]);
});

test("some undone, the rest loosened and then undone: each of them goes back in, and is tightened", () => {
  for (const rest of ["undo ls", "undo 1 of ls undo rest of ls"]) {
    const acts = `undo 2 of ls loosen ls ${rest} remove lid`;
    expect(wayBack(lid, acts)).toContain("tightening Lid screws");
    const fitted = perform(stage(lid, `step "S" { ${acts} }`)).order!.ops.filter((op) => op.event?.kind === "out");
    expect(fitted.reduce((sum, { count }) => sum + count, 0)).toBe(4);
  }
});

test("what is in already and is fitted once more was not put in: a finding, and nothing is undone for it", () => {
  const two = `${lid}\n part cap "Cap"\n fastener cs screw "Cap screws" { count 2 joins cap to b }`;
  const told = (acts: string): string[] =>
    findings(stage(two, `step "S" { ${acts} }`, "aim none")).map(({ says }) => says);
  const back = ["fitting Lid", "fitting Lid screws"];
  expect(told("undo ls remove lid fit cs")).toEqual(["Cap screws cannot go on: Cap screws are in already"]);
  expect(refit(stage(two, 'step "S" { undo ls remove lid fit cs }', "aim none"))).toEqual(back);
  expect(told("undo ls remove lid fit cap")).toEqual(["Cap cannot go on: Cap is on already"]);
  expect(refit(stage(two, 'step "S" { undo ls remove lid fit cap }', "aim none"))).toEqual(back);
  // Put on by its name and named again; what came along may be named in that step.
  expect(told("undo ls remove lid fit lid fit lid")).toEqual(["Lid cannot go on: Lid is on already"]);
  // A half that others do begins with fitting.
  expect(told("fit cap fit cs")).toEqual([]);
  // Loose, it is tight again after that.
  expect(wayBack(two, "loosen cs fit cs undo ls remove lid")).toEqual([
    "fitting Lid",
    "fitting Lid screws",
    "tightening Cap screws",
  ]);
});

// A written way back, rule by rule: each on the smallest text that meets it, beside one that differs in that alone and is clean.

import { expect, test } from "vitest";
import { codes, findings, refit, stage } from "./refit/stage.ts";

/** What is said of a procedure that takes apart and another that puts together again. */
const says = (facts: string, strip: string, back: string, head = ""): string[] =>
  findings(
    `temporary felt "Felt"\n${stage(facts, `step { ${strip} }`)}procedure q "Q" for u {\n aim all in\n needs p\n ${head}\n step { ${back} }\n}\n`,
  ).map((f) => `${f.code}: ${f.says}`);

const lid = `part lid "Lid"\n fastener screws screw "Screws" { count 4 joins lid to b }`,
  lidOff = "undo screws remove lid",
  pins = `part pin pin "Pins" { count 2 fits b }`;

test("of a part of several pieces no more go on than are off, and all of them", () => {
  const pin = (back: string): string[] => says(pins, "remove pin", back);
  expect(pin("fit pin")).toEqual([]);
  expect(pin("fit 1 of pin fit 1 of pin")).toEqual([]);
  expect(pin("fit 3 of pin")).toEqual(["sequence/over-count: 3 of Pins are asked for, and only 2 of 2 are out"]);
  expect(pin("fit 1 of pin fit 2 of pin")).toEqual([
    "sequence/over-count: 2 of Pins are asked for, and only 1 of 2 are out",
  ]);
  expect(pin("fit 1 of pin")).toEqual(["refit/missing: Pins: 1 of 2 went back on"]);
  expect(pin("")).toEqual(["refit/missing: Pins came off here and are not back on at the end"]);
});

test("of a fastener no more go in than are out, and no more are tightened than there are", () => {
  const screws = (back: string): string[] => says(lid, lidOff, `fit lid ${back}`);
  expect(screws("fit 3 of screws fit 1 of screws")).toEqual([]);
  expect(screws("fit 5 of screws")).toEqual([
    "sequence/over-count: 5 of Screws are asked for, and only 4 of 4 are out",
  ]);
  expect(screws("fit 3 of screws fit 2 of screws")).toEqual([
    "sequence/over-count: 2 of Screws are asked for, and only 1 of 4 are out",
  ]);
  expect(screws("fit screws finger-tight tighten 5 of screws")).toEqual([
    "sequence/over-count: 5 of Screws are asked for, and only 4 of 4 are in",
  ]);
  expect(screws("fit 3 of screws")).toEqual(["refit/missing: Screws: 1 of 4 are not back in at the end"]);
});

test("what is in is fitted once; finger-tight it may be fitted again, and then it is tight", () => {
  const screws = (back: string): string[] => says(lid, lidOff, `fit lid ${back}`);
  expect(screws("fit screws finger-tight fit screws")).toEqual([]);
  expect(screws("fit screws fit screws")).toEqual(["refit/impossible: Screws cannot go on: Screws are in already"]);
  expect(screws("fit screws fit screws finger-tight")).toEqual([
    "refit/missing: Screws are left finger-tight at the end",
  ]);
  expect(says(lid, "loosen screws", "")).toEqual(["refit/missing: Screws are left loose at the end"]);
});

test("what is tightened before it is in is one finding, whatever follows", () => {
  for (const back of ["fit lid tighten screws", "fit lid tighten screws fit screws"])
    expect(says(lid, lidOff, back), back).toEqual(["refit/impossible: Screws cannot be tightened: Screws are not in"]);
});

test("a part that came along may be named in the step in which it came, one that was fitted by its name may not, and none after it", () => {
  expect(says(lid, lidOff, "fit lid fit lid fit screws")).toEqual([
    "refit/impossible: Lid cannot go on: Lid is on already",
  ]);
  expect(says(lid, lidOff, "fit lid } step { fit lid fit screws")).toEqual([
    "refit/impossible: Lid cannot go on: Lid is on already",
  ]);
  const knob = `${lid}\n part knob "Knob" { fits lid }`;
  // It rides: named after what carries it, in the same step.
  expect(says(knob, lidOff, "fit lid fit knob fit screws")).toEqual([]);
  expect(says(knob, lidOff, "fit knob fit lid fit screws")).toEqual([
    "refit/impossible: Knob cannot go on: Knob is on already",
  ]);
  expect(says(knob, `${lidOff} remove knob`, "fit knob fit lid fit screws")).toEqual([]);
  expect(says(knob, `${lidOff} remove knob`, "fit lid fit screws")).toEqual([
    "refit/missing: Knob came off here and is not back on at the end",
  ]);
});

test("a tie to what is never fitted: the part is missing, said where it came off", () => {
  const handle = `${lid}\n part knob "Knob"\n fastener ks screw "Knob screws" { joins knob to lid }`,
    never = "refit/missing: Lid came off here and is never fitted";
  expect(says(lid, lidOff, "fit screws")).toEqual([never]);
  expect(says(handle, `${lidOff} undo ks remove knob`, "fit knob fit ks fit screws")).toEqual([never]);
});

test("`needs POSITION` binds fitting a part and a fastener on the unit, and not on the bench", () => {
  const turns = `positions flat, up\n`,
    pin = `${turns} part pin "Pin" { fits b needs up }`,
    plug = `${turns} fastener plug plug "Plug" { into b needs up }`;
  expect(says(pin, "turn up remove pin turn flat", "turn up fit pin turn flat")).toEqual([]);
  expect(says(pin, "turn up remove pin turn flat", "fit pin")).toEqual([
    "sequence/wrong-position: Pin cannot go on: it needs up, and the unit is flat",
  ]);
  expect(says(plug, "turn up undo plug turn flat", "turn up fit plug turn flat")).toEqual([]);
  expect(says(plug, "turn up undo plug turn flat", "fit plug")).toEqual([
    "sequence/wrong-position: Plug cannot go on: it needs up, and the unit is flat",
  ]);
  const box = `${turns} part box "Box"\n fastener bs screw "Box screws" { joins box to b }\n part card "Card" { fits box needs up }`;
  expect(says(box, "undo bs remove box remove card", "fit card fit box fit bs")).toEqual([]);
  expect(says(box, "undo bs remove box remove card", "fit box fit bs fit card")).toEqual([
    "sequence/wrong-position: Card cannot go on: it needs up, and the unit is flat",
  ]);
});

test("the unit ends in the position in which it began", () => {
  const facts = `positions flat, up\n part pin "Pin" { fits b }`;
  expect(says(facts, "remove pin", "turn up fit pin turn flat")).toEqual([]);
  expect(says(facts, "remove pin", "turn up fit pin")).toEqual(["refit/position: The unit ends up and not flat"]);
});

test("fitting touches: a part and a fastener go on while the precautions stand, which end after that", () => {
  const hot = (on: string): string =>
      `${lid}\n hazard hot hot warning "Hot top" { on ${on} precaution cool "Let it stand." back "Sign off." }`,
    due = "must not be touched: cool for Hot top ended before this, and must be taken again";
  for (const on of ["lid", "screws"]) {
    expect(says(hot(on), `cool hot ${lidOff}`, "fit lid fit screws restore hot")).toEqual([]);
    expect(says(hot(on), `cool hot ${lidOff}`, "restore hot fit lid fit screws")).toEqual([
      `hazard/lapsed: ${on === "lid" ? "Lid" : "Screws"} ${due}`,
    ]);
    expect(says(hot(on), `cool hot ${lidOff}`, "fit lid fit screws")).toEqual([
      "refit/missing: Cool for Hot top still stands at the end: restore hot takes it back",
    ]);
  }
  expect(says(hot("screws"), `cool hot ${lidOff}`, "fit lid restore hot fit screws")).toEqual([
    `hazard/lapsed: Screws ${due}`,
  ]);
});

test("a proof is nothing that has to be taken away again", () => {
  const facts = `${lid}\n hazard start rotating danger "Fan can start" { on lid precaution try-start "Press start." }`;
  expect(says(facts, `try-start start ${lidOff}`, "fit lid fit screws")).toEqual([]);
  const locked = facts.replace("precaution", 'precaution isolate "Open it." back "Close it." precaution');
  expect(says(locked, `isolate start try-start start ${lidOff}`, "fit lid fit screws restore start")).toEqual([]);
  expect(says(locked, `isolate start try-start start ${lidOff}`, "fit lid fit screws")).toEqual([
    "refit/missing: Isolate for Fan can start still stands at the end: restore start takes it back",
  ]);
});

test("a precaution that is taken on the way back is taken away there, or is found at the line that took it", () => {
  const facts = `${lid}\n hazard warm hot warning "Warm rings" { precaution barrier "Keep away." back "Clear it." }`,
    text = (restored: string): string =>
      stage(facts, `step { ${lidOff} refit { barrier warm  reverse ${restored} } }`, "aim lid off");
  expect(codes(text("restore warm"))).toEqual([]);
  const [found] = findings(text(""));
  expect(found!.says).toBe("Barrier for Warm rings still stands at the end: restore warm takes it back");
  expect(text("").slice(found!.at.start)).toMatch(/^barrier warm/);
});

test("`lift by 2 people` binds the fit too", () => {
  const facts = `part lid "Lid" { mass 20 kg lift by 2 people }\n fastener screws screw "Screws" { joins lid to b }`;
  expect(says(facts, "undo screws lift lid by 2 people", "fit lid by 2 people fit screws")).toEqual([]);
  expect(says(facts, "undo screws lift lid by 2 people", "fit lid fit screws")).toEqual([
    "lift/people: Lid takes 2 people, and one is planned here",
  ]);
});

test("neither a part nor what comes along with it is fitted behind what is in place", () => {
  const facts = (behind: string): string =>
      `part hood "Hood" { rests on b }\n part case "Case" { ${behind === "case" ? "behind hood" : ""} }\n part cup "Cup" { fits case ${behind === "cup" ? "behind hood" : ""} }\n fastener cs screw "Case screws" { joins case to b }`,
    apart = "remove hood undo cs remove case";
  for (const one of ["case", "cup"]) expect(says(facts(one), apart, "fit case fit cs fit hood")).toEqual([]);
  expect(says(facts("case"), apart, "fit hood fit case fit cs")).toEqual([
    "refit/impossible: Case cannot go on: Case belongs behind Hood, which is on already",
  ]);
  expect(says(facts("cup"), apart, "fit hood fit case fit cs")).toEqual([
    "refit/impossible: Case cannot go on: Cup, which comes along, belongs behind Hood, which is on already",
  ]);
});

test("a closed joint lets nothing in; one that is closed in passing alone does", () => {
  const ring = (kind: string): string =>
    `part lid "Lid"\n part ring o-ring "Ring" { between lid and b renew when worn }\n joint seat ${kind} "Seat" { joins lid to b }`;
  expect(says(ring("screwed"), "undo seat remove lid remove ring", "fit ring fit lid fit seat")).toEqual([]);
  expect(says(ring("screwed"), "undo seat remove lid remove ring", "fit lid fit ring fit seat")).toEqual([]);
  expect(says(ring("screwed"), "undo seat remove lid remove ring", "fit lid fit seat fit ring")).toEqual([
    "refit/impossible: Ring cannot go on: its joint is closed already by Seat",
  ]);
  expect(says(ring("press-fit"), "remove lid remove ring", "fit lid fit ring")).toEqual([]);
});

test("a circuit is evacuated before it is filled where its kind asks for that", () => {
  const gas = `fluid gas refrigerant "Gas" { volume 1 L recover fills at port drains at port }\n part pipe "Pipe"\n joint un pipe-union "Union" { joins pipe to b opens gas }\n fastener port plug "Port" { into b }`,
    apart = "recover gas undo un remove pipe";
  expect(says(gas, apart, "fit pipe fit un evacuate gas fill gas fit port")).toEqual([]);
  expect(says(gas, apart, "fit pipe fit un fill gas fit port")).toEqual([
    "refit/impossible: Gas cannot be filled: the circuit is evacuated before it is filled",
  ]);
});

test("nothing temporary stays on: neither what was put on nor a cap, from either half", () => {
  expect(says(lid, lidOff, "fit lid fit screws put felt on lid take felt off")).toEqual([]);
  expect(says(lid, lidOff, "fit lid fit screws put felt on lid")).toEqual([
    "refit/temporary-left: Felt is put on here and never taken off",
  ]);
  const hose = `part hose "Hose"\n joint union screwed "Union" { joins hose to b }`,
    capped = "refit/temporary-left: Union is still capped at the end";
  expect(says(hose, "undo union remove hose cap union", "fit hose uncap union fit union")).toEqual([]);
  expect(says(hose, "undo union remove hose cap union", "fit hose fit union")).toEqual([capped]);
  expect(says(hose, "undo union remove hose", "cap union fit hose fit union")).toEqual([capped]);
});

test("what is aside is moved back: to fit it is one finding, to forget it another", () => {
  const facts = `part lid "Lid"\n joint cable connector "Cable" { joins lid to b }`,
    aside = "loosen cable slide lid";
  expect(says(facts, aside, "slide lid back tighten cable")).toEqual([]);
  expect(says(facts, aside, "tighten cable")).toEqual(["refit/missing: Lid is still aside at the end"]);
  expect(says(facts, aside, "fit lid tighten cable")).toEqual([
    "refit/impossible: Lid cannot go on: Lid never came off and is only aside: moved back, not fitted",
  ]);
});

test("stages of tightening: none is skipped, none is made up, and the last is reached", () => {
  const staged = lid.replace("count 4", "count 4 stages 5 N·m, 10 N·m, 15 N·m"),
    to = (...stages: number[]): string[] =>
      says(
        staged,
        lidOff,
        `fit lid fit screws finger-tight ${stages.map((n) => `tighten screws to stage ${n}`).join(" ")}`,
      );
  expect(to(1, 2, 3)).toEqual([]);
  expect(says(staged, lidOff, "fit lid fit screws")).toEqual([]);
  expect(to(1, 3)).toEqual(["refit/impossible: Screws cannot be tightened: stage 2 comes before stage 3"]);
  expect(to(1, 2)).toEqual(["refit/missing: Screws are left at stage 2 of 3 at the end"]);
  expect(to(1, 2, 3, 4)).toEqual(["refit/impossible: Screws cannot be tightened: they have 3 stages, not 4"]);
});

test("`order` of the unit asks for nothing that never came off", () => {
  const facts = `part x "X" { rests on b }\n part y "Y" { rests on b }\n order x after y`;
  expect(says(facts, "remove x", "fit x")).toEqual([]);
  expect(says(facts, "remove x remove y", "fit y fit x")).toEqual([]);
  expect(says(facts, "remove x remove y", "fit x fit y")).toEqual([
    "refit/contradiction: The unit says that X goes on after Y",
  ]);
});

test("`base X`: a written way back is built up on X, and the unit's base goes to what stands there", () => {
  const facts = `part jar "Jar"\n fastener js screw "Jar screws" { joins jar to b }\n part lid "Lid"\n fastener ls screw "Lid screws" { joins lid to jar }\n part cap "Cap"\n fastener cs screw "Cap screws" { joins cap to b }`,
    apart = "undo cs remove cap undo ls remove lid undo js remove jar",
    onLid = "fit jar fit ls fit b fit js fit cap fit cs";
  expect(says(facts, apart, onLid, "base lid")).toEqual([]);
  expect(says(facts, apart, "fit b fit cs fit jar fit js fit lid fit ls", "base cap")).toEqual([]);
  // Without it the jar goes back to what it parted from, and the lid is the one that never came on.
  expect(says(facts, apart, onLid)).toEqual(["refit/missing: Lid came off here and is never fitted"]);
});

test("fitted again in the strip over what is off: that is undone first on the way back", () => {
  const facts = `${lid}\n part cell "Cell" { rests on b behind lid }`,
    way = (acts: string): string[] => refit(stage(facts, `step { ${acts} }`, "aim none"));
  expect(way("undo screws remove lid remove cell fit lid fit screws")).toEqual([
    "undoing Screws",
    "removing Lid",
    "fitting Cell",
    "fitting Lid",
    "fitting Screws",
  ]);
  expect(way("undo screws remove lid fit lid fit screws undo screws remove lid")).toEqual([
    "fitting Lid",
    "fitting Screws",
  ]);
});

test("without a word of it the unit's base goes to the largest of what is built up", () => {
  const facts = `part cap "Cap"\n fastener cs screw "Cap screws" { joins cap to b }\n part jar "Jar"\n fastener js screw "Jar screws" { joins jar to b }\n part lid "Lid"\n fastener ls screw "Lid screws" { joins lid to jar }`,
    apart = "undo cs remove cap undo ls remove lid undo js remove jar";
  expect(says(facts, apart, "fit lid fit ls fit b fit js fit cap fit cs")).toEqual([]);
  expect(says(facts, apart, "fit lid fit ls fit b fit cs fit cap fit js")).not.toEqual([]);
});

test("what was refused on the way apart, or before on the way back, is made without a second word", () => {
  const held = "sequence/still-held: Lid cannot come off: still held by 4 of 4 Screws";
  for (const back of ["fit lid fit screws", "fit lid tighten screws"])
    expect(says(lid, "remove lid", back), back).toEqual([held]);
  const card = `${lid}\n part card "Card"\n fastener cs screw "Card screws" { count 2 joins card to b behind lid }`,
    behind = "refit/impossible: Card screws cannot go on: Card screws belong behind Lid, which is on already";
  for (const twice of ["fit cs", "fit cs finger-tight fit cs"])
    expect(says(card, "undo screws remove lid undo cs remove card", `fit card fit lid fit screws ${twice}`)).toEqual([
      behind,
    ]);
});

test("a mark on what came off is lined up by the end; one on what never parted need not be", () => {
  const back = "fit lid fit screws";
  expect(says(lid, `mark lid as M ${lidOff}`, `fit lid align M fit screws`)).toEqual([]);
  expect(says(lid, `mark lid as M ${lidOff}`, back)).toEqual(["refit/mark-unused: M is never lined up"]);
  expect(says(`${lid}\n part cup "Cup" { rests on b }`, `mark cup, b as M ${lidOff}`, back)).toEqual([]);
  // Of what is missing altogether that alone is said.
  expect(says(lid, `mark lid as M ${lidOff}`, "")).toEqual([
    "refit/missing: Lid came off here and is not back on at the end",
  ]);
});

test("a mark on one thing alone is lined up by nothing, unless the author lines it up himself", () => {
  const text = (acts: string, more = ""): string => stage(lid, `step { ${acts} ${lidOff} ${more} }`, "aim lid off");
  expect(codes(text("mark lid as M"))).toEqual(["refit/mark-unused"]);
  expect(findings(text("mark lid as M"))[0]!.says).toBe(
    "M is on Lid alone: nothing is lined up by it. Name what it meets as well, mark A, B as M",
  );
  expect(codes(text("mark lid, b as M"))).toEqual([]);
  expect(codes(text("mark lid as M", "refit { reverse align M }"))).toEqual([]);
});

test("what is moved aside is marked before it is moved", () => {
  const facts = `part motor "Motor" { rests on b }\n part hub "Hub" { fits b behind motor }`,
    text = (acts: string): string => stage(facts, `step { ${acts} remove hub }`, "aim hub off");
  expect(codes(text("mark motor, b as M slide motor"))).toEqual([]);
  expect(codes(text("slide motor mark motor, b as M"))).toEqual(["sequence/already-undone"]);
  expect(findings(text("slide motor mark motor, b as M"))[0]!.says).toBe(
    "Motor is moved aside already, and parts are marked while they are together",
  );
});

test("a mark between a nut and its shaft is lined up as well, in a way back that is written out", () => {
  const made = `mark screws, lid as M ${lidOff}`;
  expect(says(lid, made, "fit lid fit screws align M")).toEqual([]);
  expect(says(lid, made, "fit lid fit screws")).toEqual(["refit/mark-unused: M is never lined up"]);
});

test("taken off before it is put on is one finding, where it is taken off", () => {
  expect(says(lid, lidOff, "fit lid take felt off put felt on lid fit screws")).toHaveLength(1);
});

test("a part that nothing is said to hold goes back to where it was, and what hangs on it goes to it", () => {
  const wheel = (facts: string): string[] =>
      findings(stage(facts, "step { undo nut remove flange remove wheel }")).map((f) => `${f.code}: ${f.says}`),
    flange = `part flange "Flange"\n fastener nut nut "Nut" { joins flange to wheel }`;
  expect(wheel(`part wheel "Wheel" { rests on b }\n ${flange}`)).toEqual([]);
  expect(wheel(`part wheel "Wheel"\n ${flange}`)).toEqual([]);
});

// Ties and removal: each rule of the bench on a small stage, named after the rule.

import { expect, test } from "vitest";
import { codes, findings, refit, stage } from "./refit/stage.ts";

const says = (text: string): string[] => findings(text).map((f) => f.says);
const lid = `part lid "Lid"\n fastener screws screw "Screws" { count 4 joins lid to b }`;

test("a tie holds while one of its fasteners is in", () => {
  expect(says(stage(lid, "step { undo 3 of screws remove lid }"))).toEqual([
    "Lid cannot come off: still held by 1 of 4 Screws",
  ]);
  expect(codes(stage(lid, "step { undo 3 of screws undo rest of screws remove lid }"))).toEqual([]);
});

test("a tie that is only loosened holds, one that is backed out does not", () => {
  expect(codes(stage(lid, "step { loosen screws remove lid }"))).toEqual(["sequence/still-held"]);
  expect(codes(stage(lid, "step { back-out screws remove lid }"))).toEqual([]);
});

test("A hangs on each of B and C", () => {
  const facts = `part lid "Lid"\n part c "C"\n fastener cs screw "C screws" { joins c to b }\n fastener screws screw "Screws" { joins lid to b, c }`;
  // The lid rides on the base too: it stays when C goes, so C is held by it.
  expect(codes(stage(facts, "step { undo cs remove c }"))).toEqual(["sequence/still-held"]);
  expect(codes(stage(facts, "step { undo screws remove lid undo cs remove c }"))).toEqual([]);
});

test("pieces of the same name tie piece to piece", () => {
  const facts = `part cap "Caps" { pieces 1..2 }\n fastener cap-bolts bolt "Cap bolts" { pieces 1..2 count 2 per cap joins cap to b }`;
  expect(codes(stage(facts, "step { undo cap-bolts.1 remove cap.1 }"))).toEqual([]);
  expect(codes(stage(facts, "step { undo cap-bolts.1 remove cap.2 }"))).toEqual(["sequence/still-held"]);
});

test("fits lets go in passing", () => {
  expect(codes(stage(`part pin pin "Pin" { fits b }`, "step { remove pin }"))).toEqual([]);
});

test("rests on is no tie: the upper goes with the lower", () => {
  const facts = `part box "Box"\n part shelf "Shelf" { rests on box }\n fastener screws screw "Screws" { joins box to b }`;
  expect(codes(stage(facts, "step { undo screws remove box }"))).toEqual([]);
  // Once along, it is off; taking it off its carrier afterwards is an act of its own.
  expect(codes(stage(facts, "step { undo screws remove box } step { remove shelf }"))).toEqual([]);
});

test("what rests holds the lower only where it is fixed elsewhere itself", () => {
  const facts = `part box "Box"\n part shelf "Shelf" { rests on box }\n fastener screws screw "Screws" { joins box to b }\n fastener stay screw "Stay" { joins shelf to b }`;
  expect(codes(stage(facts, "step { undo screws remove box }"))).toEqual(["sequence/still-held"]);
  expect(codes(stage(facts, "step { undo stay undo screws remove box }"))).toEqual([]);
});

test("what lies between is clamped while any tie holds between the two", () => {
  const facts = `${lid}\n part ring o-ring "Ring" { between lid and b renew always }`;
  expect(says(stage(facts, "step { undo 3 of screws remove ring }"))[0]).toBe(
    "Ring cannot come off: still clamped by 1 of 4 Screws",
  );
  expect(codes(stage(facts, "step { undo screws remove lid remove ring }"))).toEqual([]);
});

test("a fastener through a third part names it, and holds all of them", () => {
  const facts = `part lid "Lid"\n part plate "Plate"\n fastener screws screw "Screws" { joins lid, plate to b }`;
  expect(codes(stage(facts, "step { remove plate }"))).toEqual(["sequence/still-held"]);
  expect(codes(stage(facts, "step { undo screws remove lid remove plate }"))).toEqual([]);
});

test("ties that part in passing let go when the part is removed, ties that are undone do not", () => {
  const of = (kind: string): string => `part lid "Lid"\n joint j ${kind} "J" { joins lid to b }`;
  for (const kind of ["press-fit", "spline", "slide-fit", "dowel"])
    expect(codes(stage(of(kind), "step { remove lid }")), kind).toEqual([]);
  for (const kind of ["connector", "clip", "screwed"])
    expect(codes(stage(of(kind), "step { remove lid }")), kind).toEqual(["sequence/still-held"]);
});

test("what hangs on a part comes along, and is off then", () => {
  const facts = `part box "Box"\n part card "Card"\n fastener bs screw "Box screws" { joins box to b }\n fastener cs screw "Card screws" { joins card to box }`;
  expect(codes(stage(facts, "step { undo bs remove box }", "aim box off"))).toEqual([]);
  expect(codes(stage(facts, "step { undo bs remove box } step { undo cs remove card }"))).toEqual([]);
  expect(codes(stage(facts, "step { undo bs remove box } step { remove card }"))).toEqual(["sequence/still-held"]);
});

test("still held, even where the other side is free", () => {
  const facts = `part box "Box"\n part arm "Arm"\n fastener bs screw "Box screws" { joins box to b }\n fastener as screw "Arm screws" { joins arm to b }\n joint link connector "Link" { joins arm to box }`;
  expect(codes(stage(facts, "step { undo bs, as remove arm }"))).toEqual(["sequence/still-held"]);
});

test("the reason is the smallest set: nothing that is not needed", () => {
  const facts = `part hub "Hub" { fits b by slide-fit }\n part shaft "Shaft"\n fastener nut nut "Nut" { joins hub to b }\n fastener screws screw "Screws" { count 10 joins shaft to hub }\n joint face sealant "Face" { joins shaft to hub }`;
  expect(says(stage(facts, "step { remove shaft }"))).toEqual(["Shaft cannot come off: still held by 10 of 10 Screws"]);
});

test("the whole chain to the base is told", () => {
  const facts = `part box "Box"\n part card "Card"\n part plug "Plug"\n fastener bs screw "Box screws" { joins box to b }\n fastener cs screw "Card screws" { joins card to box }\n joint ps connector "Socket" { joins plug to card }`;
  const [found] = findings(stage(facts, "step { remove plug }"));
  expect(found!.because.map(({ says: text }) => text)).toEqual(
    expect.arrayContaining([expect.stringContaining("Card"), expect.stringContaining("Box")]),
  );
});

test("together frees a list at once", () => {
  const facts = `part l "Left" { fits b by slide-fit }\n part r "Right" { fits b by slide-fit }\n joint hook clip "Hook" { joins l to r }`;
  expect(codes(stage(facts, "step { remove l }"))).toEqual(["sequence/still-held"]);
  expect(codes(stage(facts, "step { remove l, r together }"))).toEqual([]);
});

test("aside is allowed when only what is loose, a hinge or a cable holds it", () => {
  const door = `part door "Door"\n fastener catch bolt "Catch" { joins door to b }\n part lock "Lock" { rests on b behind door }`;
  expect(codes(stage(door, "step { swing door remove lock }"))).toEqual(["sequence/still-held"]);
  expect(codes(stage(door, "step { loosen catch swing door remove lock }"))).toEqual([]);
});

test("aside it must be back at the end", () => {
  const door = `part door "Door"\n fastener catch bolt "Catch" { joins door to b }\n part lock "Lock" { rests on b behind door }`;
  expect(
    codes(stage(door, "step { loosen catch swing door remove lock refit { instead { fit lock tighten catch } } }")),
  ).toEqual(["refit/missing"]);
});

test("a part that is moved back and was never aside is a finding", () => {
  expect(codes(stage(lid, "step { undo screws slide lid back remove lid }"))).toEqual(["sequence/aside"]);
});

test("a part that lost its last tie and stays in place, neither held nor aside, is a warning at that act", () => {
  const [found] = findings(stage(lid, "step { undo screws }", "aim none"));
  expect(found).toMatchObject({ code: "removal/left-loose", severity: "warning" });
  expect(codes(stage(lid, "step { undo screws support lid }", "aim none"))).toEqual([]);
});

const joint = `part cover "Cover"\n part ring "Ring" { between cover and b }\n fastener cs screw "Cover screws" { count 4 joins cover to b }`;

test("what lies in a joint comes out once the sides are apart", () => {
  expect(codes(stage(joint, "step { undo cs remove ring remove cover }"))).toEqual(["sequence/blocked"]);
  expect(findings(stage(joint, "step { undo cs remove ring remove cover }"))[0]!.says).toContain(
    "between Cover and Base",
  );
  expect(codes(stage(joint, "step { undo cs remove cover remove ring }"))).toEqual([]);
});

test("or one of them is aside", () => {
  const hinged = `part arm hinge "Arm" { fits b }\n ${joint}\n fastener hs screw "Arm screws" { joins cover to arm }`;
  expect(codes(stage(hinged, "step { undo cs swing cover remove ring }"))).toEqual([]);
});

test("and goes back before they meet", () => {
  const line = refit(stage(joint, "step { undo cs remove cover remove ring }"));
  expect(line.indexOf("fitting Ring")).toBeLessThan(line.indexOf("fitting Cover"));
});

test("between sides that nothing undone joins it is free to come out", () => {
  const shim = `part shaft "Shaft" { fits b }\n part shim shim "Shim" { between shaft and b }`;
  expect(codes(stage(shim, "step { remove shim }"))).toEqual([]);
});

test("a few pieces of a part can be reached and touched as all of them can", () => {
  const caps = `part hood "Hood" { fits b }\n part cap "Caps" { count 4 fits b behind hood }`;
  expect(codes(stage(caps, "step { remove 2 of cap remove hood remove rest of cap }"))).toEqual(["sequence/blocked"]);
  expect(codes(stage(caps, "step { remove hood remove 2 of cap remove rest of cap }"))).toEqual([]);
});

// --- the least that is said, and what follows from it ----------------------------------------------------------------------------

const said = (facts: string, steps: string): string[] =>
  findings(stage(facts, `step { ${steps} }`, "aim none")).map((f) => `${f.code}: ${f.says}`);

test("what came along is off: silent in the same step, said twice where it was named itself, still held by what is undone", () => {
  const facts = `part a "A"\n fastener as screw "As" { count 2 joins a to b }\n part c "C"\n fastener cs screw "Cs" { count 2 joins c to a }\n part r "R" { rests on a }`,
    off = (thing: string): string[] => [`sequence/already-undone: ${thing} is off already`];
  expect(said(facts, "undo as remove a remove r")).toEqual([]);
  expect(said(facts, "undo as remove a remove r remove r")).toEqual(off("R"));
  expect(said(facts, "undo as remove a remove a")).toEqual(off("A"));
  expect(said(facts, "undo as remove a } step { remove a")).toEqual(off("A"));
  expect(said(facts, "undo as remove a undo cs remove c")).toEqual([]);
  expect(said(facts, "undo as remove a remove c")).toEqual([
    "sequence/still-held: C cannot come off: still held by 2 of 2 Cs",
  ]);
  expect(said(facts, "remove b")).toEqual([
    "sequence/base-stays: Base stays on the stand: it is the base of this unit",
  ]);
});

test("what is bolted to a part and held by the rest only in passing comes along with it, and is off with it", () => {
  const facts = (gear = ""): string =>
    `part pump "Pump"\n fastener ps screw "Pump screws" { count 2 joins pump to b }\n part gear "Gear" { fits b ${gear} }\n fastener gs screw "Gear screw" { joins gear to pump }\n part hood "Hood" { rests on b }`;
  expect(said(facts(), "undo ps remove pump")).toEqual([]);
  expect(said(facts("behind hood"), "undo ps remove pump")).toEqual([
    "sequence/blocked: Pump cannot come off: Gear, which comes along, is behind Hood",
  ]);
  // Not with it where its screw is out.
  expect(said(facts("behind hood"), "undo ps, gs remove pump")).toEqual([]);
});

test("what lies in a joint: still clamped by what is in, then between the two, then free; refused once", () => {
  const facts = `part lid "Lid"\n part ring o-ring "Ring" { between lid and b renew when worn }\n fastener screws screw "Screws" { count 4 joins lid to b }`,
    clamped = (count: number): string[] => [
      `sequence/still-held: Ring cannot come off: still clamped by ${count} of 4 Screws`,
    ],
    between = ["sequence/blocked: Ring cannot come off: it lies between Lid and Base, which are still together"];
  expect(said(facts, "remove ring")).toEqual(clamped(4));
  expect(said(facts, "undo 2 of screws remove ring")).toEqual(clamped(2));
  expect(said(facts, "remove ring undo screws remove lid")).toEqual(clamped(4));
  expect(said(facts, "undo screws remove ring")).toEqual(between);
  expect(said(facts, "undo screws remove ring remove lid")).toEqual(between);
  for (const free of ["remove lid remove ring", "remove lid, ring together", "slide lid remove ring"])
    expect(said(facts, `undo screws ${free}`), free).toEqual([]);
});

test("on a hinge, a cable or a hose it swings; by any other tie it has to be loose, and a nut on a cable is one", () => {
  const door = (kind: string): string =>
      `part door "Door"\n part arm ${kind} "Arm" { fits b }\n joint j connector "J" { joins door to arm }\n fastener catch bolt "Catch" { count 2 joins door to b }`,
    held = (by: string): string[] => [`sequence/still-held: Door cannot be swung aside: still held by ${by}`];
  for (const kind of ["hinge", "cable", "hose"]) {
    for (const free of ["loosen", "undo"]) expect(said(door(kind), `${free} catch swing door`), kind).toEqual([]);
    expect(said(door(kind), "swing door"), kind).toEqual(held("2 of 2 Catch"));
  }
  expect(said(door(""), "undo catch swing door")).toEqual(held("J"));
  expect(said(door(""), "undo catch, j swing door")).toEqual([]);
  const lead = (tie: string): string => `part lead cable "Lead"\n ${tie} "End" { joins lead to b }`;
  expect(said(lead("joint end connector"), "slide lead")).toEqual([]);
  expect(said(lead("fastener end nut"), "slide lead")).toEqual([
    "sequence/still-held: Lead cannot be slid aside: still held by End",
  ]);
});

test("aims: a part off, apart, a fastener out; of all apart what is excepted stays, with what holds it", () => {
  const facts = `part lid "Lid"\n fastener screws screw "Screws" { count 4 joins lid to b }\n part cup "Cup" { fits lid }\n part pin "Pin" { rests on b }\n fastener plug plug "Plug" { into b }\n joint seal sealant "Seal" { joins lid to b }`;
  const ends = (aim: string, steps: string): string[] =>
      findings(stage(facts, `step { ${steps} }`, `aim ${aim}`)).map((f) => `${f.code}: ${f.says}`),
    on = (thing: string, how = "off"): string[] => [`removal/missing: ${thing} is not ${how} at the end`],
    lidOff = "undo screws remove lid";
  expect(ends("lid off", "undo screws")).toEqual(on("Lid"));
  expect(ends("cup off", lidOff)).toEqual(on("Cup"));
  expect(ends("lid apart", lidOff)).toEqual(on("Lid", "apart"));
  expect(ends("lid apart", `${lidOff} remove cup`)).toEqual([]);
  for (const [of, says] of [
    ["screws", "Screws are"],
    ["plug", "Plug is"],
  ] as const) {
    expect(ends(`${of} off`, `undo ${of} ${of === "screws" ? "remove lid" : ""}`)).toEqual([]);
    expect(ends(`${of} off`, "remove pin")).toEqual([`removal/never-undone: ${says} never undone`]);
  }
  expect(ends("screws off", `undo 2 of screws`)).toEqual(["removal/never-undone: Screws are never undone"]);
  expect(ends("screws off", "back-out screws remove lid")).toEqual([]);
  // Refused before: the end is not judged again.
  for (const aim of ["lid off", "screws off"])
    expect(ends(aim, "remove lid")).toEqual(["sequence/still-held: Lid cannot come off: still held by 4 of 4 Screws"]);
  expect(ends("all apart", `${lidOff} remove cup, pin`)).toEqual([]);
  expect(ends("all apart", `${lidOff} remove cup`)).toEqual(on("Pin"));
  expect(ends("all apart", `remove cup, pin`)).toEqual(["removal/never-undone: Screws are never undone"]);
  expect(ends("all apart except cup", `${lidOff} remove pin`)).toEqual([]);
  expect(ends("all apart except cup, screws", "remove pin")).toEqual([]);
  expect(ends("all apart except lid", "remove cup, pin")).toEqual([]);
  expect(ends("all apart except lid", "remove pin")).toEqual(on("Cup"));
});

test("a unit inside is all apart when its own things are", () => {
  const text = (acts: string): string =>
    `unit g "G" { base c part c "Case" part x "X"\n fastener xs screw "Xs" { joins x to c } }\nprocedure gs "GS" for g { aim all apart step { ${acts} } }\n${stage(`part gb "Gear box" { is unit g }\n fastener bolts bolt "Bolts" { count 2 joins gb to b }`, "step { do gs on gb }", "aim none")}`;
  expect(codes(text("undo xs remove x"))).toEqual([]);
  expect(codes(text("undo xs"))).toEqual(["removal/missing"]);
});

test("a part that is not there at the start is off, hides nothing, and its fasteners are out", () => {
  const facts = `part lid "Lid"\n fastener screws screw "Screws" { count 4 joins lid to b }\n part card "Card" { fits b behind lid }`;
  const starts = (steps: string): string[] =>
    findings(stage(facts, `step { ${steps} }`, "aim none starts without lid")).map((f) => f.says);
  expect(starts("remove card")).toEqual([]);
  expect(starts("undo screws")).toEqual(["Screws are undone already"]);
  expect(starts("remove lid")).toEqual(["Lid is off already"]);
  expect(starts("fit lid fit screws remove card")).toEqual(["Card cannot come off: Lid is in front of it"]);
  expect(refit(stage(facts, "step { remove card }", "aim none starts without lid"))).toEqual(["fitting Card"]);
});

test("a joint that lets go in passing is behind something: its part is in sight, and does not come off or go on before", () => {
  const facts = `positions flat, upright
    part rod "Rod" part gland "Gland" part piston "Piston"
    fastener nut nut "Nut" { joins gland to b } fastener end nut "End nut" { joins piston to rod }
    joint on-rod slide-fit "On the rod" { joins gland to rod behind piston }
    joint in-b slide-fit "In the base" { joins rod to b behind nut needs upright }`;
  const out = `mark gland, b as M undo nut turn upright remove rod`;
  expect(says(stage(facts, `step { ${out} undo end remove piston remove gland }`))).toEqual([]);
  expect(says(stage(facts, `step { ${out} remove gland undo end remove piston }`))).toEqual([
    "Gland cannot come off: Piston is in front of it",
  ]);
  expect(says(stage(facts, "step { turn upright remove rod undo nut }"))[0]).toContain("Rod cannot come off");
  expect(says(stage(facts, "step { undo nut remove rod }"))).toEqual([
    "Rod cannot come off: it needs upright, and the unit is flat",
  ]);
  // The way back follows it, computed and written out.
  const strip = `step { ${out} undo end remove piston remove gland }`;
  expect(refit(stage(facts, strip)).slice(0, 4)).toEqual([
    "fitting Gland",
    "fitting Piston",
    "fitting End nut",
    "fitting Rod",
  ]);
  const back = (acts: string): string[] =>
    says(`${stage(facts, `${strip} refit by w`)}procedure w "W" for u { aim all in step { turn upright ${acts} } }`);
  expect(back("fit gland fit piston, end tighten end fit rod align M turn flat fit nut tighten nut")).toEqual([]);
  expect(back("fit piston, end tighten end fit gland fit rod align M turn flat fit nut tighten nut")).toEqual([
    "Gland cannot go on: Gland belongs behind Piston, which is on already",
  ]);
});

test("a lead or hose that is laid in what stays does not come along with what it is plugged to", () => {
  for (const kind of ["cable", "hose", "loom"]) {
    const facts = `part box "Box"\n fastener feet screw "Feet" { joins box to b }
      part lead ${kind} "Lead" { fits b }\n joint plug connector "Plug" { joins lead to box }`;
    expect(says(stage(facts, "step { undo feet remove box }")), kind).toEqual([
      "Box cannot come off: still held by Plug",
    ]);
    expect(says(stage(facts, "step { undo feet undo plug remove box }")), kind).toEqual([]);
    // Named itself it comes off with it; laid in what goes it goes along.
    expect(says(stage(facts, "step { undo feet remove box, lead together }")), kind).toEqual([]);
    expect(says(stage(facts.replace("fits b", "fits box"), "step { undo feet remove box }")), kind).toEqual([]);
  }
});

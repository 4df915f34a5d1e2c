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

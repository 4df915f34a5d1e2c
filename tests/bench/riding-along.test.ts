// What rides on what: on a part that is aside, on a sub-assembly on the bench, in a joint that is open. Each rule on the smallest text
// that meets it.

import { expect, test } from "vitest";
import { check, codes, findings, firstRefusedLine, perform, refit, stage } from "./refit/stage.ts";

const says = (facts: string, acts: string, head = "aim none"): string[] => {
  const text = stage(facts, `step { ${acts} }`, head);
  return findings(text).map((f) => `${f.says} @ ${text.slice(f.at.start, f.at.end)}`);
};
/** The computed way back of a clean strip, any line of which can be performed. */
function wayBack(facts: string, steps: string): string[] {
  const text = stage(facts, steps, "aim none");
  expect(codes(text), steps).toEqual([]);
  expect(firstRefusedLine(perform(text), 100), steps).toBeUndefined();
  return refit(text);
}

const door = `part door "Door"\n part box "Box" { rests on door }\n part lock "Lock" { rests on b behind box }\n part key "Key" { rests on b behind door }\n fastener hs screw "Hinge screws" { count 2 joins door to b }`;

test("aside a part hides nothing, what rides on it still does", () => {
  expect(says(door, "loosen hs swing door remove key")).toEqual([]);
  expect(says(door, "loosen hs swing door remove lock")).toEqual([
    "Lock cannot come off: Box is in front of it @ remove lock",
  ]);
  expect(says(door, "loosen hs swing door remove box remove lock")).toEqual([]);
});

test("off and on again, a part that was aside is still aside", () => {
  const back = (acts: string): string[] =>
    codes(
      `${stage(door, "step { loosen hs swing door undo hs remove door remove key }", "aim none refit by q")}procedure q "Q" for u { aim all in step { fit key fit door fit hs ${acts} } }`,
    );
  expect(back("swing door back")).toEqual([]);
  expect(back("")).toEqual(["refit/missing"]);
});

test("of a group that was freed together what hung on the base last plays the base on the bench", () => {
  const facts = `part x "X" { fits b }\n part y "Y" { fits x }\n fastener ys screw "Ys" { count 2 joins y to x }`;
  for (const list of ["x, y", "y, x"]) {
    expect(says(facts, `remove ${list} together undo ys remove y`), list).toEqual([]);
    expect(says(facts, `remove ${list} together remove x`), list).toEqual(["X is off already @ remove x"]);
    expect(wayBack(facts, `step { remove ${list} together undo ys remove y }`).slice(0, 2)).toEqual([
      "fitting Y",
      "fitting Ys",
    ]);
  }
});

test("what lay in a joint rides along with the side that it lies on", () => {
  const facts = `part cover "Cover"\n part hub "Hub"\n part shim shim "Shim" { between hub and cover }\n part pin "Pin" { rests on b behind shim }
    fastener cs screw "Cs" { count 2 joins cover to hub }\n fastener hs screw "Hs" { count 2 joins hub to b }`;
  expect(says(facts, "undo cs remove cover undo hs remove hub remove pin")).toEqual([]);
  expect(says(facts, "undo cs remove cover remove pin")).toEqual([
    "Pin cannot come off: Shim is in front of it @ remove pin",
  ]);
  expect(wayBack(facts, "step { undo cs remove cover undo hs remove hub } step { remove shim }")).toEqual([
    "fitting Shim",
    "fitting Hub",
    "fitting Hs",
    "fitting Cover",
    "fitting Cs",
  ]);
});

test("a part that is tied to nothing, lies on nothing and between nothing is a hint", () => {
  const hints = (part: string): string[] =>
    check(stage(`part lid "Lid"\n fastener ls screw "Ls" { joins lid to b }\n ${part}`, "step { undo ls remove lid }"))
      .findings.filter(({ severity, code }) => severity === "hint" && code.startsWith("names/"))
      .map(({ code }) => code);
  expect(hints('part x "X"')).toContain("names/part-unattached");
  for (const held of ["rests on b", "fits b", "between lid and b", "into b"])
    expect(hints(`part x "X" { ${held} }`), held).not.toContain("names/part-unattached");
});

test("what a procedure that starts on the bench does rests on the parting that put its part there", () => {
  const facts = `part pump "Pump"\n part lid "Lid"\n fastener ps screw "Ps" { count 2 joins pump to b }\n fastener ls screw "Ls" { count 2 joins lid to pump }`,
    text = (head: string): string =>
      `${stage(facts, "step { undo ps remove pump } step { do q on pump }", "aim none")}procedure q "Q" for u { ${head} aim lid off step { undo ls remove lid } }`;
  const first = (head: string): boolean => {
    const { events } = perform(text(head));
    return events.filter(({ around }) => around.on !== undefined).every(({ needs }) => needs.includes(1));
  };
  expect(codes(text("starts on bench"))).toEqual([]);
  expect(first("starts on bench")).toBe(true);
  expect(first("")).toBe(false);
  expect(refit(text("starts on bench"))).toEqual(["fitting Lid", "fitting Ls", "fitting Pump", "fitting Ps"]);
});

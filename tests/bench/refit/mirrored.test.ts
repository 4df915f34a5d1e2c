// What answers each act on the way back, beside parts and screws: holders, caps, locks, what cannot be made again.

import { expect, test } from "vitest";
import { codes, findings, firstRefusedLine, perform, refit, stage } from "./stage.ts";

function wayBack(facts: string, acts: string): string[] {
  const text = stage(facts, `step { ${acts} }`, "aim none");
  expect(codes(text), acts).toEqual([]);
  expect(firstRefusedLine(perform(text), 100), acts).toBeUndefined();
  return refit(text);
}

test("support and release mirror each other", () => {
  const facts = `part m "Motor" { hangs }\n part r "Rail" { rests on b behind m }\n fastener ms screw "Motor screws" { count 2 joins m to b }`;
  expect(wayBack(facts, "support m with hoist undo ms remove m release m remove r")).toEqual([
    "fitting Rail",
    "supporting Motor",
    "fitting Motor",
    "fitting Motor screws",
    "letting go Motor",
  ]);
});

test("cap and uncap mirror each other", () => {
  const facts = `part pipe "Pipe"\n joint un pipe-union "Union" { joins pipe to b opens oil }\n fluid oil oil "Oil" { volume 1 L path pipe }`;
  expect(wayBack(facts, "cap pipe undo un remove pipe uncap pipe")).toEqual([
    "capping Pipe",
    "fitting Pipe",
    "fitting Union",
    "uncapping Pipe",
  ]);
});

test("with the first lock that comes off on the way back what was proved behind it is proved no more", () => {
  const facts = `part guard guard "Guard"\n fastener gs screw "Guard screws" { count 2 joins guard to b }
    hazard h rotating danger "Fan" { on gs, guard precaution isolate "I" back "i" precaution lock-out "L" back "l" precaution try-start "T" }`;
  const off = "step { isolate h lock-out h try-start h undo gs remove guard }";
  const finish = (taken: string): string[] =>
    codes(stage(facts, `${off} finish { ${taken} undo gs fit gs restore h }`, "aim none"));
  expect(finish("isolate h lock-out h try-start h")).toEqual([]);
  expect(finish("isolate h lock-out h")).toEqual(["hazard/not-yet"]);
});

test("what cannot be made again is named in the strip, at its act", () => {
  const facts = `part lid "Lid"\n joint seam weld "Seam" { joins lid to b }`,
    text = stage(facts, "step { undo seam remove lid }"),
    found = findings(text).filter(({ code }) => code === "refit/one-way");
  expect(found.map(({ at }) => text.slice(at.start, at.end))).toEqual(["undo seam"]);
  expect(codes(stage(facts, "step { undo seam remove lid }", 'leaves out seam "By the shop." leaves off lid'))).toEqual(
    [],
  );
});

test("`fit X` goes back to the side that it parted from, else to what it lies on, on the base first", () => {
  const facts = `part a "A" { rests on b }\n part c "C" { rests on a }\n part r "R" { rests on c }\n part lid "Lid" { rests on b behind r }`;
  const back = (strip: string, acts: string): string[] =>
    codes(
      `${stage(facts, `step { ${strip} }`, "aim none refit by q")}procedure q "Q" for u { aim all in step { ${acts} } }`,
    );
  // Built up on the bench: the ring comes to the part that it was on, which is still off.
  expect(back("remove c remove r", "fit r fit c")).toEqual([]);
  expect(back("remove r remove c", "fit r fit c")).toEqual([]);
  expect(back("remove r remove c", "fit c")).toEqual(["refit/missing"]);
});

// What may stand in a refit block beside plain acts: conditions, choices, repeats, calls, and what answers a precaution or a fluid.

import { expect, test } from "vitest";
import { check, codes, findings, firstRefusedLine, nameOf, refit, stage } from "./stage.ts";

/** The printed way back of each build, which must be clean, and any line of it performed. */
function wayBack(text: string): string[][] {
  expect(
    findings(text).map((f) => `${f.code}: ${f.says}`),
    text,
  ).toEqual([]);
  return check(text)
    .performances.filter(({ procedure }) => procedure.id === "p")
    .map((performance) => {
      expect(firstRefusedLine(performance, 100), text).toBeUndefined();
      const { line, ops } = performance.order!;
      return line.map((n) => nameOf(performance, ops[n]!));
    });
}
const two = `part x "X" { rests on b }\n part y "Y" { rests on b }`,
  off = (block: string): string => `step { remove x remove y refit { ${block} } }`,
  reversed = ["fitting Y", "fitting X"];

test("under a condition only in the builds in which it holds", () => {
  const text = (condition: string): string =>
    `unit u "U" {\n base b\n variants long, short\n part b "Base"\n ${two} }\nprocedure p "P" for u { aim none ${off(`${condition} { clean b } reverse`)} }`;
  expect(wayBack(text("if long"))).toEqual([["cleaning Base", ...reversed], reversed]);
  expect(wayBack(text("unless long"))).toEqual([reversed, ["cleaning Base", ...reversed]]);
});

test("an optional block and a choice are performed each way", () => {
  expect(wayBack(stage(two, off('optional "if wanted" { clean b } reverse'), "aim none"))).toEqual([
    reversed,
    ["cleaning Base", ...reversed],
  ]);
  expect(wayBack(stage(two, off("either { fit x } or { fit y } reverse"), "aim none"))).toEqual([
    ["fitting X", "fitting Y"],
    ["fitting Y", "fitting X"],
  ]);
});

test("repeated for each piece, with the piece at hand", () => {
  const pieces = `part c "C" { pieces 1..3 rests on b }`;
  const [line] = wayBack(stage(pieces, "step { remove c refit { repeat for 1..3 { clean c } reverse } }", "aim none"));
  expect(line).toEqual(["cleaning C 1", "cleaning C 2", "cleaning C 3", "fitting C 3", "fitting C 2", "fitting C 1"]);
});

test("a procedure that is called there stands there, with the names of the part that it is done on", () => {
  const called = (q: string, block: string): string =>
    `${stage(two, off(block), "aim none")}procedure q "Q" for u { aim none step { ${q} } }`;
  expect(wayBack(called("clean b", "do q reverse"))).toEqual([["cleaning Base", ...reversed]]);
  expect(wayBack(called("clean b", "reverse do q"))).toEqual([[...reversed, "cleaning Base"]]);
  const inner = `unit v "V" { base w part w "Wheel" part t "Tyre" { rests on w } }\nprocedure q "Q" for v { aim none step { clean t } }\n`;
  const outer = stage(
    `part wheel "Left" { is unit v  rests on b }`,
    "step { remove wheel refit { do q on wheel reverse } }",
    "aim none",
  );
  const [line] = wayBack(inner + outer);
  expect(line).toEqual(["cleaning Tyre", "fitting Left"]);
});

test("names of one act go on in the order in which they are written, pieces of one name as the rest allows", () => {
  const three = `part lid "Lid" { rests on b }\n part card "Card" { rests on b behind lid }\n part z "Z" { rests on b }`,
    of = (block: string): string =>
      stage(three, `step { remove z remove lid remove card refit { ${block} } }`, "aim none");
  expect(wayBack(of("fit card, lid reverse"))).toEqual([["fitting Card", "fitting Lid", "fitting Z"]]);
  expect(wayBack(of("reverse fit z, card, lid"))).toEqual([["fitting Z", "fitting Card", "fitting Lid"]]);
  expect(codes(of("fit lid, card reverse"))).toEqual(["refit/contradiction"]);
  const rings = `part ring "Ring" { pieces 1, 2 rests on b  piece 1 { behind ring.2 } }`;
  expect(
    wayBack(stage(rings, "step { remove ring.2 remove ring.1 refit { clean b fit ring reverse } }", "aim none")),
  ).toEqual([["cleaning Base", "fitting Ring 1", "fitting Ring 2"]]);
});

test("`restore` there takes away what stands, the last taken first, and the proof is nothing to take away", () => {
  const bus = (more: string): string =>
    `part cap "Cap" { rests on b }\n hazard bus electrical danger "Bus" { on cap precaution isolate "Off." back "On." ${more} precaution prove-dead "Meter." with tester }`;
  const away = "taking the precaution away for Bus";
  for (const [more, acts, times] of [
    ["", "", 1],
    ['precaution lock-out "Lock." back "Unlock."', "lock-out bus", 2],
  ] as const) {
    const text = stage(
      bus(more),
      `step { isolate bus ${acts} prove-dead bus remove cap refit { reverse restore bus test "It runs" } }`,
      "aim none",
    );
    expect(wayBack(text)).toEqual([["fitting Cap", ...Array.from({ length: times }, () => away), '"It runs"']]);
  }
});

test("what is written of a thing that nothing answers stands for itself", () => {
  // Rain water is let out and not filled again by itself; who fills it all the same answers the draining.
  const rain = `part tank "Tank" { rests on b }\n fluid rain "Rain water" { volume 1 L path tank }`;
  expect(refit(stage(rain, "step { drain rain remove tank refit { reverse fill rain } }", "aim none"))).toEqual([
    "fitting Tank",
    "filling Rain water",
  ]);
  const brake = `part tank "Tank" { rests on b }\n fluid oil brake-fluid "Oil" { volume 1 L path tank }`;
  expect(wayBack(stage(brake, "step { drain oil remove tank refit { bleed oil } }", "aim none"))).toEqual([
    ["fitting Tank", "filling Oil", "bleeding Oil"],
  ]);
});

test("a procedure that does itself is found once, wherever it is called", () => {
  const text = (block: string): string =>
    `${stage(two, `step { remove x remove y refit { ${block} reverse } }`, "aim none")}procedure q "Q" for u { aim none step { do r } }\nprocedure r "R" for u { aim none step { do q } }`;
  expect(codes(text("do q"))).toEqual(["names/call-cycle"]);
  expect(codes(text("clean b"))).toEqual(["names/call-cycle"]);
});

test("some of several in an `instead` leave the rest to nobody: that is missing", () => {
  const lid = `part lid "Lid"\n fastener ls screw "Lid screws" { count 4 joins lid to b }`,
    of = (block: string): string[] =>
      findings(stage(lid, `step { undo ls remove lid refit { instead { ${block} } } }`)).map(({ says }) => says);
  expect(of("fit lid fit 1 of ls fit 3 of ls")).toEqual([]);
  expect(of("fit lid fit 1 of ls")).toEqual(["Lid screws: 3 of 4 are not back in at the end"]);
});

test("precautions taken in two blocks for work between do not mix, in any line", () => {
  const facts = `${two}\n part fan "Fan" { rests on b }\n hazard h rotating danger "H" { on fan precaution isolate "I" back "i" precaution try-start "T" }`,
    block = "refit { isolate h try-start h clean fan restore h reverse }",
    once = ["the precaution isolate for H", "the precaution try-start for H", "cleaning Fan", "restoring H"];
  expect(wayBack(stage(facts, `step { remove x ${block} } step { remove y ${block} }`, "aim none"))).toEqual([
    [...once, "fitting Y", ...once, "fitting X"],
  ]);
});

test("what one block puts on for a while and another takes off again keeps that order, in any line", () => {
  const text = `unit u "U" {\n base b\n part b "Base"\n ${two}\n temporary felt "Felt"\n}\nprocedure p "P" for u { aim none step { remove x refit { reverse take felt off } } step { remove y refit { put felt on b } } }`;
  expect(wayBack(text)).toEqual([['"put"', "fitting Y", "fitting X", '"take"']]);
});

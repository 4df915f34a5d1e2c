// What is put back in part or finger-tight, in the strip, on the way back or around a call: what is then still to be done, and what is not.

import { expect, test } from "vitest";
import { check, codes, findings, firstRefusedLine, perform, refit, stage } from "./stage.ts";

const facts = `part lid "Lid"\n part core "Core" { fits b  behind lid }\n fastener screws screw "Screws" { count 4  torque 9 N·m  joins lid to b }`;

test("undone, put in finger-tight and tightened in the strip it is as it was, and no part of the way back", () => {
  const trial = (acts: string): string[] => refit(stage(facts, `step { undo screws  remove lid  ${acts} }`));
  expect(trial('inspect core "Whole"  fit lid  fit screws finger-tight  tighten screws')).toEqual([]);
  expect(trial('inspect core "Whole"  fit lid  fit screws')).toEqual([]);
  // Left finger-tight it is not as it was.
  expect(trial('inspect core "Whole"  fit lid  fit screws finger-tight')).not.toEqual([]);
  expect(trial("fit lid  fit screws finger-tight  tighten screws  undo screws  remove lid  remove core").at(-1)).toBe(
    "fitting Screws",
  );
});

test("the others that go in beside those that are finger-tight tighten none of these, and that is said where they were left", () => {
  const block = (text: string): string => stage(facts, `step { undo screws  remove lid  refit { ${text} } }`);
  const whole = block("fit lid  fit 2 of screws finger-tight  tighten screws last");
  expect(codes(whole)).toEqual([]);
  // The torque is for all of them.
  expect(refit(whole).slice(-3)).toEqual([
    "fitting finger-tight Screws",
    "fitting finger-tight Screws",
    "tightening Screws",
  ]);
  expect(codes(block("fit lid  fit screws finger-tight  tighten screws last"))).toEqual([]);
  const text = block("fit lid  fit 2 of screws finger-tight"),
    [first, ...more] = findings(text);
  expect(more).toEqual([]);
  expect(first).toMatchObject({ code: "refit/missing", says: "Screws are left finger-tight at the end" });
  expect(text.slice(first!.at.start, first!.at.end)).toBe("fit 2 of screws finger-tight");
});

const called = `procedure q "Q" for u {\n aim lid off\n leaves off lid\n leaves out 4 of screws "They go in with the lid."\n step { undo screws  remove lid }\n}\n`;
const around = (block: string, strip = ""): string =>
  stage(facts, `step { do q  ${strip}  refit { ${block} } }`) + called;

test("what a called procedure leaves out and the caller puts in by part is in the hand of the caller", () => {
  expect(codes(around("fit lid  fit 2 of screws finger-tight  tighten screws last"))).toEqual([]);
  expect(codes(around("fit lid  fit 2 of screws finger-tight"))).toEqual(["refit/missing"]);
  expect(refit(around("fit lid  fit 2 of screws"))).toEqual(["fitting Lid", "fitting Screws", "fitting Screws"]);
});

test("what the caller puts back under a condition is left where that does not hold", () => {
  const gap = 'measure gap on b "Gap" at most 1 mm';
  const builds = (block: string): (readonly [string, string[], string[]])[] =>
    check(around(`if gap fails { ${block} }`, gap))
      .performances.filter(({ procedure }) => procedure.id === "p")
      .map(({ model, order, leaves }) => [
        model.build,
        order!.line.map((n) => `${order!.ops[n]!.verb} ${model.things[order!.ops[n]!.things[0]!]!.name}`),
        leaves.map(({ leave, things }) => `${leave.is} ${things.map((thing) => model.things[thing]!.name).join()}`),
      ]);
  expect(builds("fit lid  fit screws")).toEqual([
    ["plain", [], ["off Lid", "out Screws"]],
    ["gap failing", ["fit Lid", "fit Screws"], []],
  ]);
});

test("what was moved aside and back, and is held again after that, is freed before it is moved aside on the way back", () => {
  const text = stage(
    `part cover "Cover"\n fastener hinge-screws screw "Hinge screws" { joins cover to b }\n part card "Card" { behind cover }\n fastener card-screws screw "Card screws" { joins card to b  behind cover }`,
    "step { undo hinge-screws  slide cover  undo card-screws  slide cover back  fit hinge-screws }",
  );
  expect(firstRefusedLine(perform(text), 50)).toBeUndefined();
  const line = refit(text);
  expect(line.indexOf("undoing Hinge screws")).toBeLessThan(line.indexOf("moving aside Cover"));
});

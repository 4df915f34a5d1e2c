// One slip that shows in two rules: one finding, at the line that is wrong, with the other among its reasons.

import { expect, test } from "vitest";
import { check, codes, findings, stage } from "../bench/refit/stage.ts";

const all = (text: string): string[] =>
  check(text).findings.map(({ code, severity, at }) => `${severity} ${code}: ${text.slice(at.start, at.end)}`);

test("a thread that neither its spanner nor its torque goes with is wrong once; a torque that no thread of the spanner takes is another mistake", () => {
  const screws = (size: string, torque: string): string[] =>
    all(
      stage(
        `part lid "Lid"\n fastener screws screw "Screws" { count 4  size ${size}  class 8.8  drive hex 13  torque ${torque}  joins lid to b }`,
        "step { undo screws  remove lid }",
        "aim lid off",
      ),
    );
  expect(screws("M8x30", "24 N·m")).toEqual([]);
  expect(screws("M6x30", "24 N·m")).toEqual(["error fastener/drive-mismatch: drive hex 13"]);
  expect(screws("M6x30", "240 N·m")).toEqual([
    "warning fastener/drive-mismatch: drive hex 13",
    "error fastener/torque-over-yield: torque 240 N·m",
  ]);
  expect(screws("M8x30", "240 N·m")).toEqual(["error fastener/torque-over-yield: torque 240 N·m"]);
});

const mains = (precautions: string, acts: string): string =>
  `tool tester "Tester"\n${stage(
    `part lid "Lid" { rests on b }\n hazard mains electrical danger "Mains" { on lid  source mains\n ${precautions} }`,
    `step { ${acts}  remove lid }`,
    "aim lid off",
  )}`;
const isolate = 'precaution isolate "Open it." back "Close it."\n',
  lock = 'precaution lock-out "Lock it." back "Unlock it."\n',
  prove = 'precaution prove-dead "Test." with tester\n';

test("an order that the hazard declares wrongly is wrong there, whatever order the acts have", () => {
  const acts = "isolate mains  lock-out mains  prove-dead mains";
  expect(all(mains(isolate + lock + prove, acts))).toEqual([]);
  for (const declared of [prove + isolate + lock, lock + isolate + prove])
    expect(findings(mains(declared, acts)), declared).toMatchObject([{ code: "hazard/order" }]);
  // An act that is missing altogether is another mistake.
  expect(codes(mains(lock + isolate + prove, "isolate mains  prove-dead mains"))).toHaveLength(2);
});

test("the tool of a precaution that is gone is not told as unused beside it", () => {
  expect(all(mains(isolate + lock, "isolate mains  lock-out mains"))).toEqual(["error hazard/no-proof: mains"]);
});

const guarded = `part guard guard "Guard"\n part lid "Lid" { behind guard }\n fastener gs screw "Guard screws" { joins guard to b }\n fastener ls screw "Lid screws" { joins lid to b  behind guard }
 fluid oil oil "Oil" { volume 1 L  drains at plug  fills at filler }\n fastener plug plug "Plug" { into b }\n fastener filler plug "Filler" { into b }
 hazard start rotating danger "Start" { on gs, guard, ls, lid, filler  precaution lock-out "Lock." back "Unlock."  precaution try-start "Press." }`;
const still = "lock-out start  try-start start",
  open = "undo gs  remove guard  undo ls  remove lid";

test("power given back with the guards off and the work gone on with is one line that stands too early", () => {
  const text = stage(guarded, `step { ${still}  undo gs  remove guard  restore start  undo ls  remove lid }`);
  const [first, ...more] = findings(text).filter(({ code }) => code.startsWith("hazard/"));
  expect(more).toEqual([]);
  expect(first).toMatchObject({ code: "hazard/guard-off", severity: "error" });
  expect(first!.because.map(({ says }) => says).join()).toContain("ended before this, and must be taken again");
});

test("where the author allows that line, what is touched after it under power is found by itself", () => {
  const text = stage(
    guarded,
    `step { ${still}  undo gs  remove guard\n# allow hazard/guard-off: set as it runs, by the maker's way\nrestore start\nundo ls  remove lid }`,
  );
  expect(findings(text)).toMatchObject([{ code: "hazard/lapsed", severity: "error" }]);
});

test("a question about a hazard takes no error about it away", () => {
  const untested = 'precaution prove-dead "Test."\n',
    asked = all(mains(lock + untested, "isolate mains  lock-out mains  prove-dead mains"));
  expect(asked.some((one) => one.startsWith("question hazard/no-tester"))).toBe(true);
  expect(asked).toContain("error hazard/order: isolate mains");
});

test("what the author allows hides no name that nothing speaks of", () => {
  const text = `tool mallet "Mallet"\n${mains(lock + '# allow hazard/no-tester: by the meter of the cabinet\nprecaution prove-dead "Test."\n', "lock-out mains  prove-dead mains")}`;
  expect(all(text)).toEqual(expect.arrayContaining([expect.stringContaining("names/unused: mallet")]));
});

test("a line of the way back that stands too early stands before several, and is wrong once", () => {
  const text = (block: string): string => stage(guarded, `step { ${still}  drain oil  ${open}  refit { ${block} } }`);
  const of = (block: string): string[] => {
    const whole = text(block);
    return findings(whole)
      .filter(({ code }) => code === "refit/contradiction")
      .map(({ at }) => whole.slice(at.start, at.end));
  };
  expect(of("reverse  fill oil  restore start")).toEqual([]);
  expect(of("restore start  reverse  fill oil")).toEqual(["restore start"]);
  expect(of("restore start  reverse")).toEqual(["restore start"]);
  expect(of("fill oil  reverse")).toEqual(["fill oil"]);
});

test("a base that is no part is told as the wrong name, and the rest is judged without it", () => {
  const box = (base: string): string =>
    `unit u "U" {\n base ${base}\n part b "Base"\n part lid "Lid"\n fastener screws screw "Screws" { joins lid to b }
 hazard heat hot caution "Heat" { on lid  precaution cool "Let it cool." }\n}
procedure p "P" for u { aim lid off\n step { cool heat  undo screws  remove lid } }`;
  expect(all(box("b"))).toEqual([]);
  for (const name of ["screws", "heat"]) expect(all(box(name))).toEqual([`error names/unknown: ${name}`]);
});

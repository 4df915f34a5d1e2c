// Slips of a technician's first text, each one finding at its line.

import { expect, test } from "vitest";
import { check, findings, stage } from "../bench/refit/stage.ts";

const of = (text: string, code: string): string[] =>
  check(text)
    .findings.filter((one) => one.code === code)
    .map(({ severity, at }) => `${severity}: ${text.slice(at.start, at.end)}`);

test("a crew that is smaller than its acts ask for is one finding, at the first of them", () => {
  const text = (crew: string): string =>
    stage(
      `part lid "Lid" { rests on b }\n part hood "Hood" { rests on b }`,
      "step { lift lid by 2 people  lift hood by 2 people }",
      `aim none ${crew}`,
    );
  expect(of(text("crew 1"), "lift/crew")).toEqual(["warning: lift lid by 2 people"]);
  for (const crew of ["crew 2", "crew 3", ""]) expect(of(text(crew), "lift/crew"), crew).toEqual([]);
});

test("what the way back has filled is not filled once more without a word", () => {
  const text = (finish: string): string =>
    stage(
      `fastener plug plug "Plug" { into b }\n fluid oil oil "Oil" { volume 1 L  drains at plug  fills at plug }`,
      `step { drain oil } finish { ${finish} }`,
      "aim none",
    );
  expect(of(text("fill oil"), "refit/filled-twice")).toEqual(["hint: fill oil"]);
  expect(of(text('fill oil "Top up to the mark."'), "refit/filled-twice")).toEqual([]);
  expect(of(text('test "No leak"'), "refit/filled-twice")).toEqual([]);
});

test("the hardness class of a set screw is a name, alone and behind the size; one that no standard has is told", () => {
  const screw = (said: string): string[] =>
    check(
      stage(
        `part hub "Hub" { fits b }\n fastener s set-screw "Screw" { ${said}  torque 5 N·m  joins hub to b }`,
        "step { undo s  remove hub }",
        "aim hub off",
      ),
    )
      .findings.filter(({ severity }) => severity !== "hint")
      .map(({ code }) => code);
  for (const said of ["size M6x10  class 45H", "size M6x10-45H", "size M6x10  class 14H"])
    expect(screw(said), said).toEqual([]);
  expect(screw("size M6x10  class 46H")).toEqual(["fastener/strength-unknown"]);
});

test("an act that is neither in reach nor guarded is one finding with both", () => {
  const text = stage(
    `part cover "Cover"\n fastener cs screw "Cover screws" { joins cover to b }\n part belt "Belt" { rests on b  behind cover }
 hazard start rotating danger "Start" { on belt, cs, cover  precaution lock-out "Lock." back "Unlock."  precaution try-start "Press." }`,
    'step { lock-out start  try-start start  undo cs  remove cover  remove belt } finish { set belt "Force" 30..40 N }',
    "aim belt off",
  );
  const [first, ...more] = findings(text);
  expect(more).toEqual([]);
  expect(first).toMatchObject({ code: "hazard/not-yet" });
  expect(first!.because.map(({ says }) => says).join()).toContain("belongs behind Cover");
});

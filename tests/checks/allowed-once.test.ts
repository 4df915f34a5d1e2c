// An allow speaks of one act: the next one that lacks the same precautions is found by itself, until they are taken.

import { expect, test } from "vitest";
import { findings, stage } from "../bench/refit/stage.ts";

const facts = `part lid "Lid"\n part hat "Hat"\n fastener ls screw "Lid screws" { count 4  joins lid to b }\n fastener hs screw "Hat screws" { count 4  joins hat to b }
 hazard fan rotating danger "Fan" { on ls, hs, lid, hat  precaution lock-out "Lock."  precaution try-start "Press." }
 hazard belt rotating danger "Belt" { on hs, hat  precaution lock-out "Lock."  precaution try-start "Press." }`;
const allow = "\n# allow hazard/not-yet: by the works rule\n";
const said = (acts: string): string[] => {
  const text = stage(facts, `step { ${acts}\n }`, "aim none");
  return findings(text)
    .filter(({ code }) => /^(?:hazard\/not-yet|allow)/.test(code))
    .map(({ code, severity, at }) => `${severity} ${code}: ${text.slice(at.start, at.end)}`);
};

test("without an allow it is said once; with one the next act is found, and so on", () => {
  expect(said("undo ls\n remove lid\n undo hs\n remove hat")).toEqual(["error hazard/not-yet: undo ls"]);
  expect(said(`${allow} undo ls\n remove lid\n undo hs\n remove hat`)).toEqual(["error hazard/not-yet: remove lid"]);
  expect(said(`${allow} undo ls\n ${allow} remove lid\n undo hs\n remove hat`)).toEqual([
    "error hazard/not-yet: undo hs",
  ]);
  expect(said(`${allow} undo ls\n ${allow} remove lid\n ${allow} undo hs\n ${allow} remove hat`)).toEqual([]);
});

test("an act that has hands on it and leaves nothing changed is found too", () => {
  expect(said(`${allow} undo ls\n clean lid\n`)).toEqual(["error hazard/not-yet: clean lid"]);
  expect(said(`${allow} undo ls\n inspect lid "Whole"\n`)).toEqual([]);
});

test("what takes the precautions after that answers it", () => {
  expect(
    said(`${allow} undo ls\n lock-out fan, belt\n try-start fan, belt\n remove lid\n undo hs\n remove hat`),
  ).toEqual([]);
});

test("another hazard of which nothing was taken either, and that is said with the first, is found where it is touched", () => {
  expect(said(`lock-out belt\n try-start belt\n ${allow} undo ls\n ${allow} remove lid\n undo hs`)).toEqual([
    "error hazard/not-yet: undo hs",
  ]);
});

test("what else the act was refused for is another code, and is not allowed with it", () => {
  const text = (code: string): string =>
    stage(
      `part lid "Lid" { rests on b }\n part core "Core" { rests on b  behind lid }\n hazard fan rotating danger "Fan" { on core  precaution lock-out "Lock."  precaution try-start "Press." }`,
      `step { \n# allow ${code}: by the works rule\nremove core\n }`,
      "aim core off",
    );
  const codes = (of: string): string[] => findings(of).map(({ code }) => code);
  expect(codes(text("hazard/not-yet"))).toEqual(["sequence/blocked"]);
  // A milder reason that is allowed takes no missing precaution away.
  expect(codes(text("sequence/blocked"))).toContain("hazard/not-yet");
});

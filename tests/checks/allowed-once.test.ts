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

test("an act of a refit block, of a written way back or of `finish` that rests on the same lack is found by itself, too", () => {
  const block = (acts: string): string => `refit { ${acts}\n reverse }`;
  // Allowed in the strip: what the author writes for the way back still lacks it; what is mirrored by itself is not told again.
  expect(said(`${allow} undo ls\n ${allow} remove lid\n ${block("clean lid")}`)).toEqual([
    "error hazard/not-yet: clean lid",
  ]);
  expect(said(`${allow} undo ls\n ${allow} remove lid\n ${block(`${allow} clean lid`)}`)).toEqual([]);
  expect(said(`${allow} undo ls\n ${allow} remove lid`)).toEqual([]);
  expect(said(`${allow} undo ls\n ${allow} remove lid\n ${block('inspect lid "Whole"')}`)).toEqual([]);
  // Where it was taken in between, nothing is lacking.
  expect(said(`${allow} undo ls\n lock-out fan\n try-start fan\n remove lid\n ${block("clean lid")}`)).toEqual([]);
});

test("allowed in a refit block, the next act of it is found, until the precautions are taken", () => {
  const free = (acts: string): string[] => {
    const text = stage(
      `part lid "Lid" { rests on b }\n part hat "Hat" { rests on b }\n part core "Core" { rests on b }
 hazard fan rotating danger "Fan" { on hat, core  precaution lock-out "Lock."  precaution try-start "Press." }`,
      `step { remove lid  refit { ${acts}\n } }`,
      "aim none",
    );
    return findings(text)
      .filter(({ code }) => /^(?:hazard\/not-yet|allow)/.test(code))
      .map(({ at }) => text.slice(at.start, at.end));
  };
  expect(free("clean hat\n clean core")).toEqual(["clean hat"]);
  expect(free(`${allow} clean hat\n clean core`)).toEqual(["clean core"]);
  expect(free(`${allow} clean hat\n ${allow} clean core`)).toEqual([]);
  expect(free(`${allow} clean hat\n lock-out fan\n try-start fan\n clean core`)).toEqual([]);
});

test("a written way back is held to the same, and what only handles a thing is asked for no guard against its weight", () => {
  const built = (acts: string, kind = "rotating"): string[] => {
    const text = `${stage(
      `part lid "Lid" { rests on b }\n part hat "Hat" { rests on b }
 hazard fan ${kind} danger "Fan" { on lid, hat  precaution lock-out "Lock."  precaution try-start "Press." }`,
      `step { lock-out fan  try-start fan  remove lid }\n refit by q`,
      "aim none",
    )}procedure q "Q" for u { step { ${acts} } }\n`;
    return findings(text)
      .filter(({ code, at }) => /^hazard\/(?:not-yet|lapsed)/.test(code) && at.start > text.indexOf("procedure q"))
      .map(({ at }) => text.slice(at.start, at.end));
  };
  expect(built("restore fan\n clean hat\n fit lid")).toEqual(["clean hat"]);
  expect(built(`restore fan\n${allow.replace("not-yet", "lapsed")} clean hat\n fit lid`)).toEqual(["fit lid"]);
  // Nothing is moved by a cloth.
  expect(built(`restore fan\n${allow.replace("not-yet", "lapsed")} fit lid\n clean hat`, "heavy")).toEqual([]);
});

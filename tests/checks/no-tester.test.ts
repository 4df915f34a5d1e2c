// What a proof is made with: asked for wherever no instrument is named, whatever energy it is; and where the proof is made by hand, the
// author's reason is what the papers print.

import { expect, test } from "vitest";
import { precautions, type PrecautionName } from "../../language/tables/index.ts";
import { check, findings, stage } from "../bench/refit/stage.ts";

const shop = 'tool meter "Meter" { kind pressure-gauge  range 0..16 bar }\n';
const strip = (kind: string, proof: string, act: string): string =>
  shop +
  stage(
    `part lid "Lid" { rests on b }
 hazard h ${kind} danger "Energy" { on lid  precaution vent "Open it."
 ${proof} }`,
    `step { vent h  ${act}  remove lid }`,
    "aim lid off",
  );
const asked = (text: string): string[] =>
  findings(text)
    .filter(({ code }) => code === "hazard/no-tester")
    .map(({ severity, says, at }) => `${severity} ${text.slice(at.start, at.end)}: ${says}`);

test("a proof that no pressure or force is left asks for what it is made with, as that of a voltage does", () => {
  for (const kind of ["pressure", "spring", "rotating"])
    expect(asked(strip(kind, 'precaution prove-zero "Look at it."', "prove-zero h")), kind).toEqual([
      `question precaution prove-zero "Look at it.": Energy: nothing says what prove-zero is done with; write prove-zero … with a gauge or another instrument of the shop; where it is proved by other means, allow this and give them as the reason`,
    ]);
});

test("a limit alone is read by nothing", () => {
  expect(asked(strip("pressure", 'precaution prove-zero "Look." at most 0.1 bar', "prove-zero h"))).toHaveLength(1);
});

test("an instrument named by the precaution or by the act answers it", () => {
  expect(asked(strip("pressure", 'precaution prove-zero "Look." with meter', "prove-zero h"))).toEqual([]);
  expect(asked(strip("pressure", 'precaution prove-zero "Look."', "prove-zero h with meter"))).toEqual([]);
});

test("what is proved by hand is allowed with its means, which the summary lists", () => {
  const text = strip(
      "pressure",
      '# allow hazard/no-tester: it is moved by hand, no gauge fits\n precaution prove-zero "Move it."',
      "prove-zero h",
    ),
    { allows } = check(text);
  expect(asked(text)).toEqual([]);
  expect(allows.map(({ reason }) => reason)).toEqual(["it is moved by hand, no gauge fits"]);
});

test("where the proof itself is forgotten, that is said, and nothing of the allow that spoke of it", () => {
  const allow = '# allow hazard/no-tester: it is moved by hand, no gauge fits\n precaution prove-zero "Move it."';
  const all = (act: string): string[] => check(strip("pressure", allow, act)).findings.map(({ code }) => code);
  expect(all("").filter((code) => code.startsWith("hazard/") || code.startsWith("allow/"))).toEqual(["hazard/not-yet"]);
  // With nothing amiss, an allow that silences nothing is told.
  expect(all("prove-zero h with meter")).toContain("allow/unused");
});

test("every proof but that by the machine's own controls is made with something", () => {
  const names = Object.keys(precautions) as PrecautionName[];
  expect(names.filter((name) => precautions[name].isProof && precautions[name].provedWith === undefined)).toEqual([
    "try-start",
  ]);
  expect(names.filter((name) => !precautions[name].isProof && precautions[name].provedWith !== undefined)).toEqual([]);
});

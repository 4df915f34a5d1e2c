// What the way back finds amiss with a thing that was found amiss on the way apart is an echo of that: one mistake, one finding.

import { expect, test } from "vitest";
import { codes, stage } from "./refit/stage.ts";

const lid = `part lid "Lid"\n part card "Card" { rests on b }\n fastener screws screw "Screws" { count 4 joins lid to b }`;
const written = (facts: string, strip: string, back: string, head = "aim none"): string[] =>
  codes(
    `${stage(facts, `step { ${strip} }`, head)}procedure q "Q" for u { aim all in needs p step { ${back} } step { fit card } }`,
  );

test("what a written way back finds of a thing that was found amiss in the strip is an echo of that", () => {
  const back = "fit lid fit screws";
  expect(written(lid, "remove card undo screws remove lid", back)).toEqual([]);
  // The lid stays on: said as what it is in the strip, and not again where it is fitted.
  expect(written(lid, "remove card undo screws", back)).toEqual(["removal/left-loose"]);
  expect(written(lid, "remove card undo screws", back, "aim lid off")).toEqual(["removal/missing"]);
  // Of another thing it is another mistake.
  expect(written(lid, "undo screws", back, "aim lid off")).toEqual(["removal/missing", "refit/impossible"]);
});

test("a tie concerns what hangs by it: what is then said of that part is an echo", () => {
  const union = `part hose "Hose"\n part card "Card" { rests on b }\n joint union screwed "Union" { joins hose to b }`;
  expect(written(union, "remove card undo union remove hose", "fit hose fit union")).toEqual([]);
  expect(written(union, "remove card undo union remove hose undo union", "clean b")).toEqual([
    "sequence/already-undone",
  ]);
});

test("a tie concerns the washers that go with it: what is then said of them is an echo", () => {
  const hub = `part hub "Hub"\n part card "Card" { rests on b }\n part washer tab-washer "Washer" { rests on b renew always }\n fastener nut nut "Nut" { joins hub to b with washer }`,
    back = "fit hub renew washer fit washer fit nut";
  expect(written(hub, "remove card undo nut remove washer remove hub", back)).toEqual([]);
  expect(written(hub, "remove card remove hub", back)).toEqual(["sequence/still-held"]);
});

test("the base is in everything: what is found on it is no echo", () => {
  expect(
    codes(
      `unit u "U" {\n base b\n part b "Base"\n part lid "Lid" { rests on b }\n temporary felt "Felt"\n}\nprocedure p "P" for u { aim none step { remove b remove lid refit { put felt on b } } }`,
    ),
  ).toEqual(["sequence/base-stays", "refit/temporary-left"]);
});

test("a hazard is never taken for an echo", () => {
  const fan = `${lid}\n hazard h rotating danger "Fan" { on lid precaution isolate "I" back "i" precaution try-start "T" }`,
    off = "isolate h try-start h remove card undo screws remove lid";
  expect(written(fan, off, "fit lid fit screws restore h")).toEqual([]);
  expect(written(fan, `${off} remove lid`, "fit lid fit screws restore h")).toEqual(["sequence/already-undone"]);
  expect(written(fan, `${off} remove lid`, "restore h fit lid fit screws")).toEqual([
    "sequence/already-undone",
    "hazard/lapsed",
  ]);
});

// The same name twice in one list is told at the second, once, whatever the bench finds of it beside.

import { expect, test } from "vitest";
import { findings, stage } from "../bench/refit/stage.ts";

const facts = `part lid "Lid"\n part cap "Cap" { pieces left, right  rests on b }\n fastener screws screw "Screws" { count 4  joins lid to b }`;
const said = (acts: string, head = "aim none"): string[] => {
  const text = stage(facts, `step { ${acts} }`, head);
  return findings(text).map(({ code, at }) => `${code}: ${text.slice(at.start, at.end)}`);
};

test.each([
  ["clean lid, lid", ["names/listed-twice: lid"]],
  ["mark lid, lid as m", ["names/listed-twice: lid"]],
  ["hold lid, b, lid undo screws remove lid", ["names/listed-twice: lid"]],
  ["undo screws, screws remove lid", ["sequence/already-undone: undo screws, screws"]],
  ["undo screws remove lid, lid", ["sequence/already-undone: remove lid, lid"]],
  ["repeat for left, left { remove cap }", ["names/listed-twice: left"]],
  ["clean lid, b clean lid", []],
])("%s", (acts, found) =>
  expect(said(acts).filter((one) => !one.includes("no-aim") && !one.includes("mark"))).toEqual(found),
);

test("in an aim and in a declaration as well", () => {
  expect(said("undo screws remove lid", "aim lid, lid off")).toEqual(["names/listed-twice: lid"]);
  expect(
    findings(stage(`part lid "Lid" { rests on b  behind hood, hood }\n part hood "Hood" { rests on b }`, "step { }")),
  ).toMatchObject([{ code: "names/listed-twice" }]);
});

// The lines that free a thing at a moment: found by trying acts one after the other.

import { expect, test } from "vitest";
import { aroundOf } from "../../language/bench/walk.ts";
import { linesThatFree } from "../../language/index.ts";
import { codes, perform, stage } from "../bench/refit/stage.ts";

const freeing = (facts: string, acts: string, verb: string, name: string): readonly string[] | undefined => {
  const { model, stripEnd, procedure } = perform(stage(facts, `step { ${acts} }`, "aim none"));
  return linesThatFree(model, stripEnd, aroundOf(procedure), verb, name);
};
const pump = `part pump "Pump" { rests on b }\n part lid "Lid"\n part seal seal "Seal" { rests on pump behind lid renew always }\n fastener ls screw "Ls" { count 2 joins lid to pump }`;

test("on the machine and in a sub-assembly on the bench, whichever act took that off", () => {
  expect(freeing(pump, "clean b", "remove", "seal")).toEqual(["undo ls", "remove lid"]);
  for (const acts of ["remove pump", "clean b remove pump", "undo ls fit ls remove pump"])
    expect(freeing(pump, acts, "remove", "seal"), acts).toEqual(["undo ls", "remove lid"]);
});

test("the lines that it names are taken by the bench", () => {
  const lines = freeing(pump, "remove pump", "remove", "seal")!;
  expect(codes(stage(pump, `step { remove pump ${lines.join(" ")} remove seal }`, "aim none"))).toEqual([]);
});

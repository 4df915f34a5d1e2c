// A thing that is declared for some builds only, and a line about it that is performed in the others too.

import { expect, test } from "vitest";
import { findings, stage } from "./refit/stage.ts";

const facts = `option heater "Cabinet heater"\n variants short, long\n part lid "Lid"\n fastener ls screw "Lid screws" { count 4 joins lid to b }
 if heater { part coil "Heating coil" { fits b } }`;
const said = (steps: string, head = ""): { code: string; says: string; builds: readonly string[] }[] =>
  findings(stage(facts, steps, head)).map(({ code, says, builds }) => ({ code, says, builds }));

test("an act on a thing that is not there in this build is a finding with the smallest condition", () => {
  expect(said("step { undo ls remove lid remove coil }")).toEqual([
    {
      code: "sequence/not-in-build",
      says: "Heating coil is not there: it is declared if heater",
      builds: ["without heater"],
    },
  ]);
});

test("what an act is done on counts as well, in both halves", () => {
  expect(said('step { measure warm on coil "Gap" 1..2 mm }', "aim none").map(({ code }) => code)).toEqual([
    "sequence/not-in-build",
  ]);
  expect(
    said("step { undo ls remove lid if heater { remove coil } refit { fit coil after ls } }").map(({ code }) => code),
  ).toEqual(["sequence/not-in-build"]);
});

test("lines of one step about things of one condition lack one line, and are one finding", () => {
  const more = facts.replace(
    'part coil "Heating coil" { fits b }',
    'part coil "Heating coil" { fits b } part probe "Probe" { fits b }',
  );
  const codesOf = (steps: string): string[] => findings(stage(more, steps)).map(({ code, says }) => `${code} ${says}`);
  expect(codesOf("step { undo ls remove lid remove coil remove probe }")).toEqual([
    "sequence/not-in-build Heating coil is not there: it is declared if heater",
  ]);
  // In another step it is another line, and of another condition another mistake.
  expect(codesOf("step { undo ls remove lid remove coil } step { remove probe }")).toHaveLength(2);
  const jack = more.replace("variants short", 'if long { part jack "Jack" { fits b } } variants short');
  expect(findings(stage(jack, "step { undo ls remove lid remove coil remove jack }"))).toHaveLength(2);
});

test("under a condition of the author's that keeps it out of the other builds nothing is said", () => {
  expect(said("step { undo ls remove lid if heater { remove coil } }")).toEqual([]);
  expect(said("if heater { step { remove coil } }")).toEqual([]);
});

test("under a condition that still lets such a build in it is said with that build", () => {
  expect(said("step { if long { remove coil } }", "aim none")[0]!.builds).toEqual(["with long and without heater"]);
});

test("a name that is declared otherwise for the other builds is there in all", () => {
  const both = `option heater "Heater"\n if heater { part coil "Coil" { fits b } }\n unless heater { part coil "Blank" { fits b } }`;
  expect(findings(stage(both, "step { remove coil }"))).toEqual([]);
});

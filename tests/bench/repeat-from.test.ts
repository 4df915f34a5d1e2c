// `repeat from STEP`: the step can be done again from the bench as it is at the reading, or it is found there.

import { expect, test } from "vitest";
import { linesOf } from "../../language/outputs/lines/groups.ts";
import { options } from "../outputs/outputs-of.ts";
import { check, findings, stage } from "./refit/stage.ts";

const box = `part lid "Lid"\n fastener ls screw "Lid screws" { count 4 joins lid to b }\n part card "Card" { fits b by slide-fit behind lid }`;
const says = (text: string): string[] => findings(text).map((finding) => `${finding.code} ${finding.says}`);

test("what is off, undone or on already is nothing to do", () => {
  const reading = 'measure gap on b "Gap" at most 0.2 mm else repeat from open-up';
  expect(says(stage(box, `step open-up "Open" { undo ls remove lid ${reading} }`))).toEqual([]);
  expect(
    says(
      stage(
        box,
        `step open-up "Open" { undo 2 of ls undo rest of ls remove lid } step trial "Trial" { remove card fit card ${reading} remove card }`,
      ),
    ),
  ).toEqual([]);
});

test("on the way back, the step to go back to is one that can be reached from there", () => {
  const text = (step: string): string =>
    stage(
      box,
      `step open-up "Open" { undo ls remove lid refit { reverse test "Lid sits flat" else repeat from ${step} } } step card-out "Card" { remove card }`,
    );
  expect(says(text("open-up"))).toEqual([]);
  expect(says(text("card-out"))).toEqual([
    "sequence/repeat Card cannot be done again from here: Lid is in front of it",
  ]);
  const at = findings(text("card-out"))[0]!.at;
  expect(text("card-out").slice(at.start, at.end)).toMatch(/^test "Lid sits flat"/);
});

test("after the final test the precautions are taken again first", () => {
  const facts = `${box}\n hazard start rotating danger "It can start" { on ls  precaution lock-out "Lock it." back "Take it off."  precaution try-start "Press start." }`;
  const text = (step: string): string =>
    stage(
      facts,
      `step still "Still" { lock-out start try-start start } step open-up "Open" { undo ls remove lid } finish { test "It runs" else repeat from ${step} }`,
    );
  expect(says(text("still"))).toEqual([]);
  expect(says(text("open-up"))).toEqual([
    "hazard/repeat Open cannot be done again from here: It can start asks for lock-out and try-start first",
  ]);
});

test("a missing precaution leads, whatever else stands in the way", () => {
  const facts = `${box}\n hazard hot-card hot warning "Hot card" { on card  precaution cool "Let it stand." back "Go on." }`;
  expect(
    says(
      stage(
        facts,
        'step still "Still" { cool hot-card } step open-up "Open" { undo ls remove lid } step card-out "Card" { remove card } finish { test "Works" else repeat from card-out }',
      ),
    ),
  ).toEqual(["hazard/repeat Card cannot be done again from here: Hot card asks for cool first"]);
});

test("in a written refit the author says what comes apart before it goes together again", () => {
  const text = (before: string): string =>
    `${stage(box, 'step open-up "Open" { undo ls remove lid remove card }', "refit by back")}procedure back "Back" for u { aim all in needs p
 step card-in "Card in" { fit card fit lid fit ls measure gap on lid "Gap" at most 0.2 mm otherwise { ${before} repeat from card-in } } }`;
  expect(says(text("undo ls remove lid remove card"))).toEqual([]);
  // With the lid still on, nobody gets at the card again; the bench takes it as on already.
  expect(says(text("undo ls"))).toEqual([]);
});

test("what follows finds the bench as it is after the second time", () => {
  const trial = (again: string): string[] =>
    says(
      stage(
        box,
        `step open-up "Open" { undo ls remove lid } step trial "Trial" { fit lid fit ls measure gap on lid "Gap" at most 0.2 mm otherwise { undo ls remove lid ${again} } } step apart "Apart" { undo ls remove lid remove card }`,
      ),
    );
  expect(trial("repeat from trial")).toEqual([]);
  expect(trial("")[0]).toContain("sequence/already-undone");
});

test("a later step is none to repeat from", () => {
  expect(
    says(
      stage(
        box,
        'step open-up "Open" { undo ls remove lid inspect seat on b "Clean" else repeat from card-out } step card-out "Card" { remove card }',
      ),
    ),
  ).toEqual(["sequence/repeat Card comes later than this: there is nothing to repeat"]);
});

test("it is said at the reading alone: what the step itself lacks is said there", () => {
  expect(
    says(
      stage(
        box,
        'step card-out "Card" { remove card inspect look on b "Clean" else repeat from card-out undo ls remove lid }',
      ),
    ).map((line) => line.split(" ")[0]),
  ).toEqual(["sequence/blocked"]);
});

test("it prints the step to go back to, in both halves", () => {
  const { performances } = check(
    `${stage(box, 'step open-up "Open" { undo ls remove lid measure gap on b "Gap" at most 0.2 mm else repeat from open-up }', "refit by back")}procedure back "Back" for u { aim all in needs p step close "Close" { fit lid fit ls inspect flat on lid "Flat" else repeat from close } }`,
  );
  const { strip, refit } = linesOf(
    performances.find(({ procedure }) => procedure.id === "p")!,
    options,
  );
  const told = JSON.stringify([strip, refit]);
  expect(told).toContain("If not: repeat from step 1, Open.");
  expect(told).toContain("If not: repeat from step 1, Close.");
});

test("some of several are the same ones the second time: those that are out already are not undone once more", () => {
  const reading = 'measure gap on lid "Gap" at most 0.2 mm otherwise { repeat from slack }';
  const trial = (first: string, then: string): string[] =>
    says(
      stage(
        `${box}\n part shim "Shims" { count 3  rests on b }`,
        `step slack "Slack" { ${first} ${reading} } step apart "Apart" { ${then} }`,
      ),
    );
  // Two of four screws: the other two are still in afterwards, and come out by their own line.
  expect(trial("undo 2 of ls", "undo rest of ls remove lid")).toEqual([]);
  expect(trial("undo 2 of ls", "undo 2 of ls remove lid")).toEqual([]);
  expect(trial("undo 2 of ls", "remove lid")).toEqual([
    "sequence/still-held Lid cannot come off: still held by 2 of 4 Lid screws",
  ]);
  expect(trial("remove 1 of shim", "remove 2 of shim undo ls remove lid")).toEqual([]);
  // Put in again before the reading, they are undone again.
  expect(trial("undo 2 of ls fit 2 of ls", "undo ls remove lid")).toEqual([]);
  expect(trial("undo 2 of ls fit 1 of ls", "undo 3 of ls remove lid")).toEqual([]);
  expect(trial("undo 3 of ls undo rest of ls remove lid fit lid fit 3 of ls", "undo rest of ls remove lid")).toEqual(
    [],
  );
});

test("pieces that were counted off one by one are on again after the way back, and come off again", () => {
  const facts = `${box}\n part discs "Discs" { count 2 rests on b behind lid }\n part rod "Rod" { fits b by slide-fit behind discs }`;
  const text = (discs: string): string =>
    stage(
      facts,
      `step open-up "Open" { undo ls remove lid ${discs} remove rod } finish { test "Runs" else repeat from open-up }`,
    );
  expect(says(text("remove 2 of discs"))).toEqual([]);
  expect(says(text("remove 1 of discs remove 1 of discs"))).toEqual([]);
});

test("what is wrong in the steps themselves is not said again for the going back", () => {
  const facts = `positions flat, upright\n part race "Race" { fits b by slide-fit }\n part spacer "Spacer" { rests on b behind race }`;
  const text = (acts: string): string =>
    stage(
      facts,
      `step open-up "Open" { turn upright ${acts} turn flat } finish { test "Runs" else repeat from open-up }`,
    );
  expect(says(text("remove race remove spacer"))).toEqual([]);
  expect(says(text("remove spacer remove race"))).toEqual([
    "sequence/blocked Spacer cannot come off: Race is in front of it",
  ]);
});

// How many people: what a procedure says of its crew is told from what nobody says, and goes with it into what it does.

import { expect, test } from "vitest";
import { peopleFor } from "../../language/bench/crew.ts";
import { check } from "../bench/refit/stage.ts";

const unit = `unit u "U" {\n base b\n part b "Base"\n part lid "Lid" { rests on b }\n part hood "Hood" { rests on b }\n}\n`;
const found = (text: string): string[] =>
  check(text)
    .findings.filter(({ code }) => code === "lift/crew")
    .map(
      ({ says, at, because }) =>
        `${text.slice(at.start, at.end)}: ${says} ${because.map((one) => one.at && text.slice(one.at.start, one.at.end)).join()}`,
    );
const procedures = (outer: string, inner: string): string =>
  `${unit}procedure outer "Outer" for u { aim none  ${outer}  do inner }\nprocedure inner "Inner" for u { aim none  ${inner}  step { lift lid by 2 people } }\n`;

test("a crew that is said holds for what the procedure does by another one", () => {
  const lid = "lift lid by 2 people: 2 people are needed here, and the crew is 1: plan for as many crew 1";
  expect(found(procedures("crew 1", ""))).toEqual([lid]);
  expect(found(procedures("", "crew 1"))).toEqual([lid]);
  expect(found(procedures("crew 2", ""))).toEqual([]);
});

test("where nobody says a crew, nothing is compared with it", () => {
  expect(found(procedures("", ""))).toEqual([]);
});

test("what a refit block and the finish ask for is asked for, too", () => {
  const text = (acts: string): string => `${unit}procedure p "P" for u { aim none  crew 1  ${acts} }\n`;
  expect(found(text("step { remove lid  refit { fit lid by 2 people } }"))).toHaveLength(1);
  expect(found(text("step { remove lid  refit { fit lid } }"))).toEqual([]);
});

test("papers ask for as many as the crew or any line does, and for one where nothing is said", () => {
  const people = (head: string, acts: string): number =>
    peopleFor(check(`${unit}procedure p "P" for u { aim none  ${head}  step { ${acts} } }\n`).performances[0]!);
  expect(people("", "lift lid")).toBe(1);
  expect(people("crew 3", "lift lid by 2 people")).toBe(3);
  expect(people("", "lift lid by 2 people")).toBe(2);
});

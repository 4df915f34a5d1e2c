// Parts that hold on to each other alone: one hint for each group, at its first part.

import { expect, test } from "vitest";
import { check } from "../bench/refit/stage.ts";

const hints = (facts: string): string[] =>
  check(`unit u "Grinder" {\n base body\n part body "Body"\n${facts}\n}\n`)
    .findings.filter((one) => one.code === "names/part-unattached")
    .map((one) => one.says);
const nut = `fastener nut nut "Nut" { joins flange to wheel }`;

test("a group that nothing holds to the base is told once, with those that it is made of", () => {
  expect(hints(`part wheel "Wheel"\npart flange "Flange"\n${nut}`)).toEqual([
    "Wheel is tied to Flange alone, and nothing holds the two to the rest: say what does",
  ]);
  expect(hints(`part wheel "Wheel"\npart flange "Flange"\npart tag "Tag" { rests on flange }\n${nut}`)).toEqual([
    "Wheel is tied to Flange, Tag alone, and nothing holds them to the rest: say what does",
  ]);
});

test("one way to the base is enough, whichever of the group it leads from", () => {
  for (const facts of [
    `part wheel "Wheel" { rests on body }\npart flange "Flange"`,
    `part wheel "Wheel"\npart flange "Flange" { fits body }`,
    `part wheel "Wheel"\npart flange "Flange"\nfastener stud stud "Stud" { joins wheel to body }`,
  ])
    expect(hints(`${facts}\n${nut}`)).toEqual([]);
});

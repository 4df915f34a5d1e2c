// A thing that is tied to itself, torques for more or fewer than there are, a danger that is spoken of in an empty text: one finding each.

import { expect, test } from "vitest";
import { checkText, expectMarked } from "../support/check-text.ts";

const box = (unit: string, fastener = ""): string => `
unit box "Box" {
  base foot
  part foot "Foot" { mass 4 kg }
  part lid "Lid" { mass 1 kg }
  fastener screws screw "Lid screws" { count 4  size M6x16  drive hex 10  joins lid to foot  ${fastener} }
  ${unit}
}
procedure open "Open" for box {
  aim lid off
  step "Lid off" {
    undo screws
    remove lid
  }
}
`;
const codes = (text: string): string[] => checkText(text).found.map(({ code, says }) => `${code}: ${says}`);

test.each([
  ['part card "Card" { fits card }', "Card is said to fit itself"],
  ['part card "Card" { rests on card }', "Card is said to rest on itself"],
  ['part card "Card" { between card and lid }', "Card is said to lie between itself and another"],
  ['part card "Card" { between lid and lid }', "Card is said to lie between Lid and the same once more"],
  ["order lid before lid", "lid is said to come before or after itself"],
  ['fastener pin screw "Pin" { joins lid to lid }', "Pin is said to join Lid to itself"],
])("%s", (line, says) => {
  expect(codes(box(line))).toEqual([`names/to-itself: ${says}`]);
});

test("torques go with how many there are", () => {
  expect(codes(box("", "torque 9 N·m for 7"))).toEqual([
    "fastener/torque-at-odds: Lid screws: a torque is given for 7, and there are 4",
  ]);
  expect(codes(box("", "torque 9 N·m for 2  torque 8 N·m for 1"))).toEqual([
    "fastener/torque-at-odds: Lid screws: a torque is given for 3 of 4: say what the rest takes",
  ]);
  expect(codes(box("", "torque 9 N·m for rest  torque 8 N·m for rest"))).toEqual([
    "fastener/torque-at-odds: Lid screws: the rest has a torque already",
  ]);
  expect(codes(box("", "torque 9 N·m for 4  torque 8 N·m for rest"))).toEqual([
    "fastener/torque-at-odds: Lid screws: no rest is left, since a torque is given for all 4",
  ]);
  expect(codes(box("", "stages 5 N·m, 9 N·m  torque 8 N·m"))).toEqual([
    "fastener/torque-at-odds: Lid screws: a torque stands beside stages, which end at one of their own: give it as the last stage, or leave it out",
  ]);
  for (const good of [
    "torque 9 N·m for 2  torque 8 N·m for rest",
    "torque 9 N·m for 2  torque 8 N·m for 2",
    "torque 9 N·m",
    "stages 5 N·m, 9 N·m",
  ])
    expect(codes(box("", good))).toEqual([]);
});

test("an empty text about a danger is an error wherever it stands, and no setting makes it milder", () => {
  const text = `
unit box "Box" {
  base foot
  no pressure " "
#             ^^^ error hazard/no-words: This text is empty: say what the reader has to know, or take the line out
  part foot "Foot" { mass 4 kg }
  hazard start rotating danger "Motor can start" {
    on foot
    precaution lock-out "" back "Take off your own lock."
#                       ^^ error hazard/no-words: This text is empty: say what the reader has to know, or take the line out
    precaution try-start "Press start: nothing may turn."
  }
}
procedure look "Look" for box {
  aim none
  step "Look" {
    lock-out start
    try-start start
    danger ""
#          ^^ error hazard/no-words: This text is empty: say what the reader has to know, or take the line out
    clean foot
  }
}
#- stripdown.json
{ "severity": { "hazard/no-words": "off" } }
`;
  const { found } = checkText(text);
  expect(found.filter(({ code }) => code === "hazard/no-words")).toHaveLength(3);
  expectMarked(text.slice(0, text.indexOf("#- stripdown.json")));
});

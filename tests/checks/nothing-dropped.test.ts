// What is written and means nothing is said, never passed over: a word behind a complete statement, a name that stands for nothing.

import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { eachItem, parse } from "../../language/syntax/index.ts";
import { checkText } from "../support/check-text.ts";

test("a nonsense word behind every construct is one mistake of form", () => {
  const text = readFileSync("tests/syntax/every-word.strip", "utf8"),
    tree = parse(text),
    passed: string[] = [];
  let tried = 0;
  eachItem(tree.items, (item) => {
    const last = tree.scan.tokens[item.arguments.at(-1)?.last ?? item.first]!,
      end = last.endOffset! + 1;
    // A step without a name takes one.
    if (item.entry?.word === "step" && item.arguments.length === 0) return;
    tried++;
    const { errors } = parse(`${text.slice(0, end)} zorble${text.slice(end)}`);
    if (errors.length !== 1) passed.push(`line ${last.line + 1}: ${item.entry?.word}: ${errors.length}`);
  });
  expect(passed).toEqual([]);
  expect(tried).toBeGreaterThan(300);
}, 60_000);

const stand = (more: string, repeat = "left, right"): string => `
unit stand "Stand" {
  base rail
  part rail "Rail"
  part cap "Cap" { pieces left, right  ${more} }
  fastener bolts bolt "Bolts" { pieces left, right  count 2  size M8x40  class 8.8  torque 22 N·m  joins cap to rail  tapped in aluminium }
}
procedure off "Caps off" for stand {
  aim none
  repeat for ${repeat} { step { undo bolts  remove cap } }
}
`;
const errors = (text: string): string[] =>
  checkText(text)
    .found.filter((one) => one.severity === "error")
    .map((one) => one.says);

test.each([
  [stand("mass 1 kg"), []],
  [stand("piece left { mass 2 kg }"), []],
  [stand("piece lft { mass 2 kg }"), ["lft is not there: the pieces are left and right"]],
  [stand("", "left, rigth"), ["rigth is not declared in Stand, but right is"]],
  [
    stand("").replace("in aluminium", "in aluminum"),
    ["aluminum is no material that a thread is cut in: here it is called aluminium"],
  ],
  [
    stand("").replace("in aluminium", "in cheese"),
    ["cheese is no material that a thread is cut in: known are steel, cast-iron, brass, aluminium or nut"],
  ],
])("a name that stands for nothing %#", (text, found) => expect(errors(text)).toEqual(found));

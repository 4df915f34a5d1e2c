// Tightening patterns against published orders, and against the places that the author gives.

import { expect, test } from "vitest";
import { patternsOf } from "../../../language/outputs/draw/draw.ts";
import { placesOf, turnsOf } from "../../../language/outputs/draw/places.ts";
import type { Tie } from "../../../language/model/model.ts";
import { compiledText, options } from "../outputs-of.ts";

const machine = (fastener: string): { tie: Tie; drawing: ReturnType<typeof patternsOf>[number] | undefined } => {
  const { performances } =
      compiledText(`unit u "Unit" { base a  part a "A"  part b "B"  fastener f bolt "Flange bolts" { ${fastener}  joins b to a } }
procedure p "P" for u { aim b off  step "S" { undo f  remove b } }`),
    { model } = performances[0]!;
  return { tie: model.ties[0]!, drawing: patternsOf(model, options)[0] };
};

/** The number in the circle at each place, clockwise from the top. */
function numbersRound(body: string): number[] {
  const dots = [
    ...body.matchAll(
      /<circle cx="([\d.]+)" cy="([\d.]+)" r="[\d.]+" stroke-width="[\d.]+"\/><text[^>]*>(\d+)<\/text>/g,
    ),
  ].map(([, x, y, turn]) => ({ x: Number(x), y: Number(y), turn: Number(turn) }));
  const cx = (Math.min(...dots.map(({ x }) => x)) + Math.max(...dots.map(({ x }) => x))) / 2,
    cy = (Math.min(...dots.map(({ y }) => y)) + Math.max(...dots.map(({ y }) => y))) / 2;
  const angle = ({ x, y }: { x: number; y: number }): number =>
    (Math.atan2(x - cx, cy - y) + 2 * Math.PI + 1e-6) % (2 * Math.PI);
  return dots.sort((a, b) => angle(a) - angle(b)).map(({ turn }) => turn);
}

// Cross orders as printed by flange guides after the legacy pattern of ASME PCC-1 (read second-hand), and three opposite pairs for 6.
test.each([
  [4, [1, 3, 2, 4]],
  [8, [1, 5, 3, 7, 2, 6, 4, 8]],
  [12, [1, 7, 4, 10, 2, 8, 5, 11, 3, 9, 6, 12]],
  [16, [1, 9, 5, 13, 3, 11, 7, 15, 2, 10, 6, 14, 4, 12, 8, 16]],
  [6, [1, 4, 2, 5, 3, 6]],
  [20, [1, 11, 6, 16, 3, 13, 8, 18, 5, 15, 10, 20, 2, 12, 7, 17, 4, 14, 9, 19]],
  [24, [1, 13, 7, 19, 4, 16, 10, 22, 2, 14, 8, 20, 5, 17, 11, 23, 3, 15, 9, 21, 6, 18, 12, 24]],
])("a circle of %i bolts is numbered as the published cross order", (count, order) => {
  const { drawing } = machine(`count ${count}  torque 30 N·m  sequence star  pattern circle 210 mm`),
    numbers = numbersRound(drawing!.body.source);
  expect(numbers).toHaveLength(count);
  expect(order.map((_, turn) => numbers.indexOf(turn + 1) + 1)).toEqual(order);
  expect(drawing!.description).toContain(order.join(", "));
});

test.each([3, 5, 7, 9, 11, 13, 18, 22, 36, 60])("a circle of %i: every number once, no two circles touch", (count) => {
  const { drawing } = machine(`count ${count}  torque 30 N·m  sequence star  pattern circle 210 mm`),
    body = drawing!.body.source;
  expect(numbersRound(body).sort((a, b) => a - b)).toEqual(Array.from({ length: count }, (_, i) => i + 1));
  const dots = [...body.matchAll(/<circle cx="([\d.]+)" cy="([\d.]+)" r="([\d.]+)" stroke-width/g)].map(
    ([, x, y, r]) => [Number(x), Number(y), Number(r)] as const,
  );
  for (const [i, [x, y, r]] of dots.entries()) {
    for (const [ox, oy, or] of dots.slice(0, i)) expect(Math.hypot(x - ox, y - oy)).toBeGreaterThan(r + or);
    expect(x - r).toBeGreaterThan(0);
    expect(x + r).toBeLessThan(drawing!.width);
  }
});

test("round the circle: one after the other", () => {
  expect(turnsOf(machine("count 5  torque 30 N·m  sequence circle  pattern circle 100 mm").tie)).toEqual([
    1, 2, 3, 4, 5,
  ]);
});

test("four in a rectangle crosswise: each second one is opposite the one before", () => {
  const { tie } = machine("count 4  torque 30 N·m  sequence star  pattern rectangle 120 x 80 mm"),
    places = placesOf(tie)!,
    turns = turnsOf(tie);
  expect([...turns].sort()).toEqual([1, 2, 3, 4]);
  for (const i of [0, 2]) {
    const a = places[turns[i]! - 1]!,
      b = places[turns[i + 1]! - 1]!;
    expect([a.x + b.x, a.y + b.y].map((each) => Number(each.toFixed(9)))).toEqual([0.12, 0.08]);
  }
});

test("from the centre out begins in the middle", () => {
  const { tie } = machine(
      "count 5  torque 30 N·m  sequence centre-out  pattern at 0 x 0 mm, 40 x 0 mm, 80 x 0 mm, 20 x 0 mm, 60 x 0 mm",
    ),
    places = placesOf(tie);
  if (!places) throw new Error("the pattern is not read");
  expect(places[turnsOf(tie)[0]! - 1]!.x).toBeCloseTo(0.04, 9);
});

test("row by row runs from the top left, and y points upwards in the author's text", () => {
  const { tie } = machine(
    "count 4  torque 30 N·m  sequence rows  pattern at 40 x 0 mm, 0 x 30 mm, 40 x 30 mm, 0 x 0 mm",
  );
  expect(turnsOf(tie)).toEqual([2, 3, 4, 1]);
});

test("an author's own list is the order; a list that leaves one out numbers nothing", () => {
  expect(turnsOf(machine("count 4  torque 30 N·m  sequence listed 2, 4, 1, 3  pattern circle 100 mm").tie)).toEqual([
    2, 4, 1, 3,
  ]);
  const { drawing } = machine("count 4  torque 30 N·m  sequence listed 2, 4, 1  pattern circle 100 mm");
  expect(drawing!.body.source).toContain("Order of tightening: not given as numbers.");
});

test("what a list goes over again is told, and drawn at its first turn", () => {
  const { tie, drawing } = machine("count 4  torque 30 N·m  sequence listed 2, 4, 1, 3, 2  pattern circle 100 mm");
  expect(turnsOf(tie)).toEqual([2, 4, 1, 3, 2]);
  expect(numbersRound(drawing!.body.source)).toEqual([3, 1, 4, 2]);
  expect(drawing!.description).toContain("2, 4, 1, 3, 2");
});

test("without an order nothing is numbered, without a place nothing is drawn", () => {
  const { drawing, tie } = machine('count 4  torque 30 N·m  sequence "Crosswise."  pattern circle 100 mm');
  expect(turnsOf(tie)).toEqual([]);
  expect(numbersRound(drawing!.body.source)).toEqual([]);
  expect(drawing!.body.source).toContain("Crosswise.");
  expect(machine("count 4  torque 30 N·m  sequence star").drawing).toBeUndefined();
  expect(machine("count 4  pattern circle 100 mm").drawing!.body.source).toContain(
    "Order and torque of tightening: not given.",
  );
});

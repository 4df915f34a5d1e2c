// Which acts may swap: the order as what must be, not as it was printed.

import { expect, test } from "vitest";
import { isLine, maySwap, mustFollow, reduced } from "../../../language/bench/refit/freedom.ts";
import { lineOf } from "../../../language/bench/refit/line.ts";
import { dieOf, nameOf, perform, stage } from "./stage.ts";

const facts = `part x "X"\n part y "Y"\n fastener xs screw "Xs" { joins x to b }\n fastener ys screw "Ys" { joins y to b }`;
const performance = perform(stage(facts, "step { undo xs remove x undo ys remove y }")),
  order = performance.order!;
const number = (name: string): number => order.ops.find((op) => nameOf(performance, op) === name)!.number;

test("acts on different things may swap, a part and its tie may not", () => {
  const following = mustFollow(order);
  expect(maySwap(following, number("fitting X"), number("fitting Y"))).toBe(true);
  expect(maySwap(following, number("fitting X"), number("fitting Xs"))).toBe(false);
  expect(following[number("fitting X")]!.has(number("fitting Xs"))).toBe(true);
});

test("the reduced order draws what is left when the rest follows from it", () => {
  const text = stage(
    `part x "X"\n part y "Y" { behind x }\n part z "Z" { behind x, y }\n fastener xs screw "Xs" { joins x to b }\n fastener ys screw "Ys" { joins y to b }\n fastener zs screw "Zs" { joins z to b }`,
    "step { undo xs remove x undo ys remove y undo zs remove z }",
  );
  const p = perform(text),
    links = reduced(p.order!).map(
      ({ from, to }) => `${nameOf(p, p.order!.ops[from]!)} > ${nameOf(p, p.order!.ops[to]!)}`,
    );
  expect(links).toContain("fitting Z > fitting Y");
  expect(links).not.toContain("fitting Z > fitting X");
});

test("every drawn line is a line, and together they show all that is free", () => {
  const die = dieOf(7),
    drawn = new Set<string>();
  for (let i = 0; i < 500; i++) {
    const line = lineOf(order.ops, order.later, die);
    expect(isLine(order, line)).toBe(true);
    drawn.add(line.join());
  }
  // Two chains of two: 4! / (2! 2!) lines.
  expect(drawn.size).toBe(6);
});

test("a line that swaps what may not swap, or lacks an op, is none", () => {
  const line = [...order.line],
    a = line.indexOf(number("fitting X")),
    b = line.indexOf(number("fitting Xs"));
  [line[a], line[b]] = [line[b]!, line[a]!];
  expect(isLine(order, line)).toBe(false);
  expect(isLine(order, order.line.slice(1))).toBe(false);
});

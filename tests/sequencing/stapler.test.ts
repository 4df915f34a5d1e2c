// Desk stapler, 18 parts: the bench accepts exactly the orders that the published precedence allows. Pairs and counts stand in
// tests/reference/sequencing/stapler18.json, which names its source.

import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { dieOf } from "../bench/refit/stage.ts";
import { isAccepted, performActs, refusedAt, unitText } from "./orders.ts";

interface Stapler {
  readonly parts: number;
  readonly precedence_before_after: readonly (readonly [number, number])[];
  readonly oracle_computed_by_me: { readonly feasible_orders: string; readonly down_sets: number };
  readonly selective_removal_computed_by_me: Readonly<
    Record<string, { readonly must_go_first: readonly number[]; readonly removals_including_target: number }>
  >;
}
const facts = JSON.parse(
  readFileSync(new URL("../reference/sequencing/stapler18.json", import.meta.url), "utf8"),
) as Stapler;
const unit = unitText("stapler"),
  all = Array.from({ length: facts.parts }, (_, i) => i + 1),
  die = dieOf(20);
const before = (part: number): number[] => facts.precedence_before_after.flatMap(([a, b]) => (b === part ? [a] : []));
const perform = (order: readonly number[]): ReturnType<typeof performActs> =>
  performActs(
    unit,
    "stapler",
    order.map((part) => `remove p${part}`),
  );

/** Draws an order; where `feasible`, of the parts that the precedence lets go next. */
function draw(feasible: boolean): number[] {
  const left = new Set(all),
    order: number[] = [];
  while (left.size > 0) {
    const free = [...left].filter((part) => !feasible || before(part).every((other) => !left.has(other))),
      part = free[Math.floor(die() * free.length)]!;
    left.delete(part);
    order.push(part);
  }
  return order;
}
/** Where the published precedence is broken first, or -1. */
const brokenAt = (order: readonly number[]): number =>
  order.findIndex((part, i) => before(part).some((other) => order.indexOf(other) > i));

test("300 orders drawn along the precedence are all accepted", () => {
  for (let i = 0; i < 300; i++) {
    const order = draw(true);
    expect(isAccepted(perform(order)), order.join(" ")).toBe(true);
  }
});

test("300 orders drawn at random are refused where the precedence is broken first, and only then", () => {
  let refused = 0;
  for (let i = 0; i < 300; i++) {
    const order = draw(false),
      at = brokenAt(order);
    if (at >= 0) refused++;
    expect(refusedAt(perform(order)), order.join(" ")).toBe(at);
  }
  expect(refused).toBeGreaterThan(250);
});

test("an order along the precedence with two neighbours swapped is accepted exactly where they may swap", () => {
  for (let i = 0; i < 100; i++) {
    const order = draw(true),
      k = Math.floor(die() * (order.length - 1));
    [order[k], order[k + 1]] = [order[k + 1]!, order[k]!];
    expect(isAccepted(perform(order)), order.join(" ")).toBe(brokenAt(order) < 0);
  }
});

test("every state that can be reached is counted, and every order: 2,438 and 21,227,005,800", () => {
  // What is in the way of each part is asked of the bench: a refused act names all of it.
  const hiders = new Map(
    all.map((part) => {
      const { problems, model } = perform([part]);
      return [
        part,
        problems.flatMap(({ reasons }) =>
          reasons.flatMap(({ by }) => by.map((thing) => Number(model.things[thing]!.id.slice(1)))),
        ),
      ];
    }),
  );
  const pairs = (list: readonly (readonly number[])[]): string[] => list.map((pair) => pair.join(" ")).sort();
  expect(pairs([...hiders].flatMap(([part, list]) => list.map((other) => [other, part])))).toEqual(
    pairs(facts.precedence_before_after),
  );
  const bit = (part: number): number => 1 << (part - 1),
    masks = all.map((part) => hiders.get(part)!.reduce((mask, other) => mask | bit(other), 0));
  let layer = new Map<number, bigint>([[0, 1n]]),
    states = 1;
  for (let size = 0; size < all.length; size++) {
    const next = new Map<number, bigint>();
    for (const [gone, ways] of layer)
      for (const part of all) {
        if ((gone & bit(part)) !== 0 || (masks[part - 1]! & ~gone) !== 0) continue;
        next.set(gone | bit(part), (next.get(gone | bit(part)) ?? 0n) + ways);
      }
    states += next.size;
    layer = next;
  }
  expect(states).toBe(facts.oracle_computed_by_me.down_sets);
  expect(String([...layer.values()][0])).toBe(facts.oracle_computed_by_me.feasible_orders);
});

test("what must go first for a single part", () => {
  for (const [target, { must_go_first: first, removals_including_target: count }] of Object.entries(
    facts.selective_removal_computed_by_me,
  )) {
    const needed = new Set<number>(),
      visit = (part: number): void => {
        for (const other of before(part))
          if (!needed.has(other)) {
            needed.add(other);
            visit(other);
          }
      };
    visit(Number(target));
    expect([...needed].sort((a, b) => a - b)).toEqual([...first]);
    const order = draw(true).filter((part) => needed.has(part) || part === Number(target));
    expect(order).toHaveLength(count);
    expect(isAccepted(perform(order))).toBe(true);
    // Without any one of them the bench refuses.
    for (const one of first)
      expect(isAccepted(perform(order.filter((part) => part !== one))), `${target} without ${one}`).toBe(false);
  }
});

test("the refit is any feasible order read backwards: its partial order is the precedence turned round", () => {
  const performance = perform(draw(true)),
    order = performance.order!,
    number = (part: number): number =>
      order.ops.find(({ things }) => performance.model.things[things[0]!]!.id === `p${part}`)!.number;
  const links = new Set(order.later.flatMap((list, from) => list.map((to) => `${from} ${to}`)));
  for (const [a, b] of facts.precedence_before_after)
    expect(links.has(`${number(b)} ${number(a)}`), `${b} goes on before ${a}`).toBe(true);
  expect(links.size).toBe(facts.precedence_before_after.length);
});

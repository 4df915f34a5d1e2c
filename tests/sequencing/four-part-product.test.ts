// Four-part product as a graph of sub-assemblies: the bench accepts exactly the ten sequences. The graph stands in
// tests/reference/sequencing/homemdemello-four-parts.json, which names its source and says what is from memory.

import { readFileSync } from "node:fs";
import { expect, test } from "vitest";
import type { Performance } from "../../language/bench/trace.ts";
import { at } from "../../language/bench/vector.ts";
import { isAccepted, performActs, unitText } from "./orders.ts";

type Arc = readonly [whole: string, parts: readonly [string, string]];
const facts = JSON.parse(
  readFileSync(new URL("../reference/sequencing/homemdemello-four-parts.json", import.meta.url), "utf8"),
) as {
  readonly hyperarcs: readonly Arc[];
  readonly computed_by_me: {
    readonly nodes: number;
    readonly hyperarcs: number;
    readonly solution_trees: number;
    readonly sequences_one_step_at_a_time: number;
  };
};
const unit = unitText("four-part-product"),
  letters: Readonly<Record<string, string>> = { cap: "C", stick: "S", receptacle: "R", handle: "H" };
const sorted = (text: string): string => [..."CSRH"].filter((letter) => text.includes(letter)).join("");

/**
 * The removals that the encoding knows: a part by itself, or the stick with the end that it stays in. Cap and handle do not touch: the
 * joint of the two stands for "one of the ends is open", and taking both at once is no act of the product.
 */
const acts = [
  "remove cap",
  "remove stick",
  "remove handle",
  "remove stick, cap together",
  "remove stick, handle together",
];

const lumpsOf = ({ model, stripEnd }: Performance): string[] =>
  [...Map.groupBy(model.parts, ({ index }) => at(stripEnd.lump, index)).values()]
    .map((list) => sorted(list.map(({ id }) => letters[id]!).join("")))
    .sort();

/** Sequences that the bench accepts to the end, as lists of the sub-assemblies after each act. */
function accepted(done: readonly string[] = [], states: readonly string[] = [["CSRH"].join()]): string[] {
  if (states[states.length - 1] === "C,H,R,S") return [states.join(" > ")];
  const found = new Set<string>();
  for (const act of acts) {
    const performance = performActs(unit, "product", [...done, act]);
    if (!isAccepted(performance)) continue;
    const after = lumpsOf(performance).join();
    // An act that parts nothing is none.
    if (after === states[states.length - 1]) continue;
    for (const one of accepted([...done, act], [...states, after])) found.add(one);
  }
  return [...found];
}

/** Sequences of the published graph, one sub-assembly parted in two at a time. */
function published(state: readonly string[] = ["CSRH"], states: readonly string[] = ["CSRH"]): string[] {
  if (state.every((lump) => lump.length === 1)) return [states.join(" > ")];
  return facts.hyperarcs.flatMap(([whole, [a, b]]) => {
    if (!state.includes(whole)) return [];
    const next = [...state.filter((lump) => lump !== whole), sorted(a), sorted(b)].sort();
    return published(next, [...states, next.join()]);
  });
}

test("the graph has the counts that were computed from it", () => {
  const { nodes, hyperarcs, sequences_one_step_at_a_time: sequences } = facts.computed_by_me;
  expect(facts.hyperarcs).toHaveLength(hyperarcs);
  expect(new Set(facts.hyperarcs.flatMap(([whole, [a, b]]) => [whole, a, b].map(sorted))).size).toBe(nodes);
  expect(published()).toHaveLength(sequences);
});

test("the bench accepts the ten published sequences and no other", () => {
  expect(accepted().sort()).toEqual([...new Set(published())].sort());
});

// Laws of strips drawn at random of machines with pieces, units inside, builds, matched parts, tags and marks: in every build the way back
// needs nothing that any line of it lacks, ends as it began or as the procedure says that it leaves it, and what is matched goes back to
// its own.

import { expect, test } from "vitest";
import { matchedSets } from "../../language/bench/matched.ts";
import { isLine } from "../../language/bench/refit/freedom.ts";
import type { Performance } from "../../language/bench/trace.ts";
import { at } from "../../language/bench/vector.ts";
import { check, dieOf, firstRefusedLine } from "../bench/refit/stage.ts";
import { walkedInBuilds } from "./walked-builds.ts";
import { asides, seen } from "./walked-seen.ts";

const drawn = Array.from({ length: 150 }, (_, i) => i + 1).flatMap((seed) => {
  const die = dieOf(seed * 104_729);
  die();
  const text = walkedInBuilds(die);
  return text === undefined ? [] : [{ text, performances: check(text).performances }];
});
const each = drawn.flatMap(({ text, performances }) =>
  performances.map((performance) => ({
    text: `${[...performance.model.chosen].join(" ")}\n${text}`,
    performance,
    told: performance.problems.filter(({ rule }) => !asides.has(rule)).map(({ rule }) => rule),
  })),
);

test("what is drawn speaks of all that the laws are about", () => {
  expect(drawn.length).toBeGreaterThan(140);
  for (const words of ["repeat for", "do q on", "matched with", "together", "tag ", "mark ", "if opt {", "leaves "])
    expect(drawn.filter(({ text }) => text.includes(words)).length, words).toBeGreaterThan(15);
});

test("what every build takes act by act goes back in every build, and no act is lost", () => {
  for (const { text, performance, told } of each) {
    expect(told, text).toEqual([]);
    expect(performance.order!.line.length, text).toBe(performance.order!.ops.length);
    expect(isLine(performance.order!, performance.order!.line), text).toBe(true);
  }
});

test("in any line of the order, to the start or to what is said to be left", () => {
  let left = 0;
  for (const { text, performance } of each) {
    const refused = firstRefusedLine(performance, 15);
    expect(refused && [text, refused.problem.reasons.map(({ words }) => words), refused.line]).toBeUndefined();
    const { leaves } = performance.procedure,
      start = seen(performance, performance.start),
      end = seen(performance, performance.end);
    if (leaves.length === 0) expect(end, text).toEqual(start);
    else {
      left++;
      expect(end, text).not.toEqual(start);
    }
  }
  expect(left).toBeGreaterThan(30);
});

test("what is matched is together again with its own", () => {
  const beside = ({ model }: Performance, state: Performance["end"], thing: number): number[] =>
    matchedSets(model)
      .get(thing)!
      .map(({ index }) => index)
      .filter((mate) => at(state.lump, mate) === at(state.lump, thing));
  let sets = 0;
  for (const { text, performance } of each) {
    if (performance.procedure.leaves.length > 0) continue;
    for (const thing of matchedSets(performance.model).keys()) {
      sets++;
      expect(beside(performance, performance.end, thing), text).toEqual(beside(performance, performance.start, thing));
    }
  }
  expect(sets).toBeGreaterThan(100);
});

// Laws of any strip that the bench takes act by act: what its way back needs, holds in every line of it, and it ends where it began.

import { expect, test } from "vitest";
import { isLine } from "../../language/bench/refit/freedom.ts";
import type { State } from "../../language/bench/state.ts";
import type { Performance } from "../../language/bench/trace.ts";
import { at } from "../../language/bench/vector.ts";
import { dieOf, firstRefusedLine, perform } from "../bench/refit/stage.ts";
import { walked } from "./walked.ts";
import { asides, seen } from "./walked-seen.ts";

const seeds = Array.from({ length: 250 }, (_, i) => i + 1);
const drawn = (back: number): { readonly text: string; readonly performance: Performance; readonly told: string[] }[] =>
  seeds.flatMap((seed) => {
    const die = dieOf(seed * 104_729);
    die();
    const text = walked(die, back);
    if (text === undefined) return [];
    const performance = perform(text),
      told = performance.problems.filter(({ rule }) => !asides.has(rule)).map(({ rule }) => rule);
    return [{ text, performance, told }];
  });
const apart = drawn(0),
  clean = apart.filter(({ told }) => told.length === 0);

test("what is only taken apart can nearly always be put together again, and is never told half", () => {
  expect(apart.length).toBeGreaterThan(200);
  for (const { performance, text } of apart) {
    expect(
      performance.problems.filter(({ phase, rule }) => phase === "strip" && !asides.has(rule)),
      text,
    ).toEqual([]);
    expect(performance.order!.line.length, "no act is lost").toBe(performance.order!.ops.length);
  }
  // The rest are what no order can mend: a filler that is covered where it is filled.
  expect(clean.length / apart.length).toBeGreaterThan(0.99);
});

test("the way back ends where the strip began, in the printed line and in any other", () => {
  for (const { performance, text } of clean) {
    expect(seen(performance, performance.end), text).toEqual(seen(performance, performance.start));
    expect(isLine(performance.order!, performance.order!.line), text).toBe(true);
    const refused = firstRefusedLine(performance, 25);
    expect(refused && [text, refused.problem.reasons.map(({ words }) => words), refused.line]).toBeUndefined();
  }
});

test("what a hazard is on is touched under all its precautions, in both halves", () => {
  const touching = new Set([
    "undo",
    "loosen",
    "back-out",
    "remove",
    "slide",
    "fit",
    "tighten",
    "finger-tighten",
    "back",
  ]);
  let touches = 0;
  for (const { performance, text } of clean) {
    const { model, strip, refit } = performance,
      stands = (s: State, things: readonly number[], lasting: boolean): void => {
        for (const hazard of model.hazards)
          if (hazard.on.some((thing) => things.includes(thing)))
            for (const { number, back } of hazard.precautions)
              if (!lasting || back !== "") {
                touches++;
                expect(at(s.standing, number), text).not.toBe(0);
              }
      };
    for (const { act, things, before } of strip) if (touching.has(act.verb)) stands(before, things, false);
    for (const { op, before } of refit) if (touching.has(op.verb)) stands(before, op.things, true);
  }
  expect(touches).toBeGreaterThan(50);
});

test("with some of it put together on the way, nothing is lost, and nothing breaks off", () => {
  for (const { performance, text } of drawn(0.25)) {
    expect(performance.order!.line.length, text).toBe(performance.order!.ops.length);
    expect(
      performance.problems.filter(({ phase, rule }) => phase === "strip" && !asides.has(rule)),
      text,
    ).toEqual([]);
  }
});

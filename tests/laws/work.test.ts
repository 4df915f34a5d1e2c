// How much the bench looks at: the work of a whole procedure, strip and refit, counted and not timed. On ordinary machines one act may
// cost no more than one look at each part.

import { expect, test } from "vitest";
import { machineOf } from "../../language/bench/machine.ts";
import { performProcedure } from "../../language/bench/perform-procedure.ts";
import type { Performance } from "../../language/bench/trace.ts";
import { buildModel } from "../../language/model/build-model.ts";
import { buildsOf } from "../../language/model/builds.ts";
import type { Model } from "../../language/model/model.ts";
import { loadProject } from "../../language/names/load.ts";
import { worldWith } from "../mutation/scenes.ts";

/** `under(i)`: what part i sits on, 0 is the base. Everything comes off, the last first. */
function machine(parts: number, under: (i: number) => number): Model {
  const all = Array.from({ length: parts }, (_, k) => k + 1);
  const text = [
    'unit made "Made-up machine" {',
    "  base p0",
    '  part p0 "Base"',
    ...all.map((i) => `  part p${i} "Part ${i}"`),
    ...all.map((i) => `  fastener f${i} screw "Screws ${i}" { count 4  joins p${i} to p${under(i)} }`),
    "}",
    'procedure apart "Apart" for made {',
    "  aim all apart",
    ...all.toReversed().map((i) => `  step {\n    undo f${i}\n    remove p${i}\n  }`),
    "}",
    "",
  ].join("\n");
  const project = loadProject(worldWith(new Map([["made.strip", text]])), ["made.strip"]);
  return buildModel(project, "made.strip", "made", buildsOf(project, "made.strip", "made")[0]!)!;
}

/** Performs it and counts every look at a part, a thing, or what is beside a part. */
function counted(model: Model): { readonly performance: Performance; readonly looks: number } {
  let looks = 0;
  const watch = <T extends object>(list: readonly T[]): readonly T[] =>
    new Proxy(list, {
      get(target, key, receiver) {
        if (typeof key === "string" && /^\d+$/.test(key)) looks++;
        return Reflect.get(target, key, receiver) as unknown;
      },
    });
  const watched = {
    ...model,
    parts: watch(model.parts),
    ties: watch(model.ties),
    things: watch(model.things),
  } as Model;
  const facts = machineOf(watched);
  Object.assign(facts, { edges: watch(facts.edges), tiesOf: watch(facts.tiesOf), hosts: watch(facts.hosts) });
  looks = 0;
  const performance = performProcedure(watched, "apart");
  return { performance, looks };
}

const shapes: readonly (readonly [string, (i: number) => number])[] = [
  ["every part on the base", () => 0],
  ["each part carries three", (i) => Math.floor((i - 1) / 3)],
  ["stacks of ten", (i) => (i % 10 === 1 ? 0 : i - 1)],
  ["two halves", (i) => (i < 3 ? 0 : i - 2 > 2 ? 1 + (i % 2) : 1)],
];

for (const [name, under] of shapes)
  test(`1,000 parts with 1,000 ties, ${name}: performed clean, with no more than linear work an act`, () => {
    const small = counted(machine(250, under)),
      large = counted(machine(1000, under));
    expect(large.performance.problems).toEqual([]);
    expect(large.performance.strip).toHaveLength(2000);
    expect(large.performance.refit).toHaveLength(2000);
    const perAct = ({ looks }: { looks: number }, parts: number): number => looks / (4 * parts);
    // One look at each part an act is what is granted; a quarter of it is needed, and it grows with the parts, not faster.
    expect(perAct(large, 1000)).toBeLessThan(1000);
    expect(perAct(large, 1000) / perAct(small, 250)).toBeLessThan(4.6);
  });

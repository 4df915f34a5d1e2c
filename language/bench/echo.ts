// What the way back finds amiss with a thing that was already found amiss on the way apart is an echo of that: one mistake, one
// finding. Hazards are never taken for echoes.

import type { ThingIndex } from "../model/model.ts";
import type { Bench } from "./bench.ts";
import { isTie, tieOf } from "./machine.ts";
import type { Problem } from "./trace.ts";

/** Those problems of a refit that are no echo of an earlier one. */
export function withoutEchoes(
  bench: Bench,
  refit: readonly Problem[],
  earlier: readonly Problem[],
): readonly Problem[] {
  if (earlier.length === 0 || refit.length === 0) return refit;
  const amiss = concerns(bench, earlier);
  return refit.filter(
    (problem) =>
      !problem.rule.startsWith("refit/") || ![...concerns(bench, [problem])].some((thing) => amiss.has(thing)),
  );
}

/**
 * The things of these problems, and of ties the parts that hang by them and the washers that go with them; the base is in all of them and
 * is none.
 */
function concerns(bench: Bench, problems: readonly Problem[]): Set<ThingIndex> {
  const things = new Set<ThingIndex>();
  for (const { about } of problems)
    for (const thing of about) {
      if (!bench.machine.isBase(thing)) things.add(thing);
      if (!isTie(bench.model, thing)) continue;
      const { lowers, washers } = tieOf(bench.model, thing);
      for (const part of [...lowers, ...washers.map((washer) => washer.part)]) things.add(part);
    }
  return things;
}

// What a step took off and no line of the way back brings is one mistake, in however many things it shows: parts that are missing, screws,
// fluids, and lines that cannot be done because those are not on. Decides only what belongs together, never whether something is wrong.

import type { ThingIndex } from "../model/model.ts";
import { isAssumed, type Bench } from "./bench.ts";
import { isTie } from "./machine.ts";
import { A_ON, ON_BASE } from "./state.ts";
import { lumpOf } from "./ties.ts";
import type { Problem, StepRun } from "./trace.ts";
import { at } from "./vector.ts";

const missing: ReadonlySet<string> = new Set(["refit/missing", "refit/fluid-short"]);

/** `bench`: at the end of the way back. The first thing that is missing stands for all of its step, with the others among the reasons. */
export function togetherLeftOut(bench: Bench, problems: readonly Problem[]): readonly Problem[] {
  const steps = problems.map((problem) => stepLeftOut(bench, problem)),
    leads = new Map<StepRun, number>();
  problems.forEach((problem, i) => {
    const step = steps[i],
      lead = step && leads.get(step);
    if (step && (lead === undefined || (missing.has(problem.rule) && !missing.has(problems[lead]!.rule))))
      leads.set(step, i);
  });
  return problems.flatMap((problem, i): Problem[] => {
    const step = steps[i];
    if (!step) return [problem];
    if (leads.get(step) !== i) return [];
    const others = problems.filter((_, k) => k !== i && steps[k] === step);
    if (others.length === 0) return [problem];
    const all = [problem, ...others];
    return [
      {
        ...problem,
        about: [...new Set(all.flatMap(({ about }) => about))],
        reasons: all.flatMap(({ reasons }) => reasons),
      },
    ];
  });
}

/** The step that took off what this problem misses; undefined where it misses nothing, or not that alone. */
function stepLeftOut(bench: Bench, { rule, phase, reasons }: Problem): StepRun | undefined {
  if (phase !== "refit") return undefined;
  const things = missing.has(rule)
    ? reasons.map(({ thing }) => thing!)
    : rule === "refit/impossible" && reasons.every((reason) => isNotOn(reason.words[0]))
      ? reasons.flatMap(({ by, thing, words }) => (words[0] === "not in" ? [thing!] : by))
      : [];
  if (!missing.has(rule) && !things.every((thing) => isLeftOut(bench, thing))) return undefined;
  const steps = new Set(things.map((thing) => stepOf(bench, thing)));
  return steps.size === 1 ? [...steps][0] : undefined;
}

const isNotOn = (how: string | undefined): boolean => how === "not on" || how === "open" || how === "not in";

/** Taken off or out, and at the end not back, or only taken to be back. */
function isLeftOut(bench: Bench, thing: ThingIndex): boolean {
  if (isAssumed(bench, thing, A_ON)) return true;
  return isTie(bench.model, thing) ? at(bench.state.out, thing) > 0 : lumpOf(bench.state, thing) !== ON_BASE;
}

/** Of the last event that took it off. */
const stepOf = (bench: Bench, thing: ThingIndex): StepRun | undefined =>
  bench.events.findLast((event) => event.things.includes(thing) || event.moved.includes(thing))?.around.step;

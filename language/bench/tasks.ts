// `task`: some of the steps of a procedure, done alone. Each is performed by itself; what the whole does not find is wrong with the
// task, and is said once, at its line.

import type { Procedure } from "../model/model.ts";
import { reasonOf, report, type Bench } from "./bench.ts";
import { performProcedure } from "./perform-procedure.ts";
import type { Problem } from "./trace.ts";

/** `found`: what performing the whole found. */
export function judgeTasks(bench: Bench, procedure: Procedure, found: readonly Problem[]): void {
  const known = new Set(found.map(keyOf));
  for (const task of procedure.tasks) {
    const first = performProcedure(bench.model, procedure.id, { task }).problems.find(
      (problem) => problem.phase !== "declared" && !known.has(keyOf(problem)),
    );
    if (!first) continue;
    report(bench, task.at, first.about, [
      reasonOf("sequence/task", { thing: first.about[0], words: [task.title], at: first.at }),
      ...first.reasons,
    ]);
  }
}

const keyOf = ({ rule, at, about }: Problem): string => `${rule} ${at.file} ${at.start} ${about.join(" ")}`;

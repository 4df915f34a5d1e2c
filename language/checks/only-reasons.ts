// A refused act is one problem with all its reasons: what is left of it when some of them are said elsewhere.

import type { Problem, Reason } from "../bench/trace.ts";

/** The problem with these of its reasons, under the code of the first; undefined where none is left. */
export function onlyReasons(problem: Problem, keeps: (reason: Reason) => boolean): Problem | undefined {
  const reasons = problem.reasons.filter(keeps),
    [first] = reasons;
  return reasons.length === problem.reasons.length ? problem : first && { ...problem, rule: first.rule, reasons };
}

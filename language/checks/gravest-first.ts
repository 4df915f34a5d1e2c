// A refused act is one finding with all its reasons. What can hurt someone leads it, so that no allow and no setting for a milder reason
// takes a missing precaution away with it.

import type { Problem, Reason } from "../bench/trace.ts";
import type { Model } from "../model/model.ts";
import { signalNames, signalRank } from "../tables/index.ts";

/** Hazards first, the gravest signal word before the others; the rest as the bench found it. */
export function gravestFirst(problem: Problem, model: Model): Problem {
  const { reasons } = problem;
  // A task that cannot be done alone is no act: it is led by what the task is.
  if (problem.act === undefined || reasons.length < 2 || !reasons.some(isHazard)) return problem;
  const sorted = [...reasons].sort((a, b) => rankOf(a, model) - rankOf(b, model)),
    { rule } = sorted[0]!;
  return {
    ...problem,
    rule: isHazard(reasons[0]!) && rule === reasons[0]!.rule ? problem.rule : rule,
    reasons: sorted,
  };
}

/** A touch without its precautions; other rules of the family speak of declarations and of acts that are no touch. */
const isHazard = ({ rule }: Reason): boolean => rule === "hazard/not-yet" || rule === "hazard/lapsed";

function rankOf(reason: Reason, model: Model): number {
  if (!isHazard(reason)) return signalNames.length + 1;
  const hazard = model.things[reason.by[0] ?? -1];
  return signalRank(hazard?.is === "hazard" ? hazard.signal : undefined);
}

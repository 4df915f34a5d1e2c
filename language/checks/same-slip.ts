// One slip of the pen that the bench meets twice: where it says it already, so that the second time is a reason of that finding.

import { declaredProblems } from "../bench/declared.ts";
import type { Performance, Problem, Reason } from "../bench/trace.ts";
import type { Span } from "../findings/finding.ts";

/** The place of the finding that says it; undefined where this one stands for itself. */
export const sameSlip = (problem: Problem, performance: Performance): Span | undefined =>
  orderDeclared(problem, performance) ?? unfinished(problem, performance) ?? restored(problem, performance);

/**
 * Precautions that are taken in another order than the hazard declares, and whose declared order is wrong itself: all of them are taken, and
 * that is where the order is wrong.
 */
function orderDeclared({ phase, rule, reasons }: Problem, { model, strip }: Performance): Span | undefined {
  const [{ words, thing }] = reasons as [Reason];
  if (phase !== "strip" || rule !== "hazard/order" || reasons.length > 1 || words[0] !== "before") return undefined;
  const isTaken = (kind: string): boolean =>
    strip.some(({ act, things }) => act.verb === kind && things.includes(thing!));
  return words.slice(1).every(isTaken)
    ? declaredProblems(model).find((one) => one.rule === rule && one.about[0] === thing)?.at
    : undefined;
}

/** An old ring that no line takes out, of a strip that does not come to its aim: it ends too early. */
function unfinished({ rule }: Problem, { problems }: Performance): Span | undefined {
  return rule === "removal/old-stays"
    ? problems.find((one) => one.rule === "removal/missing" || one.rule === "removal/never-undone")?.at
    : undefined;
}

/**
 * Power given back while guards are off, and the same work gone on with: one line that stands too early. Where the author allows that line,
 * what is touched after it stands for itself.
 */
function restored({ phase, reasons }: Problem, { problems }: Performance): Span | undefined {
  const hazard = reasons[0]!.by[0];
  if (!reasons.every(({ rule, by }) => rule === "hazard/lapsed" && by[0] === hazard)) return undefined;
  return problems.find(
    (one) => one.rule === "hazard/guard-off" && one.phase === phase && one.reasons[0]!.thing === hazard,
  )?.at;
}

// One slip of the pen that the bench itself meets twice. Each question gives the place where it is met the first time; undefined where this
// problem stands for itself.

import { declaredProblems } from "../bench/declared.ts";
import type { Problem, Reason } from "../bench/trace.ts";
import type { Span } from "../findings/finding.ts";
import type { Met } from "./check.ts";

/**
 * Precautions that are taken in another order than the hazard declares, and whose declared order is wrong itself: all of them are taken, and
 * that is where the order is wrong.
 */
export function orderDeclared(
  { phase, rule, reasons }: Problem,
  { performance: { model, strip } }: Met,
): Span | undefined {
  const [{ words, thing }] = reasons as [Reason];
  if (phase !== "strip" || rule !== "hazard/order" || reasons.length > 1 || words[0] !== "before") return undefined;
  const isTaken = (kind: string): boolean =>
    strip.some(({ act, things }) => act.verb === kind && things.includes(thing!));
  return words.slice(1).every(isTaken)
    ? declaredProblems(model).find((one) => one.rule === rule && one.about[0] === thing)?.at
    : undefined;
}

/** An old ring that no line takes out, of a strip that does not come to its aim: it ends too early. */
export function unfinished({ rule }: Problem, { performance: { problems } }: Met): Span | undefined {
  return rule === "removal/old-stays"
    ? problems.find((one) => one.rule === "removal/missing" || one.rule === "removal/never-undone")?.at
    : undefined;
}

/**
 * Power given back while guards are off, and the same work gone on with: one line that stands too early. Where the author allows that line,
 * what is touched after it stands for itself.
 */
export function restored({ phase, reasons }: Problem, { performance: { problems } }: Met): Span | undefined {
  const hazard = reasons[0]!.by[0];
  if (!reasons.every(({ rule, by }) => rule === "hazard/lapsed" && by[0] === hazard)) return undefined;
  return problems.find(
    (one) => one.rule === "hazard/guard-off" && one.phase === phase && one.reasons[0]!.thing === hazard,
  )?.at;
}

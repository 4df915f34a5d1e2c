// What the declarations alone show of the bench, before any procedure: hazards left open, contradicting orders. Problems only; the
// checks word them.

import type { Hazard, Model, Statement, ThingIndex } from "../model/model.ts";
import { hazardKinds, kindIn, precautions as kinds } from "../tables/index.ts";
import { reasonOf } from "./bench.ts";
import type { Problem, Reason } from "./trace.ts";

export function declaredProblems(model: Model): Problem[] {
  return [...model.hazards.flatMap((hazard) => hazardProblems(model, hazard)), ...contradictions(model)];
}

const problem = (reason: Reason, at: Problem["at"], about: readonly ThingIndex[]): Problem => ({
  rule: reason.rule,
  phase: "declared",
  act: undefined,
  around: undefined,
  at,
  about,
  reasons: [reason],
});

/** Electrical, pressure, spring and rotating hazards end in a proof; isolate before lock-out; the proof after all but earth, screen and barrier. */
function hazardProblems(model: Model, hazard: Hazard): Problem[] {
  const kind = kindIn(hazardKinds, hazard.kind),
    list = hazard.precautions,
    found: Problem[] = [];
  const say = (rule: string, words: readonly string[], at = hazard.at): void => {
    found.push(problem(reasonOf(rule, { thing: hazard.index, words, at: hazard.at }), at, [hazard.index]));
  };
  if (list.length === 0) {
    say("hazard/no-precaution", []);
    return found;
  }
  const isProof = (k: number): boolean =>
    kindIn(kinds, list[k]!.kind)?.isProof === true || list[k]!.limits !== undefined;
  const proof = list.findIndex((_, k) => isProof(k));
  if (
    kind?.needsProof &&
    proof < 0 &&
    !list.some((p) => (kind.standsWithoutProof as readonly string[]).includes(p.kind))
  ) {
    // A battery has no proof at its own terminals: isolated, it is a hint.
    const isolated = hazard.source === "battery" && list.some((p) => kindIn(kinds, p.kind)?.isolates === true);
    say("hazard/no-proof", isolated ? ["battery", ...kind.proofBy] : ["", ...kind.proofBy]);
  }
  let highest = 0,
    highestAt = -1;
  for (let k = 0; k < list.length; k++) {
    const rank = kindIn(kinds, list[k]!.kind)?.rank;
    if (rank === undefined) {
      // Whatever is no proof, no earthing and no `other` comes before the proof.
      if (proof >= 0 && k > proof && list[k]!.kind !== "other" && !isProof(k))
        say("hazard/order", ["declared", list[proof]!.kind, list[k]!.kind], list[k]!.at);
      continue;
    }
    if (rank < highest) say("hazard/order", ["declared", list[highestAt]!.kind, list[k]!.kind], list[k]!.at);
    else {
      highest = rank;
      highestAt = k;
    }
  }
  return found.slice(0, 1 + (found.length > 1 && found[0]!.rule !== found[1]!.rule ? 1 : 0));
}

/** Two `order` statements of a unit that turn each other round: said once, at the later one. */
function contradictions(model: Model): Problem[] {
  const found: Problem[] = [],
    texts = (names: Statement["names"]): string[] => names.map((n) => n.text);
  const pairs = model.orders.flatMap((order) => [
    ...texts(order.names).flatMap((a) => texts(order.after).map((b) => ({ first: b, then: a, order }))),
    ...texts(order.names).flatMap((a) => texts(order.before).map((b) => ({ first: a, then: b, order }))),
  ]);
  pairs.forEach((pair, i) => {
    const other = pairs.slice(0, i).find((p) => p.first === pair.then && p.then === pair.first);
    if (other && other.order !== pair.order)
      found.push(
        problem(
          reasonOf("refit/contradiction", { words: ["declared", pair.then, pair.first], at: other.order.at }),
          pair.order.at,
          [],
        ),
      );
  });
  return found;
}

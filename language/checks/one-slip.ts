// One slip of the pen shows the bench many things. What it met is held against all that is said already before it is worded: first what
// of it is left to say, then which finding says the rest, of which it becomes a reason. Each is a list of questions in their order; a new
// question is a function in the file of what it asks about, and a row here.

import type { Problem } from "../bench/trace.ts";
import type { Span } from "../findings/finding.ts";
import type { Met } from "./check.ts";
import { gravestFirst } from "./gravest-first.ts";
import { lostHeadAround } from "./lost-heads.ts";
import { looseParts, lostCarrier, lostHolder, lostPrecaution } from "./lost-lines.ts";
import { faultOf } from "./rests-on-fault.ts";
import { withoutDoubt } from "./rests-on-unknown.ts";
import { withoutRings } from "./rings.ts";
import { orderDeclared, restored, unfinished } from "./same-slip.ts";
import { isAnError } from "./severity.ts";
import { unreadDeclaration } from "./unread-declaration.ts";

/** The problem without the reasons that something else says, or in another order; undefined where no reason is left. */
type Narrowing = (problem: Problem, met: Met) => Problem | undefined;
/** The place of the finding that says the problem already. */
type Question = (problem: Problem, met: Met) => Span | undefined;

const narrowings: readonly Narrowing[] = [
  withoutDoubt,
  withoutRings,
  (problem, { performance: { model } }) => gravestFirst(problem, model),
];

/** Only a finding that is an error can carry what the bench met. */
const whileUnknownIsAnError =
  (question: Question): Question =>
  (problem, met) =>
    isAnError("names/unknown", met.settings) ? question(problem, met) : undefined;

const questions: readonly Question[] = [
  ...[looseParts, lostHolder, lostCarrier, lostPrecaution].map(whileUnknownIsAnError),
  orderDeclared,
  unfinished,
  restored,
  lostHeadAround,
  faultOf,
  (problem, { project, performance: { model } }) => unreadDeclaration(problem, model, project),
];

/** What of a problem nothing else says; undefined where that is nothing. */
export function leftToSay(problem: Problem, met: Met): Problem | undefined {
  let left: Problem | undefined = problem;
  for (const narrowed of narrowings) left &&= narrowed(left, met);
  return left;
}

/** Where what is left of it is said already; undefined where it stands for itself. */
export function saidAlready(problem: Problem, met: Met): Span | undefined {
  for (const question of questions) {
    const place = question(problem, met);
    if (place) return place;
  }
  return undefined;
}

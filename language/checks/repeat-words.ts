// How a step that cannot be done again from a reading is said, for the check of the family that its first reason is of.

import type { Problem, Reason } from "../bench/trace.ts";
import { capital } from "./bench-check.ts";
import type { BenchContext, Check } from "./check.ts";

export const repeatWords: Required<Pick<Check, "problem" | "reason">> = {
  problem(problem: Problem, context: BenchContext) {
    const [repeat, ...reasons] = problem.reasons,
      because = reasons.map((reason) => context.because(reason));
    return {
      at: problem.at,
      says: capital(because[0] ? `${saidOf(repeat!)}: ${because[0].says}` : saidOf(repeat!)),
      because: [...(repeat!.at ? [{ says: "this is what cannot be done then", at: repeat!.at }] : []), ...because],
    };
  },
  reason: (reason) => saidOf(reason),
};

const saidOf = ({ words }: Reason): string =>
  words[1] === "later"
    ? `${words[0]} comes later than this: there is nothing to repeat`
    : `${words[0]} cannot be done again from here`;

// Rules that can be broken in several ways: which of them a reason speaks of stands in the first of its words. The bench can give no other,
// and the check of the rule has a sentence for each: a way that either of them lacks does not compile.

import type { Reason } from "./trace.ts";

export interface HowOf {
  "refit/impossible":
    | "already in"
    | "already on"
    | "aside"
    | "behind"
    | "closed"
    | "comes along"
    | "covered"
    | "evacuate"
    | "filler off"
    | "no such stage"
    | "not in"
    | "not on"
    | "open"
    | "stage"
    | "starts on bench";
  "sequence/blocked":
    "behind" | "between" | "comes along" | "covered" | "filler off" | "not together" | "starts on bench";
  "sequence/already-undone":
    | "apart"
    | "backed out"
    | "capped"
    | "drained"
    | "loosened"
    | "mark"
    | "mark aside"
    | "not capped"
    | "not held"
    | "not put"
    | "off"
    | "tag"
    | "undone";
  "hazard/order": "before" | "declared" | "undeclared";
}

/** What a reason is made of; of a rule in `HowOf` its words begin with the way in which it was broken. */
export type ReasonFacts<Rule extends string> = Partial<Omit<Reason, "rule">> &
  (Rule extends keyof HowOf ? { readonly words: readonly [HowOf[Rule], ...string[]] } : unknown);

/** The way in which this rule was broken. Only for a reason of the rule. */
export const howOf = <Rule extends keyof HowOf>(_: Rule, { words }: Reason): HowOf[Rule] => words[0] as HowOf[Rule];

// The conditions that a line stands under, in words.

import type { Given } from "../../bench/trace.ts";
import { capital } from "../wording/phrases.ts";
import type { Wording } from "../wording/wording.ts";

/** One text for each condition, outermost first, as the beginning of a line: "If cabinet heater", "unless bush removed". */
export const givenTexts = (given: readonly Given[], { acts }: Wording): readonly string[] =>
  given.map((one, i) => {
    const says = textOf(one, acts);
    return i === 0 ? capital(says) : says;
  });

function textOf(one: Given, acts: Wording["acts"]): string {
  switch (one.is) {
    case "optional":
      return one.title;
    case "otherwise":
      return acts.givenOtherwise;
    case "pieces":
      return acts.givenPieces(one.unless, one.any, one.pieces);
    case "condition":
      return acts.givenCondition(
        one.unless,
        one.any,
        one.states.map(({ title, state }) => acts.givenState(title, state)),
      );
  }
}

// The conditions that a line stands under, in words.

import type { Given } from "../../bench/trace.ts";
import { inside } from "../wording/en-gb/phrases.ts";

/** One text for each condition, outermost first: "if cabinet heater", "unless bush removed". */
export const givenTexts = (given: readonly Given[]): readonly string[] => given.map(textOf);

function textOf(given: Given): string {
  switch (given.is) {
    case "optional":
      return given.title;
    case "otherwise":
      return "if the reading before fails";
    case "condition": {
      const states = given.states.map(({ title, state }) =>
        state === "" ? inside(title) : `${inside(title)} ${state}`,
      );
      return `${given.unless ? "unless" : "if"} ${states.join(given.any ? " or " : " and ")}`;
    }
  }
}

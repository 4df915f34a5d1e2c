// Conditions of declarations, decided for one build.

import type { Condition } from "./model.ts";
import { linesIn, wordOf, type Line } from "./cursor.ts";
import { readCondition } from "./read-entries.ts";

/** What decides the conditions of declarations: the variants and options of the build, and the variant that a unit inside a part has. */
export interface Choice {
  readonly chosen: ReadonlySet<string>;
  readonly variant: string;
}

export function holdsIn(condition: Condition, choice: Choice): boolean {
  const one = ({ name, state }: Condition["states"][number]): boolean =>
    state === ""
      ? name.text === choice.variant || choice.chosen.has(name.text)
      : choice.chosen.has(`${name.text} ${state}`);
  const is = condition.any ? condition.states.some(one) : condition.states.every(one);
  return is !== condition.unless;
}

/** The lines of a block that hold, those inside conditions that hold among them. */
export function holdingLines(lines: readonly Line[], choice: Choice): Line[] {
  let conditional = false;
  for (const line of lines) {
    const word = wordOf(line);
    if (word === "if" || word === "unless") {
      conditional = true;
      break;
    }
  }
  if (!conditional) return lines as Line[];
  return lines.flatMap((line) => {
    const word = wordOf(line);
    if (word !== "if" && word !== "unless") return [line];
    return holdsIn(readCondition(line), choice) ? holdingLines(linesIn(line), choice) : [];
  });
}

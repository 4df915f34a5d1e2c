// Conditions of declarations, decided for one build.

import type { Absence, Condition } from "./model.ts";
import { headSpan, linesIn, wordOf, type Line } from "./cursor.ts";
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

/** What a unit declares, by name, under conditions that do not hold in this build. `idOf` of a line that declares nothing is undefined. */
export function absentIn(
  lines: readonly Line[],
  choice: Choice,
  idOf: (line: Line) => { readonly id: string; readonly name: string } | undefined,
): ReadonlyMap<string, Absence> {
  const absent = new Map<string, Absence>();
  const visit = (inner: readonly Line[], under: Pick<Absence, "condition" | "at"> | undefined): void => {
    for (const line of inner) {
      const word = wordOf(line);
      if (word === "if" || word === "unless") {
        const condition = readCondition(line);
        visit(linesIn(line), under ?? (holdsIn(condition, choice) ? undefined : { condition, at: headSpan(line) }));
        continue;
      }
      const declared = under && idOf(line);
      if (under && declared && !absent.has(declared.id)) absent.set(declared.id, { name: declared.name, ...under });
    }
  };
  visit(lines, undefined);
  return absent;
}

/** As it was written: `if heater and bore fails`. */
export function writtenCondition({ unless, any, states }: Condition): string {
  const words = states.map(({ name, state }) => (state === "" ? name.text : `${name.text} ${state}`));
  return `${unless ? "unless" : "if"} ${words.join(any ? " or " : " and ")}`;
}

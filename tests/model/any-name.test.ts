// A thing may be called by any word that is not reserved: an act names it all the same, wherever the word could also mean something.

import { expect, test } from "vitest";
import { actFrom } from "../../language/assist/trial.ts";
import { macros, reservedNames, vocabulary } from "../../language/vocabulary/index.ts";

/** Every word that a shape holds beside names and figures: `as`, `finger-tight`, `people`. */
const words = new Set(
  [...Object.values(macros), ...vocabulary.map(({ shape }) => shape)]
    .flatMap((shape) => shape.replace(/<[^>]*>|'[^']*'/g, " ").match(/[a-z][a-z-]*/g) ?? [])
    .filter((word) => !reservedNames.has(word) && !(word in macros)),
);

const lines = (name: string): readonly string[] => [
  `undo ${name}`,
  `undo 2 of ${name} into tray A`,
  `undo rest of ${name} with ${name}`,
  `remove ${name} together after x`,
  `remove x before ${name} first`,
  `slide ${name} "Aside."`,
  `slide ${name} back "And back."`,
  `swing ${name}, x last`,
  `turn to ${name}`,
  `turn ${name} "By crane."`,
  `mark ${name}, x as ${name} "One."`,
  `tag ${name} as ${name}, L2`,
  `fit x to ${name}`,
  `fit ${name} finger-tight to x first`,
  `fit ${name} facing ${name}`,
  `tighten ${name} to 20 N·m`,
  `tighten ${name} to stage 2`,
  `press ${name} onto ${name} with ${name}`,
  `apply ${name} to ${name}`,
  `heat ${name} to 80 °C`,
  `drain ${name} into ${name}`,
  `set ${name} "Gap" 0.20 mm as found`,
  `measure ${name} on ${name} "Play" at most 0.2 mm else renew ${name}`,
  `measure x "Shims" else choose ${name} from ${name}, x`,
  `inspect ${name} on ${name} "No scores" else repeat from ${name}`,
  `do ${name} on ${name} after ${name}`,
  `reuse ${name} "It is like new."`,
];

/** All that an act says, with the word in its place by another. */
const read = (line: string, name: string): unknown =>
  JSON.parse(
    JSON.stringify(actFrom(line), (key, value: unknown) =>
      ["start", "end", "at"].includes(key)
        ? undefined
        : value === name && !["is", "verb", "kind"].includes(key)
          ? "neutral"
          : value,
    ) ?? "null",
  );

test("there are such words", () => {
  for (const word of ["as", "finger-tight", "found", "stage", "back", "with", "from", "after"])
    expect(words).toContain(word);
});

test("every line that can be written with a name can be with such a word, and says the same", () => {
  for (const word of words)
    for (const [i, line] of lines(word).entries())
      expect(read(line, word), line).toEqual(read(lines("neutral")[i]!, "neutral"));
});

test("what the lines say is read", () => {
  for (const line of lines("neutral")) expect(actFrom(line), line).toBeDefined();
});

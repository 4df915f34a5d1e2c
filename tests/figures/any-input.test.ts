// Every figure as a question, several of its arguments at once by what nobody means: none makes it throw or answer with a number that is
// not one. One argument at a time, and what cannot be read at all: tests/calc/adversarial.test.ts.

import fc from "fast-check";
import { expect, test } from "vitest";
import { answerWords, isAnswer } from "../../language/calc/answer.ts";
import { defaultAssumptions } from "../../language/figures/assumptions.ts";
import { isFigureError, readArgument, type ArgumentValue, type Figure } from "../../language/figures/figure.ts";
import { figures } from "../../language/figures/registry.ts";

const texts = [
  "M8",
  "M8x1",
  "M33",
  "M13",
  "3/8-16 UNC",
  "#10-32 UNF",
  "1-1/4-7 UNC",
  "G1/4",
  "8.8",
  "A2-70",
  "5",
  "A307",
  "B7",
  "24 N·m",
  "-5 N·m",
  "0 N·m",
  "10 mm",
  "0 mm",
  "-3 mm",
  "1e3",
  "0",
  "-1",
  "12",
  "2.5",
  "0.12",
  "99",
  "hex",
  "round",
  "rows",
  "1 kN",
  "0 N",
  "50 ml",
  "0 ml",
  "180 deg",
  "20 %",
  "20..30 mm",
  "°F",
  "400 V",
  "0 V dc",
  "690 V ac",
  "470 µF",
  "0 µF",
  "10 kΩ",
  "0 Ω",
  "25 kg",
  "0 kg",
  "30 s",
  "0 s",
  "2 h",
  "-40 °C",
  "95 °C",
  "6 bar",
  "0 bar",
  "5 L",
  "90 dB",
  "1 T",
  "45 deg",
  "0 deg",
  "4 cm2",
];

interface Question {
  readonly figure: Figure;
  /** By argument, what it may be given: as in the example, not at all where it may be left out, and each text that reads for it. */
  readonly choices: readonly (readonly (ArgumentValue | readonly ArgumentValue[] | undefined)[])[];
}

function questionOf(figure: Figure): Question {
  const example = answerWords(figure.name, [figure.examples[0]!]);
  if (!isAnswer(example)) throw new Error(`${figure.name} ${figure.examples[0]} has no answer: ${example.error.says}`);
  const given = example.inputs as Readonly<Record<string, string | readonly string[] | undefined>>;
  return {
    figure,
    choices: figure.arguments.map((wanted) => {
      const readable = (text: string): ArgumentValue[] => {
        const read = readArgument(wanted, text);
        return typeof read === "object" && isFigureError(read) ? [] : [read];
      };
      const said = given[wanted.name],
        own = said === undefined ? undefined : typeof said === "string" ? readable(said)[0] : said.flatMap(readable);
      return [
        own,
        own,
        ...(wanted.optional ? [undefined] : []),
        ...[...texts, ...(wanted.words ?? [])].flatMap(readable),
      ];
    }),
  };
}

const questions = new Map(figures.map((figure) => [figure.name, questionOf(figure)]));

test("whatever is asked, the answer is a result with true numbers or an error with words", () => {
  let answered = 0;
  const runs = 8000;
  fc.assert(
    fc.property(
      fc.constantFrom(...questions.keys()),
      fc.array(fc.nat(), { minLength: 12, maxLength: 12 }),
      (name, picks) => {
        const { figure, choices } = questions.get(name)!;
        const inputs = Object.fromEntries(
          figure.arguments.flatMap(({ name }, i) => {
            const value = choices[i]![picks[i]! % choices[i]!.length];
            return value === undefined ? [] : [[name, value]];
          }),
        );
        const answer = figure.run(inputs, defaultAssumptions);
        if (isFigureError(answer)) {
          expect(answer.says).not.toMatch(/\.$|undefined|NaN/);
          return;
        }
        answered++;
        expect(answer.values.length).toBeGreaterThan(0);
        for (const { name, value } of [
          ...answer.values,
          ...answer.steps.map((step) => ({ name: step.text, value: step.value })),
        ]) {
          for (const each of Array.isArray(value) ? value : [value]) {
            if (typeof each === "number")
              expect(Number.isFinite(each), `${figure.name} ${JSON.stringify(inputs)}: ${name}`).toBe(true);
            else expect(String(each)).not.toMatch(/NaN|Infinity/);
          }
        }
      },
    ),
    { seed: 20, numRuns: runs },
  );
  // A law that hardly anything reaches holds nothing.
  expect(answered).toBeGreaterThan(runs / 3);
});

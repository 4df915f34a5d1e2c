// Figures asked with what nobody means: nothing, below nothing, no numbers, endless ones, other units, threads that are none. Every figure, every
// argument: an error that says something, or an answer without a figure that is no number or below 0; never an exception.

import { describe, expect, test } from "vitest";
import { answerAsked, answerWords, isAnswer } from "../../language/calc/answer.ts";
import { isDimension, type Figure, type FigureArgument } from "../../language/figures/figure.ts";
import { figures } from "../../language/figures/registry.ts";
import { clearing } from "../figures/clearing-words.ts";

/** `U` stands for the usual unit of the argument. */
const wrong = [
  ...[
    "",
    " ",
    "NaN U",
    "NaN",
    "Infinity U",
    "-Infinity U",
    "1e999 U",
    "1,5 U",
    "1.5.2 U",
    "0x10 U",
    "١٢ U",
    "1/0 U",
    "U",
    "5 banana",
    "5 U U",
  ],
  ...["-1 U", "-0.0001 U", "5..3 U", "3 ± 10 U", "-5..5 U", "--5 U", "5 -U"],
];
const odd = ["0 U", "0", "1e308 U", "1e-300 U", "999999999 U", "0.000001 U", "1e308", "2.5", "-1", "1e9"];
const threads = [
  "M0",
  "M-8",
  "M8x0",
  "M8x-1",
  "M8x1e9",
  "M99999",
  "M9",
  "M8x1.3",
  "0-20",
  "1/4-0",
  "1/0-20",
  "#99-32",
  "1/4-21",
  "G1/4",
  "8",
  "M",
  "x",
];

/** Inputs of an example that answers, by name. */
function sensible(figure: Figure): Readonly<Record<string, string | string[]>> {
  const answer = answerWords(figure.name, [figure.examples[0]!]);
  if (!isAnswer(answer)) throw new Error(`${figure.name} ${figure.examples[0]} has no answer: ${answer.error.says}`);
  return answer.inputs as Record<string, string | string[]>;
}

function ask(figure: Figure, argument: FigureArgument, text: string): ReturnType<typeof answerAsked> {
  return answerAsked({ name: figure.name, inputs: { ...sensible(figure), [argument.name]: text } });
}

const canBeBelow = new Set(["convert"]);

describe.each(figures.map((figure) => [figure.name, figure] as const))("%s", (_, figure) => {
  for (const argument of figure.arguments) {
    const texts = argument.takes === "size" ? [...threads, ...wrong] : [...wrong, ...odd];
    test(argument.name, () => {
      for (const pattern of texts) {
        const text = pattern.replaceAll("U", argument.units[0] ?? "").trim(),
          answer = ask(figure, argument, text);
        if (!isAnswer(answer)) {
          expect(answer.error.says.length, text).toBeGreaterThan(5);
          expect(answer.error.says.replaceAll(text || "\0", ""), text).not.toMatch(
            /undefined|NaN|\[object|Error:|at .*\.ts/,
          );
          continue;
        }
        const words = [
          ...answer.values.map((one) => `${one.name}: ${one.value}`),
          ...answer.steps.map((one) => one.text),
        ];
        for (const line of [...words, ...answer.assumptions]) expect(clearing.exec(line)?.[0], line).toBeUndefined();
        for (const { name, value } of answer.values)
          for (const one of [value].flat())
            if (typeof one === "number") {
              expect(Number.isFinite(one), `${text}: ${name} ${one}`).toBe(true);
              if (!canBeBelow.has(figure.name)) expect(one, `${text}: ${name}`).toBeGreaterThanOrEqual(0);
            }
      }
    });
  }
});

test("what is no figure with a unit of the argument is an error for every argument that takes one", () => {
  for (const figure of figures)
    for (const argument of figure.arguments) {
      if (!isDimension(argument.takes)) continue;
      for (const pattern of wrong) {
        // A temperature may go below 0.
        if (argument.takes === "temperature" && /^-\d|±|-5\.\./.test(pattern)) continue;
        const text = pattern.replaceAll("U", argument.units[0]!).trim();
        expect(isAnswer(ask(figure, argument, text)), `${figure.name} ${argument.name} "${text}"`).toBe(false);
      }
    }
});

test("a unit of another kind is an error that names the argument", () => {
  for (const figure of figures)
    for (const argument of figure.arguments) {
      if (!isDimension(argument.takes)) continue;
      const other = argument.takes === "mass" ? "5 V" : "5 kg",
        answer = ask(figure, argument, other);
      expect(isAnswer(answer), `${figure.name} ${argument.name}`).toBe(false);
      if (!isAnswer(answer)) expect(answer.error.says).toContain(argument.name);
    }
});

test.each([
  ["torque", "M8 5"],
  ["torque", "1/4-20 8.8"],
  ["torque", "G1/4 8.8"],
  ["torque", "M9 8.8"],
  ["torque", "M8 8.9"],
  ["torque", "M8 8.8 friction-thread 0.9"],
  ["preload", "M8 8.8 24 lb"],
  ["torque", "3/8 5"],
  ["tightening", "12 pattern circle rows 3"],
  ["tightening", "12 pattern rows width 40 cm"],
  ["sling", "100 kg 2 0 deg from horizontal"],
  ["sling", "100 kg 2 95 deg from vertical"],
  ["wait", "0 V 100 uF 1 kohm"],
  ["wait", "560 V 0 uF 1 kohm"],
  ["wait", "560 V 100 uF 0 ohm"],
  ["cooling", "20 °C 70 °C 10 min 48 °C 20 °C"],
  ["convert", "-300 °C to °F"],
  ["convert", "24 N·m to kg"],
  ["o-ring", "1000 mm 99 mm"],
  ["o-ring-squeeze", "3.53 mm 4 mm"],
  ["magnet-pull", "100 T 1 cm"],
  ["thread-locker", "M8 count 2.5"],
  ["adapter", "80 N·m 40 cm 5 cm 200 deg"],
])("%s %s has no answer, and says why", (name, words) => {
  const answer = answerWords(name, [words]);
  expect(isAnswer(answer)).toBe(false);
});

test("a size with one figure behind its x says how it was read", () => {
  const answer = answerWords("torque", ["M8x3 8.8"]);
  expect(isAnswer(answer) && answer.assumptions).toContain("M8x3 is read as M8 (coarse), 3 mm long");
});

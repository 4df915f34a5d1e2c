// The fastener figures as questions: no input makes one throw or answer with a number that is not one.

import fc from "fast-check";
import { expect, test } from "vitest";
import { defaultAssumptions } from "../../language/figures/assumptions.ts";
import { isFigureError, readArgument, type FigureInputs } from "../../language/figures/figure.ts";
import { figures } from "../../language/figures/registry.ts";

const names = [
  "adapter",
  "bead",
  "bearing",
  "bolt-load",
  "class",
  "convert",
  "engagement",
  "locking-drag",
  "locking-nut",
  "o-ring",
  "o-ring-squeeze",
  "preload",
  "small-hardware",
  "spanner",
  "thread",
  "thread-from-spanner",
  "thread-locker",
  "tightening",
  "torque",
  "torque-angle",
  "torque-by-nut-factor",
  "torque-wrench",
];
const own = figures.filter((figure) => names.includes(figure.name));
const texts = fc.constantFrom(
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
);

test("all fastener figures are registered", () =>
  expect(own.map((figure) => figure.name).sort()).toEqual([...names].sort()));

test("whatever is asked, the answer is a result with true numbers or an error with words", () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...own),
      fc.array(fc.option(texts, { nil: undefined }), { minLength: 9, maxLength: 9 }),
      (figure, given) => {
        const inputs: Record<string, FigureInputs[string]> = {};
        figure.arguments.forEach((wanted, i) => {
          const choices = wanted.words,
            text = given[i] ?? (wanted.optional ? undefined : choices?.[0]);
          const read = text === undefined ? undefined : readArgument(wanted, text);
          if (read !== undefined && !(typeof read === "object" && isFigureError(read))) inputs[wanted.name] = read;
        });
        const answer = figure.run(inputs, defaultAssumptions);
        if (isFigureError(answer)) {
          expect(answer.says).not.toMatch(/\.$|undefined|NaN/);
          return;
        }
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
    { seed: 20, numRuns: 4000 },
  );
});

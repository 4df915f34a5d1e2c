// Limits ask, they never clear: no word of a figure, its results, steps or cautions says that something is safe, within, passed or dead; every result
// has its source and its caution. It holds for every figure of the registry.

import { expect, test } from "vitest";
import { answerWords } from "../../language/calc/answer.ts";
import { cautions } from "../../language/figures/cautions.ts";
import { aidCaution } from "../../language/figures/figure.ts";
import { figures, figureTopics } from "../../language/figures/registry.ts";
import { clearing } from "./clearing-words.ts";

/** Every text in a value, however deep. */
function texts(value: unknown): readonly string[] {
  if (typeof value === "string") return [value];
  return typeof value === "object" && value !== null ? Object.values(value).flatMap(texts) : [];
}

/** Questions below and above the limits, beside the examples: the words must be the same kind. */
const questions = [
  ...figures.flatMap((figure) => figure.examples.map((example) => [figure.name, example] as const)),
  ["lift", "5 kg"],
  ["lift", "500 kg 4"],
  ["lift", "5 kg reach 70 cm"],
  ["wait", "24 V dc 1 uF 1 kohm"],
  ["voltage-class", "12 V dc"],
  ["voltage-class", "3000 V dc"],
  ["touch", "5 s bare metal 30 °C"],
  ["eyebolt", "M12 100 kg"],
  ["sling", "10 kg 2 20 deg from horizontal"],
  ["sling-limit", "chain 8 mm 2 30 deg from vertical 1 t"],
  ["noise", "70"],
  ["polarisation-index", "210 Mohm 230 Mohm F"],
  ["lift-filter", "knuckle to elbow close mass 2 kg"],
  ["gas", "0.1 bar 1 L"],
  ["lift", "no"],
] as const;

test("the words that clear are found, and only they", () => {
  for (const text of ["It is safe", "OK", "within the limit", "passed", "the circuit is dead", "Complies with"])
    expect(clearing.test(text), text).toBe(true);
  for (const text of ["over the guideline", "4 passes", "deadweight", "within 5 s"])
    expect(clearing.test(text), text).toBe(false);
});

test("no figure clears anything", () => {
  for (const figure of figures)
    for (const text of texts(figure)) expect(clearing.exec(text)?.[0], `${figure.name}: ${text}`).toBeUndefined();
  for (const [name, words] of questions)
    for (const text of texts(answerWords(name, [words])))
      expect(clearing.exec(text)?.[0], `${name} ${words}: ${text}`).toBeUndefined();
});

test("every answer has formula, steps, source and the caution that makers, codes and qualified people come first", () => {
  for (const [name, words] of questions) {
    const answer = answerWords(name, [words]);
    expect(answer.caution, name).toContain(aidCaution);
    if ("values" in answer) {
      expect(answer.formula, name).not.toBe("");
      expect(answer.steps.length, name).toBeGreaterThan(0);
      expect(answer.source, name).not.toBe("");
    }
  }
  for (const text of Object.values(cautions)) expect(text.startsWith(aidCaution)).toBe(true);
  expect(cautions.electrical).toContain("qualified people");
});

test("a load over the guideline says so, one below it says nothing of it", () => {
  const finding = (words: string): unknown => {
    const answer = answerWords("lift", [words]);
    return "values" in answer ? answer.values.find((one) => one.name === "finding")?.value : answer;
  };
  expect(finding("26 kg")).toBe("over the guideline");
  expect(finding("5 kg")).toBeUndefined();
});

test("figures have unique names in the order of the registry's promise, and arguments of their own names", () => {
  const names = figures.map((figure) => figure.name);
  expect(figureTopics.flatMap((topic) => topic.figures.map((figure) => figure.name)).sort()).toEqual([...names].sort());
  expect(new Set(names).size).toBe(names.length);
  for (const figure of figures) {
    expect(figure.name).toMatch(/^[a-z0-9]+(-[a-z0-9]+)*$/);
    expect(new Set(figure.arguments.map((one) => one.name)).size).toBe(figure.arguments.length);
  }
});

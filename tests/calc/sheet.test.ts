// Sheets of questions: order, errors in their place, the published schema and its drift.

import { readFileSync } from "node:fs";
import { Ajv2020 } from "ajv/dist/2020.js";
import { expect, test } from "vitest";
import { answerSheet, isAnswer } from "../../language/calc/answer.ts";
import type { Answer, Unanswered } from "../../language/calc/sheet.ts";
import { generate } from "../../language/generate/calc-schema.ts";
import { figures } from "../../language/figures/registry.ts";
import { readQuestion } from "../../language/calc/read-question.ts";

const schema = JSON.parse(generate().text) as { $defs: { questions: object; answers: object; answer: object } };
const ajv = new Ajv2020({ strict: false });
const isQuestions = ajv.compile(schema.$defs.questions);
const isAnswers = ajv.compile(schema.$defs.answers);
const isSingle = ajv.compile(schema.$defs.answer);
const answers = (text: string): readonly (Answer | Unanswered)[] => {
  const found = answerSheet(text);
  if ("problem" in found) throw new Error(found.problem);
  return found;
};

const sheet = [
  { id: "a", name: "wait", inputs: { voltage: "560 V", capacitance: "1200 uF", bleeder: "22 kohm" } },
  { id: "b", name: "wait", inputs: { voltage: "560 V", capacitance: "1200 kg" } },
  { name: "lift", inputs: { mass: "18 kg", people: 2, reach: "63 cm" } },
  { id: "d", name: "no-such-figure" },
  { name: "team", inputs: { people: 2, each: ["20 kg", "20 kg"] } },
];

test("the schema file is what the shapes give; write it again with npm run generate", () => {
  const { path, text } = generate();
  expect(readFileSync(new URL(`../../${path}`, import.meta.url), "utf8")).toBe(text);
});

test("answers stand in the order of the questions, with their marks", () => {
  const found = answers(JSON.stringify(sheet));
  expect(found.map((one) => [one.id, one.name, isAnswer(one)])).toEqual([
    ["a", "wait", true],
    ["b", "wait", false],
    [undefined, "lift", true],
    ["d", "no-such-figure", false],
    [undefined, "team", true],
  ]);
  expect(found[0]).toMatchObject({
    values: [
      { name: "wait", value: 117, unit: "s" },
      { name: "to 60 V dc" },
      { name: "to 60 V dc at nominal values" },
      { name: "to 0.2 J" },
      {},
      {},
    ],
  });
});

test("questions and answers hold to the published schema, also through every example of every figure", () => {
  const all = [
    ...sheet,
    ...figures.flatMap((figure) =>
      figure.examples.map((example) => {
        const read = readQuestion(figure, [example]);
        if ("says" in read) throw new Error(read.says);
        return { name: figure.name, inputs: read.written };
      }),
    ),
  ];
  expect(isQuestions(all), JSON.stringify(isQuestions.errors)).toBe(true);
  expect(isQuestions({ questions: all })).toBe(true);
  expect(isAnswers({ answers: answers(JSON.stringify({ questions: all })) }), JSON.stringify(isAnswers.errors)).toBe(
    true,
  );
  for (const one of answers(JSON.stringify(all))) expect(isSingle(one), one.name).toBe(true);
});

test("the schema refuses what is not in it", () => {
  expect(isQuestions([{ name: "wait", input: {} }])).toBe(false);
  expect(isQuestions([{ inputs: {} }])).toBe(false);
  expect(isAnswers({ answers: [{ name: "wait" }] })).toBe(false);
});

test("a text that is no sheet is a problem, said in words", () => {
  expect(answerSheet("{")).toMatchObject({ problem: expect.stringContaining("no JSON") });
  expect(answerSheet('[{"nam": "wait"}]')).toMatchObject({
    problem: "the questions do not have the published shape: 0.name: a text in quotes is due, and nothing stands there",
  });
  expect(answerSheet("\uFEFF[]")).toEqual([]);
});

test("assumptions may be set for a question, and a wrong one is an answer with the reason", () => {
  const [answer] = answers(
    '[{"name": "fall", "inputs": {"mass": "1 kg", "height": "1 m"}, "assumptions": {"friction": 0.1}}]',
  );
  expect(answer).toMatchObject({ error: { says: expect.stringContaining("friction is no assumption") } });
});

test("the same sheet gives the same bytes", () => {
  expect(JSON.stringify(answers(JSON.stringify(sheet)))).toBe(JSON.stringify(answers(JSON.stringify(sheet))));
});

// The published shape of a sheet of questions and of its answers. It is the source of the JSON Schema; what it does not describe is not read.

import * as z from "zod";

const given = z.union([z.string(), z.number()]);

/** One question: the name of a figure and its inputs with their units. */
const askedQuestion = z.strictObject({
  id: z.string().optional().describe("A mark of the asker's own; it stands in the answer again"),
  name: z.string().describe("Name of the figure, as listed by calc --list"),
  inputs: z
    .record(z.string(), z.union([given, z.array(given)]))
    .optional()
    .describe(
      "Inputs by the names of the arguments, each a text with its unit (560 V); a list where one may stand several times; a number where it takes one",
    ),
  assumptions: z.record(z.string(), given).optional().describe("Settings over the default assumptions, by name"),
  system: z
    .enum(["metric", "us"])
    .optional()
    .describe("System of units for the results; as the figure has them if left out"),
});

/** A sheet of questions: a list, or an object that holds one. */
export const questionSheet = z.union([z.array(askedQuestion), z.strictObject({ questions: z.array(askedQuestion) })]);

const value = z.union([z.number(), z.string(), z.array(z.union([z.number(), z.string()]))]);
const echoed = z.record(z.string(), z.union([z.string(), z.array(z.string())])).describe("Inputs as they were written");

/** The answer to one question. */
export const answer = z.strictObject({
  id: z.string().optional(),
  name: z.string(),
  title: z.string(),
  inputs: echoed,
  values: z
    .array(z.strictObject({ name: z.string(), value, unit: z.string().optional() }))
    .describe("Results, the main one first"),
  formula: z.string(),
  steps: z.array(
    z.strictObject({
      text: z.string(),
      value: z.union([z.number(), z.string()]).optional(),
      unit: z.string().optional(),
    }),
  ),
  assumptions: z.array(z.string()).describe("What was taken for granted because nobody said it"),
  validity: z.string().describe("Where the formula holds"),
  source: z.string(),
  caution: z.string().describe("To be shown wherever the figure is shown to a person"),
});

/** A question that has no answer, with the reason. */
const unansweredQuestion = z.strictObject({
  id: z.string().optional(),
  name: z.string(),
  inputs: echoed.optional(),
  error: z.strictObject({
    says: z.string(),
    nearest: z.array(z.string()).describe("The nearest valid spellings, units or sizes"),
  }),
  caution: z.string(),
});

/** What one question gets. */
export const singleAnswer = z.union([answer, unansweredQuestion]);

/** Answers in the order of the questions. */
export const answerSheetShape = z.strictObject({ answers: z.array(singleAnswer) });

export type AskedQuestion = z.infer<typeof askedQuestion>;
export type Answer = z.infer<typeof answer>;
export type Unanswered = z.infer<typeof unansweredQuestion>;

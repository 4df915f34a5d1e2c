// The JSON Schema of the sheets that `calc --json` reads and writes, made from their one description.

import * as z from "zod";
import { answerSheetShape, questionSheet, singleAnswer } from "../calc/sheet.ts";

/** Path and text of the published schema: questions and answers as two definitions of one file. */
export function generate(): { readonly path: string; readonly text: string } {
  const part = (shape: z.ZodType): object => {
    const { $schema: _draft, ...body } = z.toJSONSchema(shape, { target: "draft-2020-12" });
    return body;
  };
  const schema = {
    $schema: "https://json-schema.org/draft/2020-12/schema",
    title: "Questions and answers of stripdown calc",
    description:
      "calc --json reads a sheet of questions ($defs/questions) and writes their answers in the same order ($defs/answers); " +
      "calc NAME --json writes one ($defs/answer).",
    anyOf: [{ $ref: "#/$defs/questions" }, { $ref: "#/$defs/answers" }, { $ref: "#/$defs/answer" }],
    $defs: { questions: part(questionSheet), answers: part(answerSheetShape), answer: part(singleAnswer) },
  };
  return { path: "language/schemas/calc.schema.json", text: `${JSON.stringify(schema, null, 2)}\n` };
}

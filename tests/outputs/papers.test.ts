// What all drawings, labels, sheets and remarks on records have in common: the same bytes twice, DRAFT everywhere, JSON as published, nothing that clears.

import { readFileSync } from "node:fs";
import { join } from "node:path";
import { Ajv2020 } from "ajv/dist/2020.js";
import { expect, test } from "vitest";
import { write, type Output, type OutputInput } from "../../language/outputs/output.ts";
import { recordCheck } from "../../language/outputs/record/check-output.ts";
import type { WorkRecord } from "../../language/outputs/record/record.ts";
import { recordSummary } from "../../language/outputs/record/summary.ts";
import { outputs } from "../../language/outputs/registry.ts";
import { provenanceOf } from "../../language/outputs/draft.ts";
import { compiledExample, compiledText, options } from "./outputs-of.ts";

const recordOf = (input: OutputInput, text: string): WorkRecord => ({
  format: "stripdown-record",
  version: 1,
  content: provenanceOf(input).hash,
  serial: text,
  procedures: input.performances.map(({ procedure, model }) => ({
    procedure: procedure.id,
    unit: model.unit,
    build: model.build,
    lines: [
      { line: "1.1", notAsWritten: [{ what: "other", note: text, wanted: text }] },
      { line: text, torques: [{ item: text, value: 1, unit: text }] },
    ],
  })),
});
/** Those with tests of their own. */
const elsewhere: ReadonlySet<string> = new Set(["manual", "refit", "bill", "export"]);
const all = (input: OutputInput, text = "x"): readonly Output<unknown>[] =>
  [
    ...outputs.filter(({ name }) => !elsewhere.has(name)),
    recordCheck([{ file: text, record: recordOf(input, text) }]),
    recordSummary([{ file: text, record: recordOf(input, text) }]),
  ] as readonly Output<unknown>[];
const papers = (input: OutputInput, text = "x") =>
  all(input, text).flatMap((output) =>
    Object.keys(output.formats).map((format) => ({
      name: output.name,
      format,
      text: write(output, format, input, options),
    })),
  );
const examples = [
  ["dairy-pump/pump.strip"],
  ["mooring-winch/strip.strip", "mooring-winch/insulation.strip"],
  ["valve-actuator/actuator.strip"],
].map((paths) => [paths[0]!, compiledExample(...paths)] as const);

test.each(examples)("%s: the same twice and for any order of the files, DRAFT in each", (_, input) => {
  const made = papers(input);
  expect(papers({ ...input, texts: new Map([...input.texts].reverse()) })).toEqual(made);
  // A table without rows has nothing to mark.
  for (const { name, format, text } of made)
    if (format !== "csv" || text.split("\r\n").length > 2)
      expect(text, `${name} ${format}`).toMatch(/DRAFT|not-approved/);
});

const clearing =
  /\bsafe\b|\bsafely\b|\bOK\b|\bpassed\b|\ball clear\b|\bcompl(?:y|ies|iant)\b|\bcertified\b|(?<!prove )\bdead\b|\bdischarged\b/i;
test("a machine whose author wrote nothing of the kind is cleared by none of them", () => {
  const input =
    compiledText(`unit u "Unit" { base a  part a "A"  part b "B"  fastener f screw "Screws" { count 4  torque 9 N·m  sequence star  pattern circle 90 mm  joins b to a } }
procedure p "P" for u { aim b off  step "S" { undo f into tray A  remove b  measure size on b "Size" at least 3 mm } }`);
  for (const { name, format, text } of papers(input))
    expect(text.replace(/<style>[^]*?<\/style>/g, ""), `${name} ${format}`).not.toMatch(clearing);
});

const schemaOf: Readonly<Record<string, string>> = {
  "draw strip": "drawing",
  "draw pattern": "drawing",
  "draw path": "drawing",
  labels: "labels",
  "sheet torque": "torque-sheet",
  "sheet layout": "layout-sheet",
  record: "record-check",
  "record summary": "record-summary",
};
test.each(examples)("%s: JSON is as its schema says, and one field more is refused", (_, input) => {
  for (const { name, text } of papers(input).filter(({ format }) => format === "json")) {
    const validate = new Ajv2020({ strict: false }).compile(
      JSON.parse(
        readFileSync(
          join(import.meta.dirname, `../../language/schemas/${schemaOf[name] ?? "sheet"}.schema.json`),
          "utf8",
        ),
      ),
    );
    expect(validate(JSON.parse(text)), `${name} ${JSON.stringify(validate.errors?.slice(0, 2))}`).toBe(true);
    expect(validate({ ...JSON.parse(text), more: 1 })).toBe(false);
  }
});

// What all drawings, labels, sheets and remarks on records have in common: the same bytes twice, hostile texts stay texts, DRAFT
// everywhere, JSON as published, nothing that clears.

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
import { hostile } from "./hostile.ts";
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

const machineWith = (text: string): OutputInput => {
  const s = `"${text.replace(/["\\]/g, "\\$&").replaceAll("\n", " ")}"`;
  return compiledText(`
unit box ${s} { base case  part case ${s}  part lid ${s} { mass 2 kg }  part seal gasket ${s} { between lid and case }
  fastener screws bolt ${s} { count 6  size M6  torque 9 N·m while ${s}  sequence ${s}  pattern circle 90 mm  joins lid to case  thread-locker locker }
  fastener plug plug ${s} { torque ${s}  into case }
  hazard live electrical danger ${s} { on lid  wear ${"key"}  precaution isolate ${s} with key back ${s}  precaution prove-dead ${s} at most 12 V dc with key }
  fluid oil oil ${s} { volume 1 L  drains at plug  fills at plug  path case, lid } }
consumable locker ${s}
tool key ${s}
procedure open-it ${s} for box { needs ${s}  mishap ${s} ${s}  waste ${s} ${s}  aim lid off  step top ${s} { isolate live ${s}  prove-dead live ${s}  second-check ${s}  drain oil into key  undo screws into tray A  remove lid  remove seal into bag B  measure size on lid ${s} at least 3 mm else ${s} } }`);
};
const elements = new Set([
  "!DOCTYPE",
  "html",
  "head",
  "meta",
  "title",
  "style",
  "body",
  "header",
  "h1",
  "h2",
  "p",
  "h3",
  "main",
  "section",
  "div",
  "svg",
  "desc",
  "g",
  "path",
  "rect",
  "circle",
  "text",
  "ol",
  "li",
  "strong",
  "span",
  "small",
  "table",
  "caption",
  "thead",
  "tbody",
  "tr",
  "th",
  "td",
  "br",
  "figure",
  "figcaption",
]);

test("hostile texts become no element, no attribute, no formula, and act on nothing", () => {
  for (const author of hostile) {
    const input = machineWith(author);
    expect(input.performances).toHaveLength(1);
    for (const { name, format, text } of papers(input, author)) {
      const where = `${name} ${format} ${JSON.stringify(author)}`;
      if (format === "json") {
        JSON.parse(text);
        continue;
      }
      expect(text, where).not.toMatch(
        /[\u202A-\u202E\u2066-\u2069\u0000-\u0008\u000B\u000C\u000E-\u001F\u0085\u2028\u2029\uFEFF]/,
      );
      if (format === "csv")
        for (const cell of text.split(/\r\n|,(?=(?:[^"]*"[^"]*")*[^"]*$)/))
          expect(cell, where).not.toMatch(/^"?\s*[=+\-@＝＋－＠\t\n|%]/);
      if (format !== "svg" && format !== "html") continue;
      for (const [tag, element = ""] of text.matchAll(/<\/?([^\s>/]+)[^>]*>/g)) {
        expect(elements.has(element), `${where}: ${tag}`).toBe(true);
        expect(tag.replace(/"[^"]*"/g, '""'), where).not.toMatch(/\son|\s(?:src|href|style)=|'/);
      }
      expect(text.replace(/<style>[^]*?<\/style>|"[^"<>]*"/g, ""), where).not.toMatch(/<[^>]*url\(/);
    }
  }
}, 120_000);

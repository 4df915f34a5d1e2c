// Findings in each format: the public schemas of SARIF 2.1.0 (OASIS) and of JUnit reports (tests/reference/schemas/README.md), our own
// published schema, texts of authors that try to be markup, and what every format has to say beside the findings.

import { readFileSync } from "node:fs";
import { Ajv } from "ajv";
import ajvFormats from "ajv-formats";
import { expect, test } from "vitest";
import { validateXML } from "xmllint-wasm";
import { checks } from "../../../language/checks/registry.ts";
import { findingsAsAnnotations } from "../../../language/outputs/findings/annotations.ts";
import { checkJson, findingsAsJson } from "../../../language/outputs/findings/json.ts";
import { findingsAsJunit } from "../../../language/outputs/findings/junit.ts";
import { reportOf, type Report } from "../../../language/outputs/findings/report.ts";
import { findingsAsSarif } from "../../../language/outputs/findings/sarif.ts";
import { findingsAsText } from "../../../language/outputs/findings/text.ts";
import { checkText } from "../../support/check-text.ts";

// The package is CommonJS: what it exports stands one level deeper.
const addFormats = ajvFormats.default;
const reference = new URL("../../reference/schemas/", import.meta.url);

const reportFor = (text: string): Report => reportOf(checkText(text).checked, (path) => path.replace("/project/", ""));

const machine = (lid: string, acts: string): string => `
#- my files/box 1.strip
unit box "Box" {
  base foot
  option heater "Heater"
  part foot "Foot"
  part lid ${lid} { mass 2 kg }
  if heater { part coil "Coil" { fits foot  behind lid } }
  fastener lid-screws screw "Lid screws" { count 4  joins lid to foot }
  no pressure "Open to air."
}
procedure strip "Strip" for box {
  aim lid off
  step "Open" {
    ${acts}
  }
}
`;
const held = reportFor(machine('"Lid"', "undo 2 of lid-screws\n    remove lid"));
const clean = reportFor(machine('"Lid"', "undo lid-screws\n    remove lid"));
const hostile = reportFor(machine('"</failure>]]>&lt;\\"<script>::error file=x::%0A\u001b[31m\u202e"', "remove lid"));
const every: readonly (readonly [string, Report])[] = [
  ["findings", held],
  ["nothing found", clean],
  ["texts that try to be markup", hostile],
  ["every check's failing example", allExamples()],
];

function allExamples(): Report {
  const reports = checks.map((check) => reportFor(check.fails));
  return {
    ...held,
    findings: reports.flatMap((report) => report.findings),
    units: reports.flatMap((report) => report.units),
    unreadable: [{ file: "odd & <ends>.strip", says: "it is no text file" }],
  };
}

test("the example of these tests is found, with its reasons and a remedy", () => {
  expect(held.findings.map(({ code, at }) => `${code} ${at.file}:${at.line}:${at.column}`)).toEqual([
    "sequence/still-held my files/box 1.strip:14:5",
  ]);
  expect(held.findings[0]!.because.length).toBeGreaterThan(0);
  expect(held.findings[0]!.fixes.length).toBeGreaterThan(0);
  expect(hostile.findings.length).toBeGreaterThan(0);
});

const sarifSchema = JSON.parse(readFileSync(new URL("sarif-2.1.0-rtm.5.json", reference), "utf8")) as Record<
  string,
  unknown
>;
// A schema of draft 4 that uses nothing which later drafts read otherwise, save the name of its own address.
const { $schema: _draft, id: _id, ...sarifBody } = sarifSchema;

test.each(every)("SARIF: %s, by the public schema", (_, report) => {
  const ajv = new Ajv({ strict: false, allErrors: true, unicodeRegExp: false });
  addFormats(ajv);
  const isSarif = ajv.compile(sarifBody),
    log: unknown = JSON.parse(findingsAsSarif(report, (code) => checks.find((one) => one.code === code), "1.2.3"));
  expect(isSarif(log), JSON.stringify(isSarif.errors?.slice(0, 3))).toBe(true);
});

test("the public schema of SARIF refuses what is none", () => {
  const ajv = new Ajv({ strict: false, unicodeRegExp: false });
  addFormats(ajv);
  const log = JSON.parse(findingsAsSarif(held, () => undefined, "1.2.3")) as {
    runs: { results: { level: string }[] }[];
  };
  log.runs[0]!.results[0]!.level = "serious";
  expect(ajv.compile(sarifBody)(log)).toBe(false);
});

test("SARIF: places, reasons and remedies are the finding's", () => {
  const log = JSON.parse(findingsAsSarif(held, (code) => checks.find((one) => one.code === code), "1.2.3"));
  const run = log.runs[0],
    result = run.results[0];
  expect(run.columnKind).toBe("utf16CodeUnits");
  expect(run.tool.driver.rules[result.ruleIndex].id).toBe("sequence/still-held");
  expect(result.locations[0].physicalLocation).toEqual({
    artifactLocation: { uri: "my%20files/box%201.strip" },
    region: { startLine: 14, startColumn: 5, endLine: 14, endColumn: 15 },
  });
  expect(result.relatedLocations[0].message.text).toContain("Lid screws");
  expect(result.fixes[0].artifactChanges[0].replacements[0].insertedContent.text).toContain("undo lid-screws");
});

test.each(every)("JUnit: %s, by the public schema", async (_, report) => {
  const schema = readFileSync(new URL("junit-10.xsd", reference), "utf8");
  const { valid, errors } = await validateXML({
    xml: [{ fileName: "report.xml", contents: findingsAsJunit(report) }],
    schema: [schema],
  });
  expect(errors.slice(0, 3)).toEqual([]);
  expect(valid).toBe(true);
});

test("the public schema of JUnit refuses what is none", async () => {
  const schema = readFileSync(new URL("junit-10.xsd", reference), "utf8");
  const { valid } = await validateXML({
    xml: [
      { fileName: "report.xml", contents: findingsAsJunit(held).replaceAll("<testcase name=", "<testcase title=") },
    ],
    schema: [schema],
  });
  expect(valid).toBe(false);
});

test("JUnit: errors and warnings are failures, the counts agree with the cases", () => {
  const xml = findingsAsJunit(held),
    suite = /<testsuite name="my files\/box 1.strip" tests="(\d+)" failures="(\d+)"/.exec(xml)!;
  expect([suite[1], suite[2]]).toEqual(["1", "1"]);
  expect(findingsAsJunit(clean)).not.toContain("<failure");
});

test.each(every)("JSON: %s, by our published schema", (_, report) => {
  const ajv = new Ajv({ strict: false });
  const isOurs = ajv.compile({
    ...JSON.parse(readFileSync(new URL("../../../language/schemas/check.schema.json", import.meta.url), "utf8")),
    $schema: undefined,
  });
  expect(isOurs(JSON.parse(findingsAsJson(report))), JSON.stringify(isOurs.errors?.slice(0, 3))).toBe(true);
});

test("JSON: a finding with the builds that it holds in, and what nobody answered for", () => {
  const json = checkJson(
    reportFor(machine('"Lid"', "undo lid-screws\n    remove lid\n    if heater { undo lid-screws }")),
  );
  expect(json.findings.map(({ code, builds }) => [code, builds])).toEqual([
    ["sequence/already-undone", ["with heater"]],
  ]);
  expect(json.summary.units[0]!.hazardsNotConsidered).toContain("electrical");
  expect(json.summary.units[0]!.hazardsNotConsidered).not.toContain("pressure");
  expect(json.summary.units[0]!.massesNotGiven).toBe(1);
});

test("text: the line, the marks under it, why and what to do", () => {
  expect(findingsAsText(held, { colour: false, quiet: true }))
    .toBe(`my files/box 1.strip:14:5: error Lid cannot come off: still held by 2 of 4 Lid screws  sequence/still-held
  14 |     remove lid
     |     ^^^^^^^^^^
    see my files/box 1.strip:7:12  fastener lid-screws screw "Lid screws" { count 4  joins lid to foot }
    to do: ${held.findings[0]!.fixes[0]!.title}
`);
});

test("text: a source is named as one, another fact is a reason with its place, and what was said is not said again", () => {
  const lines = (code: string): string[] =>
    findingsAsText(reportFor(checks.find((one) => one.code === code)!.fails), { colour: false, quiet: true })
      .split("\n")
      .slice(3);
  const drive = lines("fastener/drive-mismatch");
  expect(drive.some((line) => /^ {4}because the thread is said here {2}\S+:\d+:\d+$/.test(line))).toBe(true);
  expect(drive.some((line) => line.startsWith("    source: ISO 4014"))).toBe(true);
  // Its only reason is its own sentence at its own place.
  expect(lines("hazard/no-precaution").filter((line) => /^ {4}(?:because|see)/.test(line))).toEqual([]);
});

test("text: marks stand under a line with tabs", () => {
  const text = findingsAsText(reportFor(machine('"Lid"', "remove\tlid")), { colour: false, quiet: true });
  expect(text).toContain("\n  13 |     remove\tlid\n     |     ^^^^^^^^^^\n");
});

test("text: colour only where it is asked for, and never from an author", () => {
  const escape = String.fromCharCode(27);
  expect(findingsAsText(hostile, { colour: false, quiet: false })).not.toContain(escape);
  expect(findingsAsText(hostile, { colour: false, quiet: false })).not.toContain("\u202e");
  expect(findingsAsText(held, { colour: true, quiet: false })).toContain(`${escape}[31merror${escape}[0m`);
});

test("annotations: a text cannot begin an annotation of its own", () => {
  const lines = findingsAsAnnotations(hostile).trimEnd().split("\n");
  expect(lines.every((line) => /^::(?:error|warning|notice) /.test(line))).toBe(true);
  expect(lines.filter((line) => line.startsWith("::error"))).toHaveLength(
    hostile.findings.filter((finding) => finding.severity === "error").length,
  );
});

test("every format says what was not considered, and none says that something is fit or without danger", () => {
  for (const report of [held, clean]) {
    const texts = [
      findingsAsText(report, { colour: false, quiet: false }),
      findingsAsJson(report),
      findingsAsJunit(report),
      findingsAsAnnotations(report),
      findingsAsSarif(report, () => undefined, "1.2.3"),
    ];
    for (const text of texts) {
      expect(text).toContain("electrical");
      expect(text).toMatch(/no risk assessment/i);
      expect(text).not.toMatch(/\b(?:safe|safely|OK|okay|passed|passes|complies|compliant|approved|harmless)\b/i);
    }
  }
});

// When a document is a draft: until every procedure that it prints is approved in its present revision, and while a finding is open.

import { expect, test } from "vitest";
import { bill } from "../../language/outputs/bill/bill.ts";
import { patternDrawings } from "../../language/outputs/draw/draw.ts";
import { provenanceOf } from "../../language/outputs/draft.ts";
import { labels } from "../../language/outputs/labels/labels.ts";
import { layoutSheet } from "../../language/outputs/layout-sheet/layout-sheet.ts";
import { write, type Output } from "../../language/outputs/output.ts";
import { outputs } from "../../language/outputs/registry.ts";
import { torqueSheet } from "../../language/outputs/torque-sheet/torque-sheet.ts";
import { compiledText, options } from "./outputs-of.ts";

const machine = (head: string, more = ""): string => `
unit u "Unit" { base a  part a "A"  part b "B"  fastener f screw "Screws" { count 4  size M6  drive hex 10  torque 9 N·m  joins b to a } }
procedure p "P" for u { ${head}  aim b off  step "S" { undo f into tray A  remove b } }
${more}`;
const draftOf = (text: string, openFindings = 0): readonly string[] =>
  provenanceOf({ ...compiledText(text), openFindings }).draft;

test.each([
  ["nobody has signed", "", ["not-approved"]],
  [
    "prepared and checked is not approved",
    'prepared "N. N." "2026-11-20"  checked "N. N." "2026-11-21"',
    ["not-approved"],
  ],
  ["a name without a date", 'approved "N. N." ""', ["not-approved"]],
  ["blanks are no name", 'approved "  " "2026-11-22"', ["not-approved"]],
  ["approved", 'approved "N. N." "2026-11-22"', []],
  ["approved in this revision", 'revision C  approved "N. N." "2026-11-22" of C', []],
  ["approved in an earlier revision", 'revision D  approved "N. N." "2026-11-22" of C', ["not-approved"]],
  ["approved before there was a revision", 'revision C  approved "N. N." "2026-11-22"', ["not-approved"]],
  ["approved for a revision that the text does not name", 'approved "N. N." "2026-11-22" of C', ["not-approved"]],
])("%s", (_, head, draft) => {
  expect(draftOf(machine(head))).toEqual(draft);
});

test.each([
  ['revision D  approved "N. N." "2026-11-22" of C', "Approved for revision C, and this is revision D"],
  ['revision C  approved "N. N." "2026-11-22"', "Approved without a revision, and this is revision C"],
  ['approved "N. N." "2026-11-22" of C', "Approved for revision C, and the procedure names none"],
  ['revision D  checked "N. N." "2026-11-22" of C', "Checked for revision C, and this is revision D"],
])("%s is a finding, and DRAFT on every page, sheet and label", (head, says) => {
  const input = compiledText(machine(head)),
    found = input.findings.filter(({ code }) => code === "issue/other-revision");
  expect(found.map((each) => each.says.split(":")[0])).toEqual([says]);
  expect(provenanceOf(input).draft).toContain("open-findings");
  for (const output of outputs)
    for (const format of Object.keys(output.formats))
      if (format === "html") expect(write(output, format, input, options), output.name).toContain("DRAFT");
});

test.each([
  "",
  'revision C  approved "N. N." "2026-11-22" of C',
  'revision C  checked "N. N." "2026-11-22"',
  'revision C  approved "" ""',
])("%j is none", (head) => {
  expect(compiledText(machine(head)).findings.filter(({ code }) => code === "issue/other-revision")).toEqual([]);
});

const signed = machine('approved "N. N." "2026-11-22"');
test("an open finding makes a draft of what is approved", () => {
  expect(draftOf(signed, 1)).toEqual(["open-findings"]);
});

test("what is done within an approved procedure has to be approved too", () => {
  const inner = (head: string): string => `
unit u "Unit" { base a  part a "A"  part b "B"  part c "C"  fastener f screw "F" { joins b to a }  fastener g screw "G" { joins c to a } }
procedure inner "Inner" for u { ${head}  aim c off  step "S" { undo g  remove c } }
procedure p "P" for u { approved "N. N." "2026-11-22"  aim b, c off  do inner  step "S" { undo f  remove b } }`;
  const draft = (head: string): readonly string[] => {
    const input = compiledText(inner(head));
    return provenanceOf({
      ...input,
      performances: input.performances.filter(({ procedure }) => procedure.id === "p"),
      openFindings: 0,
    }).draft;
  };
  expect(draft("")).toEqual(["not-approved"]);
  expect(draft('approved "N. N." "2026-11-22"')).toEqual([]);
});

test("nothing printed is a draft too", () => {
  expect(provenanceOf({ performances: [], texts: new Map(), openFindings: 0 }).draft).toEqual(["not-approved"]);
});

const all = [
  ...new Set([...outputs, bill, patternDrawings, labels, layoutSheet, torqueSheet]),
] as readonly Output<unknown>[];
test("every format of every output says DRAFT until then, and none says it afterwards", () => {
  for (const output of all)
    for (const format of Object.keys(output.formats)) {
      const of = (text: string): string => write(output, format, { ...compiledText(text), openFindings: 0 }, options),
        plain = of(machine("")),
        approved = of(signed);
      const says = /\bDRAFT\b|"not-approved"/,
        isEmptyTable = format === "csv" && plain.split("\r\n").length <= 2;
      if (!isEmptyTable) expect(plain, `${output.name} ${format}`).toMatch(says);
      expect(approved, `${output.name} ${format}`).not.toMatch(says);
    }
});

// The sheets as PDF: tagged, and with all that their data says.

import { expect, test } from "vitest";
import { pdfOf } from "../../../language/cli/pdf/pdf.ts";
import { handoverSheet } from "../../../language/outputs/sheet/handover.ts";
import { labels } from "../../../language/outputs/labels/labels.ts";
import { layoutSheet } from "../../../language/outputs/layout-sheet/layout-sheet.ts";
import { outputs } from "../../../language/outputs/registry.ts";
import type { SheetData } from "../../../language/outputs/sheet/sheet-data.ts";
import { shownOnOneLine } from "../../../language/outputs/text/shown.ts";
import { torqueSheet } from "../../../language/outputs/torque-sheet/torque-sheet.ts";
import type { PrintDocument } from "../../../language/outputs/pdf/print.ts";
import { compiledExample, compiledText, options } from "../outputs-of.ts";
import { table } from "../../../language/outputs/pdf/table.ts";
import { readPdf } from "./pdf-text.ts";
import { checkUa } from "./ua-check.ts";

const winch = compiledExample("mooring-winch/strip.strip");

async function read(document: PrintDocument) {
  const { bytes } = await pdfOf(document);
  expect((await checkUa(bytes)).findings).toEqual([]);
  const { pages } = await readPdf(bytes);
  for (const { painted } of pages) expect(painted).toContain("DRAFT");
  return pages.map(({ tagged }) => tagged).join(" ");
}

test("torque sheet: every value in both systems", async () => {
  const data = torqueSheet.data(winch, options),
    text = await read(torqueSheet.print!(data, options));
  const rows = data.procedures.flatMap((procedure) => procedure.rows);
  expect(rows.length).toBeGreaterThan(20);
  for (const row of rows) for (const value of [row.line, ...row.metric, ...row.us]) expect(text).toContain(value);
});

test("layout sheet: every part in its order", async () => {
  const data = layoutSheet.data(winch, options),
    text = await read(layoutSheet.print!(data, options));
  let at = 0;
  for (const procedure of data.procedures)
    for (const { place, name } of procedure.rows) {
      const found = text.indexOf(`${place} ${name}`, at);
      expect(found, `${place} ${name}`).toBeGreaterThan(-1);
      at = found;
    }
});

test("every other sheet: every cell of its tables", async () => {
  const sheets = outputs.filter((each) => each.name.startsWith("sheet ") && !/torque|layout/.test(each.name));
  expect(sheets.length).toBeGreaterThan(5);
  for (const each of sheets) {
    const data = each.data(winch, { ...options, units: 3 }) as SheetData,
      text = (await read(each.print!(data, options))).replace(/\s/g, "");
    for (const { tables } of data.procedures)
      for (const { rows } of tables)
        for (const cell of rows.flat().filter((each) => !/^_+$/.test(each)))
          expect(text.includes(shownOnOneLine(cell).replace(/\s/g, "")), `${each.name}: ${cell}`).toBe(true);
  }
}, 60_000);

test("labels: each bag and tray, at the size asked for", async () => {
  const data = labels.data(winch, options),
    grid = { columns: 2, rows: 5, width: 90, height: 50, pageWidth: 210, pageHeight: 297, gapX: 5, gapY: 0 },
    text = await read(labels.print!(data, { ...options, labelGrid: grid }));
  expect(data.places.length).toBeGreaterThan(5);
  for (const { kind, label } of data.places) expect(text).toContain(options.wording.labels.place(kind, label));
});

test("a short table stays on one page, one of many or tall rows goes over its end", () => {
  const columns = [
      { head: "What", cell: (row: readonly string[]) => row[0]!, isHead: true as const },
      { head: "How much", cell: (row: readonly string[]) => row[1]! },
    ],
    of = (rows: number, text: string) =>
      table(
        "",
        columns,
        Array.from({ length: rows }, () => [text, "2"]),
        160,
      ).whole;
  expect([of(6, "Rag"), of(12, "Rag"), of(13, "Rag"), of(2, "Wipe it and look. ".repeat(60))]).toEqual([
    true,
    true,
    false,
    false,
  ]);
});

test("where there is nothing to print, the sheet says so", async () => {
  const input = compiledText(
    `unit box "Box" {\n  base case\n  part case "Case"\n}\nprocedure look "Look" for box {\n  step a "Look" { work case "Wipe it." }\n}\n`,
  );
  expect(await read(labels.print!(labels.data(input, options), options))).toContain(options.wording.labels.nothing);
  expect(await read(torqueSheet.print!(torqueSheet.data(input, options), options))).toContain(
    options.wording.torqueSheet.nothing,
  );
});

test("handover: what one hands over and signs after a step stands on one page, with its heading and its head", async () => {
  const data = handoverSheet.data(
      compiledExample(
        "valve-actuator/actuator.strip",
        "dairy-pump/pump.strip",
        "reducer-family/reducer.strip",
        "mooring-winch/strip.strip",
      ),
      options,
    ),
    { pages } = await readPdf((await pdfOf(handoverSheet.print!(data, options))).bytes),
    { handover } = options.wording.benchSheets,
    tight = (text: string): string => text.replace(/\s/g, "");
  const tables = data.procedures.flatMap(({ tables: all }) => (all.length > 1 ? all : []));
  expect(tables.length).toBeGreaterThan(10);
  for (const { title, rows } of tables) {
    const own = pages.map(({ tagged }) => tight(tagged)).filter((page) => page.includes(tight(title))),
      all = [handover.fact, ...rows.map(([says, what]) => (/^_+$/.test(what!) ? says! : what!))].map((part) =>
        tight(shownOnOneLine(part)),
      );
    expect(
      own.some((page) => all.every((part) => page.slice(page.indexOf(tight(title))).includes(part))),
      title,
    ).toBe(true);
  }
});

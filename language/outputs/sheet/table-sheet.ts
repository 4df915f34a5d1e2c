// A one-page sheet for the bench: a few tables with places to write. Each sheet says what stands in its tables; how they are printed is
// said here once for all.

import { provenanceOf } from "../draft.ts";
import { linesOf } from "../lines/groups.ts";
import { output, type Output, type OutputOptions } from "../output.ts";
import { headLines, htmlPage, pageHead } from "../page.ts";
import { tableSheetPrint } from "../pdf/sheets-print.ts";
import { csv } from "../text/csv.ts";
import { html } from "../text/markup.ts";
import { shownOnOneLine } from "../text/shown.ts";
import { wrap } from "../text/wrap.ts";
import { sheetOf, type SheetData, type SheetKind, type SheetOf } from "./sheet-data.ts";
import { penStyle, sheetHtml } from "./table-html.ts";

export const tableSheet = (kind: SheetKind): Output<SheetData> => {
  const { name, title, note, landscape = false } = kind;
  return output<SheetData>({
    name: `sheet ${name}`,
    title: `Sheet: ${name}`,
    data: (input, options) => ({
      format: "stripdown-sheet",
      version: 1,
      of: name,
      title: title(options),
      note: note(options),
      provenance: provenanceOf(input),
      procedures: input.performances.map((performance) =>
        sheetOf(kind, { performance, lines: linesOf(performance, options), input, options }),
      ),
    }),
    formats: {
      html: { extension: "html", title: "Sheet to print", write: (data, options) => asHtml(data, options, landscape) },
      csv: { extension: "csv", title: "Every cell in a row of its own", write: asCsv },
      text: { extension: "txt", title: "Text", write: asText },
      json: {
        extension: "json",
        title: "Tables, for programs",
        write: (data) => `${JSON.stringify(data, undefined, 2)}\n`,
      },
    },
    print: (data, options) => tableSheetPrint(data, options, landscape),
  });
};

const titleOf = ({ unit, title, buildText: build }: SheetOf, { wording }: OutputOptions): string =>
  wording.document.titles([unit, title, build].filter(Boolean));

function asHtml(data: SheetData, options: OutputOptions, landscape: boolean): string {
  return htmlPage(
    {
      title: data.title,
      style: `h3{font-size:1rem;margin:1rem 0 .2rem}${penStyle}main section{break-after:page}main section:last-child{break-after:auto}@media print{h3{break-after:avoid}}${landscape ? "@page{size:landscape;margin:10mm}" : ""}`,
      body: html`${pageHead(data.title, data.provenance, options)}
<main><p>${data.note}</p>${data.procedures.map(
        (procedure) => html`<section><h2>${titleOf(procedure, options)}</h2>
${sheetHtml(procedure)}</section>
`,
      )}</main>`,
    },
    data.provenance,
    options,
  );
}

function asCsv(
  { procedures, provenance }: SheetData,
  { wording: { benchSheets: words, document } }: OutputOptions,
): string {
  const { columns } = words;
  return csv(
    [columns.draft, columns.procedure, columns.table, columns.row, columns.column, columns.value],
    procedures.flatMap((procedure) =>
      procedure.tables.flatMap((each) =>
        each.rows.flatMap((row, i) =>
          row.map((value, column) => [
            provenance.draft.length > 0 ? document.draftMark : "",
            procedure.title,
            each.title,
            i + 1,
            each.columns[column] ?? "",
            value,
          ]),
        ),
      ),
    ),
  );
}

function asText(data: SheetData, options: OutputOptions): string {
  const out = [
    data.title,
    "=".repeat(data.title.length),
    ...headLines(data.provenance, options),
    ...wrap(data.note, "", ""),
  ];
  for (const procedure of data.procedures) {
    out.push("", ...wrap(shownOnOneLine(titleOf(procedure, options)), "", "  "));
    for (const note of procedure.notes) out.push(...wrap(shownOnOneLine(note), "  ", "  "));
    for (const { title, columns, rows, empty } of procedure.tables) {
      out.push("", ...wrap(shownOnOneLine(title), "  ", "    "));
      if (rows.length === 0) out.push(...wrap(empty, "    ", "    "));
      for (const row of rows) {
        const cells = row.flatMap((value, i) =>
          value === "" ? [] : [i === 0 ? value : options.wording.document.titled(columns[i] ?? "", value)],
        );
        out.push(...wrap(shownOnOneLine(options.wording.document.parts(cells)), "    [ ] ", "        "));
      }
    }
  }
  return `${out.join("\n")}\n`;
}

// A one-page sheet for the bench: a few tables with places to write. Each sheet says what stands in its tables; how they are printed is
// said here once for all.

import { provenanceOf } from "../draft.ts";
import { linesOf } from "../lines/groups.ts";
import { output, type Output, type OutputOptions } from "../output.ts";
import { tableSheetPrint } from "../pdf/sheets-print.ts";
import { csv } from "../text/csv.ts";
import { asJson } from "../text/json.ts";
import { shownOnOneLine } from "../text/shown.ts";
import { wrap } from "../text/wrap.ts";
import { ownPages, sheetPage, sheetText } from "./of-procedures.ts";
import { sheetOf, type SheetData, type SheetKind, type SheetTable } from "./sheet-data.ts";
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
        write: asJson,
      },
    },
    print: (data, options) => tableSheetPrint(data, options, landscape),
  });
};

function asHtml(data: SheetData, options: OutputOptions, landscape: boolean): string {
  return sheetPage(
    data,
    `h3{font-size:1rem;margin:1rem 0 .2rem}${penStyle}${ownPages}@media print{h3{break-after:avoid}}${landscape ? "@page{size:landscape;margin:10mm}" : ""}`,
    sheetHtml,
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
  const { titled, parts } = options.wording.document;
  const tableAsText = ({ title, columns, rows, empty }: SheetTable): string[] => [
    "",
    ...wrap(shownOnOneLine(title), "  ", "    "),
    ...(rows.length === 0 ? wrap(empty, "    ", "    ") : []),
    ...rows.flatMap((row) => {
      const cells = row.flatMap((value, i) =>
        value === "" ? [] : [i === 0 ? value : titled(columns[i] ?? "", value)],
      );
      // Of two columns the second says of the first what their one heading would say again in each line.
      const [name = "", about = ""] = row;
      const line = columns.length === 2 && about !== "" ? titled(name, about) : parts(cells);
      return wrap(shownOnOneLine(line), "    [ ] ", "        ");
    }),
  ];
  return sheetText(
    data,
    ({ notes, tables }) => [
      ...notes.flatMap((note) => wrap(shownOnOneLine(note), "  ", "  ")),
      ...tables.flatMap(tableAsText),
    ],
    options,
  );
}

// The output "torque sheet": what is tightened to what, with a place for the setting, the wrench and the initials.

import { table, type Column } from "../manual/html-table.ts";
import { output, type OutputOptions } from "../output.ts";
import { torqueSheetPrint } from "../pdf/sheets-print.ts";
import { ownPages, sheetPage, sheetText, titleOf } from "../sheet/of-procedures.ts";
import { csv } from "../text/csv.ts";
import { asJson } from "../text/json.ts";
import { html, type Markup } from "../text/markup.ts";
import { shownOnOneLine } from "../text/shown.ts";
import { wrap } from "../text/wrap.ts";
import { torqueSheetData, type TorqueRow, type TorqueSheetData } from "./data.ts";

export const torqueSheet = output<TorqueSheetData>({
  name: "sheet torque",
  title: "Torque sheet",
  data: torqueSheetData,
  formats: {
    html: { extension: "html", title: "Sheet to print and sign", write: asHtml },
    csv: {
      extension: "csv",
      title: "Table for a spreadsheet",
      write: ({ procedures, provenance }, { wording: { torqueSheet: words, document } }) =>
        csv(
          words.csv,
          procedures.flatMap((procedure) =>
            procedure.rows.map((row) => [
              provenance.draft.length > 0 ? document.draftMark : "",
              procedure.title,
              row.step,
              row.line,
              row.id,
              row.name,
              row.count ?? words.notGiven,
              row.thread,
              row.class,
              document.parts(row.metric),
              document.parts(row.us),
              document.parts(row.passes),
              row.sequence,
              row.order.join(" "),
              row.tool,
              document.parts(row.wrenches),
              document.parts(row.notes),
              "",
              "",
              "",
            ]),
          ),
        ),
    },
    text: { extension: "txt", title: "Text", write: asText },
    json: {
      extension: "json",
      title: "Rows, for programs",
      write: asJson,
    },
  },
  print: torqueSheetPrint,
});

/** The table of what is tightened. */
export function torqueHtml(procedure: TorqueSheetData["procedures"][number], options: OutputOptions): Markup {
  const { torqueSheet: words } = options.wording,
    { columns: heads } = words,
    blank = (head: string): Column<TorqueRow> => ({ head, cell: () => html`<span class="pen"></span>` });
  const each = (texts: readonly string[]) =>
    texts.length === 0 ? "" : texts.map((text, i) => html`${i > 0 && html`<br/>`}${text}`);
  const columns: readonly Column<TorqueRow>[] = [
    { head: heads.line, cell: (row) => row.line, is: "code" },
    { head: heads.fastener, cell: (row) => row.name, isHead: true },
    { head: heads.count, cell: (row) => row.count ?? words.notGiven, is: "n" },
    { head: heads.thread, cell: (row) => each([row.thread, row.class].filter(Boolean)) },
    ...(options.system === "us" ? (["us", "metric"] as const) : (["metric", "us"] as const)).map(
      (system): Column<TorqueRow> => ({
        head: heads[system],
        is: "n",
        cell: (row) => html`<strong>${each(row[system])}</strong>`,
      }),
    ),
    {
      head: heads.passes,
      cell: (row) =>
        each([
          ...row.passes,
          ...(row.sequence === "" ? [] : [row.sequence]),
          ...(row.order.length > 0 ? [words.order(row.order.join(" "))] : []),
        ]),
    },
    { head: heads.tool, cell: (row) => each([row.tool, ...row.wrenches].filter(Boolean)) },
    { head: heads.note, cell: (row) => each(row.notes) },
    blank(heads.set),
    blank(heads.wrenchNo),
    blank(heads.initials),
  ];
  return procedure.rows.length === 0
    ? html`<p>${words.nothing}</p>`
    : html`<div class="torques">${table(titleOf(procedure, options), columns, procedure.rows, true)}</div>`;
}

/** For the page that such a table stands in. */
export const torqueStyle =
  ".torques td.n{white-space:normal;min-width:4.6rem}.torques td.n:nth-child(3){min-width:0}.torques td:nth-child(8){min-width:10rem}.torques .pen{min-width:2.6rem;min-height:1.4rem}@media print{.torques table{font-size:8.5pt}.torques th,.torques td{padding:.15rem .3rem}.torques td:nth-child(8){min-width:7.5rem}}";

function asHtml({ procedures, provenance }: TorqueSheetData, options: OutputOptions): string {
  const { title, note } = options.wording.torqueSheet;
  return sheetPage(
    { title, note, provenance, procedures },
    `body{max-width:84rem}.pen{display:inline-block}${torqueStyle}${ownPages}@page{size:landscape;margin:10mm}`,
    (procedure) => torqueHtml(procedure, options),
    options,
  );
}

function asText({ procedures, provenance }: TorqueSheetData, options: OutputOptions): string {
  const { title, note, nothing } = options.wording.torqueSheet;
  return sheetText(
    { title, note, provenance, procedures },
    ({ rows }) => (rows.length === 0 ? [`  ${nothing}`] : rows.flatMap((row) => rowAsText(row, options))),
    options,
  );
}

function rowAsText(row: TorqueRow, { wording: { torqueSheet: words, document }, system }: OutputOptions): string[] {
  const [first, second] = system === "us" ? [row.us, row.metric] : [row.metric, row.us],
    values = first.map((value, i) => (second[i] === value ? value : `${value} (${second[i]})`)),
    count = row.count === undefined || row.count > 1 ? ` (${row.count ?? words.notGiven})` : "";
  const said = [`${row.name}${count}`, row.thread, row.class, document.parts(values)].filter(Boolean),
    more = [
      ...row.passes,
      row.sequence,
      row.order.length > 0 ? words.order(row.order.join(" ")) : "",
      row.tool,
      ...row.wrenches,
      ...row.notes,
    ].filter(Boolean);
  return [
    ...wrap(shownOnOneLine(said.join(", ")), `  ${row.line}`.padEnd(9), "         "),
    ...(more.length > 0 ? wrap(shownOnOneLine(document.parts(more)), "         - ", "           ") : []),
  ];
}

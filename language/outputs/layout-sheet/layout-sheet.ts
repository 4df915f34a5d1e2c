// The output "layout sheet": a place for each part, in the order in which they come off, to lay them on or to go by.

import { output, type OutputOptions } from "../output.ts";
import { layoutSheetPrint } from "../pdf/sheets-print.ts";
import { csv } from "../text/csv.ts";
import { asJson } from "../text/json.ts";
import { html, type Markup } from "../text/markup.ts";
import { shownOnOneLine } from "../text/shown.ts";
import { wrap } from "../text/wrap.ts";
import { ownPages, sheetPage, sheetText } from "../sheet/of-procedures.ts";
import { factsOf } from "./facts.ts";
import { layoutData, type LayoutData } from "./data.ts";

export const layoutSheet = output<LayoutData>({
  name: "sheet layout",
  title: "Layout sheet",
  data: layoutData,
  formats: {
    html: { extension: "html", title: "Sheet to print", write: asHtml },
    csv: {
      extension: "csv",
      title: "Table for a spreadsheet",
      write: ({ procedures, provenance }, { wording: { layoutSheet: words, document, labels } }) =>
        csv(
          words.csv,
          procedures.flatMap((procedure) =>
            procedure.rows.map((row) => [
              provenance.draft.length > 0 ? document.draftMark : "",
              procedure.title,
              row.place,
              row.line,
              row.id,
              row.name,
              row.count ?? labels.countNotGiven,
              row.along.join(" "),
              row.mass,
              row.goesTo,
              row.discard ? words.discard : "",
              row.step,
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
  print: layoutSheetPrint,
});

/** A place for each part. */
export const layoutHtml = ({ rows }: Pick<LayoutData["procedures"][number], "rows">, options: OutputOptions): Markup =>
  rows.length === 0
    ? html`<p>${options.wording.layoutSheet.nothing}</p>`
    : html`<ol class="places">${rows.map(
        (row) => html`<li><span class="place">${row.place}</span><p class="name">${row.name}</p>
<p>${factsOf(row, options).map((fact) => html`<small>${fact}</small>`)}</p></li>
`,
      )}</ol>`;

/** For the page that it stands in. */
export const layoutStyle = `.places{list-style:none;margin:.6rem 0;padding:0;display:grid;grid-template-columns:repeat(auto-fill,minmax(12rem,1fr));gap:.5rem}
.places li{border:1.5px solid;border-radius:4px;padding:.4rem .55rem;min-height:6.5rem;break-inside:avoid;display:grid;grid-template-columns:auto 1fr;column-gap:.55rem;align-content:start}
.places .place{font-size:1.5rem;font-weight:700;line-height:1.1;grid-row:1/span 4}
.places p{margin:0;grid-column:2;min-width:0}
.places .name{font-weight:700}
.places small{display:block}
@media print{.places{grid-template-columns:repeat(4,1fr)}}
`;

function asHtml({ procedures, provenance }: LayoutData, options: OutputOptions): string {
  const { title, note } = options.wording.layoutSheet;
  return sheetPage(
    { title, note, provenance, procedures },
    `
${layoutStyle}${ownPages}
`,
    (procedure) => layoutHtml(procedure, options),
    options,
  );
}

function asText({ procedures, provenance }: LayoutData, options: OutputOptions): string {
  const {
    layoutSheet: { title, note, nothing },
    document: { parts },
  } = options.wording;
  return sheetText(
    { title, note, provenance, procedures },
    ({ rows }) =>
      rows.length === 0
        ? [`  ${nothing}`]
        : rows.flatMap((row) => [
            ...wrap(shownOnOneLine(row.name), `${String(row.place).padStart(4)}  `, "      "),
            ...wrap(
              shownOnOneLine(parts(factsOf(row, options).map((fact) => fact.replace(/\.$/, "")))),
              "      - ",
              "        ",
            ),
          ]),
    options,
  );
}

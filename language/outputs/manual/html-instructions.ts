// The chapters of the HTML manual that stand around the work: what the machine is for, drawings, when it goes wrong, waste, words, index.

import { svg, type Drawing } from "../draw/drawing.ts";
import type { OutputOptions } from "../output.ts";
import { html, type Markup, type Value } from "../text/markup.ts";
import type { ManualDocument } from "./document.ts";
import { sheetHtml } from "../sheet/table-html.ts";
import { own } from "./html-own.ts";
import { table } from "./html-table.ts";
import { tableSheetHead } from "./sheets.ts";

const listOf = (texts: readonly string[]): Markup => html`<ul>${texts.map((text) => html`<li>${own(text)}</li>`)}</ul>`;

export function purposeBody({ purpose }: ManualDocument, { wording: { instructions: words } }: OutputOptions): Markup {
  return html`<h3>${words.intended}</h3>
${purpose.intended.length > 0 ? listOf(purpose.intended) : html`<p>${words.intendedNotGiven}</p>`}
${purpose.wrong.length > 0 && html`<h3>${words.wrong}</h3>${listOf(purpose.wrong)}`}`;
}

export const drawingsBody = (drawings: readonly Drawing[], about: string): Value =>
  drawings.length === 0
    ? undefined
    : html`${about !== "" && html`<p>${about}</p>`}${drawings.map(
        (drawing) =>
          html`<div class="drawn"><h3>${own(drawing.title)}</h3><div class="scroll" role="group" tabindex="0" aria-label="${drawing.title}">${svg(drawing)}</div></div>
`,
      )}`;

export function mishapsBody({ mishaps }: ManualDocument, { wording: { instructions: words } }: OutputOptions): Markup {
  return html`${listOf(words.mishapAlways)}
${
  mishaps.length > 0
    ? table(
        words.sections.mishaps,
        [
          { head: words.mishap, cell: (row) => own(row.what), isHead: true },
          { head: words.mishapThen, cell: (row) => own(row.then) },
        ],
        mishaps,
        true,
      )
    : html`<p>${words.mishapsNotGiven}</p>`
}`;
}

/** What is left over, by procedure where there are several. */
export function wasteBody({ chapters }: ManualDocument, options: OutputOptions): Value {
  const sheets = chapters.flatMap(({ title, sheets: { tables } }) =>
    tables.waste.tables.some(({ rows }) => rows.length > 0) ? [{ title, sheet: tables.waste }] : [],
  );
  return sheets.length === 0
    ? undefined
    : html`<p>${tableSheetHead("waste", options).note}</p>${sheets.map(
        ({ title, sheet }) => html`${chapters.length > 1 && html`<h3>${own(title)}</h3>`}${sheetHtml(sheet)}`,
      )}`;
}

export const glossaryBody = ({ wording: { instructions: words } }: OutputOptions): Markup =>
  table(
    words.sections.glossary,
    [
      { head: words.term, cell: ([term]) => term, isHead: true },
      { head: words.means, cell: ([, means]) => means },
    ],
    words.terms,
    true,
  );

export const indexBody = ({ index }: ManualDocument, _: OutputOptions): Value =>
  index.length === 0
    ? undefined
    : html`<ul class="index">${index.map(
        ({ name, lines }) =>
          html`<li>${own(name)} ${lines.map(({ id, line }, i) => html`${i > 0 && ", "}<a href="#${id}">${line}</a>`)}</li>
`,
      )}</ul>`;

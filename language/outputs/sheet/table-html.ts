// A table of a sheet for the browser: what is known, and empty columns for a pen.

import { table, tableStyle, type Column } from "../manual/html-table.ts";
import { html, type Markup } from "../text/markup.ts";
import type { SheetOf, SheetTable } from "./sheet-data.ts";

/** More columns for a pen leave the words no room, each as wide as a signature. */
const manyPens = 6;

/** @param titled a heading says its title above it. */
export function sheetTableHtml({ title, columns, rows, blank, empty }: SheetTable, titled: boolean): Markup {
  if (rows.length === 0) return html`${titled && html`<h3>${title}</h3>`}<p>${empty}</p>`;
  const shown: Column<readonly string[]>[] = columns.map((head, i) => ({
    head,
    cell: (row) => row[i] ?? "",
    ...(i === 0 ? { isHead: true as const } : {}),
  }));
  const pens: Column<readonly string[]>[] = blank.map((head) => ({
    head,
    cell: () => html`<span class="pen${blank.length > manyPens && " narrow"}"></span>`,
  }));
  return html`${titled && html`<h3>${title}</h3>`}${table(title, [...shown, ...pens], rows, true)}`;
}

/** All tables of a sheet, with what is said before them. */
export const sheetHtml = ({ notes, tables }: Pick<SheetOf, "notes" | "tables">): Markup =>
  html`${notes.map((note) => html`<p>${note}</p>`)}${tables.map((each) => sheetTableHtml(each, tables.length > 1))}`;

/** For the page that such a table stands in. */
export const penStyle = `.pen{display:inline-block;min-width:4.5rem;min-height:1.3rem}.pen.narrow{min-width:2.2rem}tbody th{font-weight:600}${tableStyle}`;

// What a record adds to a book of the way back: what it says as a whole, and the list of all that is open.

import type { OutputOptions } from "../output.ts";
import { html, type Value } from "../text/markup.ts";
import { sheetTableHtml } from "../sheet/table-html.ts";
import type { ManualDocument } from "./document.ts";
import { factsTable } from "./html-facts.ts";
import { own } from "./html-own.ts";

export const recordedBody = ({ book }: ManualDocument, { wording }: OutputOptions): Value =>
  book &&
  html`<ul>${book.lead.map((line) => html`<li>${line}</li>`)}</ul>${factsTable(book.facts)}${
    book.whole.length > 0 &&
    html`<h3>${wording.refitBook.whole}</h3><ul>${book.whole.map((says) => html`<li class="recorded">${own(says)}</li>`)}</ul>`
  }`;

export function closingBody({ book, chapters }: ManualDocument, { wording }: OutputOptions): Value {
  if (!book) return undefined;
  const { refitBook: words, document } = wording;
  if (book.closing.length === 0) return html`<p>${words.nothing}</p>`;
  return html`<p>${words.closingNote}</p>${book.closing.map(({ of, title, ...table }) =>
    sheetTableHtml({ ...table, title: chapters.length > 1 ? document.titles([of, title]) : title }, true),
  )}`;
}

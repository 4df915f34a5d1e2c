// What the page carries for its script: the bar, which shows only where the script runs, the plan of the lines, and the script itself.

import type { OutputOptions } from "../output.ts";
import { html, Markup } from "../text/markup.ts";
import type { ManualDocument } from "./document.ts";
import { tabletScript } from "./tablet/script.ts";
import { tabletWords } from "./tablet/words.ts";

export const barHtml = ({
  wording: { tablet: words },
}: OutputOptions): Markup => html`<div id="tablet" class="bar" role="region" aria-label="${words.title}" hidden=""><p><progress id="tablet-progress" aria-labelledby="tablet-count" value="0" max="1"></progress> <span id="tablet-count"></span></p><p><button type="button" id="tablet-next">${words.nextOpen}</button> <button type="button" id="tablet-save">${words.save}</button></p><p id="tablet-says" role="status"></p></div>
`;

/** Stands where the record is. */
export const filesHtml = ({ wording: { tablet: words } }: OutputOptions): Markup =>
  html`<p data-script="" hidden=""><button type="button" id="tablet-load">${words.load}</button> <button type="button" id="tablet-clear">${words.clear}</button><input type="file" id="tablet-file" accept="application/json,.json" aria-label="${words.load}" hidden=""/></p>
`;

/** JSON that no text in it can end: every sign that could act in a page is written by its number. */
const asData = (value: unknown): Markup =>
  new Markup(
    JSON.stringify(value).replace(
      /[<>&\u0000-\u001F\u007F-\u009F\u200E\u200F\u2028-\u202E\u2066-\u2069\uFEFF\uD800-\uDFFF]/g,
      (sign) => `\\u${sign.charCodeAt(0).toString(16).padStart(4, "0")}`,
    ),
  );

export const scriptHtml = ({ plan }: ManualDocument, { wording }: OutputOptions): Markup =>
  html`<script type="application/json" id="tablet-data">${asData({ plan, words: tabletWords(wording) })}</script>
<script>${new Markup(tabletScript)}</script>
`;

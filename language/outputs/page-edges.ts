// What stands on every printed page of an HTML file: title, draft mark, page of pages at its edges, and the mark of a draft behind its words.

import { html, type Markup } from "./text/markup.ts";
import { shownOnOneLine } from "./text/shown.ts";

/** Words in a style as its strings write them: every sign but letters of the Latin alphabet and figures by its number. */
const quoted = (text: string): string =>
  `"${Array.from(text, (sign) => (/[A-Za-z0-9 ]/.test(sign) ? sign : `\\${sign.codePointAt(0)!.toString(16)} `)).join("")}"`;

/** What stands at the edges of every printed page: title, draft mark, page of pages. */
export const pageEdges = (title: string, mark: string): string => `
@page{@top-left{content:${quoted(shownOnOneLine(title).slice(0, 90))};font:8pt system-ui,sans-serif}@top-right{content:${quoted(mark)};font:700 9pt system-ui,sans-serif;letter-spacing:.2em}@bottom-right{content:counter(page) " / " counter(pages);font:8pt system-ui,sans-serif}}
`;

/** As large as all its letters have room, also where a browser forgets on a second page that they stand aslant. */
const sizeOf = (mark: string): number => Math.min(92, Math.floor(390 / (0.82 * Math.max(1, mark.length))));

/** Browsers that do not write at the edges of a page still print this on every page. Hidden but in print: `.draft-mark`. */
export const draftMark = (mark: string): Markup =>
  html`<svg class="draft-mark" aria-hidden="true" viewBox="0 0 400 400"><text x="200" y="225" text-anchor="middle" font-size="${sizeOf(mark)}" font-weight="700" fill="#000" fill-opacity="0.070" transform="rotate(-45 200 200)">${mark}</text></svg>`;

/** For print styles. */
export const draftMarkStyle = ".draft-mark{display:block;position:fixed;left:0;top:15%;width:100%;z-index:-1}";

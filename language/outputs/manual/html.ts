// The manual as one self-contained HTML file: no request, plain enough for any browser and for paper. Its one script keeps what is
// entered; without it the page is complete.

import type { OutputOptions } from "../output.ts";
import { base64OfHex } from "../text/base64.ts";
import { html, Markup, type Value } from "../text/markup.ts";
import { sha256 } from "../text/sha256.ts";
import type { ManualDocument } from "./document.ts";
import { chapterSections, frontSections, type Section } from "./html-sections.ts";
import { own } from "./html-own.ts";
import { barHtml, scriptHtml } from "./html-tablet.ts";
import { draftMark, pageEdges } from "../page-edges.ts";
import { style } from "./style.ts";
import { tabletScriptHash } from "./tablet/script.ts";

const policyHash = (hash: string): string => `'sha256-${base64OfHex(hash)}'`;

export function manualAsHtml(document: ManualDocument, options: OutputOptions): string {
  const { document: shared } = options.wording;
  // The policy lets in the style and the script alone, each by its own hash; pictures only as data in the file.
  const title = shared.titles([document.title, document.subtitle]),
    whole = style + pageEdges(title, document.draft === "" ? "" : shared.draftMark);
  const policy = `default-src 'none'; img-src data:; style-src ${policyHash(sha256(whole))}; ${document.forPen ? "" : `script-src ${policyHash(tabletScriptHash)}; `}base-uri 'none'; form-action 'none'`;
  const page = html`<!DOCTYPE html>
<html lang="${document.lang}">
<head>
<meta charset="utf-8"/>
<meta http-equiv="Content-Security-Policy" content="${policy}"/>
<meta name="viewport" content="width=device-width, initial-scale=1"/>
<meta name="generator" content="Stripdown"/>
<title>${shared.titles([...(document.draft === "" ? [] : [shared.draftMark]), document.title, document.subtitle])}</title>
<style>${new Markup(whole)}</style>
</head>
<body>
${bodyOf(document, options)}
${!document.forPen && scriptHtml(document, options)}</body>
</html>
`;
  return page.source;
}

/** The body alone, for a view that brings its own head: the same markup as in the file. */
export const manualBody = (document: ManualDocument, options: OutputOptions): string =>
  bodyOf(document, options).source;

function bodyOf(document: ManualDocument, options: OutputOptions): Markup {
  const { manual: words, document: shared } = options.wording;
  const sections = [...frontSections(document, options), ...chapterSections(document, options)].filter(
    ({ name, body }) => body !== undefined && document.sections.includes(name),
  );
  return html`${document.draft !== "" && draftMark(shared.draftMark)}
<header>
<h1>${own(document.title)}</h1>
<p class="lead">${own(document.subtitle)}</p>
${document.draft !== "" && html`<p class="draft">${document.draft}</p>`}
<p class="caution-line">${words.cautions}</p>
${document.review.map((line) => html`<p>${line}</p>`)}</header>
<nav aria-labelledby="contents-title"><h2 id="contents-title">${words.contents}</h2>
<ol>${sections.map(({ id, title }) => html`<li><a href="#${id}">${own(title)}</a></li>`)}</ol></nav>
${!document.forPen && barHtml(options)}<main>
${sections.map(sectionHtml)}</main>
<footer><p>${words.madeWith} ${shared.contentHash(document.provenance.hash)} ${document.draft}</p></footer>`;
}

const sectionHtml = ({
  id,
  title,
  body,
  lies,
}: Section): Value => html`<section id="${id}"${lies === true && html` class="lies"`} aria-labelledby="${id}-title">
<h2 id="${id}-title">${own(title)}</h2>
${body}
</section>
`;

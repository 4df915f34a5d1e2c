// A printed page as one self-contained HTML file: no script, no request, the style let in by its own hash.

import type { OutputOptions } from "./output.ts";
import type { Provenance } from "./draft.ts";
import { base64OfHex } from "./text/base64.ts";
import { html, Markup, type Value } from "./text/markup.ts";
import { draftMark, draftMarkStyle, pageEdges } from "./page-edges.ts";
import { reviewLines } from "./wording/review.ts";
import { shownOnOneLine } from "./text/shown.ts";
import { sha256 } from "./text/sha256.ts";

/** Shared by all sheets; each adds its own. Words and frames carry every meaning, so that it reads in black and white. */
const common = `
:root{color-scheme:light dark;--ink:CanvasText;--line:#808080}
*{box-sizing:border-box}
body{margin:0 auto;padding:1rem 1.2rem 3rem;max-width:68rem;font:1rem/1.4 system-ui,"Segoe UI",Roboto,"Noto Sans",sans-serif;overflow-wrap:anywhere}
h1{font-size:1.5rem;line-height:1.2;margin:.2rem 0}
h2{font-size:1.15rem;margin:1.4rem 0 .4rem}
p{margin:.3rem 0}
.draft{border:3px solid;padding:.4rem .7rem;font-weight:700}
.caution-line{border-left:6px solid;padding:.2rem .7rem}
.scroll{overflow-x:auto}
table{border-collapse:collapse;width:100%;margin:.5rem 0 1rem;font-size:.9rem}
caption{text-align:left;font-weight:700;padding:.3rem 0}
th,td{border:1px solid var(--line);padding:.3rem .45rem;text-align:left;vertical-align:top;overflow-wrap:break-word}
td.n{text-align:right;white-space:nowrap}
td.code{font-family:ui-monospace,Consolas,monospace;font-size:.85em}
thead th{border-bottom:2px solid}
.draft-mark{display:none}
svg.drawing{max-width:100%;height:auto}
@page{margin:14mm}
@media print{${draftMarkStyle}:root{color-scheme:light}body{padding:0;max-width:none;font-size:9.5pt}thead{display:table-header-group}tr,figure,.scroll.short{break-inside:avoid}tbody tr:is(:nth-child(-n+2),:last-child){break-before:avoid}h2,h3{break-after:avoid}.scroll{overflow:visible}table{width:calc(100% - 1px)}table:has(thead th:nth-child(7)){font-size:.84em}}
`;

export interface Page {
  readonly title: string;
  /** CSS of ours, never of an author. */
  readonly style: string;
  readonly body: Value;
}

export function htmlPage(
  { title, style, body }: Page,
  { draft }: Pick<Provenance, "draft">,
  { wording }: OutputOptions,
  base = common,
): string {
  const mark = draft.length > 0 ? wording.document.draftMark : "",
    whole = base + style + (base === common ? pageEdges(title, mark) : ""),
    marked = mark === "" ? title : wording.document.titled(mark, title);
  const policy = `default-src 'none'; style-src 'sha256-${base64OfHex(sha256(whole))}'; base-uri 'none'; form-action 'none'`;
  return html`<!DOCTYPE html>
<html lang="${wording.manual.htmlLang}">
<head>
<meta charset="utf-8"/>
<meta http-equiv="Content-Security-Policy" content="${policy}"/>
<meta name="viewport" content="width=device-width, initial-scale=1"/>
<meta name="generator" content="Stripdown"/>
<title>${marked}</title>
<style>${new Markup(whole)}</style>
</head>
<body>
${mark !== "" && base === common && draftMark(mark)}
${body}
</body>
</html>
`.source;
}

/** Title, draft line, what it was made from, whose word comes first. */
export function pageHead(title: string, provenance: Provenance, { wording, date }: OutputOptions): Markup {
  const { document } = wording;
  return html`<header>
<h1>${title}</h1>
${provenance.draft.length > 0 && html`<p class="draft">${document.draftLine(provenance.openFindings, provenance.draft)}</p>`}
<p class="caution-line">${document.cautionLine}</p>
${reviewLines(wording).map((line) => html`<p>${line}</p>`)}<p>${date !== undefined && `${document.dated(date)} `}${document.contentHash(provenance.hash)}</p>
</header>
`;
}

/** The same facts as plain lines, for drawings and text. */
export function headLines(provenance: Provenance, { wording, date }: OutputOptions): string[] {
  const { document } = wording;
  return [
    ...(provenance.draft.length > 0 ? [document.draftLine(provenance.openFindings, provenance.draft)] : []),
    document.cautionLine,
    ...reviewLines(wording),
    `${date === undefined ? "" : `${document.dated(shownOnOneLine(date))} `}${document.contentHash(provenance.hash)}`,
  ];
}

// Labels on pages of a label sheet, at the size that was asked for. What does not fit one label goes on with the next; nothing is cut away.

import type { LabelGrid, OutputOptions } from "../output.ts";
import { reviewLines } from "../wording/review.ts";
import { htmlPage } from "../page.ts";
import { textLines, textWidth } from "../draw/text-box.ts";
import { html, type Markup } from "../text/markup.ts";
import { shownOnOneLine } from "../text/shown.ts";
import type { LabelData, LabelItem, LabelPlace } from "./data.ts";

/** Three by eight on A4. */
export const usualGrid: LabelGrid = {
  columns: 3,
  rows: 8,
  width: 70,
  height: 37.1,
  pageWidth: 210,
  pageHeight: 297,
  gapX: 0,
  gapY: 0,
};

/** Millimetres. */
const pad = 2.5,
  head = 4.6,
  type = 2.7,
  leading = 3.35;

export interface Label {
  readonly place: LabelPlace;
  readonly number: number;
  readonly of: number;
  readonly lines: readonly string[];
}

export function labelsAsHtml(data: LabelData, options: OutputOptions): string {
  const grid = options.labelGrid ?? usualGrid,
    { wording } = options,
    labels = data.places.flatMap((place) => labelsOf(place, grid, options)),
    perPage = grid.columns * grid.rows;
  const pages: Label[][] = [];
  for (let i = 0; i < labels.length; i += perPage) pages.push(labels.slice(i, i + perPage));
  const draft = data.provenance.draft.length > 0;
  return htmlPage(
    {
      title: wording.labels.title,
      style: styleOf(grid),
      body: html`<header><h1>${wording.labels.title}</h1>
<p class="screen">${draft && wording.document.draftLine(data.provenance.openFindings, data.provenance.draft)} ${wording.labels.printAt} ${wording.document.contentHash(data.provenance.hash)} ${reviewLines(wording).join(" ")}</p></header>
<main>${pages.length === 0 && html`<p>${wording.labels.nothing}</p>`}${pages.map(
        (page) => html`<ol class="page">${page.map((label) => labelHtml(label, draft, options))}</ol>
`,
      )}</main>`,
    },
    data.provenance,
    options,
    "",
  );
}

function labelHtml({ place, number, of, lines }: Label, draft: boolean, { wording }: OutputOptions): Markup {
  const { labels: words, document } = wording;
  return html`<li class="label"><p class="head"><strong>${words.place(place.kind, place.label)}</strong><span>${of > 1 && `${number} / ${of} `}${draft && document.draftMark}</span></p>
${lines.map((line) => html`<p>${line}</p>`)}</li>
`;
}

export function labelsOf(place: LabelPlace, grid: LabelGrid, { wording }: OutputOptions): Label[] {
  const room = grid.width - 2 * pad,
    { labels: words } = wording;
  // A long name of a bag takes the width of the head; what is left of it goes on below.
  const name = words.place(place.kind, place.label),
    long = textWidth(name, 4) > room - 16 ? [name] : [];
  const most = Math.max(1, Math.floor((grid.height - 2 * pad - head) / leading)),
    lines = (text: string): string[] => textLines(shownOnOneLine(text), type, room),
    from = [...long, words.from(place.unit, place.procedure)].flatMap(lines);
  const sheets = packed(
    from,
    place.items.map((item) => lines(itemText(item, wording))),
    most,
  );
  return sheets.map((each, i) => ({
    place: long.length > 0 ? { ...place, label: "…" } : place,
    number: i + 1,
    of: sheets.length,
    lines: each,
  }));
}

/**
 * A thing stands on one label as far as it fits one, so that no bag says half of it. A further label says again what unit it is from,
 * where that leaves half of it for things.
 */
function packed(from: readonly string[], things: readonly (readonly string[])[], most: number): string[][] {
  const again = 2 * from.length <= most ? from : [],
    sheets: string[][] = [[]];
  const put = (line: string): void => {
    if (sheets.at(-1)!.length === most) sheets.push([...again]);
    sheets.at(-1)!.push(line);
  };
  from.forEach(put);
  for (const thing of things) {
    const isWhole = thing.length <= most - again.length;
    if (isWhole && sheets.at(-1)!.length + thing.length > most) sheets.push([...again]);
    thing.forEach(put);
  }
  return sheets;
}

export function itemText(
  { id, name, count, of, size, discard, line, step }: LabelItem,
  { labels: words }: OutputOptions["wording"],
): string {
  return words.item({
    name,
    id,
    count:
      count === undefined
        ? words.countNotGiven
        : of !== undefined && count < of
          ? words.some(count, of)
          : words.count(count),
    size,
    discard,
    line,
    step: step?.number,
  });
}

const mm = (value: number): string => `${Number(value.toFixed(3))}mm`;

/** Dimensions are numbers that the command line read; no author's text comes in here. */
function styleOf({ columns, rows, width, height, pageWidth, pageHeight, gapX, gapY }: LabelGrid): string {
  const left = (pageWidth - columns * width - (columns - 1) * gapX) / 2,
    top = (pageHeight - rows * height - (rows - 1) * gapY) / 2;
  return `
*{box-sizing:border-box}
body{margin:0;font-family:system-ui,"Segoe UI",Roboto,"Noto Sans",sans-serif;color:#000;background:#fff}
h1,.screen,main>p{margin:8px 16px;font-size:1rem}
h1{font-size:1.3rem}
.page{list-style:none;margin:0;position:relative;width:${mm(pageWidth)};height:${mm(pageHeight)};padding:${mm(Math.max(0, top))} 0 0 ${mm(Math.max(0, left))};display:grid;grid-template-columns:repeat(${columns},${mm(width)});grid-template-rows:repeat(${rows},${mm(height)});gap:${mm(gapY)} ${mm(gapX)};align-content:start;justify-content:start;overflow:hidden}
.label{padding:${mm(pad)};overflow:hidden;outline:1px dashed #999}
.label p{margin:0;font-size:${mm(type)};line-height:${mm(leading)};white-space:pre}
.label .head{display:flex;justify-content:space-between;height:${mm(head)};line-height:${mm(head)};font-size:${mm(4)}}
.label .head span{font-size:${mm(type)};font-weight:700}
@page{size:${mm(pageWidth)} ${mm(pageHeight)};margin:0}
@media print{.screen{display:none}h1{position:absolute;width:1px;height:1px;margin:0;overflow:hidden;clip-path:inset(50%)}.label{outline:none}.page{break-after:page}.page:last-child{break-after:auto}}
`;
}

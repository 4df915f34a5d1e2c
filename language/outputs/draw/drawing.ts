// A drawing as SVG in black and white: strokes and words in the colour of the text around it, so that it reads on paper and on a dark
// screen. Each has a title and a description in words that say the same as the picture.

import { shownOnOneLine } from "../text/shown.ts";
import { html, Markup, type Value } from "../text/markup.ts";
import { textLines } from "./text-box.ts";

export interface Drawing {
  /** Unique among the drawings of one document. */
  readonly id: string;
  readonly title: string;
  /** All that the picture says. */
  readonly description: string;
  readonly width: number;
  readonly height: number;
  readonly body: Markup;
}

/** Two places at most, so that every machine writes the same. */
export function n(value: number): string {
  const hundredths = value * 100,
    near = Math.round(hundredths);
  // Half way between two the product may be off by its last bit: there all digits are looked at, which takes ten times as long.
  const isClear = Math.abs(Math.abs(hundredths - near) - 0.5) > 1e-6;
  return String(isClear ? near / 100 + 0 : Number(value.toFixed(2)) + 0);
}

/** A drawing for a page, with no style and no script in it: the page's own text colour and font are its. */
export function svg(drawing: Drawing, className = "drawing"): Markup {
  return html`<svg xmlns="http://www.w3.org/2000/svg" class="${className}" role="img" aria-labelledby="${drawing.id}-title ${drawing.id}-desc" viewBox="0 0 ${n(drawing.width)} ${n(drawing.height)}" width="${n(drawing.width)}" height="${n(drawing.height)}" font-family="system-ui, sans-serif" fill="none" stroke="currentColor">
<title id="${drawing.id}-title">${drawing.title}</title>
<desc id="${drawing.id}-desc">${drawing.description}</desc>
${drawing.body}
</svg>
`;
}

/** Words in a drawing: `anchor` is where `x` is in them. */
export function text(
  x: number,
  y: number,
  size: number,
  says: Value,
  more: { readonly anchor?: "start" | "middle" | "end"; readonly bold?: boolean } = {},
): Markup {
  return html`<text x="${n(x)}" y="${n(y)}" font-size="${n(size)}" text-anchor="${more.anchor ?? "start"}" fill="currentColor" stroke="none"${more.bold === true && html` font-weight="700"`}>${says}</text>`;
}

/** From line to line, for the size of the text. */
export const lineHeight = 1.25;

/** Several lines, one under the other; `y` is the base of the first. */
export const lines = (
  x: number,
  y: number,
  size: number,
  says: readonly string[],
  more: Parameters<typeof text>[4] = {},
): readonly Markup[] => says.map((line, i) => text(x, y + i * size * lineHeight, size, line, more));

/** A head in small type that stands over every drawing which goes out alone: what it is, from what, and that it is a draft. */
export interface Head {
  readonly title: string;
  readonly lines: readonly string[];
}

const pad = 20;

/** Drawings beside and under one another in one file that stands alone. It follows the viewer's choice of a light or a dark ground. */
export function svgFile(head: Head, drawings: readonly Drawing[], empty: string): string {
  const width = Math.max(760, ...drawings.map((drawing) => drawing.width)),
    parts: Value[] = [];
  let y = pad + 18;
  const put = (x: number, top: number, says: string, size: number, room: number, bold = false): number => {
    const wrapped = textLines(shownOnOneLine(says), size, room);
    parts.push(lines(x, top, size, wrapped, { bold }));
    return top + wrapped.length * size * 1.3;
  };
  y = put(pad, y, head.title, 18, width, true);
  for (const line of head.lines) y = put(pad, y, line, 11, width);
  if (drawings.length === 0) y = put(pad, y + 16, empty, 13, width);
  let x = pad,
    bottom = y;
  for (const drawing of drawings) {
    if (x > pad && x + drawing.width > pad + width) {
      x = pad;
      y = bottom;
    }
    const top = put(x, y + 30, drawing.title, 14, drawing.width, true);
    parts.push(html`<g role="img" aria-labelledby="${drawing.id}-title ${drawing.id}-desc" transform="translate(${n(x)} ${n(top)})">
<title id="${drawing.id}-title">${drawing.title}</title>
<desc id="${drawing.id}-desc">${drawing.description}</desc>
${drawing.body}
</g>
`);
    bottom = Math.max(bottom, top + drawing.height);
    x += drawing.width + 40;
  }
  const file = html`<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${n(width + 2 * pad)} ${n(bottom + pad)}" width="${n(width + 2 * pad)}" height="${n(bottom + pad)}" font-family="system-ui, sans-serif" fill="none" stroke="currentColor" aria-labelledby="title">
<title id="title">${head.title}</title>
<style>:root{color-scheme:light dark;color:CanvasText}</style>
${parts}
</svg>
`;
  return file.source;
}

// Small makers of blocks.

import type { Drawing } from "../draw/drawing.ts";
import type { Markup } from "../text/markup.ts";
import type { Wording } from "../wording/wording.ts";
import { shownOnOneLine } from "../text/shown.ts";
import type { Block, Blank, Drawn, Heading, List, Par, Words } from "./print.ts";
import { words } from "./words.ts";

/** The families that the renderer is given: no font of a machine has these names. */
export const families = ["Stripdown Sans", "Stripdown Symbols"] as const;

export const heading = (level: Heading["level"], text: string, page = false, listed = level === 1): Heading => ({
  is: "heading",
  level,
  says: words(text),
  page,
  listed,
});

export const par = (says: Words, look?: Par["look"]): Par => ({ is: "par", says, ...(look ? { look } : {}) });

export const list = (items: readonly string[]): List => ({ is: "list", items: items.map((item) => words(item)) });

export const blank = (label: string, width = 60, after = ""): Blank => ({ label: words(label), after, width });

/** Blocks where there is something to show. */
export const when = (is: boolean, ...blocks: readonly (Block | readonly Block[])[]): readonly Block[] =>
  is ? blocks.flat() : [];

/** A drawing that fits the room, mm. @param most points for one unit of the drawing. */
export function drawn(
  drawing: Drawing,
  room: { readonly width: number; readonly height: number },
  title = "",
  most = 0.75,
): Drawn {
  const scale = Math.min(
    most,
    ((room.width / 25.4) * 72) / drawing.width,
    (((room.height - 22) / 25.4) * 72) / drawing.height,
  );
  return {
    is: "drawing",
    svg: inkSvg(drawing),
    alt: shownOnOneLine(`${drawing.title}. ${drawing.description}`),
    title: words(title),
    width: Number((drawing.width * scale).toFixed(2)),
  };
}

/** A code as it stands beside a heading. */
export const codeOf = (drawing: Drawing, { document }: Wording): NonNullable<Heading["code"]> => ({
  svg: inkSvg(drawing),
  alt: shownOnOneLine(document.titled(drawing.title, drawing.description)),
});

const inkSvg = ({ width, height, body }: Drawing): string =>
  `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width.toFixed(2)} ${height.toFixed(2)}" width="${width.toFixed(2)}" height="${height.toFixed(2)}" font-family="${families.map((name) => `'${name}'`).join(", ")}" fill="none" color="#000" stroke="#000">${body.source}</svg>`;

/** An inline SVG of a page as a file of its own. */
export const svgFileOf = (markup: Markup): string =>
  markup.source.replace(/^<svg /, '<svg xmlns="http://www.w3.org/2000/svg" ');

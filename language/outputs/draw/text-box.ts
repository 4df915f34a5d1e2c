// Text in a box of a drawing: how wide it will be about, and where it breaks. No font is at hand when a drawing is made, so widths are
// taken a little too wide rather than too narrow.

import { shown } from "../text/shown.ts";

/** Found once for each sign of the usual scripts: tables for paper ask for every letter of every cell. */
const found = new Float64Array(0x1100);

function signWidth(code: number): number {
  if (code >= 0x1100) return 1.05;
  return (found[code]! ||= measured(String.fromCharCode(code)));
}

/** Widths as shares of the font's size, by classes of signs; measured on common sans-serif fonts and rounded up. */
function measured(sign: string): number {
  if (/[ijlI.,:;'|!()[\]{}`]/.test(sign)) return 0.34;
  if (/[ftr \-"/\\]/.test(sign)) return 0.42;
  if (/[mwMW@%—…]/.test(sign)) return 0.98;
  return /\p{Lu}/u.test(sign) ? 0.74 : 0.62;
}

/** In the unit of `size`. */
export const textWidth = (text: string, size: number): number => widened(0, text) * size;

/** A width as a share of the font's size, with these signs behind it. */
function widened(sum: number, by: string): number {
  for (let at = 0; at < by.length; at++) {
    const code = by.codePointAt(at)!;
    if (code > 0xffff) at++;
    sum += signWidth(code);
  }
  return sum;
}

/** The same in bold, which some common fonts set much wider. */
export const boldWidth = (text: string, size: number): number => textWidth(text, size) * 1.18;

/** Blanks where a line may end: what a no-break space holds together stays together. */
const blanks = /[^\S\u00a0\u202f]+/;

/** Lines of at most `width`; a word that is wider breaks inside. Nothing is cut away. */
export function textLines(text: string, size: number, width: number): string[] {
  const lines: string[] = [];
  let line = "",
    wide = 0;
  for (const word of shown(text).split(blanks).filter(Boolean)) {
    const more = line === "" ? word : ` ${word}`,
      wider = widened(wide, more);
    if (wider * size <= width) {
      line += more;
      wide = wider;
      continue;
    }
    if (line !== "") lines.push(line);
    line = "";
    wide = 0;
    for (const sign of word) {
      if (line !== "" && widened(wide, sign) * size > width) {
        lines.push(line);
        line = "";
        wide = 0;
      }
      line += sign;
      wide = widened(wide, sign);
    }
  }
  if (line !== "") lines.push(line);
  return lines;
}

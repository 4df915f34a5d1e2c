// Text in a box of a drawing: how wide it will be about, and where it breaks. No font is at hand when a drawing is made, so widths are
// taken a little too wide rather than too narrow.

/** Widths as shares of the font's size, by classes of signs; measured on common sans-serif fonts and rounded up. */
function signWidth(sign: string): number {
  const code = sign.codePointAt(0)!;
  if (code >= 0x1100) return 1.05;
  if (/[ijlI.,:;'|!()[\]{}`]/.test(sign)) return 0.34;
  if (/[ftr \-"/\\]/.test(sign)) return 0.42;
  if (/[mwMW@%—…]/.test(sign)) return 0.98;
  return /\p{Lu}/u.test(sign) ? 0.74 : 0.62;
}

/** In the unit of `size`. */
export const textWidth = (text: string, size: number): number =>
  [...text].reduce((sum, sign) => sum + signWidth(sign), 0) * size;

/** Lines of at most `width`; a word that is wider breaks inside. Nothing is cut away. */
export function textLines(text: string, size: number, width: number): string[] {
  const lines: string[] = [];
  let line = "";
  for (const word of text.split(/\s+/).filter(Boolean)) {
    const longer = line === "" ? word : `${line} ${word}`;
    if (textWidth(longer, size) <= width) {
      line = longer;
      continue;
    }
    if (line !== "") lines.push(line);
    line = "";
    for (const sign of word) {
      if (line !== "" && textWidth(line + sign, size) > width) {
        lines.push(line);
        line = "";
      }
      line += sign;
    }
  }
  if (line !== "") lines.push(line);
  return lines;
}

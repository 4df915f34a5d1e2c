// How wide a text is on paper: a PDF has its own fonts, so that the widths of their signs are known. Advance widths of Noto Sans Regular,
// as shares of the font's size, rounded up (tests/outputs/pdf/sign-widths.test.ts holds them against the font).

import { textWidth } from "../draw/text-box.ts";

/** From the narrowest to the widest. */
const widths: readonly (readonly [number, string])[] = [
  [0.23, "'"],
  [0.26, " \u00a0ijl"],
  [0.27, "!,.:;¡·"],
  [0.28, "J"],
  [0.3, "()`´"],
  [0.33, "-[]\u00ad"],
  [0.34, "I"],
  [0.35, "f²³"],
  [0.38, "t/\\{}"],
  [0.42, 'r"°'],
  [0.45, "?_"],
  [0.47, "z"],
  [0.48, "cs"],
  [0.51, "vy«»"],
  [0.53, "FLx"],
  [0.54, "k"],
  [0.56, "STE*|"],
  [0.58, "aeYZ0123456789$+<=>^~±×–"],
  [0.6, "VX"],
  [0.61, "Po"],
  [0.63, "bdghnpquKRµ"],
  [0.65, "ACB#ß"],
  [0.74, "DGU&ŉ"],
  [0.76, "HNŊ"],
  [0.79, "OQwØ"],
  [0.84, "%"],
  [0.9, "@æÆ"],
  [0.95, "MWmœŒ"],
];

/** What a word in bold is wider by: a part of its width, and of the size for each sign. */
const boldness = 0.05,
  boldSign = 0.025;

/** By the code of a sign; found once. */
const found = new Float64Array(0x2100);
for (const [width, signs] of widths) for (const sign of signs) found[sign.codePointAt(0)!] = width;

function signWidth(sign: string): number {
  const code = sign.codePointAt(0)!;
  if (code >= found.length) return textWidth(sign, 1);
  // One with a mark is as wide as without.
  return (found[code]! ||= found[sign.normalize("NFD").codePointAt(0)!]! || textWidth(sign, 1));
}

/** In the unit of `size`. */
export function printedWidth(text: string, size: number, bold = false): number {
  let sum = 0,
    count = 0;
  for (const sign of text) {
    sum += signWidth(sign);
    count++;
  }
  return size * (bold ? sum * (1 + boldness) + count * boldSign : sum);
}

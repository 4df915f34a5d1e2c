// Texts for paper: what acts on its surroundings is shown by its number, what is wider than its place may break inside.

import { shownOnOneLine } from "../text/shown.ts";
import { unparted } from "../text/unparted.ts";
import type { Run, Words } from "./print.ts";
import { printedWidth } from "./sign-widths.ts";

/** Signs after which a long word is cut anyway. */
const longest = 28;

/** What no line parts: words, and those with a hyphen in halves. */
export const piecesOf = (text: string): string[] => text.split(/ |(?<=\p{L}[-\u00ad])(?=\p{L})/u);

/** One text. `most`: letters that fit in a line of its place, or whether a word is wider than that. */
export function words(text: string, most: number | ((word: string) => boolean) = longest): Words {
  const plain = unparted(shownOnOneLine(text)),
    isWide = typeof most === "number" ? (word: string): boolean => word.length > most && [...word].length > most : most;
  if (!plain.split(" ").some(isWide)) return plain;
  // A wide word that has a hyphen, also one that shows at a line's end alone, breaks there before it breaks anywhere; a path behind a
  // folder.
  const pieces = plain
    .split(/( )/)
    .flatMap((piece) => (isWide(piece) ? piece.split(/(?<=\p{L}[-\u00ad])(?=\p{L})|(?<=\/)(?=\w)/u) : [piece]));
  return pieces.reduce<Run[]>((runs, piece) => {
    const cut = isWide(piece),
      last = runs.at(-1);
    if (!cut && last && last.cut === undefined) runs[runs.length - 1] = { t: last.t + piece };
    else if (piece !== "") runs.push(cut ? { t: piece, cut: true } : { t: piece });
    return runs;
  }, []);
}

export const bold = (text: string): Words => runsOf(words(text)).map((run) => ({ ...run, b: true as const }));

/** Several after one another with a space between; empty ones vanish. */
export function joined(...texts: readonly (Words | false | undefined)[]): Words {
  const all = texts.filter((each): each is Words => each !== undefined && each !== false && each.length > 0);
  if (all.every((each) => typeof each === "string")) return all.join(" ");
  return all.flatMap((each, i) => [...(i > 0 ? [{ t: " " }] : []), ...runsOf(each)]);
}

export const runsOf = (text: Words): readonly Run[] => (typeof text === "string" ? [{ t: text }] : text);
export const plainOf = (text: Words): string => (typeof text === "string" ? text : text.map(({ t }) => t).join(""));

/** How wide it is at most, in the unit of `size`. */
export const widthOf = (text: Words, size: number, isBold = false): number => printedWidth(plainOf(text), size, isBold);

/** One that takes more than a few lines may go over the end of a page; others are kept whole. */
export const isHigh = (texts: readonly (Words | undefined)[]): boolean =>
  texts.reduce((sum, text) => sum + 60 + (text === undefined ? 0 : plainOf(text).length), 0) > 2600;

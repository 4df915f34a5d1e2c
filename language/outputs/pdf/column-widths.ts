// How the width of a table is shared out between its columns, so that no word breaks that need not and the rows are low. Points.

import { printedWidth } from "./sign-widths.ts";
import { piecesOf } from "./words.ts";

/** What a cell's frame keeps of the column's width, both sides together. */
export const padding = 10;

export interface Demand {
  /** As wide as its longest usual word, or as what is written in it by hand. */
  readonly least: number;
  /** As wide as its longest text. */
  readonly most: number;
  /** How much text of the column has no room in its least width: what it asks for beside the others. */
  readonly wants: number;
  /** Of each text, the head first, the widths of the pieces that no line parts. */
  readonly texts: readonly (readonly number[])[];
  /** Of the blank between two pieces. */
  readonly gap: number;
}

/** @param texts the head first. @param bold the others are, as the head is. @param blank mm, of a column that is written in by hand. */
export function demandOf(texts: readonly string[], size: number, bold: boolean, blank: number | undefined): Demand {
  const widths = texts.map((text, i) => printedWidth(text, size, bold || i === 0)),
    pieces = texts.map((text, i) => piecesOf(text).map((piece) => printedWidth(piece, size, bold || i === 0))),
    ofWords = Math.max(...pieces.flat()),
    ofTexts = Math.max(...widths);
  const blankWidth = blank === undefined ? 0 : (blank / 25.4) * 72,
    least = Math.max(blankWidth, Math.min(ofWords * 1.02, size * 12) + padding);
  // Of one word alone the text is narrower than the word with its allowance: nothing is taken from such a column.
  return {
    least,
    most: Math.max(least, Math.min(ofTexts, size * 60) + padding),
    wants: widths.reduce((sum, width) => sum + Math.max(0, width + padding - least), 0),
    texts: pieces,
    gap: printedWidth(" ", size),
  };
}

export const columnWidths = (columns: readonly Demand[], whole: number): readonly number[] =>
  levelled(shared(columns, whole), columns);

/**
 * What is left over when every column has its least goes by how much text still has no room: one long cell does not take what ten others
 * need. No column gets more than its longest text, as long as another can use it.
 */
function shared(columns: readonly Demand[], whole: number): number[] {
  const least = columns.reduce((sum, column) => sum + column.least, 0);
  if (least >= whole) return columns.map((column) => (column.least / least) * whole);
  const widths = columns.map((column) => column.least);
  let left = whole - least;
  for (let rounds = 0; rounds < columns.length && left > 0.01; rounds++) {
    const open = columns.map(({ most, wants }, i) => (widths[i]! < most ? wants : 0)),
      wanted = open.reduce((sum, each) => sum + each, 0);
    if (wanted === 0) break;
    const before = left;
    open.forEach((wants, i) => {
      const more = Math.min((before * wants) / wanted, columns[i]!.most - widths[i]!);
      widths[i]! += more;
      left -= more;
    });
  }
  return widths.map((width) => width + Math.max(0, left) / columns.length);
}

/** Widths that are moved from one column to another at a time. */
const steps = [36, 18, 9, 4.5] as const;

/**
 * A row is as high as its fullest cell. Width goes, a step at a time, from the column that misses it least to the one that saves most
 * lines, until none saves any.
 */
function levelled(widths: readonly number[], columns: readonly Demand[]): readonly number[] {
  const now = [...widths],
    lines = columns.map((column, i) => linesIn(column, now[i]!));
  for (const step of steps) {
    const narrower = columns.map((column, i) => narrowed(column, now[i]!, step)),
      wider = columns.map((column, i) => linesIn(column, now[i]! + step));
    for (let moves = 0; moves < 20; moves++) {
      const high = heightOf(lines);
      let giver = -1,
        taker = -1,
        least = high - 0.05;
      // What is not lower by the wider column alone is not by both.
      wider.forEach((more, i) => {
        if (heightOf(lines, i, more) >= least) return;
        narrower.forEach((less, j) => {
          if (i === j || !less) return;
          const height = heightOf(lines, i, more, j, less);
          if (height < least) [taker, giver, least] = [i, j, height];
        });
      });
      if (giver < 0) break;
      now[giver]! -= step;
      now[taker]! += step;
      for (const i of [giver, taker]) {
        lines[i] = linesIn(columns[i]!, now[i]!);
        narrower[i] = narrowed(columns[i]!, now[i]!, step);
        wider[i] = linesIn(columns[i]!, now[i]! + step);
      }
    }
  }
  return now;
}

/**
 * Lines of all rows; those of a cell beside a fuller one count a little, so that two that are as full can be widened after one another.
 * @param i this column with other lines; @param j this one too.
 */
function heightOf(
  lines: readonly (readonly number[])[],
  i = -1,
  ofI: readonly number[] = [],
  j = -1,
  ofJ: readonly number[] = [],
): number {
  let sum = 0;
  const rows = lines[0]?.length ?? 0;
  for (let row = 0; row < rows; row++) {
    let most = 0;
    for (let column = 0; column < lines.length; column++) {
      const each = column === i ? ofI[row]! : column === j ? ofJ[row]! : lines[column]![row]!;
      if (each > most) most = each;
      sum += 0.1 * each;
    }
    sum += most;
  }
  return sum;
}

const narrowed = (column: Demand, width: number, step: number): number[] | undefined =>
  width - step < column.least ? undefined : linesIn(column, width - step);

/** How many lines each text takes, filled word by word. */
const linesIn = ({ texts, gap }: Demand, width: number): number[] =>
  texts.map((pieces) => {
    const room = (width - padding) * 0.98;
    let count = 1,
      at = 0;
    for (const piece of pieces) {
      if (at > 0 && at + gap + piece > room) {
        count++;
        at = piece;
      } else at += (at > 0 ? gap : 0) + piece;
    }
    return count;
  });

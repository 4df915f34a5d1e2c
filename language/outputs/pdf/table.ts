// Tables for paper: columns that are empty throughout are left out, and each gets the width that its words need.

import type { Table, Words } from "./print.ts";
import { piecesOf, plainOf, widthOf, words } from "./words.ts";

export interface Column<Row> {
  readonly head: string;
  /** A text, or several that stand under one another. */
  cell(row: Row): string | number | readonly string[];
  readonly is?: "n";
  /** It names the row. */
  readonly isHead?: true;
  /** mm; for a column that is written in by hand. */
  readonly blank?: number;
}

const padding = 10;

/**
 * @param room width of the table, mm.
 * @param caption "" where the heading just above says the same.
 * @param wholeTo up to this height it stays on one page, points; else where it is short.
 */
export function table<Row>(
  caption: string,
  columns: readonly Column<Row>[],
  rows: readonly Row[],
  room: number,
  size = 9,
  wholeTo = 0,
): Table {
  const whole = (room / 25.4) * 72,
    cells = rows.map((row) => columns.map((column) => textOf(column.cell(row))));
  const used = columns
    .map((column, i) => ({ column, i }))
    .filter(({ column, i }) => column.isHead || column.blank !== undefined || cells.some((row) => row[i] !== ""));
  const columnTexts = used.map(({ column, i }) => [column.head, ...cells.map((row) => row[i]!)]),
    widths = share(
      columnTexts.map((texts, i) => bounds(texts, size, used[i]!.column.blank)),
      whole,
    );
  const fitted = (text: string, i: number): Words =>
    words(text, (word) => [...word].length > 1 && widthOf(word, size) > widths[i]! - padding);
  const lines = linesIn(cells.map((row) => used.map(({ i }, at) => widthOf(row[i]!, size) / (widths[at]! - padding))));
  return {
    is: "table",
    caption: words(caption),
    heads: used.map(({ column }, i) => fitted(column.head, i)),
    widths: widths.map((width) => Number(width.toFixed(1))),
    aligns: used.map(({ column }) => (column.is === "n" ? "right" : "left")),
    rows: cells.map((row) =>
      used.map(({ column, i }, at): Words => {
        const cell = fitted(row[i]!, at);
        return column.isHead
          ? (typeof cell === "string" ? [{ t: cell }] : cell).map((run) => ({ ...run, b: true }))
          : cell;
      }),
    ),
    high: cells.some((row) => used.some(({ i }, at) => widthOf(row[i]!, size) > 14 * widths[at]!)),
    whole: lines <= 12 || lines * size * 1.3 + (rows.length + 1) * padding <= wholeTo,
    size,
  };
}

/** Lines that the rows take, about: of each its fullest cell. @param fill how many times a cell's text is as wide as its column. */
const linesIn = (fill: readonly (readonly number[])[]): number =>
  fill.reduce((sum, row) => sum + Math.max(1, ...row.map((each) => (each <= 1.02 ? 1 : Math.ceil(each * 1.15)))), 0);

const textOf = (value: string | number | readonly string[]): string =>
  plainOf(words(Array.isArray(value) ? value.join("; ") : String(value as string | number), Number.POSITIVE_INFINITY));

interface Bounds {
  readonly least: number;
  readonly most: number;
  /** How much text of the column has no room in its least width: what it asks for beside the others. */
  readonly wants: number;
}

/** A column is at least as wide as its longest usual word, and at most as its longest text. Points. */
function bounds(texts: readonly string[], size: number, blank: number | undefined): Bounds {
  const ofWords = Math.max(...texts.flatMap((text) => piecesOf(text).map((piece) => widthOf(piece, size)))),
    ofTexts = Math.max(...texts.map((text) => widthOf(text, size)));
  const blankWidth = blank === undefined ? 0 : (blank / 25.4) * 72,
    least = Math.max(blankWidth, Math.min(ofWords * 1.02, size * 12) + padding);
  // Of one word alone the text is narrower than the word with its allowance: nothing is taken from such a column.
  return {
    least,
    most: Math.max(least, Math.min(ofTexts, size * 60) + padding),
    wants: texts.reduce((sum, text) => sum + Math.max(0, widthOf(text, size) + padding - least), 0),
  };
}

/**
 * What is left over when every column has its least goes by how much text still has no room: one long cell does not take what ten others
 * need. No column gets more than its longest text, as long as another can use it.
 */
function share(columns: readonly Bounds[], whole: number): number[] {
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

// Tables for paper: columns that are empty throughout are left out, and each gets the width that its words need.

import type { Table, Words } from "./print.ts";
import { columnWidths, demandOf, padding } from "./column-widths.ts";
import { plainOf, runsOf, widthOf, words } from "./words.ts";

export interface Column<Row> {
  readonly head: string;
  cell(row: Row): string | number;
  /** The language of its texts, where it is another than the document's. */
  readonly lang?: string;
  readonly is?: "n";
  /** It names the row. */
  readonly isHead?: true;
  /** mm; for a column that is written in by hand. */
  readonly blank?: number;
}

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
    widths = columnWidths(
      columnTexts.map((texts, i) => demandOf(texts, size, used[i]!.column.isHead === true, used[i]!.column.blank)),
      whole,
    );
  const fitted = (text: string, i: number, isBold: boolean): Words =>
    words(text, (word) => [...word].length > 1 && widthOf(word, size, isBold) > widths[i]! - padding);
  const lines = linesIn(cells.map((row) => used.map(({ i }, at) => widthOf(row[i]!, size) / (widths[at]! - padding))));
  return {
    is: "table",
    caption: words(caption),
    heads: used.map(({ column }, i) => fitted(column.head, i, true)),
    widths: widths.map((width) => Number(width.toFixed(1))),
    aligns: used.map(({ column }) => (column.is === "n" ? "right" : "left")),
    rows: cells.map((row) =>
      used.map(({ column, i }, at): Words => {
        const cell = fitted(row[i]!, at, column.isHead === true);
        return column.isHead === undefined && column.lang === undefined
          ? cell
          : runsOf(cell).map((run) => ({
              ...run,
              ...(column.isHead && { b: true as const }),
              ...(column.lang !== undefined && { l: column.lang }),
            }));
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

const textOf = (value: string | number): string => plainOf(words(String(value), Number.POSITIVE_INFINITY));

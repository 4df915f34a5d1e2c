// The label sheet that the user describes by its dimensions: what does not fit the page is refused.

import type { LabelGrid } from "../outputs/output.ts";
import { CannotRun, type ParsedArgs } from "./command.ts";
import { option } from "./project-run.ts";

/** Width and height in millimetres: ISO 216 A4; ANSI/ASME Y14.1 A (Letter). */
const pages: Readonly<Record<string, readonly [number, number]>> = { a4: [210, 297], letter: [215.9, 279.4] };

export function labelGrid(args: ParsedArgs): LabelGrid {
  const pageName = option(args, "page") ?? "A4",
    page = Object.hasOwn(pages, pageName.toLowerCase()) ? pages[pageName.toLowerCase()]! : undefined;
  if (!page) throw new CannotRun(`--page ${pageName}: it is A4 or Letter`);
  const [pageWidth, pageHeight] = page,
    grid = option(args, "grid") ?? "3x8",
    counts = /^([1-9]\d?)\s*[x×]\s*([1-9]\d?)$/i.exec(grid.trim());
  if (!counts) throw new CannotRun(`--grid ${grid}: labels across and down are due, as 3x8`);
  const columns = Number(counts[1]),
    rows = Number(counts[2]),
    [gapX, gapY] = lengths(args, "gap") ?? [0, 0];
  const floor = (value: number): number => Math.floor(value * 10 + 1e-9) / 10;
  const [width, height] = lengths(args, "label") ?? [
    floor((pageWidth - (columns - 1) * gapX) / columns),
    floor((pageHeight - (rows - 1) * gapY) / rows),
  ];
  const wide = columns * width + (columns - 1) * gapX,
    high = rows * height + (rows - 1) * gapY,
    slack = 0.05;
  if (wide > pageWidth + slack)
    throw new CannotRun(
      `${columns} labels of ${width} mm need ${tidy(wide)} mm across, and ${pageName} is ${pageWidth} mm wide`,
    );
  if (high > pageHeight + slack)
    throw new CannotRun(
      `${rows} labels of ${height} mm need ${tidy(high)} mm down, and ${pageName} is ${pageHeight} mm high`,
    );
  if (width < 25 || height < 12)
    throw new CannotRun(`a label of ${width} x ${height} mm is too small to be read: at least 25 x 12 mm`);
  return { columns, rows, width, height, pageWidth, pageHeight, gapX, gapY };
}

/** `70x36`, `70x36 mm`, `2.625x1in` in millimetres. */
function lengths(args: ParsedArgs, name: string): readonly [number, number] | undefined {
  const text = option(args, name);
  if (text === undefined) return undefined;
  const match = /^(\d{1,4}(?:\.\d{1,4})?)\s*[x×]\s*(\d{1,4}(?:\.\d{1,4})?)\s*(mm|in)?$/i.exec(text.trim());
  if (!match) throw new CannotRun(`--${name} ${text}: two lengths are due, as 70x36 or 2.625x1in`);
  const factor = match[3]?.toLowerCase() === "in" ? 25.4 : 1;
  return [tidy(Number(match[1]) * factor), tidy(Number(match[2]) * factor)];
}

const tidy = (value: number): number => Number(value.toFixed(3));

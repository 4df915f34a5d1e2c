// A place of the text as a program reads it: file, line and column from 1, and the offsets.

import type { Span } from "../findings/finding.ts";

export interface Place {
  readonly file: string;
  readonly line: number;
  readonly column: number;
  readonly endLine: number;
  readonly endColumn: number;
  readonly start: number;
  readonly end: number;
}

/** Makes places; the line starts of a file are found once. Columns count UTF-16 code units. */
export function placesIn(
  texts: ReadonlyMap<string, string>,
  showPath: (path: string) => string = (path) => path,
): (span: Span) => Place {
  const starts = new Map<string, readonly number[]>();
  const startsOf = (file: string): readonly number[] => {
    const had = starts.get(file);
    if (had) return had;
    const text = texts.get(file) ?? "",
      found = [0];
    for (let at = text.indexOf("\n"); at >= 0; at = text.indexOf("\n", at + 1)) found.push(at + 1);
    starts.set(file, found);
    return found;
  };
  const at = (file: string, offset: number): [number, number] => {
    const lines = startsOf(file);
    let low = 0,
      high = lines.length - 1;
    while (low < high) {
      const middle = (low + high + 1) >> 1;
      if (lines[middle]! <= offset) low = middle;
      else high = middle - 1;
    }
    return [low + 1, offset - lines[low]! + 1];
  };
  return ({ file, start, end }) => {
    const [line, column] = at(file, start),
      [endLine, endColumn] = at(file, end);
    return { file: showPath(file), line, column, endLine, endColumn, start, end };
  };
}

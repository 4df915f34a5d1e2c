// Offsets to lines and columns, and back. Columns count UTF-16 code units; CR, LF and CRLF each end one line.

export interface Lines {
  /** Offset of the start of each line. */
  readonly starts: readonly number[];
  readonly length: number;
}

/** Both from 0. */
export interface Position {
  readonly line: number;
  readonly column: number;
}

export function linesOf(text: string): Lines {
  const starts = [0];
  for (let i = 0; i < text.length; i++) {
    const c = text.charCodeAt(i);
    if (c === 10) starts.push(i + 1);
    else if (c === 13 && text.charCodeAt(i + 1) !== 10) starts.push(i + 1);
  }
  return { starts, length: text.length };
}

/** An offset outside the text counts as its nearest end. */
export function positionAt({ starts, length }: Lines, offset: number): Position {
  const at = Math.max(0, Math.min(offset, length));
  let low = 0,
    high = starts.length - 1;
  while (low < high) {
    const middle = (low + high + 1) >> 1;
    if (starts[middle]! <= at) low = middle;
    else high = middle - 1;
  }
  return { line: low, column: at - starts[low]! };
}

/** A column past the end of its line counts as that end. */
export function offsetAt({ starts, length }: Lines, { line, column }: Position): number {
  if (line < 0) return 0;
  if (line >= starts.length) return length;
  const end = line + 1 < starts.length ? starts[line + 1]! : length;
  return Math.min(starts[line]! + Math.max(0, column), end);
}

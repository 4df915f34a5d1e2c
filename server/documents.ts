// The documents that the client has open. Positions count in the encoding that was agreed with it: UTF-16 units, or bytes of UTF-8.

import type { Position, TextDocumentContentChangeEvent } from "vscode-languageserver";
import { linesOf, offsetAt, positionAt, type Lines } from "../language/index.ts";

export type Encoding = "utf-16" | "utf-8";

export interface Document {
  readonly uri: string;
  readonly path: string;
  readonly version: number;
  readonly text: string;
}

let newest: { text: string; lines: Lines } | undefined;

/** Line starts of a text; those of the text asked last are kept. */
function linesFor(text: string): Lines {
  if (newest?.text === text) return newest.lines;
  newest = { text, lines: linesOf(text) };
  return newest.lines;
}

export function toOffset(
  text: string,
  { line, character }: Position,
  encoding: Encoding,
  lines: Lines = linesFor(text),
): number {
  if (encoding === "utf-16") return offsetAt(lines, { line, column: character });
  const start = offsetAt(lines, { line, column: 0 }),
    end = lines.starts[line + 1] ?? text.length;
  let bytes = 0,
    at = start;
  while (at < end && bytes < character) {
    const point = text.codePointAt(at)!;
    bytes += point < 0x80 ? 1 : point < 0x800 ? 2 : point < 0x10000 ? 3 : 4;
    at += point > 0xffff ? 2 : 1;
  }
  return at;
}

export function toPosition(text: string, offset: number, encoding: Encoding, lines: Lines = linesFor(text)): Position {
  const { line, column } = positionAt(lines, offset);
  if (encoding === "utf-16") return { line, character: column };
  const start = lines.starts[line]!;
  let bytes = 0;
  for (let at = start; at < start + column;) {
    const point = text.codePointAt(at)!;
    bytes += point < 0x80 ? 1 : point < 0x800 ? 2 : point < 0x10000 ? 3 : 4;
    at += point > 0xffff ? 2 : 1;
  }
  return { line, character: bytes };
}

/** The text after the changes of one notification, in their order. */
export function changed(text: string, changes: readonly TextDocumentContentChangeEvent[], encoding: Encoding): string {
  let now = text;
  for (const change of changes) {
    if (!("range" in change)) {
      now = change.text;
      continue;
    }
    const lines = linesOf(now),
      start = toOffset(now, change.range.start, encoding, lines),
      end = toOffset(now, change.range.end, encoding, lines);
    now = now.slice(0, Math.min(start, end)) + change.text + now.slice(Math.max(start, end));
  }
  return now;
}

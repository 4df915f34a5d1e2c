// Paths and offsets of the compiler to addresses and positions of the protocol, and back.

import type { Location, Position, Range } from "vscode-languageserver";
import { linesOf, offsetAt, positionAt, type Checked, type Lines, type Span } from "../language/index.ts";

/** The path of a `file:` address; another address is its own path. */
export function pathOf(uri: string): string {
  if (!uri.startsWith("file://")) return uri;
  const path = decodeURIComponent(uri.slice(uri.indexOf("/", "file://".length)));
  return /^\/[A-Za-z]:/.test(path) ? path.slice(1) : path;
}

export function uriOf(path: string): string {
  if (/^[a-z][a-z0-9+.-]+:/i.test(path) && !/^[A-Za-z]:[\\/]/.test(path)) return path;
  const full = path.startsWith("/") ? path : `/${path}`;
  return `file://${full.split("/").map((part) => encodeURIComponent(part)).join("/")}`;
}

const known = new WeakMap<object, Lines>();

export function linesIn(checked: Checked, path: string): Lines {
  const file = checked.project.files.get(path);
  if (!file) return linesOf("");
  let lines = known.get(file);
  if (!lines) known.set(file, (lines = linesOf(file.text)));
  return lines;
}

export function positionOf(checked: Checked, path: string, offset: number): Position {
  const { line, column } = positionAt(linesIn(checked, path), offset);
  return { line, character: column };
}
export function offsetOf(checked: Checked, path: string, { line, character }: Position): number {
  return offsetAt(linesIn(checked, path), { line, column: character });
}
export function rangeOf(checked: Checked, span: Span): Range {
  return { start: positionOf(checked, span.file, span.start), end: positionOf(checked, span.file, span.end) };
}
export function locationOf(checked: Checked, span: Span): Location {
  return { uri: uriOf(span.file), range: rangeOf(checked, span) };
}

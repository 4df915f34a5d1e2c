// Tables as CSV by RFC 4180, in a form that no spreadsheet takes for a formula.

import { shown } from "./shown.ts";

export type Cell = string | number | undefined;

/**
 * Lines end in CRLF, as RFC 4180 says. A text that begins with a sign that spreadsheets take for the start of a formula (= + - @, their
 * wide forms, tab, line break) gets an apostrophe before it; numbers of ours are numbers.
 */
export function csv(head: readonly string[], rows: readonly (readonly Cell[])[]): string {
  return [head, ...rows].map((row) => `${row.map(cell).join(",")}\r\n`).join("");
}

function cell(value: Cell): string {
  if (value === undefined) return "";
  if (typeof value === "number") return String(value);
  const text = shown(value),
    harmless = /^\s*[=+\-@＝＋－＠\t\n|%]/.test(text) ? `'${text}` : text;
  return /[",\r\n;\t]/.test(harmless) || harmless !== harmless.trim()
    ? `"${harmless.replaceAll('"', '""')}"`
    : harmless;
}

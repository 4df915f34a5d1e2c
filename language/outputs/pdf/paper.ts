// Paper sizes, and a date as the file's own.

import type { OutputOptions } from "../output.ts";
import type { PrintDocument } from "./print.ts";

/** mm, upright. A4 by ISO 216; Letter is 8 1/2 by 11 inches. */
export const papers = {
  a4: { width: 210, height: 297 },
  letter: { width: 215.9, height: 279.4 },
} as const;
export type Paper = keyof typeof papers;

export function pageOf(
  { paper }: OutputOptions,
  margin: PrintDocument["page"]["margin"],
  lies = false,
): PrintDocument["page"] {
  const { width, height } = papers[paper ?? "a4"];
  return lies ? { width: height, height: width, margin } : { width, height, margin };
}

/** The date that was given, where it is one of the calendar: 2026-03-31. Else the file carries none; no clock is read. */
export function dateOf({ date }: OutputOptions): Pick<PrintDocument, "date"> {
  const match = /^(\d{4})-(\d{2})-(\d{2})$/.exec(date ?? "");
  if (!match) return {};
  const [year, month, day] = match.slice(1).map(Number) as [number, number, number],
    days = [
      31,
      year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0) ? 29 : 28,
      31,
      30,
      31,
      30,
      31,
      31,
      30,
      31,
      30,
      31,
    ];
  return day >= 1 && day <= (days[month - 1] ?? 0) ? { date: [year, month, day] } : {};
}

// When the calibration of an instrument falls due, held against the date of the reading that the record itself gives. No clock is read,
// and a calibration that is not overdue is told as nothing: it says nothing about the instrument.

import type { Instrument } from "./record.ts";

/** Days of a month by the Gregorian calendar. */
const daysIn = (year: number, month: number): number =>
  month === 2
    ? year % 4 === 0 && (year % 100 !== 0 || year % 400 === 0)
      ? 29
      : 28
    : [4, 6, 9, 11].includes(month)
      ? 30
      : 31;

/** A calendar date as ISO 8601 writes it, `2027-03-31`. */
export const isDate = (text: string): boolean => lastDayOf(text) === text;

/** A date, or a month as test labels give it: `2027-03`. */
export const isDue = (text: string): boolean => lastDayOf(text) !== undefined;

/** The day itself, or the last day of the month (common practice); undefined for what is neither. */
function lastDayOf(text: string): string | undefined {
  const [, y = "", m = "", d] = /^(\d{4})-(\d{2})(?:-(\d{2}))?$/.exec(text) ?? [],
    year = Number(y),
    month = Number(m);
  if (y === "" || month < 1 || month > 12) return undefined;
  const last = daysIn(year, month);
  if (d === undefined) return `${text}-${String(last).padStart(2, "0")}`;
  return Number(d) >= 1 && Number(d) <= last ? text : undefined;
}

/** True where the reading was taken after the day; undefined where one of the two is no date. The day itself still counts. */
export function isOverdue(due: string, on: string): boolean | undefined {
  const last = lastDayOf(due);
  return last === undefined || !isDate(on) ? undefined : on > last;
}

/** The date that a text begins with, `2027-03-31, 14:00`; undefined where it begins with none. */
export function dateIn(text: string | undefined): string | undefined {
  const begins = /^\s*(\d{4}-\d{2}-\d{2})(?!\d)/.exec(text ?? "")?.[1];
  return begins !== undefined && isDate(begins) ? begins : undefined;
}

const same = (a: string | undefined, b: string): boolean =>
  a !== undefined && a.trim() !== "" && a.trim().toLowerCase() === b.trim().toLowerCase();

/** The instrument that a line names by its number, or by its name. */
export const instrumentNamed = <T extends Instrument>(all: readonly T[], name: string): T | undefined =>
  all.find(({ number }) => same(number, name)) ??
  all.find((each) => same(each.name, name) || same(instrumentName(each), name));

/** Name and number, as it is called in what is told. */
export const instrumentName = ({ name, number }: Instrument): string => [name, number].filter(Boolean).join(" ");

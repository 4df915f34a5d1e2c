// When a calibration falls due, held against the day that the record itself gives: no clock is read, and nothing is cleared.

import { expect, test, vi } from "vitest";
import { dateIn, instrumentNamed, isDate, isDue, isOverdue } from "../../../language/outputs/record/calibration.ts";
import type { Instrument, LineRecord, WorkRecord } from "../../../language/outputs/record/record.ts";
import { full, lineWhere, remarks, withLine } from "./machine.ts";

// The Gregorian calendar by ISO 8601: a year that 4 divides has a 29 February, a century only where 400 divides it (from memory).
test.each([
  ["2027-03-31", true],
  ["2028-02-29", true],
  ["2027-02-29", false],
  ["2000-02-29", true],
  ["2100-02-29", false],
  ["2027-04-31", false],
  ["2027-13-01", false],
  ["2027-00-10", false],
  ["2027-3-1", false],
  ["31.03.2027", false],
  ["2027-03-31T10:00", false],
  ["", false],
])("%j is a date: %s", (text, is) => {
  expect(isDate(text)).toBe(is);
});

test("every date of two years is one, by the calendar of the machine", () => {
  for (let at = Date.UTC(2027, 0, 1); at < Date.UTC(2029, 0, 1); at += 86_400_000)
    expect(isDate(new Date(at).toISOString().slice(0, 10))).toBe(true);
});

test("the day itself still counts, the day after does not; a month falls due at its end (common practice)", () => {
  expect(isOverdue("2027-03-31", "2027-03-31")).toBe(false);
  expect(isOverdue("2027-03-31", "2027-04-01")).toBe(true);
  expect([isOverdue("2028-02", "2028-02-29"), isOverdue("2028-02", "2028-03-01")]).toEqual([false, true]);
  expect([isOverdue("May", "2027-01-01"), isOverdue("2027-05", "today")]).toEqual([undefined, undefined]);
  expect([isDue("2027-05"), isDue("2027-13"), isDue("May 2027")]).toEqual([true, false, false]);
  expect([dateIn("2027-03-31, 14:00"), dateIn("2027-03-3"), dateIn("on 2027-03-31"), dateIn(undefined)]).toEqual([
    "2027-03-31",
    undefined,
    undefined,
    undefined,
  ]);
});

test("an instrument is found by its number before its name, in any letters", () => {
  const all = [{ name: "12", number: "A" }, { name: "Wrench", number: "12" }, { name: "Gauge" }];
  expect(instrumentNamed(all, "12")).toBe(all[1]);
  expect([instrumentNamed(all, "wrench"), instrumentNamed(all, "Wrench 12"), instrumentNamed(all, "gauge")]).toEqual([
    all[1],
    all[1],
    all[2],
  ]);
  expect([instrumentNamed(all, ""), instrumentNamed([{ name: "" }], " ")]).toEqual([undefined, undefined]);
});

const reading = lineWhere(({ readings }) => readings[0]?.isFigure === true),
  tight = lineWhere(({ half, items }) => half === "refit" && items.some(({ id }) => id === "f"));
const gauge: Instrument = { name: "Gauge", number: "G1", due: "2027-03-31" };
const record = (line: string, change: Partial<LineRecord>, more: Partial<WorkRecord> = {}): WorkRecord => ({
  ...withLine(line, change),
  version: 2,
  instruments: [gauge],
  ...more,
});
const measured = (on: string | undefined, more: Partial<WorkRecord> = {}): WorkRecord =>
  record(
    reading.id,
    {
      readings: [
        { reading: 1, tries: [{ value: 13, unit: "mm", instrument: "G1", ...(on === undefined ? {} : { on }) }] },
      ],
    },
    more,
  );
const told = (of: WorkRecord): string[] => remarks(of).map(({ is, line, open }) => `${line} ${is} ${open}`.trim());

test("a reading taken after the date is open and says what follows; one on the date gives no remark", () => {
  expect(told(measured("2027-03-31"))).toEqual([]);
  expect(told(measured("2027-04-01"))).toEqual([`${reading.id} calibration-overdue true`]);
  const [remark] = remarks(measured("2027-04-01"));
  expect(remark!.says).toBe("Gauge G1: its calibration was due 2027-03-31, it was used on 2027-04-01");
  expect(remark!.consequences.join()).toContain("Take it again");
});

test("without a day of its own the reading is of the day on which the work ended, else began; without any it is told", () => {
  expect(told(measured(undefined, { begun: "2027-03-30 08:00", ended: "2027-04-02" }))).toEqual([
    `${reading.id} calibration-overdue true`,
  ]);
  expect(told(measured(undefined, { begun: "2027-03-30", ended: "later" }))).toEqual([]);
  expect(told(measured(undefined))).toEqual([`${reading.id} calibration-not-judged false`]);
});

test("a torque is held against its wrench; an instrument that no line names against the day of the work", () => {
  const torque = { item: "f", value: 24, unit: "N·m" };
  expect(told(record(tight.id, { torques: [{ ...torque, wrench: "gauge", on: "2027-05-01" }] }))).toEqual([
    `${tight.id} calibration-overdue true`,
  ]);
  expect(told({ ...full(), instruments: [gauge], ended: "2028-01-01" })).toEqual(["calibration-overdue true"]);
  expect(told({ ...full(), instruments: [{ ...gauge, due: "May" }], ended: "2028-01-01" })).toEqual([
    "calibration-not-judged false",
  ]);
  expect(told({ ...full(), instruments: [{ name: "Gauge" }] })).toEqual([]);
});

test("the same record is judged the same in any year", () => {
  const of = (year: number): string[] => {
    vi.useFakeTimers({ now: new Date(year, 0, 1) });
    try {
      return told(measured("2027-04-01"));
    } finally {
      vi.useRealTimers();
    }
  };
  expect(of(2020)).toEqual(of(2050));
});

test("a wrench or an instrument that the record does not list is told; where the record lists others it is open", () => {
  const torque = { item: "f", value: 24, unit: "N·m", wrench: "W-7" },
    of = record(tight.id, { torques: [torque] });
  expect(told({ ...of, instruments: [{ name: "Wrench", number: "W7", due: "2020-01" }] })).toContain(
    `${tight.id} instrument-unlisted true`,
  );
  expect(told({ ...of, instruments: [] })).toEqual([`${tight.id} instrument-unlisted false`]);
  expect(remarks({ ...of, instruments: [] })[0]!.says).toBe(
    "W-7: not among the instruments that the record lists, so that nothing is known of its calibration",
  );
  expect(told({ ...of, instruments: [{ name: "Wrench", number: "w-7" }] })).toEqual([]);
  // One slip, however many lines name it.
  const everywhere = {
    ...full(),
    instruments: [],
    procedures: full().procedures.map((each) => ({
      ...each,
      lines: each.lines.map((line) => ({
        ...line,
        ...(line.torques && { torques: line.torques.map((one) => ({ ...one, wrench: "W-7" })) }),
        ...(line.readings && {
          readings: line.readings.map((one) => ({
            ...one,
            tries: one.tries.map((each) => ({ ...each, instrument: "W-7" })),
          })),
        }),
      })),
    })),
  };
  expect(told(everywhere).filter((each) => each.includes("unlisted"))).toHaveLength(1);
  expect(told({ ...record(tight.id, { torques: [{ ...torque, wrench: " " }] }), instruments: [] })).toEqual([]);
});

// What somebody has entered on the page: ticks, counts, torques, readings with every try, signatures, what was not as written. It is
// kept on the device as it stands, and turns into a record file and back. Whatever is typed is kept as typed until it makes a number.

import { isDue } from "../../record/calibration.ts";
import type { Instrument, LineRecord, NotAsWritten, ReadingTry, WorkRecord } from "../../record/record.ts";
import type { Plan, PlanLine } from "./plan.ts";

export const recordFields = ["serial", "begun", "ended", "doneBy", "checkedBy"] as const;
export type RecordField = (typeof recordFields)[number];

export interface TorqueEntry {
  readonly value: string;
  readonly unit: string;
  readonly wrench: string;
  readonly initials: string;
  /** The day that it was entered for. */
  readonly on?: string;
}

export interface LineEntry {
  readonly done?: boolean;
  /** By item, as typed. */
  readonly counts?: Readonly<Record<string, string>>;
  readonly torques?: Readonly<Record<string, TorqueEntry>>;
  /** By the reading's number from 1. */
  readonly readings?: Readonly<Record<string, readonly ReadingTry[]>>;
  /** By the reading's number: the size that was chosen, and the instrument that it is taken with. */
  readonly chosen?: Readonly<Record<string, string>>;
  readonly takenWith?: Readonly<Record<string, string>>;
  readonly signed?: string;
  readonly notAsWritten?: readonly NotAsWritten[];
  /** Seconds of its wait that have run while the page was open. */
  readonly waited?: number;
  /** Fasteners counted off, over all passes. */
  readonly tightened?: number;
}

export interface Entries {
  readonly fields: Readonly<Partial<Record<RecordField, string>>>;
  readonly instruments: readonly Instrument[];
  /** The day that is entered for now, as typed by the reader: no clock is read. */
  readonly on?: string;
  /** By the line's id in the page. */
  readonly lines: Readonly<Record<string, LineEntry>>;
}

export const noEntries: Entries = { fields: {}, instruments: [], lines: {} };

export const entryOf = ({ lines }: Entries, id: string): LineEntry => (Object.hasOwn(lines, id) ? lines[id]! : {});

export const withLine = (entries: Entries, id: string, change: LineEntry): Entries => ({
  ...entries,
  lines: { ...entries.lines, [id]: { ...entryOf(entries, id), ...change } },
});

/** A number as people type it: a comma for the point, a sign, no more. Undefined for anything else. */
export function numberOf(typed: string): number | undefined {
  const text = typed
    .trim()
    .replace(",", ".")
    .replace(/^[\u2212\u2013]/, "-");
  return /^[+-]?(?:\d+\.?\d*|\.\d+)$/.test(text) ? Number(text) : undefined;
}

/** Adds a try with its day and its instrument; the same one again in a row is none. */
export function withTry(entries: Entries, id: string, reading: number, what: ReadingTry): Entries {
  const entry = entryOf(entries, id),
    had = entry.readings ?? {},
    tries = had[reading] ?? [],
    instrument = entry.takenWith?.[reading] ?? "";
  const taken: ReadingTry = {
    ...what,
    ...(instrument === "" ? {} : { instrument }),
    ...(entries.on === undefined ? {} : { on: entries.on }),
  };
  if (JSON.stringify(tries.at(-1)) === JSON.stringify(taken)) return entries;
  return withLine(entries, id, { readings: { ...had, [reading]: [...tries, taken] } });
}

/** Says with what the last try was taken: that is no other try. */
export function withInstrument(entries: Entries, id: string, reading: number, instrument: string): Entries {
  const entry = entryOf(entries, id),
    tries = entry.readings?.[reading] ?? [];
  const last = tries.at(-1),
    { instrument: _, ...bare } = last ?? {};
  return withLine(entries, id, {
    takenWith: { ...entry.takenWith, [reading]: instrument },
    ...(last
      ? {
          readings: {
            ...entry.readings,
            [reading]: [...tries.slice(0, -1), { ...bare, ...(instrument === "" ? {} : { instrument }) }],
          },
        }
      : {}),
  });
}

/** A date that an older record has as it was typed becomes a note: nothing is judged by it, and nothing is lost. */
const datedInstrument = ({ due, note, ...rest }: Instrument): Instrument =>
  due === undefined || isDue(due)
    ? { ...rest, ...(due === undefined ? {} : { due }), ...(note === undefined ? {} : { note }) }
    : { ...rest, note: [note, due].filter(Boolean).join("; ") };

export function recordOf(entries: Entries, plan: Plan): WorkRecord {
  const fields = Object.fromEntries(
    recordFields.flatMap((name) => {
      const value = entries.fields[name]?.trim() ?? "";
      return value === "" ? [] : [[name, value]];
    }),
  );
  const instruments = entries.instruments.filter(({ name }) => name.trim() !== "").map(datedInstrument);
  return {
    format: "stripdown-record",
    version: 2,
    content: plan.content,
    ...fields,
    ...(instruments.length > 0 ? { instruments } : {}),
    procedures: plan.procedures.map((procedure, i) => ({
      ...procedure,
      lines: plan.lines.flatMap((line) =>
        line.procedure === i ? (lineRecord(line, entryOf(entries, line.id)) ?? []) : [],
      ),
    })),
  };
}

function lineRecord({ line, counts, torques, readings }: PlanLine, entry: LineEntry): LineRecord | undefined {
  const counted = (counts ?? []).flatMap(({ item }) => {
    const count = numberOf(entry.counts?.[item] ?? "");
    return count === undefined || !Number.isInteger(count) || count < 0 ? [] : [{ item, count }];
  });
  const set = (torques ?? []).flatMap(({ item }) => {
    const own = entry.torques?.[item],
      value = numberOf(own?.value ?? "");
    if (!own || value === undefined) return [];
    return [
      {
        item,
        value,
        unit: own.unit,
        ...(own.wrench.trim() === "" ? {} : { wrench: own.wrench.trim() }),
        ...(own.initials.trim() === "" ? {} : { initials: own.initials.trim() }),
        ...(own.on === undefined ? {} : { on: own.on }),
      },
    ];
  });
  const read = (readings ?? []).flatMap((_, i) => {
    const tries = entry.readings?.[i + 1] ?? [];
    const chosen = entry.chosen?.[i + 1]?.trim() ?? "";
    return tries.length > 0 || chosen !== "" ? [{ reading: i + 1, tries, ...(chosen === "" ? {} : { chosen }) }] : [];
  });
  const signed = entry.signed?.trim() ?? "",
    notAsWritten = entry.notAsWritten ?? [];
  const record: LineRecord = {
    line,
    ...(entry.done === true ? { done: true } : {}),
    ...(counted.length > 0 ? { counts: counted } : {}),
    ...(set.length > 0 ? { torques: set } : {}),
    ...(read.length > 0 ? { readings: read } : {}),
    ...(signed === "" ? {} : { signed }),
    ...(notAsWritten.length > 0 ? { notAsWritten } : {}),
  };
  return Object.keys(record).length > 1 ? record : undefined;
}

/** A record of this very manual as entries; what names no line of it is told by number and left out. */
export function entriesOf(record: WorkRecord, plan: Plan): { entries: Entries; unknown: readonly string[] } {
  const lines: Record<string, LineEntry> = {},
    unknown: string[] = [];
  for (const own of record.procedures) {
    const procedure = plan.procedures.findIndex(
      (each) => each.procedure === own.procedure && each.unit === own.unit && each.build === own.build,
    );
    for (const line of own.lines) {
      const found = plan.lines.find((each) => each.procedure === procedure && each.line === line.line);
      if (!found) {
        unknown.push(line.line);
        continue;
      }
      lines[found.id] = {
        ...(line.done === true ? { done: true } : {}),
        ...(line.counts
          ? { counts: Object.fromEntries(line.counts.map(({ item, count }) => [item, String(count)])) }
          : {}),
        ...(line.torques
          ? {
              torques: Object.fromEntries(
                line.torques.map(({ item, value, unit, wrench = "", initials = "", on }) => [
                  item,
                  { value: String(value), unit, wrench, initials, ...(on === undefined ? {} : { on }) },
                ]),
              ),
            }
          : {}),
        ...(line.readings
          ? {
              readings: Object.fromEntries(line.readings.map(({ reading, tries }) => [reading, tries])),
              chosen: Object.fromEntries(
                line.readings.flatMap(({ reading, chosen }) => (chosen === undefined ? [] : [[reading, chosen]])),
              ),
              takenWith: Object.fromEntries(
                line.readings.map(({ reading, tries }) => [reading, tries.at(-1)?.instrument ?? ""]),
              ),
            }
          : {}),
        ...(line.signed === undefined ? {} : { signed: line.signed }),
        ...(line.notAsWritten ? { notAsWritten: line.notAsWritten } : {}),
      };
    }
  }
  const fields = Object.fromEntries(
    recordFields.flatMap((name) => (record[name] === undefined ? [] : [[name, record[name]]])),
  );
  return { entries: { fields, instruments: record.instruments ?? [], lines }, unknown };
}

// A record file as data: every field is held against the published shape, and what is amiss is told with its place in the file. It
// judges nothing of the work.

import { shownOnOneLine } from "../text/shown.ts";
import { isDate, isDue } from "./calibration.ts";
import {
  troubles,
  type Instrument,
  type LineRecord,
  type NotAsWritten,
  type ProcedureRecord,
  type ReadingRecord,
  type ReadingTry,
  type TorqueRecord,
  type WorkRecord,
} from "./record.ts";

/** Larger files are no record of one unit. */
const mostLines = 20_000;

/** Why a file is none, for whoever says it in another language; `place` as `procedures[0].lines[3].done`, "" for the whole. */
export interface NoRecord {
  readonly is: "no-json" | "broken-off" | "format" | "version" | "entry";
  readonly place: string;
}

class Amiss extends Error {
  readonly is: NoRecord["is"];
  constructor(says: string, is: NoRecord["is"] = "entry") {
    super(says);
    this.is = is;
  }
}

/** Takes text that anybody may have written. */
export function readRecord(
  text: string,
): { readonly record: WorkRecord } | { readonly problem: string; readonly why: NoRecord } {
  let value: unknown;
  try {
    value = JSON.parse(text.replace(/^\uFEFF/, ""));
  } catch {
    return text.trimStart().startsWith("{") && !text.trimEnd().endsWith("}")
      ? {
          problem: "it is no JSON: it breaks off before its end. Save the record again where it was written",
          why: { is: "broken-off", place: "" },
        }
      : { problem: "it is no JSON", why: { is: "no-json", place: "" } };
  }
  try {
    return { record: recordOf(value) };
  } catch (error) {
    // What it quotes of the file is shown on a terminal.
    if (!(error instanceof Amiss)) throw error;
    const problem = shownOnOneLine(error.message),
      [named = ""] = problem.split(": "),
      place = error.is === "entry" ? named.replace(/^the file\.?/, "") : "";
    // Amiss as a whole, it is no such record.
    return { problem, why: { is: error.is === "entry" && place === "" ? "format" : error.is, place } };
  }
}

type Fields = Readonly<Record<string, unknown>>;

function recordOf(value: unknown): WorkRecord {
  const of = fields(value, "the file", [
    "format",
    "version",
    "content",
    "serial",
    "begun",
    "ended",
    "doneBy",
    "checkedBy",
    "instruments",
    "procedures",
  ]);
  if (of["format"] !== "stripdown-record") throw new Amiss('its format is not "stripdown-record"', "format");
  const version = of["version"];
  if (version !== 1 && version !== 2)
    throw new Amiss("its version is neither 1 nor 2: a newer Stripdown may have written it", "version");
  const content = of["content"];
  if (typeof content !== "string" || !/^[0-9a-f]{64}$/.test(content))
    throw new Amiss("content: the 64 digits of the manual's content hash are due");
  const procedures = list(of["procedures"], "procedures", (each, place) => procedureOf(each, place, version));
  twice(
    procedures.map(({ procedure, unit, build }) => [procedure, unit, build].join(" ")),
    "procedures",
  );
  return {
    format: "stripdown-record",
    version,
    content,
    procedures,
    ...texts(of, "", ["serial", "begun", "ended", "doneBy", "checkedBy"]),
    ...(of["instruments"] === undefined
      ? {}
      : {
          instruments: list(of["instruments"], "instruments", (each, place) => instrumentOf(each, place, version)),
        }),
  };
}

type Version = WorkRecord["version"];

function instrumentOf(value: unknown, place: string, version: Version): Instrument {
  const of = fields(value, place, ["name", "number", "due"], version, ["note"]),
    more = texts(of, place, ["number", "due", "note"]);
  if (version !== 1 && more.due !== undefined && !isDue(more.due))
    throw new Amiss(`${place}.due: a date as 2027-03-31, or a month as 2027-03, is due`);
  return { name: text(of, "name", place), ...more };
}

function procedureOf(value: unknown, place: string, version: Version): ProcedureRecord {
  const of = fields(value, place, ["procedure", "unit", "build", "lines"]),
    lines = list(of["lines"], `${place}.lines`, (each, at) => lineOf(each, at, version));
  twice(
    lines.map(({ line }) => line),
    `${place}.lines`,
  );
  return {
    procedure: text(of, "procedure", place),
    unit: text(of, "unit", place),
    build: text(of, "build", place),
    lines,
  };
}

function lineOf(value: unknown, place: string, version: Version): LineRecord {
  const of = fields(value, place, ["line", "done", "counts", "torques", "readings", "signed", "notAsWritten"]);
  const some = <T>(
    name: "counts" | "torques" | "readings" | "notAsWritten",
    each: (value: unknown, place: string, version: Version) => T,
  ): Partial<Record<typeof name, readonly T[]>> =>
    of[name] === undefined
      ? {}
      : { [name]: list(of[name], `${place}.${name}`, (value, at) => each(value, at, version)) };
  const readings = some("readings", readingOf);
  twice(
    (readings.readings ?? []).map(({ reading }) => String(reading)),
    `${place}.readings`,
  );
  return {
    line: text(of, "line", place),
    ...flag(of, "done", place),
    ...some("counts", countOf),
    ...some("torques", torqueOf),
    ...readings,
    ...texts(of, place, ["signed"]),
    ...some("notAsWritten", notAsWrittenOf),
  } as LineRecord;
}

function countOf(value: unknown, place: string): { item: string; count: number } {
  const of = fields(value, place, ["item", "count"]);
  return { item: text(of, "item", place), count: whole(of, "count", place, 0) };
}

function torqueOf(value: unknown, place: string, version: Version): TorqueRecord {
  const of = fields(value, place, ["item", "value", "unit", "wrench", "initials"], version, ["on"]);
  return {
    item: text(of, "item", place),
    value: number(of, "value", place),
    unit: text(of, "unit", place),
    ...texts(of, place, ["wrench", "initials"]),
    ...day(of, place),
  };
}

function readingOf(value: unknown, place: string, version: Version): ReadingRecord {
  const of = fields(value, place, ["reading", "tries"], version, ["chosen"]);
  return {
    reading: whole(of, "reading", place, 1),
    tries: list(of["tries"], `${place}.tries`, (each, at) => tryOf(each, at, version)),
    ...texts(of, place, ["chosen"]),
  };
}

function tryOf(value: unknown, place: string, version: Version): ReadingTry {
  const of = fields(value, place, ["value", "unit", "asItShouldBe", "note", "instrument"], version, ["on"]);
  const figure = of["value"] === undefined ? {} : { value: number(of, "value", place) };
  if (figure.value === undefined && of["asItShouldBe"] === undefined && of["note"] === undefined)
    throw new Amiss(`${place}: a value, an answer or a note is due`);
  return {
    ...figure,
    ...texts(of, place, ["unit", "note", "instrument"]),
    ...day(of, place),
    ...flag(of, "asItShouldBe", place),
  };
}

function notAsWrittenOf(value: unknown, place: string, version: Version): NotAsWritten {
  const of = fields(value, place, ["what", "item", "note", "done", "agreedBy", "wanted"], version, ["wantedCount"]),
    what = troubles.find((each) => each === of["what"]);
  if (!what) throw new Amiss(`${place}.what: one of ${troubles.join(", ")} is due`);
  return {
    what,
    ...texts(of, place, ["item", "note", "done", "agreedBy", "wanted"]),
    ...(of["wantedCount"] === undefined ? {} : { wantedCount: whole(of, "wantedCount", place, 1) }),
  };
}

// --- fields ----------------------------------------------------------------------------------------------------------------------------

/** @param since2 fields that version 1 has not. */
function fields(
  value: unknown,
  place: string,
  known: readonly string[],
  version: Version = 2,
  since2: readonly string[] = [],
): Fields {
  if (typeof value !== "object" || value === null || Array.isArray(value))
    throw new Amiss(`${place}: an object is due`);
  const isNew = (name: string): boolean => since2.includes(name),
    extra = Object.keys(value).find((name) => !known.includes(name) && !(version !== 1 && isNew(name)));
  if (extra !== undefined)
    throw new Amiss(
      `${place}: it has a field ${JSON.stringify(extra.slice(0, 40))} that a record does not have${isNew(extra) ? " before version 2" : ""}`,
    );
  return value as Fields;
}

function list<T>(value: unknown, place: string, each: (value: unknown, place: string) => T): T[] {
  if (!Array.isArray(value)) throw new Amiss(`${place}: a list is due`);
  if (value.length > mostLines) throw new Amiss(`${place}: it has more than ${mostLines} entries`);
  return value.map((one, i) => each(one, `${place}[${i}]`));
}

function text(of: Fields, name: string, place: string): string {
  const value = of[name];
  if (typeof value !== "string") throw new Amiss(`${place}.${name}: a text is due`);
  return value;
}

/** Those that are there and not empty. */
function texts<Name extends string>(of: Fields, place: string, names: readonly Name[]): Partial<Record<Name, string>> {
  const found: Partial<Record<Name, string>> = {};
  for (const name of names) {
    if (of[name] === undefined) continue;
    const value = text(of, name, place === "" ? "the file" : place);
    if (value !== "") found[name] = value;
  }
  return found;
}

function number(of: Fields, name: string, place: string): number {
  const value = of[name];
  if (typeof value !== "number" || !Number.isFinite(value)) throw new Amiss(`${place}.${name}: a number is due`);
  return value;
}

function whole(of: Fields, name: string, place: string, least: number): number {
  const value = number(of, name, place);
  if (!Number.isInteger(value) || value < least)
    throw new Amiss(`${place}.${name}: a whole number${least > 0 ? ` from ${least}` : ""} is due`);
  return value;
}

/** When it was taken. */
function day(of: Fields, place: string): { readonly on?: string } {
  const { on } = texts(of, place, ["on"]);
  if (on === undefined) return {};
  if (!isDate(on)) throw new Amiss(`${place}.on: a date as 2027-03-31 is due`);
  return { on };
}

function flag<Name extends string>(of: Fields, name: Name, place: string): Partial<Record<Name, boolean>> {
  const value = of[name];
  if (value === undefined) return {};
  if (typeof value !== "boolean") throw new Amiss(`${place}.${name}: true or false is due`);
  return { [name]: value } as Partial<Record<Name, boolean>>;
}

function twice(names: readonly string[], place: string): void {
  const again = names.find((name, i) => names.indexOf(name) !== i);
  if (again !== undefined) throw new Amiss(`${place}: ${JSON.stringify(again.slice(0, 60))} stands twice`);
}

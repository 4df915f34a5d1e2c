// A record file as data: every field is held against the published shape, and what is amiss is told with its place in the file. It
// judges nothing of the work.

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

/** Why a file is none: `place` as `procedures[0].lines[3].done`. */
class Amiss extends Error {}

/** Takes text that anybody may have written. */
export function readRecord(text: string): { readonly record: WorkRecord } | { readonly problem: string } {
  let value: unknown;
  try {
    value = JSON.parse(text.replace(/^\uFEFF/, ""));
  } catch {
    return { problem: "it is no JSON" };
  }
  try {
    return { record: recordOf(value) };
  } catch (error) {
    if (error instanceof Amiss) return { problem: error.message };
    throw error;
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
  if (of["format"] !== "stripdown-record") throw new Amiss('its format is not "stripdown-record"');
  if (of["version"] !== 1) throw new Amiss("its version is not 1: a newer Stripdown may have written it");
  const content = of["content"];
  if (typeof content !== "string" || !/^[0-9a-f]{64}$/.test(content))
    throw new Amiss("content: the 64 digits of the manual's content hash are due");
  const procedures = list(of["procedures"], "procedures", procedureOf);
  twice(
    procedures.map(({ procedure, unit, build }) => [procedure, unit, build].join(" ")),
    "procedures",
  );
  return {
    format: "stripdown-record",
    version: 1,
    content,
    procedures,
    ...texts(of, "", ["serial", "begun", "ended", "doneBy", "checkedBy"]),
    ...(of["instruments"] === undefined ? {} : { instruments: list(of["instruments"], "instruments", instrumentOf) }),
  };
}

function instrumentOf(value: unknown, place: string): Instrument {
  const of = fields(value, place, ["name", "number", "due"]);
  return { name: text(of, "name", place), ...texts(of, place, ["number", "due"]) };
}

function procedureOf(value: unknown, place: string): ProcedureRecord {
  const of = fields(value, place, ["procedure", "unit", "build", "lines"]),
    lines = list(of["lines"], `${place}.lines`, lineOf);
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

function lineOf(value: unknown, place: string): LineRecord {
  const of = fields(value, place, ["line", "done", "counts", "torques", "readings", "signed", "notAsWritten"]);
  const some = <T>(
    name: "counts" | "torques" | "readings" | "notAsWritten",
    each: (value: unknown, place: string) => T,
  ): Partial<Record<typeof name, readonly T[]>> =>
    of[name] === undefined ? {} : { [name]: list(of[name], `${place}.${name}`, each) };
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
  const of = fields(value, place, ["item", "count"]),
    count = number(of, "count", place);
  if (!Number.isInteger(count) || count < 0) throw new Amiss(`${place}.count: a whole number is due`);
  return { item: text(of, "item", place), count };
}

function torqueOf(value: unknown, place: string): TorqueRecord {
  const of = fields(value, place, ["item", "value", "unit", "wrench", "initials"]);
  return {
    item: text(of, "item", place),
    value: number(of, "value", place),
    unit: text(of, "unit", place),
    ...texts(of, place, ["wrench", "initials"]),
  };
}

function readingOf(value: unknown, place: string): ReadingRecord {
  const of = fields(value, place, ["reading", "tries"]),
    reading = number(of, "reading", place);
  if (!Number.isInteger(reading) || reading < 1) throw new Amiss(`${place}.reading: a whole number from 1 is due`);
  return { reading, tries: list(of["tries"], `${place}.tries`, tryOf) };
}

function tryOf(value: unknown, place: string): ReadingTry {
  const of = fields(value, place, ["value", "unit", "asItShouldBe", "note", "instrument"]);
  const figure = of["value"] === undefined ? {} : { value: number(of, "value", place) };
  if (figure.value === undefined && of["asItShouldBe"] === undefined && of["note"] === undefined)
    throw new Amiss(`${place}: a value, an answer or a note is due`);
  return { ...figure, ...texts(of, place, ["unit", "note", "instrument"]), ...flag(of, "asItShouldBe", place) };
}

function notAsWrittenOf(value: unknown, place: string): NotAsWritten {
  const of = fields(value, place, ["what", "item", "note", "done", "agreedBy", "wanted"]),
    what = troubles.find((each) => each === of["what"]);
  if (!what) throw new Amiss(`${place}.what: one of ${troubles.join(", ")} is due`);
  return { what, ...texts(of, place, ["item", "note", "done", "agreedBy", "wanted"]) };
}

// --- fields ----------------------------------------------------------------------------------------------------------------------------

function fields(value: unknown, place: string, known: readonly string[]): Fields {
  if (typeof value !== "object" || value === null || Array.isArray(value))
    throw new Amiss(`${place}: an object is due`);
  const extra = Object.keys(value).find((name) => !known.includes(name));
  if (extra !== undefined)
    throw new Amiss(`${place}: it has a field ${JSON.stringify(extra.slice(0, 40))} that a record does not have`);
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

// A saved record against the procedure that it was made by: what is missing, what is outside its limits and what follows, what was not
// as written. It reads the record alone: it clears no machine.

import type { LineContext } from "../lines/context.ts";
import type { ActionLine, LineReading } from "../lines/line.ts";
import type { Lines } from "../lines/groups.ts";
import type { Wording } from "../wording/wording.ts";
import { askedOf } from "./asked.ts";
import { instrumentName } from "./calibration.ts";
import { calibrationsOf, unlistedIn, unusedCalibrations, type CalibrationJudged } from "./judge-calibration.ts";
import { judgedTorque } from "./judge-torque.ts";
import { judgedTry } from "./judge-reading.ts";
import { notAsWrittenText, thingNamed } from "./not-as-written.ts";
import type { LineRecord, NotAsWritten, ReadingRecord, WorkRecord } from "./record.ts";

export type RemarkIs =
  | "other-revision"
  | "other-procedure"
  | "no-lines"
  | "unknown-line"
  | "unknown-item"
  | "unknown-reading"
  | "not-ticked"
  | "count-missing"
  | "count-differs"
  | "torque-missing"
  | "torque-differs"
  | "torque-unit"
  | "torque-not-given"
  | "reading-missing"
  | "reading-outside"
  | "reading-was-outside"
  | "reading-unit"
  | "not-as-it-should-be"
  | "not-signed"
  | "not-as-written"
  | "not-agreed"
  | "calibration-overdue"
  | "instrument-unlisted"
  | "calibration-not-judged";

export interface Remark {
  readonly is: RemarkIs;
  readonly procedure: string;
  /** Printed number of the line; "" for the whole record. */
  readonly line: string;
  readonly says: string;
  /** Of an entry "not as written": id and name of its thing, "" where it is about the line. */
  readonly thing?: { readonly id: string; readonly name: string };
  /** What the procedure says must follow. */
  readonly consequences: readonly string[];
  /** Somebody has to do something about it; else it is only told. */
  readonly open: boolean;
}

/** One procedure in one build with its printed lines. */
export interface Made {
  readonly id: string;
  readonly unit: string;
  readonly build: string;
  readonly lines: Lines;
}

export function checkedRecord(
  record: WorkRecord,
  made: readonly Made[],
  hash: string,
  wording: Wording,
): readonly Remark[] {
  const { record: words } = wording,
    remarks: Remark[] = [],
    unlisted = new Set<string>(),
    add = (is: RemarkIs, procedure: string, line: string, says: string, more: Partial<Remark> = {}): void => {
      remarks.push({ is, procedure, line, says, consequences: [], open: true, ...more });
    };
  if (record.content !== hash)
    add("other-revision", "", "", words.otherRevision(record.content.slice(0, 16), hash.slice(0, 16)));
  for (const judged of unusedCalibrations(record))
    remarks.push({ ...calibrationRemark(judged, words), procedure: "", line: "" });
  for (const own of record.procedures) {
    if (!made.some((each) => each.id === own.procedure && each.unit === own.unit && each.build === own.build))
      add("other-procedure", own.procedure, "", words.otherProcedure(own.procedure, own.unit, own.build));
  }
  for (const procedure of made) {
    const own = record.procedures.find(
      (each) => each.procedure === procedure.id && each.unit === procedure.unit && each.build === procedure.build,
    );
    if (!own) {
      add("no-lines", procedure.id, "", words.noLines(procedure.id));
      continue;
    }
    const actions = [...procedure.lines.strip, ...procedure.lines.refit, ...procedure.lines.finish]
      .flatMap((group) => group.lines)
      .filter((line): line is ActionLine => line.is === "action");
    const byId = new Map(own.lines.map((line) => [line.line, line])),
      known = new Set(actions.map(({ id }) => id));
    for (const { line } of own.lines)
      if (!known.has(line)) add("unknown-line", procedure.id, line, words.unknownLine(line));
    for (const line of actions)
      remarks.push(...lineRemarks(line, byId.get(line.id) ?? { line: line.id }, procedure, record, unlisted, wording));
  }
  return remarks;
}

function lineRemarks(
  line: ActionLine,
  own: LineRecord,
  { id, lines: { context } }: Made,
  record: WorkRecord,
  unlisted: Set<string>,
  wording: Wording,
): Remark[] {
  const { record: words } = wording,
    asked = askedOf(line, context.model),
    remarks: Remark[] = [];
  const add = (is: RemarkIs, says: string, more: Partial<Remark> = {}): void => {
    remarks.push({ is, procedure: id, line: line.id, says, consequences: [], open: true, ...more });
  };
  if (own.done !== true) add("not-ticked", words.notTicked([line.says, line.text].filter(Boolean).join(" ")));

  for (const { item, name, count } of asked.counts) {
    const found = own.counts?.filter((each) => each.item === item) ?? [],
      sum = found.reduce((all, each) => all + each.count, 0);
    if (found.length === 0) add("count-missing", words.countMissing(name, count));
    else if (count !== undefined && sum !== count) add("count-differs", words.countDiffers(name, sum, count));
  }
  for (const { item, name, tie } of asked.torques) {
    const found = own.torques?.filter((each) => each.item === item) ?? [];
    if (found.length === 0) add("torque-missing", words.torqueMissing(name, line.torque?.text ?? ""));
    for (const torque of found) {
      const judged = judgedTorque(torque, tie),
        set = words.figure(torque.value, torque.unit);
      if (judged === "other") add("torque-differs", words.torqueDiffers(name, set, line.torque?.text ?? ""));
      else if (judged === "wrong-unit") add("torque-unit", words.torqueUnit(name, set));
      else if (judged === "not-given") add("torque-not-given", words.torqueNotGiven(name, set), { open: false });
    }
  }
  for (const item of new Set([...(own.counts ?? []), ...(own.torques ?? [])].map((each) => each.item))) {
    if (!line.items.some((each) => each.id === item)) add("unknown-item", words.unknownItem(item));
  }
  asked.readings.forEach((reading, i) =>
    remarks.push(
      ...readingRemarks(
        reading,
        own.readings?.find((each) => each.reading === i + 1),
        id,
        line.id,
        wording,
      ),
    ),
  );
  for (const { reading } of own.readings ?? [])
    if (reading > asked.readings.length) add("unknown-reading", words.unknownReading(reading));
  for (const judged of calibrationsOf(own, record))
    remarks.push({ ...calibrationRemark(judged, words), procedure: id, line: line.id });
  // A record that lists instruments and lacks this one may have its number wrong: then its calibration is not judged. It is one slip,
  // told at the first line that names it.
  for (const name of unlistedIn(own, record).filter((each) => !unlisted.has(each))) {
    unlisted.add(name);
    add("instrument-unlisted", words.instrumentUnlisted(name), { open: (record.instruments ?? []).length > 0 });
  }
  if (asked.signature && own.signed === undefined) add("not-signed", words.notSigned);
  for (const each of own.notAsWritten ?? []) remarks.push(...notAsWrittenRemarks(each, id, line.id, context, wording));
  return remarks;
}

function readingRemarks(
  reading: LineReading,
  own: ReadingRecord | undefined,
  procedure: string,
  line: string,
  { record: words }: Wording,
): Remark[] {
  const remarks: Remark[] = [],
    common = { procedure, line, consequences: [], open: true },
    judged = (own?.tries ?? []).map((each) => judgedTry(each, reading));
  const taken = judged.flatMap((each, i) => (each.is === "none" ? [] : [{ each, number: i + 1 }])),
    last = taken.at(-1)?.number;
  if (last === undefined)
    return [{ ...common, is: "reading-missing", says: words.readingMissing(reading.what, reading.limits) }];
  // A proof that fails must not read as a bare figure because nobody wrote down what follows.
  const follows = reading.otherwise.length > 0 ? reading.otherwise : [words.noConsequence];
  for (const { each, number } of taken) {
    const isLast = number === last;
    if (each.is === "wrong-unit")
      remarks.push({
        ...common,
        is: "reading-unit",
        says: words.readingUnit(reading.what, words.figure(each.value, each.unit), reading.unit),
        open: isLast,
      });
    if (each.is === "figure" && each.outside) {
      const figure = words.figure(each.value, each.unit);
      remarks.push(
        isLast
          ? {
              ...common,
              is: "reading-outside",
              says: words.readingOutside(reading.what, figure, reading.limits),
              consequences: follows,
            }
          : {
              ...common,
              is: "reading-was-outside",
              says: words.readingWasOutside(reading.what, number, figure, reading.limits),
              consequences: follows,
              open: false,
            },
      );
    }
    if (each.is === "answer" && !each.asItShouldBe) {
      remarks.push({
        ...common,
        is: "not-as-it-should-be",
        says: words.notAsItShouldBe(reading.what, isLast ? undefined : number),
        consequences: follows,
        open: isLast,
      });
    }
  }
  return remarks;
}

/** A date that cannot be held against another is told, and clears nothing. */
function calibrationRemark(
  { is, instrument, due, on }: CalibrationJudged,
  words: Wording["record"],
): Pick<Remark, "is" | "says" | "consequences" | "open"> {
  const name = instrumentName(instrument);
  return is === "overdue"
    ? {
        is: "calibration-overdue",
        says: words.calibrationOverdue(name, due, on ?? ""),
        consequences: [words.calibrationFollows],
        open: true,
      }
    : {
        is: "calibration-not-judged",
        says: on === undefined ? words.calibrationNoDay(name, due) : words.calibrationNoDate(name, due),
        consequences: [],
        open: false,
      };
}

function notAsWrittenRemarks(
  entry: NotAsWritten,
  procedure: string,
  line: string,
  context: LineContext,
  { record: words }: Wording,
): Remark[] {
  const common = { procedure, line, consequences: [] };
  return [
    {
      ...common,
      is: "not-as-written",
      says: notAsWrittenText(entry, context),
      thing: { id: entry.item ?? "", name: thingNamed(entry.item, context) },
      open: false,
    },
    ...(entry.agreedBy === undefined
      ? [
          {
            ...common,
            is: "not-agreed" as const,
            says: (entry.done === undefined ? words.notDone : words.notAgreed)(
              words.troubles[entry.what],
              thingNamed(entry.item, context),
            ),
            open: true,
          },
        ]
      : []),
  ];
}

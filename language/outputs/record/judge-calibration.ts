// The instruments of a record against the dates of what was read with them.

import { dateIn, instrumentName, instrumentNamed, isOverdue } from "./calibration.ts";
import type { Instrument, LineRecord, WorkRecord } from "./record.ts";

/** `overdue`: used after its calibration fell due; `not-judged`: a date is given, but it is none or there is none to hold it against. */
export interface CalibrationJudged {
  readonly is: "overdue" | "not-judged";
  readonly instrument: Instrument;
  readonly due: string;
  /** The date of the reading; undefined where the record gives none. */
  readonly on: string | undefined;
}

/** The day of the work as the record's own head gives it: its end, else its beginning. */
const dayOfWork = ({ ended, begun }: Pick<WorkRecord, "ended" | "begun">): string | undefined =>
  dateIn(ended) ?? dateIn(begun);

/** Uses of instruments in a line: readings by every try, torques by their wrench. Each instrument and date once. */
export function calibrationsOf(
  { readings = [], torques = [] }: LineRecord,
  record: Pick<WorkRecord, "instruments" | "ended" | "begun">,
): readonly CalibrationJudged[] {
  const uses = [
      ...readings.flatMap(({ tries }) => tries.map(({ instrument, on }) => ({ name: instrument, on }))),
      ...torques.map(({ wrench, on }) => ({ name: wrench, on })),
    ],
    found = new Map<string, CalibrationJudged>();
  for (const { name, on } of uses) {
    const instrument = name === undefined ? undefined : instrumentNamed(record.instruments ?? [], name),
      judged = instrument && judgedOn(instrument, on ?? dayOfWork(record));
    if (judged) found.set(`${instrumentName(instrument)} ${judged.on ?? ""}`, judged);
  }
  return [...found.values()];
}

/** Instruments that no line names, against the day of the work. */
export function unusedCalibrations(record: WorkRecord): readonly CalibrationJudged[] {
  const used = new Set(
    record.procedures.flatMap(({ lines }) =>
      lines.flatMap(({ readings = [], torques = [] }) =>
        [
          ...readings.flatMap(({ tries }) => tries.map(({ instrument }) => instrument)),
          ...torques.map((each) => each.wrench),
        ].flatMap((name) => (name === undefined ? [] : [instrumentNamed(record.instruments ?? [], name)])),
      ),
    ),
  );
  return (record.instruments ?? []).flatMap((instrument) =>
    used.has(instrument) ? [] : (judgedOn(instrument, dayOfWork(record)) ?? []),
  );
}

function judgedOn(instrument: Instrument, on: string | undefined): CalibrationJudged | undefined {
  const { due } = instrument;
  if (due === undefined) return undefined;
  const overdue = on === undefined ? undefined : isOverdue(due, on);
  if (overdue === false) return undefined;
  return { is: overdue === true ? "overdue" : "not-judged", instrument, due, on };
}

/** What a line names as its wrench or instrument and the record does not list: nothing is known of its calibration. Each once. */
export function unlistedIn(
  { readings = [], torques = [] }: LineRecord,
  { instruments = [] }: Pick<WorkRecord, "instruments">,
): readonly string[] {
  const named = [
    ...readings.flatMap(({ tries }) => tries.map(({ instrument }) => instrument)),
    ...torques.map(({ wrench }) => wrench),
  ].flatMap((name) => (name === undefined || name.trim() === "" ? [] : [name]));
  return [...new Set(named)].filter((name) => instrumentNamed(instruments, name) === undefined);
}

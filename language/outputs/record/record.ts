// The record of one unit's strip and refit, as the manual on a tablet saves it and as any other program may write it.
//
// For whoever writes such a file:
// - `content` is the manual's content hash, all 64 digits (`provenanceOf(input).hash`). A record without the right one is told as made
//   from another revision.
// - A procedure is named by its id, the unit's id and the build, as the outputs give them (`Performance.procedure.id`, `Model.unit`,
//   `Model.build`, "" where there is only one build).
// - A line is named by its printed number without any prefix of the page: `3.2` in the strip, `R1.4` on the way back, `F2` at the end
//   (`ActionLine.id`). A line that nobody touched may be left out.
// - What a line asks for (counts, torques, readings, a signature) is told by `askedOf` in asked.ts: show those boxes and no others.
// - `tries` keeps every try of a reading in the order of taking; none is ever deleted. The last one counts.
// - A value is a number with its unit as spelled in the language (`mm`, `N·m`, `lbf·ft`); never a text with both.
// - Dates and times are texts as typed; nothing reads a clock for them. Version 2 has dates as ISO 8601 writes them where something is
//   judged by them: when a reading or a torque was taken (`on`), and when a calibration falls due (`due`, a day or a month).
// - Version 1 has no `on`, `chosen`, `wantedCount` and `note` of an instrument, and its `due` is a text as typed. It is still read.
// - Whatever is not known is left out. An empty text counts as left out.

/** Read by `readRecord`; its published schema is record.schema.json. */
export interface WorkRecord {
  readonly format: "stripdown-record";
  readonly version: 1 | 2;
  readonly content: string;
  /** Serial number of the unit that was worked on. */
  readonly serial?: string;
  readonly begun?: string;
  readonly ended?: string;
  readonly doneBy?: string;
  readonly checkedBy?: string;
  readonly instruments?: readonly Instrument[];
  readonly procedures: readonly ProcedureRecord[];
}

/** A torque wrench, a meter, a micrometer. */
export interface Instrument {
  readonly name: string;
  readonly number?: string;
  /** When its calibration falls due: `2027-03-31` or `2027-03`; in version 1 as typed. */
  readonly due?: string;
  /** What else is known of it, as typed. */
  readonly note?: string;
}

export interface ProcedureRecord {
  readonly procedure: string;
  readonly unit: string;
  readonly build: string;
  readonly lines: readonly LineRecord[];
}

export interface LineRecord {
  readonly line: string;
  /** The box is ticked. */
  readonly done?: boolean;
  readonly counts?: readonly { readonly item: string; readonly count: number }[];
  readonly torques?: readonly TorqueRecord[];
  readonly readings?: readonly ReadingRecord[];
  /** Who signed. */
  readonly signed?: string;
  readonly notAsWritten?: readonly NotAsWritten[];
}

export interface TorqueRecord {
  /** Id of the fastener. */
  readonly item: string;
  readonly value: number;
  readonly unit: string;
  /** Number or name of the wrench. */
  readonly wrench?: string;
  readonly initials?: string;
  /** `2027-03-31`. */
  readonly on?: string;
}

export interface ReadingRecord {
  /** Which reading of the line, from 1. */
  readonly reading: number;
  readonly tries: readonly ReadingTry[];
  /** The size that was chosen by it, as typed. */
  readonly chosen?: string;
}

/** A figure with its unit, or for a look or a trial whether it was as it should be. */
export interface ReadingTry {
  readonly value?: number;
  readonly unit?: string;
  readonly asItShouldBe?: boolean;
  readonly note?: string;
  /** Its number or name among the instruments. */
  readonly instrument?: string;
  /** `2027-03-31`. */
  readonly on?: string;
}

export const troubles = ["sheared", "thread-damaged", "seized", "broken", "missing", "wrong-part", "other"] as const;
export type Trouble = (typeof troubles)[number];

/** Something on the line was not as the procedure says. */
export interface NotAsWritten {
  readonly what: Trouble;
  /** Id of the thing, where it is one. */
  readonly item?: string;
  readonly note?: string;
  /** What was done about it. */
  readonly done?: string;
  readonly agreedBy?: string;
  /** A part to order, and how many. */
  readonly wanted?: string;
  readonly wantedCount?: number;
}

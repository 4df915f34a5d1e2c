// The bench between two entries of a procedure's body, of the one asked for or of one that it calls, kept so that after an edit performing
// goes on from there.

import type { Span } from "../findings/finding.ts";
import type { ThingIndex } from "../model/model.ts";
import type { Bench } from "./bench.ts";
import type { Slip } from "./slips.ts";
import type { State } from "./state.ts";
import type { Around, Event, Performed, Problem, RefitNote, StepRun } from "./trace.ts";

/** How a list of entries came to be walked: as the body of a procedure, or as that of a block, for the nth time of several. */
export type Way =
  | {
      readonly is: "procedure";
      /** So many events had happened when it began. */
      readonly from: number;
    }
  | {
      readonly is: "block";
      /** With what is around it each time. */
      readonly times: readonly Around[];
      readonly nth: number;
    };

/** One list of entries on the way to where performing stands. It names no entry: places in the lists tell them in any reading. */
export interface Frame {
  readonly way: Way;
  readonly around: Around;
  /** The entry that is being done, or comes next. */
  readonly at: number;
}

/** What is kept while a strip is performed. */
export interface Trail {
  /** The way to where performing stands, from the body of the procedure asked for to the innermost list. */
  readonly frames: { -readonly [key in keyof Frame]: Frame[key] }[];
  readonly stages: Stage[];
}

/** All that the entries behind it can ask of those before it. How many events, acts and notes there were says which ones. */
export interface Stage {
  readonly state: State;
  readonly events: number;
  readonly performed: number;
  readonly notes: number;
  readonly problems: readonly Problem[];
  readonly slips: readonly Slip[];
  readonly turnedLoose: Readonly<Bench["turnedLoose"]>;
  readonly doubled: ReadonlySet<ThingIndex>;
  readonly calls: ReadonlySet<string>;
  readonly aligned: ReadonlySet<string>;
  readonly marksAt: ReadonlyMap<string, Span>;
  readonly putAt: ReadonlyMap<string, Span>;
  readonly tightened: ReadonlyMap<ThingIndex, number>;
  readonly metIn: ReadonlyMap<ThingIndex, StepRun | undefined>;
  readonly partial: ReadonlyMap<ThingIndex, number>;
  readonly callAt: Span | undefined;
  readonly turnedTo: string | undefined;
  readonly steps: number;
  /** The way to the entry that comes next: the last list is the body of a procedure. */
  readonly frames: readonly Frame[];
}

/** The same copy as before where nothing was added. */
const list = <T>(now: readonly T[], before: readonly T[] | undefined): readonly T[] =>
  before?.length === now.length && before.every((one, i) => one === now[i]) ? before : now.slice();
const set = <T>(now: ReadonlySet<T>, before: ReadonlySet<T> | undefined): ReadonlySet<T> =>
  before?.size === now.size && [...now].every((one) => before.has(one)) ? before : new Set(now);
const map = <K, T>(now: ReadonlyMap<K, T>, before: ReadonlyMap<K, T> | undefined): ReadonlyMap<K, T> =>
  before?.size === now.size && [...now].every(([key, one]) => before.get(key) === one) ? before : new Map(now);

/** Keeps the bench as it stands before the entry that comes next. */
export function keepStage(bench: Bench, { frames, stages }: Trail): void {
  const { state, callAt, turnedTo, steps } = bench,
    last = stages[stages.length - 1];
  stages.push({
    frames: frames.map((frame) => ({ ...frame })),
    state,
    callAt,
    turnedTo,
    steps,
    events: bench.events.length,
    performed: bench.performed.length,
    notes: bench.notes.length,
    problems: list(bench.problems, last?.problems),
    slips: list(bench.slips, last?.slips),
    turnedLoose: list(bench.turnedLoose, last?.turnedLoose),
    doubled: set(bench.doubled, last?.doubled),
    calls: set(bench.calls, last?.calls),
    aligned: set(bench.aligned, last?.aligned),
    marksAt: map(bench.marksAt, last?.marksAt),
    putAt: map(bench.putAt, last?.putAt),
    tightened: map(bench.stages, last?.tightened),
    metIn: map(bench.metIn, last?.metIn),
    partial: map(bench.partial, last?.partial),
  });
}

/** Puts a bench that has done nothing yet where another one stood. */
export function goOnFrom(
  bench: Bench,
  stage: Stage,
  done: {
    readonly events: readonly Event[];
    readonly performed: readonly Performed[];
    readonly notes: readonly RefitNote[];
  },
): void {
  bench.state = stage.state;
  bench.callAt = stage.callAt;
  bench.turnedTo = stage.turnedTo;
  bench.steps = stage.steps;
  for (const one of done.events) bench.events.push(one);
  for (const one of done.performed) bench.performed.push(one);
  for (const one of done.notes) bench.notes.push(one);
  bench.problems.push(...stage.problems);
  bench.slips.push(...stage.slips);
  bench.turnedLoose.push(...stage.turnedLoose);
  for (const one of stage.doubled) bench.doubled.add(one);
  for (const one of stage.calls) bench.calls.add(one);
  for (const one of stage.aligned) bench.aligned.add(one);
  for (const [key, one] of stage.marksAt) bench.marksAt.set(key, one);
  for (const [key, one] of stage.putAt) bench.putAt.set(key, one);
  for (const [key, one] of stage.tightened) bench.stages.set(key, one);
  for (const [key, one] of stage.metIn) bench.metIn.set(key, one);
  for (const [key, one] of stage.partial) bench.partial.set(key, one);
}

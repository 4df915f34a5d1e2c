// The bench between two entries of a procedure's body, kept so that after an edit performing goes on from there.

import type { Span } from "../findings/finding.ts";
import type { ThingIndex } from "../model/model.ts";
import type { Bench } from "./bench.ts";
import type { Slip } from "./slips.ts";
import type { State } from "./state.ts";
import type { Event, Performed, Problem, RefitNote, StepRun } from "./trace.ts";

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
}

/** The same copy as before where nothing was added. */
const list = <T>(now: readonly T[], before: readonly T[] | undefined): readonly T[] =>
  before?.length === now.length && before.every((one, i) => one === now[i]) ? before : now.slice();
const set = <T>(now: ReadonlySet<T>, before: ReadonlySet<T> | undefined): ReadonlySet<T> =>
  before?.size === now.size && [...now].every((one) => before.has(one)) ? before : new Set(now);
const map = <K, T>(now: ReadonlyMap<K, T>, before: ReadonlyMap<K, T> | undefined): ReadonlyMap<K, T> =>
  before?.size === now.size && [...now].every(([key, one]) => before.get(key) === one) ? before : new Map(now);

export function stageOf(bench: Bench, last: Stage | undefined): Stage {
  const { state, callAt, turnedTo, steps } = bench;
  return {
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
  };
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

// What an earlier performance left behind, told of the newer reading of the same texts: acts, places and procedures are those that stand
// there now, facts of the bench stay as they are. States hold no places and are taken over as they stand.

import type { Act } from "../model/act.ts";
import type { Model } from "../model/model.ts";
import type { Span } from "../findings/finding.ts";
import type { Likeness } from "./likeness.ts";
import type { Slip } from "./slips.ts";
import type { Frame, Stage } from "./stages.ts";
import type {
  Around,
  Event,
  Performance,
  Performed,
  Problem,
  Promised,
  Reason,
  RefitNote,
  RefitOp,
  RefitPerformed,
  StepRun,
} from "./trace.ts";

export interface Mover {
  readonly events: (list: readonly Event[]) => Event[];
  readonly performed: (list: readonly Performed[]) => Performed[];
  readonly notes: (list: readonly RefitNote[]) => RefitNote[];
  readonly stage: (one: Stage) => Stage;
  readonly performance: (one: Performance, model: Model) => Performance;
}

/** Everything that goes through one mover keeps what it shares: the same step, the same problem, once. */
export function mover(like: Likeness): Mover {
  const made = new Map<object, object>();
  /** Moved once, however often it is met. */
  const once =
    <T extends object>(move: (one: T) => T) =>
    (one: T): T => {
      let had = made.get(one) as T | undefined;
      if (!had) made.set(one, (had = move(one)));
      return had;
    };
  const each =
    <T extends object>(move: (one: T) => T) =>
    (list: readonly T[]): T[] =>
      list.map(move);
  const maybe =
    <T extends object>(move: (one: T) => T) =>
    (one: T | undefined): T | undefined =>
      one && move(one);

  const place = (at: Span): Span => like.now(at);
  /** One that an author wrote stands there now; one that performing made of such a one is made of it again. */
  const act = once<Act>((one) => {
    if (like.stood(one)) return like.now(one);
    const moved = Object.fromEntries(
      Object.entries(one).map(([key, value]: [string, unknown]) => [
        key,
        typeof value === "object" && value !== null ? like.now(value) : value,
      ]),
    ) as unknown as Act;
    return { ...moved, wordEnd: like.wordEnd(moved.at) ?? one.wordEnd };
  });
  const step: (one: StepRun) => StepRun = once((one: StepRun) => {
    const at = place(one.at);
    return {
      ...one,
      at,
      procedure: like.now(one.procedure),
      title: like.title(at) ?? one.title,
      ...(one.within ? { within: step(one.within) } : {}),
    };
  });
  const around = once<Around>((one) => ({
    ...one,
    procedure: like.now(one.procedure),
    step: maybe(step)(one.step),
  }));
  const event = once<Event>((one) => ({ ...one, act: act(one.act), around: around(one.around) }));
  const reason = once<Reason>((one) => ({ ...one, at: maybe(place)(one.at) }));
  const problem = once<Problem>((one) => ({
    ...one,
    act: maybe(act)(one.act),
    around: maybe(around)(one.around),
    at: place(one.at),
    reasons: one.reasons.map(reason),
  }));
  const performed = once<Performed>((one) => ({ ...one, act: act(one.act), around: around(one.around) }));
  const note = once<RefitNote>((one) => ({
    ...one,
    entries: like.now(one.entries),
    around: around(one.around),
    step: maybe(step)(one.step),
    procedure: like.now(one.procedure),
    at: place(one.at),
  }));
  const promised = once<Promised>((one) => ({ ...one, leave: like.now(one.leave), by: like.now(one.by) }));
  const op = once<RefitOp>((one) => ({
    ...one,
    act: maybe(act)(one.act),
    event: maybe(event)(one.event),
    around: around(one.around),
    at: place(one.at),
  }));
  const slip = once<Slip>((one) => ({ ...one, step: maybe(step)(one.step), problem: problem(one.problem) }));
  const problems = once<readonly Problem[]>(each(problem)),
    slips = once<readonly Slip[]>(each(slip)),
    places = once<Stage["marksAt"]>((map) => new Map([...map].map(([key, at]) => [key, place(at)]))),
    frame = (one: Frame): Frame => ({
      ...one,
      around: around(one.around),
      way: one.way.is === "block" ? { ...one.way, times: one.way.times.map(around) } : one.way,
    }),
    steps = once<Stage["metIn"]>((map) => new Map([...map].map(([part, one]) => [part, maybe(step)(one)]))),
    turned = once<Stage["turnedLoose"]>((list) =>
      list.map((one) => ({ act: act(one.act), around: around(one.around), reason: reason(one.reason) })),
    );

  return {
    events: each(event),
    performed: each(performed),
    notes: each(note),
    stage: (one) => ({
      ...one,
      frames: one.frames.map(frame),
      problems: problems(one.problems),
      slips: slips(one.slips),
      marksAt: places(one.marksAt),
      putAt: places(one.putAt),
      metIn: steps(one.metIn),
      turnedLoose: turned(one.turnedLoose),
      callAt: maybe(place)(one.callAt),
    }),
    performance: (one, model) => ({
      ...one,
      model,
      procedure: like.now(one.procedure),
      strip: one.strip.map(performed),
      events: one.events.map(event),
      notes: one.notes.map(note),
      order: one.order && {
        ...one.order,
        ops: one.order.ops.map(op),
        problems: problems(one.order.problems),
      },
      refit: one.refit.map((each): RefitPerformed => ({ ...each, op: op(each.op) })),
      written: one.written.map(performed),
      finish: one.finish.map(performed),
      leaves: one.leaves.map(promised),
      problems: one.problems.map(problem),
    }),
  };
}

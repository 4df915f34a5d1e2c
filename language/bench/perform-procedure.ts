// One procedure performed in one build: start, strip, aim, refit, end. The only entry for whoever wants to know what a procedure does.

import type { Model, Procedure, Task, ThingIndex } from "../model/model.ts";
import { benchOf, prefixInside, reasonOf, report, resolve, type Bench, type Work } from "./bench.ts";
import { judgeAim } from "./aim.ts";
import { asStart, settle } from "./as-start.ts";
import { judgeEnd, leavesOf, takenTooEarly } from "./end-state.ts";
import type { Leaves } from "./leaves.ts";
import { withoutEchoes } from "./echo.ts";
import { judgeOpenDrains } from "./fluids.ts";
import { judgeLeftLoose } from "./left-loose.ts";
import { judgeFinished } from "./finished.ts";
import { doneBy, judgeLeft } from "./left-otherwise.ts";
import { togetherLeftOut } from "./left-out.ts";
import type { Likeness } from "./likeness.ts";
import { mover } from "./moved.ts";
import { judgeNothingBetween } from "./nothing-between.ts";
import { judgeOldStays, questionSeals, questionWrittenSeals } from "./new-parts.ts";
import { performRefit } from "./perform-refit.ts";
import { judgeLeftUntil, leftUntil, neededBefore, promisedFor } from "./procedures-before.ts";
import { isHeldAgainst, promisedBy, toldAtEnd } from "./promises.ts";
import { orderOf } from "./refit/order.ts";
import { judgeSets } from "./renewed-sets.ts";
import { judgeRepeats, readingsIn, readingsOnTheWayBack } from "./repeats.ts";
import { goOnFrom, type Stage } from "./stages.ts";
import { startState, type State } from "./state.ts";
import { judgeTasks } from "./tasks.ts";
import { judgeTurned } from "./turn.ts";
import type { Entry } from "../model/model.ts";
import type { Performance, Performed, Problem } from "./trace.ts";
import { aroundOf, conditionHolds, run, walk } from "./walk.ts";

export interface PerformOptions {
  /** Only the steps of this task, done alone. */
  readonly task?: Task;
  /** Procedures whose start is being worked out: where two leave something until each other the ring ends here. */
  readonly asked?: ReadonlySet<string>;
}

export function performProcedure(model: Model, id: string, options: PerformOptions = {}): Performance {
  const whole = model.procedures.get(id)!;
  const perform = (procedure: Procedure): Performance =>
    performAll(model, procedure, { acts: 0 }, "once", new Set(options.asked)).performance;
  return options.task ? { ...perform(only(whole, options.task)), task: options.task } : perform(whole);
}

/** A performance that can be gone on with after an edit. */
export interface Rehearsal {
  readonly performance: Performance;
  /**
   * The bench before each entry of the body, of each procedure that it calls too, and behind the last of each; empty where the
   * procedure builds up, and where nobody goes on.
   */
  readonly stages: readonly Stage[];
}

/** Is the bench kept as it stood between the entries, for an edit to go on from? */
export type Keeping = "once" | "stages";

/**
 * The same as `performProcedure`, object by object, without doing again what an earlier reading of the texts did already: where all says
 * the same nothing is performed, and where a line changed the strip goes on from the entry that it stands in, of the body or of that of a
 * procedure that is called. The way back hangs on the whole strip and is then performed whole.
 */
export function rehearse(
  model: Model,
  id: string,
  work: Work,
  keeping: Keeping,
  earlier?: { readonly rehearsal: Rehearsal; readonly like: Likeness },
): Rehearsal {
  const procedure = model.procedures.get(id)!;
  if (!earlier) return performAll(model, procedure, work, keeping);
  const { rehearsal, like } = earlier,
    had = rehearsal.performance,
    unchanged = like.unchanged(had.model, model, id);
  if (!unchanged) return performAll(model, procedure, work, keeping);
  const move = mover(like);
  // What contradicts itself is told with the words of the lines.
  if (unchanged.whole && !(like.proseChanged() && (had.order?.problems.length ?? 0) > 0))
    return { performance: move.performance(had, model), stages: rehearsal.stages.map(move.stage) };
  const last = rehearsal.stages.findLastIndex(({ frames }) => unchanged.reaches(frames)),
    stages = rehearsal.stages.slice(0, last + 1).map(move.stage),
    stage = stages[last];
  if (!stage) return performAll(model, procedure, work, keeping);
  return performStrip(benchOf(model, had.start, work), procedure, keeping, {
    stages,
    done: {
      events: move.events(had.events.slice(0, stage.events)),
      performed: move.performed(had.strip.slice(0, stage.performed)),
      notes: move.notes(had.notes.slice(0, stage.notes)),
    },
  });
}

function performAll(
  model: Model,
  procedure: Procedure,
  work: Work,
  keeping: Keeping,
  asked: ReadonlySet<string> = new Set(),
): Rehearsal {
  const buildsUp = procedure.aims.some((aim) => aim.is === "all-in"),
    before = stateBefore(model, procedure, new Set(asked), work),
    bench = benchOf(model, before?.state ?? startState(model), work);
  for (const call of before?.calls ?? []) bench.calls.add(call);
  settle(bench, procedure);
  if (buildsUp) return { performance: performBuild(bench, procedure, before), stages: [] };
  bench.state = asStart(model, bench.state);
  return performStrip(bench, procedure, keeping);
}

/** The procedure with the steps of a task alone, by the title of that: what stands outside of steps is done as well. */
function only(procedure: Procedure, task: Task): Procedure {
  const steps = new Set(task.does.map((name) => name.text)),
    title = [task.title || task.id, procedure.title && `(${procedure.title})`].filter(Boolean).join(" ");
  const kept = (entries: readonly Entry[]): Entry[] =>
    entries.flatMap((entry): Entry[] => {
      if (entry.is === "act" || entry.kind === "refit") return [entry];
      if (entry.kind === "step") return steps.has(entry.name) ? [entry] : [];
      const body = kept(entry.body);
      return body.length > 0 || entry.body.length === 0 ? [{ ...entry, body }] : [];
    });
  return { ...procedure, title, aims: [], tasks: [], body: kept(procedure.body) };
}

// --- the start -----------------------------------------------------------------------------------------------------------------

/** The bench as the needed procedures leave it; undefined where none is needed. Their own findings are theirs. */
function stateBefore(model: Model, procedure: Procedure, seen: Set<string>, work: Work): Bench | undefined {
  let bench: Bench | undefined;
  if (seen.has(procedure.id)) return undefined;
  seen.add(procedure.id);
  for (const id of neededBefore(model, procedure)) {
    const needed = model.procedures.get(id);
    if (!needed || seen.has(needed.id)) continue;
    // It leaves something until this procedure: this one begins where that one's way back ended.
    if (leftUntil(needed, procedure).length > 0 && needed.aims.every((aim) => aim.is !== "all-in")) {
      bench = benchOf(model, asStart(model, performAll(model, needed, work, "once", seen).performance.end));
      bench.calls.add(needed.id);
      continue;
    }
    const earlier = stateBefore(model, needed, seen, work),
      base = bench ?? earlier;
    // What it finds is told where it is performed for itself; here it only shows what the rest may be an echo of.
    const runner = benchOf(model, base?.state ?? startState(model), work);
    if (base) {
      runner.problems.push(...base.problems);
      runner.events.push(...base.events);
      for (const [label, at] of base.marksAt) runner.marksAt.set(label, at);
      for (const call of base.calls) runner.calls.add(call);
    }
    settle(runner, needed);
    run(runner, needed, aroundOf(needed), judgeAim);
    judgeAim(runner, needed, aroundOf(needed));
    judgeLeftLoose(runner);
    bench = runner;
  }
  return bench;
}

// --- strip and refit ---------------------------------------------------------------------------------------------------------

/** Where an earlier performance is gone on with: what was kept of the bench up to there, and what had been done at the last stage of it. */
interface From {
  readonly stages: readonly Stage[];
  readonly done: Parameters<typeof goOnFrom>[2];
}

function performStrip(bench: Bench, procedure: Procedure, keeping: Keeping, from?: From): Rehearsal {
  const start = bench.state,
    around = aroundOf(procedure),
    stages: Stage[] = from ? [...from.stages] : [],
    stage = stages[stages.length - 1];
  if (keeping === "stages") bench.trail = { frames: [], stages };
  if (from && stage) {
    goOnFrom(bench, stage, from.done);
    run(bench, procedure, stage.frames[0]!.around, judgeAim, undefined, stage.frames);
  } else run(bench, procedure, around, judgeAim);
  bench.trail = undefined;
  return { performance: performAfterStrip(bench, procedure, start), stages };
}

/** Its aim, and the way back. */
function performAfterStrip(bench: Bench, procedure: Procedure, start: State): Performance {
  const { model } = bench,
    around = aroundOf(procedure),
    promised = promisedBy(bench, procedure),
    // What a called one leaves may be put right here: only what it says itself is held against it.
    own = promised.filter(({ by }) => by === procedure),
    leaves = leavesOf(bench, promised);
  const strip = bench.performed.slice(),
    by = procedure.refitBy && model.procedures.get(procedure.refitBy.text);
  const lacking = by ? lacks(bench, by, procedure) : undefined;
  const result = (of: Partial<Performance>): Performance => ({
    model,
    procedure,
    start,
    strip,
    events: bench.events,
    notes: bench.notes,
    stripEnd: bench.state,
    order: undefined,
    refit: [],
    written: [],
    finish: [],
    leaves: promised,
    endTurn: undefined,
    end: bench.state,
    problems: bench.problems,
    ...of,
  });
  if (by && lacking) {
    // The whole way back rests on what is not done.
    report(
      bench,
      procedure.refitByAt ?? procedure.at,
      [],
      [reasonOf("sequence/needs", { words: [by.title || by.id, lacking], at: by.at })],
    );
    return result({});
  }
  judgeAim(bench, procedure, around);
  judgeLeftLoose(bench);
  judgeNothingBetween(bench);
  judgeTurned(bench);
  judgeOldStays(bench);
  judgeOpenDrains(bench);
  const stripEnd = bench.state,
    refit = benchAfter(bench, stripEnd);
  if (by) {
    refit.phase = "refit";
    refit.willFit = fitsOf(refit, by);
    refit.builtOn = resolve(refit, by.bases, aroundOf(by));
    for (const call of bench.calls) refit.calls.add(call);
    refit.calling = [procedure.id];
    run(refit, by, aroundOf(by));
    afterwards(refit, by);
    judgeTurned(refit);
    questionWrittenSeals(refit);
    const written = refit.performed.slice(),
      finished = finish(refit, procedure, leaves, start);
    judgeLeftUntil(refit, procedure);
    judgeLeft(refit, procedure, own, doneBy(refit.performed), bench.problems.length === 0);
    judgeRepeats(
      refit,
      [
        ...readingsIn(strip, bench.events, "strip", true),
        ...readingsIn(written, refit.events, "refit", true),
        ...readingsIn(finished, refit.events, "strip", false, strip),
      ],
      [...bench.problems, ...refit.problems],
    );
    judgeSets(refit, [...strip, ...refit.performed]);
    return result({
      stripEnd,
      written,
      finish: finished,
      leaves: toldAtEnd(refit, procedure, promised),
      end: refit.state,
      problems: [...bench.problems, ...withoutEchoes(bench, togetherLeftOut(refit, refit.problems), bench.problems)],
    });
  }
  const order = orderOf(
    {
      model,
      events: bench.events,
      notes: bench.notes,
      stripEnd,
      procedures: model.procedures,
      resolve: (names, where) => resolve(bench, names, where),
      conditionHolds: (entry, where) =>
        entry.kind === "if" ? conditionHolds(bench, entry.condition!, where) : model.chosen.has(entry.key),
    },
    leaves,
  );
  const stripProblems = bench.problems.slice(),
    done = performRefit(refit, order),
    endTurn = turnBack(refit, leaves, start);
  questionSeals(bench, done);
  const finished = finish(refit, procedure, leaves, start);
  judgeLeftUntil(refit, procedure);
  judgeLeft(refit, procedure, own, doneBy(finished, done), bench.problems.length + order.problems.length === 0);
  judgeRepeats(
    bench,
    [
      ...readingsIn(strip, bench.events, "strip", true),
      ...readingsOnTheWayBack(done, refit.events, strip),
      ...readingsIn(finished, refit.events, "strip", false, strip),
    ],
    [...bench.problems, ...order.problems, ...refit.problems],
  );
  judgeSets(bench, [...strip, ...refit.performed]);
  // In a line whose place is wrong nothing else is judged, save what can hurt.
  const misplaced = (one: Problem): boolean =>
    one.rule.startsWith("refit/") &&
    order.problems.some(({ at }) => at.start === one.at.start && at.file === one.at.file);
  const wayBack = togetherLeftOut(refit, [...order.problems, ...refit.problems.filter((one) => !misplaced(one))]);
  judgeTasks(bench, procedure, [...bench.problems, ...wayBack]);
  return result({
    stripEnd,
    order,
    refit: done,
    endTurn,
    finish: finished,
    leaves: toldAtEnd(refit, procedure, promised),
    end: refit.state,
    problems: [
      ...stripProblems,
      ...withoutEchoes(bench, wayBack, stripProblems),
      ...bench.problems.slice(stripProblems.length),
    ],
  });
}

/** A bench that stands where the strip ended and knows how it came there. */
export function benchAfter(bench: Bench, state: State): Bench {
  const next = benchOf(bench.model, state, bench.work);
  next.events.push(...bench.events);
  for (const [label, where] of bench.marksAt) next.marksAt.set(label, where);
  for (const [name, where] of bench.putAt) if (!takenTooEarly(bench, name)) next.putAt.set(name, where);
  return next;
}

function lacks(bench: Bench, by: Procedure, procedure: Procedure): string | undefined {
  const name = by.needs
    .flatMap((need) => need.names)
    .find((n) => bench.model.procedures.has(n.text) && !bench.calls.has(n.text) && n.text !== procedure.id);
  const needed = name && bench.model.procedures.get(name.text);
  return needed && (needed.title || needed.id);
}

/** The unit stands at the end as it stood at the start, or as promised. */
function turnBack(bench: Bench, leaves: Leaves, start: State): string | undefined {
  const due = leaves.turned ?? start.position;
  if (bench.state.position === due || bench.state.position === "?" || due === "") return undefined;
  bench.state = { ...bench.state, position: due };
  return due;
}

/** What comes after the way back, and the end of both: what one left and the other puts right is not missing. `start`: where it ends. */
function finish(bench: Bench, procedure: Procedure, leaves: Leaves, start: State | undefined): readonly Performed[] {
  const from = bench.performed.length,
    { position } = bench.state;
  bench.phase = "refit";
  afterwards(bench, procedure);
  const finished = bench.performed.slice(from);
  judgeFinished(bench, leaves, finished);
  if (start) judgeEnd(bench, start, leaves, procedure.at, position);
  return finished;
}

/** The acts of `finish`; the unit is turned for them where one needs it. */
function afterwards(bench: Bench, procedure: Procedure): void {
  const { computed } = bench;
  bench.computed = true;
  walk(bench, procedure.finish, aroundOf(procedure));
  bench.computed = computed;
}

// --- a procedure that builds up ------------------------------------------------------------------------------------------------

function performBuild(bench: Bench, procedure: Procedure, before: Bench | undefined): Performance {
  const { model } = bench,
    start = bench.state;
  if (before) {
    bench.events.push(...before.events);
    for (const [label, where] of before.marksAt) bench.marksAt.set(label, where);
  }
  const promised = [...promisedBy(bench, procedure), ...promisedFor(bench, procedure, before)],
    leaves = leavesOf(bench, promised);
  bench.phase = "refit";
  bench.willFit = fitsOf(bench, procedure);
  bench.builtOn = resolve(bench, procedure.bases, aroundOf(procedure));
  run(bench, procedure, aroundOf(procedure));
  judgeTurned(bench);
  const written = bench.performed.slice();
  let whole: Bench | undefined;
  if (before) settle((whole = benchOf(model, startState(model))), procedure);
  const finished = finish(bench, procedure, leaves, whole?.state);
  if (before) judgeLeftUntil(bench, procedure);
  judgeLeft(
    bench,
    procedure,
    promised.filter(({ by }) => isHeldAgainst(procedure, by)),
    doneBy(bench.performed),
    before?.problems.length === 0,
  );
  judgeRepeats(
    bench,
    [
      ...readingsIn(written, bench.events, "refit", true),
      ...readingsIn(finished, bench.events, "refit", false, written),
    ],
    bench.problems,
  );
  judgeSets(bench, bench.performed);
  return {
    model,
    procedure,
    start,
    strip: [],
    events: bench.events,
    notes: bench.notes,
    stripEnd: start,
    order: undefined,
    refit: [],
    written,
    finish: finished,
    leaves: toldAtEnd(bench, procedure, promised),
    endTurn: undefined,
    end: bench.state,
    problems: withoutEchoes(bench, togetherLeftOut(bench, bench.problems), before?.problems ?? []),
  };
}

/** All that a written refit fits, calls included. */
function fitsOf(bench: Bench, procedure: Procedure): Set<ThingIndex> {
  const things = new Set<ThingIndex>(),
    seen = new Set<string>();
  const visit = (of: Procedure, prefix: string): void => {
    const key = `${of.id} ${prefix}`;
    if (seen.has(key)) return;
    seen.add(key);
    const inside = (entries: readonly Entry[], pieces: readonly string[]): void => {
      for (const entry of entries) {
        if (entry.is === "block") {
          if (entry.kind === "repeat") for (const piece of entry.over) inside(entry.body, [...pieces, piece]);
          else inside(entry.body, pieces);
          continue;
        }
        const around = { ...aroundOf(of), prefix, pieces },
          { act } = entry;
        if (act.verb === "do") {
          const called = bench.model.procedures.get(act.names[0]?.text ?? ""),
            on = act.on.length > 0 ? resolve(bench, act.on, around)[0] : undefined;
          if (called) visit(called, prefixInside(bench.model, on, around));
        } else if (act.verb === "fit" || act.verb === "tighten" || act.verb === "press")
          for (const thing of resolve(bench, act.names, around)) things.add(thing);
      }
    };
    inside(of.body, []);
    if (of === procedure) inside(of.finish, []);
  };
  visit(procedure, "");
  return things;
}

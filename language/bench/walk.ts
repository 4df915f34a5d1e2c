// Walking through a procedure's text: blocks, conditions, pieces, calls. What each act does is not decided here.

import { crewOfBoth } from "./crew.ts";
import type { Act } from "../model/act.ts";
import type { BlockEntry, Condition, Entry, Procedure, ThingIndex } from "../model/model.ts";
import { judgeAbsent } from "./absent.ts";
import { doAgain } from "./again.ts";
import { assume, prefixInside, reasonOf, report, resolve, resolveName, type Bench } from "./bench.ts";
import { isPart } from "./machine.ts";
import { perform } from "./perform.ts";
import { keepStage, type Frame, type Way } from "./stages.ts";
import { A_DOUBT, ON_BASE } from "./state.ts";
import { lumpOf } from "./ties.ts";
import type { Around, Given, StepRun } from "./trace.ts";
import { at } from "./vector.ts";

/** Asked when a called procedure ends: its aim is judged there. */
export type AtEnd = (bench: Bench, procedure: Procedure, around: Around) => void;

export function aroundOf(procedure: Procedure): Around {
  return {
    procedure,
    prefix: "",
    pieces: [],
    on: undefined,
    step: undefined,
    crew: procedure.crew,
    bench: undefined,
    given: [],
  };
}

/**
 * Does the entries one after the other. `way` tells a trail how they came to be done; `on`, where performing goes on after an edit, is
 * the way from here to the entry that comes next: what stands before it was done.
 */
export function walk(
  bench: Bench,
  entries: readonly Entry[],
  around: Around,
  atEnd?: AtEnd,
  way?: Way,
  on?: readonly Frame[],
): void {
  // What is done quietly, or once more, is no place to go on from.
  const trail = way && !bench.quiet && !bench.again ? bench.trail : undefined,
    begin = on ? on[0]!.at : 0,
    frame = trail && way && { way, around, at: begin };
  if (trail && frame) trail.frames.push(frame);
  for (let i = begin; i < entries.length; i++) {
    const entry = entries[i]!,
      isOn = on !== undefined && i === begin,
      inside = isOn && on.length > 1 ? on.slice(1) : undefined;
    if (trail && frame) {
      frame.at = i;
      if (way.is === "procedure" && !isOn) keepStage(bench, trail);
    }
    if (entry.is === "act") {
      if (entry.act.verb === "do") call(bench, entry.act, around, atEnd, inside);
      else perform(bench, entry.act, around);
      if (entry.act.verb === "repeat") doAgain(bench, entry.act, around);
      continue;
    }
    const [first] = inside ?? [],
      times = first?.way.is === "block" ? first.way.times : insideOf(bench, entry, around),
      from = first?.way.is === "block" ? first.way.nth : 0;
    for (let nth = from; nth < times.length; nth++)
      walk(
        bench,
        entry.body,
        times[nth]!,
        atEnd,
        trail && { is: "block", times, nth },
        nth === from ? inside : undefined,
      );
    if (entry.kind === "refit") {
      bench.notes.push({
        entries: entry.body,
        around,
        step: around.step,
        procedure: around.procedure,
        from: 0,
        to: 0,
        by: entry.name || undefined,
        at: entry.at,
      });
    }
  }
  if (!trail || !frame) return;
  frame.at = entries.length;
  if (way.is === "procedure" && !(on && begin === entries.length)) keepStage(bench, trail);
  trail.frames.pop();
}

/** With what around it the body of a block is done, once for each time: never for a branch not taken or for a refit block. */
export function insideOf(bench: Bench, entry: BlockEntry, around: Around): Around[] {
  switch (entry.kind) {
    case "step":
      return [{ ...around, step: stepOf(bench, entry, around) }];
    case "repeat":
      return entry.over.map((piece) => ({ ...around, pieces: [...around.pieces, piece] }));
    case "if":
      return conditionHolds(bench, entry.condition!, around)
        ? [{ ...around, given: [...around.given, ...givenOf(bench, entry.condition!, around)] }]
        : [];
    case "optional":
    case "choice":
      return bench.model.chosen.has(entry.key)
        ? [
            {
              ...around,
              given:
                entry.kind === "optional" ? [...around.given, { is: "optional", title: entry.title }] : around.given,
            },
          ]
        : [];
    case "either":
    case "instead":
      return [around];
    case "otherwise":
      return !bench.again &&
        (entry.condition ? conditionHolds(bench, entry.condition, around) : bench.model.chosen.has(entry.key))
        ? [
            {
              ...around,
              given: [
                ...around.given,
                ...(entry.condition ? givenOf(bench, entry.condition, around) : [{ is: "otherwise" } as const]),
              ],
            },
          ]
        : [];
    case "refit":
      return [];
  }
}

function stepOf(bench: Bench, entry: BlockEntry, around: Around): StepRun {
  const before = bench.again
    ? bench.performed.findLast(({ around: { step } }) => isSameStep(step, entry, around))
    : undefined;
  if (before?.around.step) return before.around.step;
  return {
    number: onlyCalls(bench, entry) ? bench.steps + 1 : ++bench.steps,
    procedure: around.procedure,
    name: entry.name,
    title: entry.title,
    pieces: around.pieces,
    on: around.on,
    at: entry.at,
  };
}

/** It prints nothing of its own, and has the number of the first step that it does: on paper none is missing. */
const onlyCalls = ({ model }: Bench, { body }: BlockEntry): boolean =>
  body.length > 0 &&
  body.every(
    (entry) => entry.is === "act" && entry.act.verb === "do" && model.procedures.has(entry.act.names[0]?.text ?? ""),
  );

const isSameStep = (step: StepRun | undefined, entry: BlockEntry, around: Around): boolean =>
  step !== undefined && step.at.start === entry.at.start && step.pieces.join() === around.pieces.join();

/**
 * What the reader has to know of a condition that holds here. Which piece is at hand is decided where the line stands: it is told for
 * whom the line is, and what the piece alone makes true is no condition any more.
 */
function givenOf(bench: Bench, { unless, any, states }: Condition, around: Around): Given[] {
  const title = (id: string, state: string): string => {
    if (state === "removed") return thingTitle(bench, id, around);
    if (state === "fails")
      return bench.performed.findLast(({ act }) => act.verb === "measure" && act.id?.text === id)?.act.text || id;
    return bench.model.choiceTitles.get(id) || id;
  };
  const of: Given[] = [],
    pieces = states.filter(({ name, state }) => state === "" && isPiece(bench, name.text, around)),
    others = pieces.length === 0 ? states : states.filter((one) => !pieces.includes(one));
  if (pieces.length > 0) {
    // Said beside the others where both are asked for ("left and heater", "unless left or heater"); else the piece decides, or the others.
    if (others.length === 0 || any === unless)
      of.push({ is: "pieces", unless, any, pieces: pieces.map(({ name }) => name.text) });
    else if (pieces.some(({ name }) => around.pieces.includes(name.text) === any)) return [];
  }
  if (others.length > 0)
    of.push({
      is: "condition",
      unless,
      any,
      states: others.map(({ name, state }) => ({ id: name.text, title: title(name.text, state), state })),
    });
  return of;
}

/** The piece at hand, or another one of those that the unit has. */
const isPiece = ({ model }: Bench, id: string, { pieces }: Around): boolean =>
  pieces.includes(id) || (!model.chosen.has(id) && model.things.some(({ piece }) => piece === id));

/** The name of a thing; of several pieces that of the first, without its piece. */
function thingTitle(bench: Bench, id: string, around: Around): string {
  const things = resolveName(bench, id, around),
    first = bench.model.things[things[0] ?? -1];
  if (!first) return id;
  return things.length > 1 && first.piece !== "" && first.name.endsWith(` ${first.piece}`)
    ? first.name.slice(0, -first.piece.length - 1)
    : first.name;
}

/** A variant, an option or a failing reading of this build, the piece at hand, or what was removed up to now. */
export function conditionHolds(bench: Bench, condition: Condition, around: Around): boolean {
  const one = (name: string, state: string): boolean => {
    if (state === "removed") return resolveName(bench, name, around).some((thing) => at(bench.state.offBy, thing) >= 0);
    return around.pieces.includes(name) || bench.model.chosen.has(state === "" ? name : `${name} ${state}`);
  };
  const is = condition.any
    ? condition.states.some((s) => one(s.name.text, s.state))
    : condition.states.every((s) => one(s.name.text, s.state));
  return is !== condition.unless;
}

/** `do PROCEDURE [on PART]`; a plain act in words, or a step done again, changes nothing on the bench. */
function call(bench: Bench, act: Act, around: Around, atEnd?: AtEnd, inside?: readonly Frame[]): void {
  const procedure = bench.model.procedures.get(act.names[0]?.text ?? "");
  if (procedure && inside) {
    run(bench, procedure, inside[0]!.around, atEnd, undefined, inside);
    return;
  }
  if (!procedure || bench.calling?.includes(procedure.id)) {
    perform(bench, act, around);
    return;
  }
  perform(bench, act, around);
  const on = act.on.length > 0 ? resolve(bench, act.on, around)[0] : undefined;
  if (on === undefined && act.on.length > 0 && judgeAbsent(bench, act, around)) return;
  const { model } = bench,
    prefix = prefixInside(model, on, around),
    here = prefix === "" ? model.unit : model.parts.find((part) => `${part.id}/` === prefix)?.unit;
  if (here !== undefined && procedure.unit !== here) {
    report(
      bench,
      act.at,
      on === undefined ? [] : [on],
      [
        reasonOf("sequence/other-unit", {
          thing: on,
          words: [procedure.title || procedure.id, procedure.unit, here],
          at: procedure.at,
        }),
      ],
      act,
      around,
    );
    return;
  }
  bench.callAt = act.at;
  run(
    bench,
    procedure,
    {
      ...around,
      procedure,
      prefix,
      on: on ?? around.on,
      crew: crewOfBoth(around.crew, procedure.crew),
    },
    atEnd,
    on,
  );
}

/** A whole procedure, called or as the one asked for; or, with `inside`, the rest of it. */
export function run(
  bench: Bench,
  procedure: Procedure,
  around: Around,
  atEnd?: AtEnd,
  on?: ThingIndex,
  inside?: readonly Frame[],
): void {
  const called = bench.calling !== undefined,
    way: Way = inside ? inside[0]!.way : { is: "procedure", from: bench.events.length },
    from = way.is === "procedure" ? way.from : 0;
  bench.calling = [...(bench.calling ?? []), procedure.id];
  let here = around;
  if (called && !inside) {
    neededFirst(bench, procedure, around, atEnd);
    if (procedure.starts.some((start) => start.is === "on-bench")) here = onBench(bench, procedure, around, on);
  }
  bench.calls.add(procedure.id);
  walk(bench, procedure.body, here, atEnd, way, inside);
  if (called && bench.phase === "strip") atEnd?.(bench, procedure, here);
  if (procedure.refitBy || procedure.refit.length > 0) {
    bench.notes.push({
      entries: procedure.refit,
      around: here,
      step: undefined,
      procedure,
      from,
      to: bench.events.length,
      by: procedure.refitBy?.text,
      at: procedure.refitAt ?? procedure.at,
    });
  }
  bench.calling = bench.calling.slice(0, -1);
}

/** A needed procedure that was not done is one finding; then it is taken as done, quietly. */
function neededFirst(bench: Bench, procedure: Procedure, around: Around, atEnd?: AtEnd): void {
  for (const need of procedure.needs)
    for (const name of need.names) {
      const needed = bench.model.procedures.get(name.text);
      if (!needed || bench.calls.has(needed.id) || bench.calling!.includes(needed.id)) continue;
      const missed = (): void =>
        // It is the line that calls it that comes too early; a needed procedure has none.
        report(
          bench,
          bench.callAt ?? need.at,
          [],
          [
            reasonOf("sequence/needs", {
              words: [procedure.title || procedure.id, needed.title || needed.id],
              at: need.at,
            }),
          ],
          undefined,
          around,
        );
      if (bench.phase !== "strip") {
        missed();
        continue;
      }
      const known = bench.state.assumptions > 0 ? bench.state.assumed : undefined;
      const since = bench.events.length,
        notes = bench.notes.length,
        done = bench.performed.length,
        wasQuiet = bench.quiet;
      bench.quiet = true;
      run(bench, needed, { ...around, procedure: needed }, atEnd);
      bench.quiet = wasQuiet;
      bench.notes.length = notes;
      bench.performed.length = done;
      for (let i = since; i < bench.events.length; i++) bench.events[i] = { ...bench.events[i]!, assumed: true };
      // Part of what it does was missed before, at an act that asked for it: that is the same mistake.
      if (
        !known ||
        !bench.events.slice(since).some((event) => event.things.some((thing) => (at(known, thing) & ~A_DOUBT) !== 0))
      )
        missed();
    }
}

/** `starts on bench`: every act needs the parting that put its part there. */
function onBench(bench: Bench, procedure: Procedure, around: Around, on: ThingIndex | undefined): Around {
  if (on === undefined || !isPart(bench.model, on)) return around;
  if (lumpOf(bench.state, on) === ON_BASE) {
    report(
      bench,
      bench.callAt ?? procedure.at,
      [on],
      [
        reasonOf(bench.phase === "strip" ? "sequence/blocked" : "refit/impossible", {
          thing: on,
          words: ["starts on bench", procedure.title || procedure.id],
          at: procedure.at,
        }),
      ],
      undefined,
      around,
    );
    assume(bench, on, A_DOUBT);
  }
  const by = at(bench.state.lumpBy, on);
  return { ...around, bench: by < 0 ? undefined : by };
}

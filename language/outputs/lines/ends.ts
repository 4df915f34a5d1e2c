// What a procedure says of its start and of its end, as notes: what is not as usual when it begins, what is left otherwise than it was and
// until when, what follows when all is done, and which precautions still stand.

import { at } from "../../bench/vector.ts";
import { aroundOf } from "../../bench/walk.ts";
import { namedThings } from "../../bill/named-things.ts";
import type { Name } from "../../model/act.ts";
import type { ThingIndex } from "../../model/model.ts";
import type { Span } from "../../findings/finding.ts";
import { phrase, thingOf, type LineContext } from "./context.ts";
import type { Doing, LineDraft } from "./draft.ts";

const note = (half: Doing["half"], place: Span, says: string): LineDraft => ({
  is: "note",
  half,
  at: place,
  given: [],
  says,
});

/** Things that a statement names, with how many of them; undefined where none of them is there in this build. */
function named(context: LineContext, names: readonly Name[], count: number | undefined): string | undefined {
  return worded(context, namedThings(context.model, names, aroundOf(context.performance.procedure)), count);
}

function worded(context: LineContext, things: readonly ThingIndex[], count: number | undefined): string | undefined {
  const first = things[0] === undefined ? undefined : thingOf(context, things[0]);
  if (!first) return undefined;
  if (things.length === 1 && count !== undefined && first.is === "tie")
    return context.wording.acts.some(first.name, first.piece !== "", count, first.count, false, first.countUnknown);
  return phrase(context, things);
}

export function startLines(context: LineContext): LineDraft[] {
  const { acts, kinds } = context.wording;
  return context.performance.procedure.starts.flatMap((start): LineDraft[] => {
    const says = ((): string | undefined => {
      if (start.is === "on-bench") return acts.starts.onBench;
      const what = named(context, start.names, start.is === "without" ? start.count : undefined);
      if (what === undefined) return undefined;
      switch (start.is) {
        case "without":
          return acts.starts.without(what);
        case "drained":
          return acts.starts.drained(what);
        case "with":
          return acts.starts.with(kinds.precautionShort(start.precaution), what);
      }
    })();
    return says === undefined ? [] : [note("strip", start.at, says)];
  });
}

export function leaveLines(context: LineContext): LineDraft[] {
  const { acts, kinds } = context.wording,
    { procedures } = context.model;
  return context.performance.leaves.flatMap(({ leave, is, things }): LineDraft[] => {
    const [name] = leave.names,
      what = is === "turned" ? name && kinds.position(name.text) : worded(context, things, leave.count);
    const until = leave.until && (procedures.get(leave.until.text)?.title || leave.until.text);
    return what === undefined ? [] : [note("refit", leave.at, acts.leaves(is, what, until, leave.words ?? ""))];
  });
}

export interface NeededBefore {
  readonly words: string;
  /** That only the strip of it is done before, where it is a procedure that has a way back of its own; "" else. */
  readonly alone: string;
  readonly then: string;
}

/** What `needs` says: words, or procedures. This one begins where their strip ended, unless they leave something until it. */
export function neededBefore({ performance, model, wording }: LineContext): NeededBefore[] {
  const { procedure } = performance;
  return procedure.needs.map((need) => {
    const needed = need.names.flatMap((name) => model.procedures.get(name.text) ?? []);
    const isStripAlone = needed.some(
      (one) =>
        one.aims.every((aim) => aim.is !== "all-in") && one.leaves.every((leave) => leave.until?.text !== procedure.id),
    );
    return {
      words: need.words ?? need.names.map((name) => model.procedures.get(name.text)?.title || name.text).join(", "),
      alone: isStripAlone ? wording.manual.stripAlone : "",
      then: need.then ?? "",
    };
  });
}

/** `needs "…" then "…"`: what answers it when all is done. */
export const afterLines = ({ performance, wording }: LineContext): LineDraft[] =>
  performance.procedure.needs.flatMap((need) =>
    need.then === undefined ? [] : [note("finish", need.at, wording.acts.afterwards(need.then))],
  );

/** What stands at the end beyond the start, because something that it is against is left open: the next reader has to know. */
export function standingLines({ performance, model, wording }: LineContext): LineDraft[] {
  const { start, end, stripEnd, leaves, order } = performance;
  if (leaves.length === 0 || !order) return [];
  const stands = (number: number): boolean =>
    at(end.standing, number) !== 0 && at(start.standing, number) === 0 && at(stripEnd.standing, number) !== 0;
  return model.hazards.flatMap((hazard) =>
    hazard.precautions
      .filter((p) => stands(p.number) && (p.back !== "" || Boolean(wording.kinds.precautionBack(p.kind))))
      .map((p) =>
        note("refit", hazard.at, wording.acts.stillStands(wording.kinds.precautionShort(p.kind), hazard.name)),
      ),
  );
}

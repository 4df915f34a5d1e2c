// What a procedure rests on of others: which go before it, what they leave until it, and what they promise of its end.

import type { Entry, Leave, Model, Procedure, ThingIndex } from "../model/model.ts";
import { reasonOf, report, resolve, type Bench } from "./bench.ts";
import { isPart, isTie, tieOf } from "./machine.ts";
import { DRAINED, ON_BASE, TIGHT } from "./state.ts";
import { lumpOf } from "./ties.ts";
import { promisedBy } from "./promises.ts";
import type { Promised, Reason } from "./trace.ts";
import { at } from "./vector.ts";
import { aroundOf } from "./walk.ts";

/**
 * What is promised of its end by those that it puts together again: all, where it is the way back that they name. `before`: the bench as
 * they left it.
 */
export function promisedFor(bench: Bench, procedure: Procedure, before: Bench | undefined): readonly Promised[] {
  return neededBefore(bench.model, procedure).flatMap((id) => {
    const other = bench.model.procedures.get(id);
    if (!other) return [];
    const isItsRefit = other.refitBy?.text === procedure.id;
    return promisedBy(isItsRefit && before ? before : bench, other).filter(
      ({ is, by }) => isItsRefit || (by === other && is === "turned"),
    );
  });
}

/** What it says that it needs, what leaves something until it, and what it is the written refit of. */
export function neededBefore(model: Model, procedure: Procedure): readonly string[] {
  const ids = procedure.needs.flatMap((need) => need.names).map((name) => name.text);
  for (const other of model.procedures.values()) {
    if (other === procedure || ids.includes(other.id)) continue;
    const isItsRefit = other.refitBy?.text === procedure.id;
    // Of several that name it, it begins where the first ends.
    if (
      isItsRefit &&
      !ids.some((id) => model.procedures.get(id)?.refitBy?.text === procedure.id || restsOn(model, id, other.id))
    )
      ids.push(other.id);
    else if (
      leftUntil(other, procedure).length > 0 &&
      !callsFor(other.body, procedure.id) &&
      !callsFor(other.finish, procedure.id)
    )
      ids.push(other.id);
  }
  return ids;
}

/** One procedure needs the other, or needs one that does. */
function restsOn(model: Model, id: string, other: string, seen = new Set<string>()): boolean {
  if (id === other) return true;
  if (seen.has(id)) return false;
  seen.add(id);
  const needs = model.procedures.get(id)?.needs ?? [];
  return needs.some(({ names }) => names.some((name) => restsOn(model, name.text, other, seen)));
}

export const leftUntil = (one: Procedure, next: Procedure): readonly Leave[] =>
  one.leaves.filter((leave) => leave.until?.text === next.id);

/** It does the other one within. */
export const callsFor = (entries: readonly Entry[], id: string): boolean =>
  entries.some((entry) =>
    entry.is === "block" ? callsFor(entry.body, id) : entry.act.verb === "do" && entry.act.names[0]?.text === id,
  );

/** What another procedure left until this one is put right by this one, at the latest when it finishes. */
export function judgeLeftUntil(bench: Bench, procedure: Procedure): void {
  const { model } = bench;
  for (const other of model.procedures.values())
    for (const leave of leftUntil(other, procedure)) {
      if (!neededBefore(model, procedure).includes(other.id)) continue;
      for (const thing of resolve(bench, leave.names, aroundOf(other))) {
        const of = stillLeft(bench, thing);
        if (of) report(bench, procedure.at, [thing], [reasonOf(of.rule, { ...of, thing, at: leave.at })]);
      }
    }
}

/** How a thing is still not as it should be at the end, as a reason; undefined where it is. */
function stillLeft(
  { model, state: s }: Bench,
  thing: ThingIndex,
): Pick<Reason, "rule" | "words" | "numbers"> | undefined {
  if (isTie(model, thing)) {
    const out = at(s.out, thing);
    if (out === 0 && at(s.slack, thing) === TIGHT) return undefined;
    return {
      rule: "refit/missing",
      words: [out > 0 ? "out" : "finger-tight"],
      numbers: [out, tieOf(model, thing).count],
    };
  }
  if (isPart(model, thing))
    return lumpOf(s, thing) === ON_BASE ? undefined : { rule: "refit/missing", words: ["still off"], numbers: [] };
  return (at(s.flags, thing) & DRAINED) === 0 ? undefined : { rule: "refit/fluid-short", words: [], numbers: [] };
}

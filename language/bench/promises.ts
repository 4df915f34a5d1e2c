// What a procedure leaves otherwise than it was: what it says itself, and what those that it does say of their ends. The caller does not
// repeat that; where its own lines, or its way back, put it right again it is not left.

import type { Act } from "../model/act.ts";
import type { Entry, Leave, Model, Procedure, ThingIndex } from "../model/model.ts";
import { prefixInside, resolve, type Bench } from "./bench.ts";
import { isPart, isTie, tieOf } from "./machine.ts";
import { DRAINED, ON_BASE, TIGHT, type State } from "./state.ts";
import { lumpOf } from "./ties.ts";
import type { Around, Promised } from "./trace.ts";
import { at } from "./vector.ts";
import { aroundOf, insideOf } from "./walk.ts";

/** Asked when the strip is done: its own, then those of the procedures that it did, in their order. */
export function promisedBy(bench: Bench, procedure: Procedure): Promised[] {
  const own = procedure.leaves.flatMap((leave) =>
      byWay(bench, { leave, things: resolve(bench, leave.names, aroundOf(procedure)), by: procedure }),
    ),
    said = ({ is }: Promised, thing: ThingIndex): boolean =>
      all.some((one) => one.is === is && one.things.includes(thing));
  const all: Promised[] = [...own];
  for (const { act, around } of bench.performed) {
    const by = act.verb === "do" ? bench.model.procedures.get(act.names[0]?.text ?? "") : undefined;
    if (!by || by === procedure) continue;
    for (const leave of by.leaves) {
      if (leave.is === "turned") {
        const isSo = bench.state.position === leave.names[0]?.text && all.every((one) => one.is !== "turned");
        if (isSo) all.push({ leave, is: "turned", things: [], by });
        continue;
      }
      const whole = { leave, things: resolve(bench, leave.names, inside(bench, act, around, by)), by };
      for (const one of byWay(bench, whole)) {
        const things = one.things.filter(
          (thing) =>
            !said(one, thing) && isLeft(bench.model, bench.state, one, thing) && !isPutRight(bench, by, one.is, thing),
        );
        if (things.length > 0) all.push({ ...one, things });
      }
    }
  }
  return all;
}

/** A part that is said to be left out is off, and fasteners that are said to be left off are out: neither could mean anything else. */
function byWay({ model }: Bench, one: Omit<Promised, "is">): Promised[] {
  const { is, count } = one.leave;
  if (is !== "out" && is !== "off") return [{ ...one, is }];
  const ways = Map.groupBy(one.things, (thing): Leave["is"] =>
    isTie(model, thing) ? "out" : isPart(model, thing) && count === undefined ? "off" : is,
  );
  return [...ways].map(([way, things]) => ({ ...one, is: way, things }));
}

/** As the called procedure's own lines see the names of the machine. */
function inside(bench: Bench, act: Act, around: Around, procedure: Procedure): Around {
  const on = act.on.length > 0 ? resolve(bench, act.on, around)[0] : undefined;
  return { ...around, procedure, prefix: prefixInside(bench.model, on, around) };
}

/** Is it so in this state? False of what cannot be left so at all. */
export function isLeft(model: Model, s: State, { is, leave: { count } }: Promised, thing: ThingIndex): boolean {
  switch (is) {
    case "off":
      return isPart(model, thing) && lumpOf(s, thing) !== ON_BASE;
    case "out":
      return isTie(model, thing) && at(s.out, thing) >= (count ?? tieOf(model, thing).count);
    case "finger-tight":
      return isTie(model, thing) && (at(s.out, thing) > 0 || at(s.slack, thing) !== TIGHT);
    case "drained":
      return model.things[thing]?.is === "fluid" && (at(s.flags, thing) & DRAINED) !== 0;
    case "turned":
      return false;
  }
}

/** Who says so: the procedure itself, or one whose way back it is by name. Of what others leave it may put right what it will. */
export const isHeldAgainst = (procedure: Procedure, by: Procedure): boolean =>
  by === procedure || by.refitBy?.text === procedure.id;

/** What is told at the end: what is held against it, and of what others leave what the way back has not put right after all. */
export const toldAtEnd = ({ model, state }: Bench, procedure: Procedure, promised: readonly Promised[]): Promised[] =>
  promised.flatMap((one) => {
    const { leave, is, by } = one;
    if (isHeldAgainst(procedure, by)) return one;
    if (is === "turned") return state.position === leave.names[0]?.text ? one : [];
    const things = one.things.filter((thing) => isLeft(model, state, one, thing));
    return things.length > 0 ? { ...one, things } : [];
  });

const putsRight: Readonly<Record<Leave["is"], readonly string[]>> = {
  off: ["fit", "press"],
  out: ["fit"],
  "finger-tight": ["tighten", "fit"],
  drained: ["fill"],
  turned: [],
};

/** A refit block around the call puts it back in writing, in this build: some of it, or finger-tight, is enough to have it in hand. */
function isPutRight(bench: Bench, by: Procedure, is: Leave["is"], thing: ThingIndex): boolean {
  for (const { procedure, entries, around } of bench.notes) {
    if (procedure === by) continue;
    for (const one of actsIn(bench, entries, around))
      if (
        putsRight[is].includes(one.act.verb) &&
        !(is === "finger-tight" && one.act.fingerTight) &&
        resolve(bench, one.act.names, one.around).includes(thing)
      )
        return true;
  }
  return false;
}

const actsIn = (
  bench: Bench,
  entries: readonly Entry[],
  around: Around,
): { readonly act: Act; readonly around: Around }[] =>
  entries.flatMap((entry) =>
    entry.is === "act"
      ? [{ act: entry.act, around }]
      : (entry.kind === "step" ? [around] : insideOf(bench, entry, around)).flatMap((inner) =>
          actsIn(bench, entry.body, inner),
        ),
  );

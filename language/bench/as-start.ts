// How the bench stands when a procedure begins: what `starts` says, and what work before it left.

import type { Model, Procedure, Start, ThingIndex } from "../model/model.ts";
import { resolve, resolveName, type Bench } from "./bench.ts";
import { lumps, type Lump } from "./lumps.ts";
import { isPart, isTie, tieOf } from "./machine.ts";
import { DRAINED, NEVER, ON_BASE, type State } from "./state.ts";
import { at, set, vector } from "./vector.ts";
import { aroundOf } from "./walk.ts";

/** A part that is not there when the work begins, nor what ties it. */
function without(model: Model, state: State, part: ThingIndex): State {
  const own = -(wayOff + part);
  let { out } = state;
  for (const tie of model.ties)
    if (tie.lowers.includes(part) || tie.uppers.includes(part)) out = set(out, tie.index, tie.count);
  return {
    ...state,
    out,
    lump: set(state.lump, part, own),
    carriers: state.carriers.with(own, { carrier: part, from: ON_BASE }),
  };
}
/** Sub-assemblies of parts that were never there have numbers that no event can have. */
const wayOff = 1_000_000;

/** `starts …` */
export function settle(bench: Bench, procedure: Procedure): void {
  const around = aroundOf(procedure);
  const one = (start: Start): void => {
    if (start.is === "on-bench") return;
    if (start.is === "with") {
      for (const name of start.names)
        for (const thing of resolveName(bench, name.text, around)) {
          const hazard = bench.model.things[thing]!;
          if (hazard.is !== "hazard") continue;
          for (const p of hazard.precautions)
            if (p.kind === start.precaution)
              bench.state = { ...bench.state, standing: set(bench.state.standing, p.number, -1) };
        }
      return;
    }
    for (const thing of resolve(bench, start.names, around)) {
      const s = bench.state;
      if (start.is === "drained") bench.state = { ...s, flags: set(s.flags, thing, at(s.flags, thing) | DRAINED) };
      else if (isPart(bench.model, thing)) bench.state = without(bench.model, s, thing);
      else if (isTie(bench.model, thing))
        // Work before this procedure may have taken out more of them already: the larger count holds.
        bench.state = {
          ...s,
          out: set(s.out, thing, Math.max(at(s.out, thing), start.count ?? tieOf(bench.model, thing).count)),
        };
    }
  };
  for (const start of procedure.starts) one(start);
}

/**
 * What was done before is no part of this refit: facts stay, the events that made them so are forgotten. Sub-assemblies have numbers of
 * no event then, each one of its own, whenever it was made.
 */
export function asStart(model: Model, state: State): State {
  const none = vector(model.things.length, NEVER),
    all = [...state.carriers.entries()],
    before = new Map<number, Lump>();
  let last = Math.min(0, ...all.map(([number]) => number).filter((number) => number > -wayOff));
  const names = new Map(all.map(([number]) => [number, number > ON_BASE ? --last : number])),
    nameOf = (number: number): number => names.get(number) ?? number;
  for (const [number, { carrier, from, joined }] of all)
    before.set(nameOf(number), {
      carrier,
      from: nameOf(from),
      ...(joined === undefined ? {} : { joined: nameOf(joined) }),
    });
  let lump = state.lump,
    standing = state.standing;
  for (const part of model.parts) {
    const had = at(lump, part.index);
    if (had > ON_BASE) lump = set(lump, part.index, nameOf(had));
  }
  for (const precaution of model.precautions)
    if (at(standing, precaution.number) > 0) standing = set(standing, precaution.number, -1);
  return {
    ...state,
    lump,
    standing,
    carriers: lumps(before),
    outBy: none,
    slackBy: none,
    lumpBy: none,
    offBy: none,
    asideBy: none,
    heldBy: none,
    drainedBy: none,
    metBy: none,
  };
}

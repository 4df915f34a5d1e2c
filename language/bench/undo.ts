// Undoing, loosening, backing out: fasteners and joints.

import type { Act } from "../model/act.ts";
import type { ThingIndex, Tie } from "../model/model.ts";
import { bareHandsKg, massKg, massOf } from "./load.ts";
import { cleared, hidden, lumpOfItem, wrongPosition } from "./access.ts";
import { assume, forget, happen, isAssumed, reasonOf, refuse, report, type Bench, type Obstacle } from "./bench.ts";
import { spills } from "./fluids.ts";
import { touch } from "./hazards.ts";
import { isCaptive, isPart, isTie, partOf, tieOf } from "./machine.ts";
import { carriesAny, lookAt } from "./removal.ts";
import { remove } from "./remove.ts";
import { A_AWAY, A_DOUBT, A_OFF, A_ON, A_OUT, BACKED_OUT, HELD, LOOSE, NEVER, TIGHT } from "./state.ts";
import { reportTwice } from "./slips.ts";
import { holds, left, partingOf, together } from "./ties.ts";
import type { Around } from "./trace.ts";
import { at, set } from "./vector.ts";

/** `undo`, `loosen`, `back-out`. A part among the things is removed instead: "undo the cover" is how the trade speaks. */
export function undo(bench: Bench, act: Act, things: readonly ThingIndex[], around: Around): void {
  const { model } = bench,
    wanted = act.rest ? Infinity : (act.count ?? Infinity);
  for (const thing of things) {
    if (isPart(model, thing)) {
      remove(bench, act, [thing], around);
      continue;
    }
    if (!isTie(model, thing)) continue;
    const tie = tieOf(model, thing),
      isIn = left(model, bench.state, thing);
    if (isIn === 0) {
      alreadyOut(bench, act, tie, around);
      continue;
    }
    if (cameApart(bench, act, tie, around)) continue;
    if (act.verb !== "undo" && alreadyLoose(bench, act, tie, around)) continue;
    if (wanted !== Infinity && wanted > isIn && things.length === 1 && !tie.countUnknown) {
      report(
        bench,
        act.at,
        [thing],
        [reasonOf("sequence/over-count", { thing, numbers: [wanted, isIn, tie.count], at: tie.at })],
        act,
        around,
      );
      // Which of the two figures is wrong nobody can tell: what is left of it by either is no second mistake.
      assume(bench, thing, A_OUT);
    }
    bench.stages.delete(thing);
    const needs = new Set<number>(),
      hazards = new Set<ThingIndex>(),
      lump = lumpOfItem(bench, tie);
    refuse(bench, act, around, thing, [
      ...hidden(bench, tie, lump, act, around),
      ...wrongPosition(bench, tie, lump),
      ...touch(bench, [thing], act, around, needs, hazards),
      ...(act.verb === "undo" ? spills(bench, thing, tie.opens, needs) : []),
      ...falls(bench, tie, needs),
    ]);
    cleared(bench, tie, needs);
    const slackBy = at(bench.state.slackBy, thing),
      count = Math.min(isIn, wanted);
    if (slackBy !== NEVER) needs.add(slackBy);
    if (act.verb === "undo" && !isCaptive(tie)) takeOut(bench, act, tie, count, needs, hazards, around);
    else {
      const before = bench.events[slackBy];
      if (act.verb === "undo" && before && before.act.verb !== "loosen") {
        reportTwice(
          bench,
          act,
          around,
          thing,
          before.around.step,
          reasonOf("sequence/already-undone", { thing, words: ["undone"], at: before.act.at }),
        );
        continue;
      }
      if (act.verb === "undo")
        report(bench, act.at, [thing], [reasonOf("sequence/captive", { thing, at: tie.at })], act, around);
      // A captive one is undone when it is backed out: that is what was meant.
      const backed = act.verb !== "loosen";
      // Looser still, or loose again after it was tightened for a while: the one tightening of the refit answers both, and nothing comes
      // after the first that the second did not ask for.
      if (
        bench.phase === "strip" &&
        before &&
        !before.assumed &&
        at(bench.state.outBy, thing) <= slackBy &&
        before.count === count
      ) {
        bench.state = {
          ...bench.state,
          slack: set(
            bench.state.slack,
            thing,
            backed || at(bench.state.slack, thing) === BACKED_OUT ? BACKED_OUT : LOOSE,
          ),
          outBy: backed ? set(bench.state.outBy, thing, slackBy) : bench.state.outBy,
        };
        continue;
      }
      // The rest of those that were backed out, further out: nothing changes.
      if (backed && before && !before.assumed && at(bench.state.slack, thing) === BACKED_OUT && before.count >= isIn)
        continue;
      const event = happen(bench, "slack", thing, act, around, needs, { count, hazards: [...hazards] }),
        s = bench.state;
      bench.state = {
        ...s,
        slack: set(s.slack, thing, backed ? BACKED_OUT : LOOSE),
        slackBy: set(s.slackBy, thing, event),
        outBy: backed ? set(s.outBy, thing, event) : s.outBy,
      };
    }
  }
}

function takeOut(
  bench: Bench,
  act: Act,
  tie: Tie,
  count: number,
  needs: Iterable<number>,
  hazards: ReadonlySet<ThingIndex>,
  around: Around,
): void {
  const event = happen(bench, "out", tie.index, act, around, needs, { count, hazards: [...hazards] }),
    s = bench.state,
    out = at(s.out, tie.index) + count;
  bench.state = {
    ...s,
    out: set(s.out, tie.index, out),
    outBy: set(s.outBy, tie.index, event),
    slack: out >= tie.count ? set(s.slack, tie.index, TIGHT) : s.slack,
  };
  forget(bench, tie.index, A_ON);
}

/** Undone twice: a finding, unless the first time was only assumed. */
function alreadyOut(bench: Bench, act: Act, tie: Tie, around: Around): void {
  if (isAssumed(bench, tie.index, A_OUT)) return forget(bench, tie.index, A_OUT);
  const before = bench.events[at(bench.state.outBy, tie.index)];
  reportTwice(
    bench,
    act,
    around,
    tie.index,
    before?.around.step,
    reasonOf("sequence/already-undone", { thing: tie.index, words: ["undone"], at: before?.act.at }),
  );
}

/** A joint that let go in passing when its part came off has nothing left that could be undone. */
function cameApart(bench: Bench, act: Act, tie: Tie, around: Around): boolean {
  const { state: s } = bench,
    [side] = tie.lowers;
  if (
    bench.phase !== "strip" ||
    !tie.passing ||
    side === undefined ||
    tie.uppers.length === 0 ||
    tie.lowers.some((a) => tie.uppers.some((b) => together(s, a, b)))
  )
    return false;
  const before = bench.events[partingOf(s, side, tie.uppers[0]!)];
  if (!before || before.assumed || tie.lowers.some((part) => isAssumed(bench, part, A_OFF | A_AWAY | A_DOUBT)))
    return false;
  report(
    bench,
    act.at,
    [tie.index],
    [
      reasonOf("sequence/already-undone", {
        thing: tie.index,
        by: [before.thing],
        words: ["apart"],
        at: before.act.at,
      }),
    ],
    act,
    around,
  );
  return true;
}

function alreadyLoose(bench: Bench, act: Act, tie: Tie, around: Around): boolean {
  const now = at(bench.state.slack, tie.index);
  const before = bench.events[at(bench.state.slackBy, tie.index)];
  if (before?.assumed !== false || bench.phase !== "strip") return false;
  // Some of a group may be backed out by one line and some by the next, and the rest further once one of them is out.
  const backed =
    now === BACKED_OUT &&
    (act.verb === "back-out"
      ? before.count === tie.count && at(bench.state.out, tie.index) === 0
      : before.count >= left(bench.model, bench.state, tie.index));
  if (!backed && !(act.verb === "loosen" && now === LOOSE)) return false;
  report(
    bench,
    act.at,
    [tie.index],
    [
      reasonOf("sequence/already-undone", {
        thing: tie.index,
        words: [backed ? "backed out" : "loosened"],
        at: before.act.at,
      }),
    ],
    act,
    around,
  );
  return true;
}

/** A part that hangs, or is too heavy for bare hands with what comes down with it, must be held before the last group of its ties is touched. */
function falls(bench: Bench, tie: Tie, needs: Set<number>): Obstacle[] {
  if (bench.phase === "refit" || tie.passing) return [];
  const { model, machine } = bench,
    obstacles: Obstacle[] = [];
  for (const id of tie.lowers) {
    const part = partOf(model, id);
    if (machine.isBase(id)) continue;
    // Taken off with its screws backed out it lies on the bench: they hold it up no more.
    if (tie.uppers.length > 0 && !tie.uppers.some((host) => together(bench.state, host, id))) continue;
    const last = !machine.tiesOf[id]!.some(
      (t) =>
        t.index !== tie.index &&
        !t.passing &&
        t.lowers.includes(id) &&
        holds(model, bench.state, t.index) &&
        at(bench.state.slack, t.index) === TIGHT,
    );
    if (!last) continue;
    const own = massKg(part);
    let falling: readonly ThingIndex[] = [id],
      mass = own;
    if (!part.hangs && (own === undefined || own <= bareHandsKg)) {
      if (!carriesAny(bench, id)) continue;
      // What hangs on it falls with it: a light bracket with a motor on it is no light thing.
      const { moved } = lookAt(bench, [id]);
      if (tie.uppers.length > 0 && tie.uppers.every((upper) => moved.has(upper))) continue; // it ties nothing to what stays
      // What was taken as out of the way is said where it was in the way, and weighs nothing here.
      falling = [...moved].filter((one) => !isAssumed(bench, one, A_AWAY | A_OFF));
      mass = falling.length > 1 ? massOf(model, falling).kg : own;
      if (mass === undefined || mass <= bareHandsKg) continue;
    }
    const held = falling.filter((one) => (at(bench.state.flags, one) & HELD) !== 0);
    for (const one of held) {
      const by = at(bench.state.heldBy, one);
      if (by !== NEVER) needs.add(by);
    }
    if (held.length > 0) continue;
    if (part.rests.length > 0 && !part.hangs) continue; // it lies there by its weight
    obstacles.push({
      reason: reasonOf("sequence/falls", {
        thing: id,
        by: [tie.index],
        numbers: mass === undefined ? [] : [mass],
        words: [part.hangs ? "hangs" : falling.length > 1 ? "with what is on it" : "heavy"],
        at: part.at,
      }),
      assume: () => {
        let { flags } = bench.state;
        for (const one of falling) flags = set(flags, one, at(flags, one) | HELD);
        bench.state = { ...bench.state, flags };
      },
    });
  }
  return obstacles;
}

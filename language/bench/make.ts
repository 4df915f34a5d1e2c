// Making ties: fitting, finger-tight, tightening, stages.

import type { Act } from "../model/act.ts";
import type { ThingIndex, Tie } from "../model/model.ts";
import { assumeOn, hostsOf, inTheWay, lumpOfItem, wrongPosition } from "./access.ts";
import {
  assume,
  forget,
  happen,
  isAssumed,
  isPuttingBack,
  joinsWhole,
  reasonOf,
  refuse,
  report,
  wholeSoFar,
  type Bench,
  type Obstacle,
} from "./bench.ts";
import { touch } from "./hazards.ts";
import { tieOf } from "./machine.ts";
import { lineUp } from "./marks.ts";
import { A_DOUBT, A_ON, A_OUT, FINGER_TIGHT, NEVER, ON_BASE, TIGHT } from "./state.ts";
import { joinsSlip, noteNever, noteTwice, reportTwice } from "./slips.ts";
import { lumpOf } from "./ties.ts";
import type { Around } from "./trace.ts";
import { at, set } from "./vector.ts";

export function make(bench: Bench, act: Act, index: ThingIndex, around: Around): void {
  const { model, state: s } = bench,
    tie = tieOf(model, index),
    out = at(s.out, index);
  if (isAssumed(bench, index, A_ON)) return forget(bench, index, A_ON);
  let isFit = act.verb !== "tighten";
  if (out === 0 && at(s.slack, index) === TIGHT && isFit && !act.fingerTight && isPuttingBack(bench)) {
    const reason = reasonOf("refit/impossible", {
      thing: index,
      words: ["already in", ...wholeSoFar(bench)],
      at: tie.at,
    });
    if (!joinsWhole(bench, [reason])) reportTwice(bench, act, around, index, undefined, reason);
    return;
  }
  // Made before, and refused there: once more is no fault of this line.
  if (isFit && out === 0 && bench.phase === "refit" && isAssumed(bench, index, A_DOUBT)) {
    reportTwice(
      bench,
      act,
      around,
      index,
      undefined,
      reasonOf("refit/impossible", { thing: index, words: ["already in"], at: tie.at }),
    );
  }
  if (out === tie.count && !isFit && isAssumed(bench, index, A_OUT)) isFit = true;
  if (out === tie.count && !isFit && !bench.computed) {
    const reasons = [reasonOf("refit/impossible", { thing: index, words: ["not in"], at: tie.at })];
    if (!joinsSlip(bench, around, reasons)) {
      report(bench, act.at, [index], reasons, act, around);
      // It is the wrong name itself, or the one that an earlier line should have put in: what comes later tells.
      noteTwice(bench, around);
      if (!bench.quiet) noteNever(bench, around, bench.problems[bench.problems.length - 1]!);
    }
    bench.state = { ...s, out: set(s.out, index, 0) };
    return assume(bench, index, A_ON);
  }
  if (
    act.count !== undefined &&
    act.count > (isFit ? out : tie.count) &&
    !tie.countUnknown &&
    !bench.computed &&
    !isAssumed(bench, index, A_OUT)
  ) {
    report(
      bench,
      act.at,
      [index],
      [
        reasonOf("sequence/over-count", {
          thing: index,
          numbers: [act.count, isFit ? out : tie.count, tie.count],
          words: [act.verb],
          at: tie.at,
        }),
      ],
      act,
      around,
    );
  }
  const lump = lumpOfItem(bench, tie),
    needs = new Set<number>(),
    hazards = new Set<ThingIndex>(),
    obstacles: Obstacle[] = [];
  const sides = [...tie.lowers, ...tie.uppers];
  if (isFit && sides.some((p) => lumpOf(s, p) !== lumpOf(s, sides[0]!)))
    obstacles.push(...sidesApart(bench, tie, sides, act, around));
  obstacles.push(
    ...inTheWay(bench, index, tie, lump, hostsOf(bench, tie)),
    ...wrongPosition(bench, tie, lump),
    ...touch(bench, [index], act, around, needs, hazards),
  );
  refuse(bench, act, around, index, obstacles);
  lineUp(bench, act, around);
  stageReached(bench, act, tie, around);
  const count = act.count ?? tie.count,
    still = isFit ? Math.max(0, out - count) : out;
  // What is in already is only tightened by that: nothing was put in that would be undone again.
  if (bench.phase === "strip" && isFit && out > 0) {
    for (const part of sides) {
      // Made once its sides are together and where they belong.
      const met = at(bench.state.metBy, part),
        back = at(bench.state.asideBy, part);
      if (met !== NEVER) needs.add(met);
      if (bench.events[back]?.kind === "back") needs.add(back);
    }
    happen(bench, "in", index, act, around, needs, { count: Math.min(count, out), hazards: [...hazards] });
  }
  if (act.fingerTight && bench.phase === "refit") bench.fingerTightAt.set(index, act.at);
  const now = bench.state,
    // The others go in beside those that are in finger-tight, and tighten none of them.
    beside = isFit && out > 0 && out < tie.count && at(now.slack, index) === FINGER_TIGHT;
  bench.state = {
    ...now,
    out: set(now.out, index, still),
    // A stage that is not the last leaves it less than tight.
    slack: set(
      now.slack,
      index,
      act.fingerTight || beside || (act.stage !== undefined && act.stage < tie.stages.length) ? FINGER_TIGHT : TIGHT,
    ),
  };
}

/** Both sides of a tie must be in one sub-assembly. One that this half never fits is missing: said where the strip took it off. */
function sidesApart(bench: Bench, tie: Tie, sides: readonly ThingIndex[], act: Act, around: Around): Obstacle[] {
  const { state: s } = bench,
    off = sides.filter((p) => lumpOf(s, p) !== ON_BASE && !isAssumed(bench, p, A_ON));
  // What it came together with on the bench may be what is missing: the part that carries it there.
  const carriers = off.flatMap((p) => bench.state.carriers.get(lumpOf(s, p))?.carrier ?? []);
  // In the strip (a trial, safe keeping) what is off is simply not on.
  const never =
      bench.phase === "strip"
        ? undefined
        : (off.find((p) => !bench.willFit.has(p)) ??
          carriers.find((p) => !bench.willFit.has(p) && !isAssumed(bench, p, A_ON))),
    one = never ?? off[0];
  if (one === undefined) return [];
  const parting = bench.events[at(s.lumpBy, one)];
  if (never !== undefined && parting) {
    report(
      bench,
      parting.act.at,
      [one, tie.index],
      [reasonOf("refit/missing", { thing: one, by: [tie.index], words: ["never fitted"], at: tie.at })],
      parting.act,
      around,
    );
    assumeOn(bench, one, sides);
    return [];
  }
  return [
    {
      reason: reasonOf("refit/impossible", { thing: tie.index, by: [one], words: ["not on"], at: tie.at }),
      assume: () => assumeOn(bench, one, sides),
    },
  ];
}

/** No stage of tightening is skipped. */
function stageReached(bench: Bench, act: Act, tie: Tie, around: Around): void {
  if (act.stage === undefined) return;
  const reached = bench.stages.get(tie.index) ?? 0;
  if (act.stage > reached + 1) {
    report(
      bench,
      act.at,
      [tie.index],
      [
        reasonOf("refit/impossible", {
          thing: tie.index,
          words: ["stage"],
          numbers: [reached + 1, act.stage],
          at: tie.at,
        }),
      ],
      act,
      around,
    );
  }
  if (tie.stages.length > 0 && act.stage > tie.stages.length) {
    report(
      bench,
      act.at,
      [tie.index],
      [
        reasonOf("refit/impossible", {
          thing: tie.index,
          words: ["no such stage"],
          numbers: [act.stage, tie.stages.length],
          at: tie.at,
        }),
      ],
      act,
      around,
    );
  }
  bench.stages.set(tie.index, act.stage);
}

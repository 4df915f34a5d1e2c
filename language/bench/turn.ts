// Turning the unit to another position: what would slide off, swing round or run out.

import type { Act } from "../model/act.ts";
import type { Part, ThingIndex } from "../model/model.ts";
import { kindIn, partKinds } from "../tables/index.ts";
import { hiders, isAside } from "./access.ts";
import { assume, isAssumed, reasonOf, report, type Bench } from "./bench.ts";
import { anchorsOf, holds, isLive, left, lumpOf, reach } from "./ties.ts";
import { A_AWAY, A_DOUBT, A_OFF, A_OUT, A_SLACK, BACKED_OUT, HELD, ON_BASE } from "./state.ts";
import { frameOf, turnInside } from "./turned-inside.ts";
import { runsOutWhenTurned } from "./fluids.ts";
import { partOf } from "./machine.ts";
import type { Around, Reason } from "./trace.ts";
import { at } from "./vector.ts";

/**
 * `turn to P`: to the position that it is in it does nothing. What only rests, what nothing holds any more, what hangs by the last
 * piece of its ties, and what would run out is a finding.
 */
export function turn(bench: Bench, act: Act, around: Around): void {
  const to = (act.on[0] ?? act.names[0])?.text ?? "",
    frame = frameOf(bench, around.prefix);
  if (frame) return turnInside(bench, frame, to, act, around);
  if (to === bench.state.position || to === "") return;
  if (!bench.model.positions.includes(to)) {
    // No position of this unit: told at its name, and what rests on it is not.
    bench.state = { ...bench.state, position: "?" };
    return;
  }
  if (!bench.computed) {
    const loose = slidesOff(bench, to);
    if (loose?.words[0] === "rests") {
      report(bench, act.at, [loose.thing!], [loose], act, around);
      assume(bench, loose.thing!, A_OFF | A_DOUBT);
    } else if (loose) bench.turnedLoose.push({ act, around, reason: loose });
    if (bench.phase === "strip") runsOutWhenTurned(bench, to, act, around);
  }
  bench.state = { ...bench.state, position: to };
}

/** Says, at the end of a half, what was turned over with nothing, or too little, to hold it; if anything else was found, it may come from that. */
export function judgeTurned(bench: Bench): void {
  const [first] = bench.turnedLoose;
  if (!first || bench.problems.length > 0) return;
  for (const { act, around, reason } of bench.turnedLoose)
    if (!isSaid(bench, reason)) report(bench, act.at, [reason.thing!], [reason], act, around);
}

/** The first part that would not stay where it is, and why. Not one that something in front of it keeps in. */
function slidesOff(bench: Bench, to: string): Reason | undefined {
  const { model, machine, state: s } = bench;
  let fixed: ReadonlySet<ThingIndex> | undefined;
  for (const part of model.parts) {
    const { index } = part;
    if (
      lumpOf(s, index) !== ON_BASE ||
      machine.isBase(index) ||
      isAssumed(bench, index, A_OFF | A_AWAY) ||
      (at(s.flags, index) & HELD) !== 0
    )
      continue;
    const of = (words: string, more: Partial<Reason>): Reason =>
      reasonOf("sequence/loose-when-turned", { thing: index, words: [words, to], at: part.at, ...more });
    const rests =
      part.rests.length > 0 &&
      part.hosts.length === 0 &&
      !machine.edges[index]!.some((edge) => edge.tie >= 0 && isLive(model, s, index, edge));
    let found = rests ? of("rests", { by: part.rests.slice(0, 1) }) : undefined;
    if (!found && wasTied(bench, part)) {
      fixed ??= reach(bench, s, anchorsOf(bench, s, ON_BASE, new Set()), new Set(), (edge, from) =>
        edge.tie >= 0 ? true : partOf(model, edge.hangs ? from : edge.to).rests.length === 0,
      );
      found = fixed.has(index) || isAside(s, index) ? onItsLast(bench, part, of) : of("untied", {});
    }
    if (found && hiders(bench, part.behind, ON_BASE, []).length === 0 && !isSaid(bench, found)) return found;
  }
  return undefined;
}

/** One of its ties was undone, at least in part, by an act that was done. */
const wasTied = (bench: Bench, part: Part): boolean =>
  bench.machine.tiesOf[part.index]!.some(
    (tie) =>
      !tie.passing &&
      tie.lowers.includes(part.index) &&
      (at(bench.state.out, tie.index) > 0 || at(bench.state.slack, tie.index) === BACKED_OUT) &&
      !isAssumed(bench, tie.index, A_OUT | A_SLACK),
  );

/**
 * It hung by several pieces and hangs by one of them now: the part swings round it, and the piece bends. A cable, hose or loom hangs
 * by its nature.
 */
function onItsLast(bench: Bench, part: Part, of: (words: string, more: Partial<Reason>) => Reason): Reason | undefined {
  if (kindIn(partKinds, part.kind)?.limp) return undefined;
  const { model, machine, state: s } = bench,
    ties = machine.tiesOf[part.index]!.filter((tie) => !tie.passing && tie.lowers.includes(part.index)),
    holding = ties.filter((tie) => holds(model, s, tie.index)),
    [last] = holding;
  if (!last || holding.length > 1 || last.countUnknown || left(model, s, last.index) !== 1) return undefined;
  return of("last", { by: [last.index], left: [1] });
}

const isSaid = (bench: Bench, reason: Reason): boolean =>
  bench.problems.some(
    (problem) => problem.rule === reason.rule && problem.reasons.some((other) => other.thing === reason.thing),
  );

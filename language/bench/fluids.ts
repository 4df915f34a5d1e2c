// Fluids on the bench: what runs out when something is opened, draining, filling, caps.

import type { Act } from "../model/act.ts";
import type { Fluid, ThingIndex } from "../model/model.ts";
import { hidden, cleared, lumpOfItem, wrongPosition } from "./access.ts";
import {
  assume,
  eventOf,
  forget,
  happen,
  isAssumed,
  noObstacles,
  reasonOf,
  refuse,
  report,
  type Bench,
  type Obstacle,
} from "./bench.ts";
import { handsOn, touch } from "./hazards.ts";
import { reachFillers } from "./filler.ts";
import { openedBy } from "./handling.ts";
import { isPart, isTie, needsEvacuation, tieOf } from "./machine.ts";
import { A_DRAINED, A_ON, A_OUT, CAPPED, DRAINED, EVACUATED, NEVER } from "./state.ts";
import { isOut, left } from "./ties.ts";
import type { Around } from "./trace.ts";
import { at, set } from "./vector.ts";

const fluidOf = (bench: Bench, thing: ThingIndex): Fluid | undefined => {
  const fluid = bench.model.things[thing];
  return fluid?.is === "fluid" ? fluid : undefined;
};
const has = (bench: Bench, thing: ThingIndex, flag: number): boolean => (at(bench.state.flags, thing) & flag) !== 0;
const isAboard = (bench: Bench, fluid: ThingIndex): boolean => !has(bench, fluid, DRAINED);

function flag(bench: Bench, thing: ThingIndex, on: number, off = 0): void {
  bench.state = { ...bench.state, flags: set(bench.state.flags, thing, (at(bench.state.flags, thing) & ~off) | on) };
}

/** Opening this lets these fluids out, unless they were drained, or the line is capped. */
export function spills(
  bench: Bench,
  opened: ThingIndex,
  fluids: readonly ThingIndex[],
  needs: Set<number>,
): readonly Obstacle[] {
  if (fluids.length === 0) return noObstacles;
  const obstacles: Obstacle[] = [];
  for (const fluid of fluids) {
    const by = at(bench.state.drainedBy, fluid);
    if (by !== NEVER) needs.add(by);
    if (!isAboard(bench, fluid) || bench.phase === "refit" || isCapped(bench, opened)) continue;
    obstacles.push({
      reason: reasonOf("sequence/fluid-aboard", { thing: opened, by: [fluid], at: fluidOf(bench, fluid)?.at }),
      assume: () => ranOut(bench, fluid),
    });
  }
  return obstacles;
}

function ranOut(bench: Bench, fluid: ThingIndex): void {
  flag(bench, fluid, DRAINED);
  assume(bench, fluid, A_DRAINED);
}

/** A drain, a filler or a joint of this fluid that is open and not capped. */
export function openingOf(bench: Bench, { index, drainsAt, fillsAt }: Fluid): ThingIndex | undefined {
  const { model, state: s } = bench,
    isOpen = (thing: ThingIndex): boolean => isTie(model, thing) && at(s.out, thing) > 0 && !isCapped(bench, thing);
  return (
    [...drainsAt, ...fillsAt].find(isOpen) ?? model.ties.find((t) => t.opens.includes(index) && isOpen(t.index))?.index
  );
}

/** The unit is turned with something open that a fluid which is aboard runs out of. */
export function runsOutWhenTurned(bench: Bench, to: string, act: Act, around: Around): void {
  for (const fluid of bench.model.fluids) {
    const { index, at: where } = fluid;
    if (!isAboard(bench, index)) continue;
    const by = openingOf(bench, fluid);
    if (by === undefined) continue;
    report(
      bench,
      act.at,
      [index],
      [reasonOf("sequence/loose-when-turned", { thing: index, by: [by], words: ["runs out", to], at: where })],
      act,
      around,
    );
    ranOut(bench, index);
  }
}

function isCapped(bench: Bench, opened: ThingIndex): boolean {
  if (has(bench, opened, CAPPED)) return true;
  return (
    isTie(bench.model, opened) &&
    [...tieOf(bench.model, opened).lowers, ...tieOf(bench.model, opened).uppers].some((part) =>
      has(bench, part, CAPPED),
    )
  );
}

/**
 * At the end of a strip: what a fluid drains at was undone, and it was never drained. An opening that it is filled at as well may be
 * above its level.
 */
export function judgeOpenDrains(bench: Bench): void {
  const { model, state: s } = bench;
  for (const fluid of model.fluids)
    for (const plug of isAboard(bench, fluid.index) ? fluid.drainsAt : []) {
      const event = eventOf(bench, at(s.outBy, plug));
      if (!event || event.assumed || !isTie(model, plug) || !isOut(model, s, plug) || isCapped(bench, plug)) continue;
      if (fluid.fillsAt.includes(plug)) continue;
      report(
        bench,
        event.act.at,
        [plug, fluid.index],
        [reasonOf("sequence/fluid-aboard", { thing: plug, by: [fluid.index], at: fluid.at })],
        event.act,
        event.around,
      );
    }
}

/** `drain F`, `recover F`: opens what it drains at, and lets it out. */
export function drain(bench: Bench, act: Act, thing: ThingIndex, around: Around): void {
  const fluid = fluidOf(bench, thing),
    { model } = bench;
  if (!fluid) return;
  if (act.verb === "drain" && fluid.recover)
    report(
      bench,
      act.at,
      [thing],
      [reasonOf("hazard/not-recovered", { thing, words: [fluid.kind], at: fluid.at })],
      act,
      around,
    );
  if (!isAboard(bench, thing) && !isAssumed(bench, thing, A_DRAINED)) {
    report(
      bench,
      act.at,
      [thing],
      [
        reasonOf("sequence/already-undone", {
          thing,
          words: ["drained"],
          at: bench.events[at(bench.state.drainedBy, thing)]?.act.at,
        }),
      ],
      act,
      around,
    );
  }
  const needs = new Set<number>(),
    hazards = new Set<ThingIndex>(),
    obstacles: Obstacle[] = [...touch(bench, [thing], act, around, needs, hazards)];
  for (const plug of fluid.drainsAt) {
    if (!isTie(model, plug) || isOut(model, bench.state, plug)) {
      if (isTie(model, plug) && at(bench.state.outBy, plug) !== NEVER) needs.add(at(bench.state.outBy, plug));
      continue;
    }
    const tie = tieOf(model, plug),
      before = new Set<number>(),
      lump = lumpOfItem(bench, tie),
      touched = new Set<ThingIndex>();
    const stops = [
      ...hidden(bench, tie, lump, act, around),
      ...wrongPosition(bench, tie, lump),
      ...touch(bench, [plug], act, around, before, touched),
    ];
    refuse(bench, act, around, thing, stops);
    cleared(bench, tie, before);
    const event = happen(bench, "out", plug, act, around, before, {
      count: left(model, bench.state, plug),
      hazards: [...touched],
    });
    bench.state = {
      ...bench.state,
      out: set(bench.state.out, plug, tie.count),
      outBy: set(bench.state.outBy, plug, event),
    };
    needs.add(event);
  }
  refuse(bench, act, around, thing, obstacles);
  const event = happen(bench, "drained", thing, act, around, needs, { hazards: [...hazards] });
  flag(bench, thing, DRAINED);
  bench.state = { ...bench.state, drainedBy: set(bench.state.drainedBy, thing, event) };
  forget(bench, thing, A_DRAINED);
}

/**
 * `fill F`: opens what F is filled at and closes it again; after every joint of it is made, and after the circuit was pumped out where
 * its kind asks for that.
 */
export function fill(bench: Bench, act: Act, thing: ThingIndex, around: Around): void {
  const fluid = fluidOf(bench, thing),
    { model } = bench;
  if (!fluid) return;
  handsOn(bench, act, openedBy(model, "fill", [thing]), around);
  reachFillers(bench, act, fluid, around);
  const isOpen = (tie: ThingIndex): boolean => at(bench.state.out, tie) > 0 && !isAssumed(bench, tie, A_ON | A_OUT);
  // What it is filled at may be open: that is closed after the fill.
  const isLeak = (tie: ThingIndex): boolean => isOpen(tie) && !fluid.fillsAt.includes(tie);
  const open = model.ties.filter((tie) => tie.opens.includes(thing) && isLeak(tie.index)).map((tie) => tie.index);
  for (const plug of fluid.drainsAt) if (isTie(model, plug) && isLeak(plug)) open.push(plug);
  if (open.length > 0)
    report(
      bench,
      act.at,
      [thing, ...open],
      [reasonOf("refit/impossible", { thing, by: open.slice(0, 1), words: ["open"], at: model.things[open[0]!]!.at })],
      act,
      around,
    );
  if (!bench.computed && needsEvacuation(fluid.kind) && !has(bench, thing, EVACUATED)) {
    report(
      bench,
      act.at,
      [thing],
      [reasonOf("refit/impossible", { thing, words: ["evacuate"], at: fluid.at })],
      act,
      around,
    );
  }
  flag(bench, thing, 0, DRAINED);
  forget(bench, thing, A_DRAINED);
}

/** `evacuate F`: pumped out, ready to fill. `purge F`: blown through. Both would let go what has to be caught and is still aboard. */
export function evacuate(bench: Bench, act: Act, thing: ThingIndex, around: Around): void {
  const fluid = fluidOf(bench, thing);
  if (!fluid) return;
  if (fluid.recover && bench.phase === "strip" && isAboard(bench, thing))
    report(
      bench,
      act.at,
      [thing],
      [reasonOf("hazard/not-recovered", { thing, words: [fluid.kind, act.verb], at: fluid.at })],
      act,
      around,
    );
  if (act.verb === "evacuate") flag(bench, thing, EVACUATED);
}

/** `cap X`, `uncap X`: an open line closed, and opened again. */
export function cap(bench: Bench, act: Act, thing: ThingIndex, around: Around): void {
  if (!isPart(bench.model, thing) && !isTie(bench.model, thing)) return;
  const on = act.verb === "cap";
  if (on === has(bench, thing, CAPPED)) {
    report(
      bench,
      act.at,
      [thing],
      [reasonOf("sequence/already-undone", { thing, words: [on ? "capped" : "not capped"] })],
      act,
      around,
    );
    return;
  }
  const { needs: precautions, hazards } = handsOn(bench, act, [thing], around),
    needs = [...precautions];
  if (isTie(bench.model, thing)) needs.push(at(bench.state.outBy, thing));
  if (bench.phase === "strip") happen(bench, on ? "capped" : "uncapped", thing, act, around, needs, { hazards });
  flag(bench, thing, on ? CAPPED : 0, on ? 0 : CAPPED);
}

// Access and position: what must be out of the way, and how the unit must lie, before a thing can be worked on.

import type { Act } from "../model/act.ts";
import type { Part, ThingIndex, Tie } from "../model/model.ts";
import { assume, happen, isAssumed, noObstacles, reasonOf, type Bench, type Obstacle } from "./bench.ts";
import { isPart, isTie, tieOf } from "./machine.ts";
import { A_AWAY, A_OFF, A_ON, A_OUT, A_SLACK, ASIDE, BACKED_OUT, NEVER, ON_BASE, TIGHT, type State } from "./state.ts";
import { anchorsOf, isOut, left, lumpOf, partingOf, partsIn, together } from "./ties.ts";
import type { Around } from "./trace.ts";
import { frameOf, wrongInside } from "./turned-inside.ts";
import { at, set } from "./vector.ts";

const nothing: ReadonlySet<ThingIndex> = new Set();

export const isAside = (s: State, part: ThingIndex): boolean => (at(s.flags, part) & ASIDE) !== 0;

/** The part that an item is worked on at; for a tie without one, the base. */
export function seatOf(bench: Bench, item: Part | Tie): ThingIndex | undefined {
  return item.is === "part" ? item.index : (item.seat ?? bench.model.base[0]);
}

export function lumpOfItem(bench: Bench, item: Part | Tie): number {
  const seat = seatOf(bench, item);
  return seat === undefined ? ON_BASE : lumpOf(bench.state, seat);
}

/** What an item sits on: of a tie, what the part that it is worked on at hangs on, or what it sits in. */
export function hostsOf({ machine }: Bench, item: Part | Tie): readonly ThingIndex[] {
  if (item.is === "part") return machine.hosts[item.index]!;
  const [lower] = item.lowers;
  return lower !== undefined ? machine.hosts[lower]! : item.into === undefined ? nowhere : [item.into];
}
const nowhere: readonly ThingIndex[] = [];

/**
 * The hider is one of these hosts, or they are fixed to it, through however many, in one sub-assembly. What only slides on it may as well
 * have it in its bore: a seal in the gland on a rod is behind that rod wherever they lie.
 */
function carries(bench: Bench, hider: ThingIndex, hosts: readonly ThingIndex[]): boolean {
  if (hosts.includes(hider)) return true;
  const { machine, state } = bench,
    seen = new Set(hosts);
  for (const host of seen)
    for (const { hangs, undone, to } of machine.edges[host] ?? []) {
      if (!hangs || !undone || !together(state, to, host)) continue;
      if (to === hider) return true;
      seen.add(to);
    }
  return false;
}

/**
 * What still hides an item in that sub-assembly: things that it is behind and that are not away. A part is away when it is off that
 * sub-assembly or aside; a tie when it is out or backed out. Behind what carries it an item can be worked on once that
 * is off the unit.
 */
export function hiders(
  bench: Bench,
  behind: readonly ThingIndex[],
  lump: number,
  hosts: readonly ThingIndex[],
  moving: ReadonlySet<ThingIndex> = nothing,
): ThingIndex[] {
  if (behind.length === 0) return [];
  const { state: s, model } = bench;
  return behind.filter((hider) => {
    if (isPart(model, hider)) {
      if (lumpOf(s, hider) !== lump || moving.has(hider) || isAside(s, hider) || isAssumed(bench, hider, A_AWAY))
        return false;
      return !(lump !== ON_BASE && carries(bench, hider, hosts));
    }
    if (!isTie(model, hider) || isOut(model, s, hider) || at(s.slack, hider) === BACKED_OUT) return false;
    const tie = tieOf(model, hider),
      there = (part: ThingIndex): boolean => lumpOf(s, part) === lump && !moving.has(part);
    if (tie.lowers.length + tie.uppers.length > 0) return tie.lowers.some(there) || tie.uppers.some(there);
    return tie.into === undefined ? lump === ON_BASE : there(tie.into);
  });
}

/** How many of each are still in; 0 of a part. */
export const leftOf = ({ model, state }: Bench, things: readonly ThingIndex[]): number[] =>
  things.map((thing) => (isTie(model, thing) ? left(model, state, thing) : 0));

/** What hides the item, as obstacles to an act of the strip or the refit. */
export function hidden(bench: Bench, item: Part | Tie, lump: number, act: Act, around: Around): readonly Obstacle[] {
  if (item.behind.length === 0 || isWhereUnknown(bench, item)) return noObstacles;
  const list = hiders(bench, item.behind, lump, hostsOf(bench, item));
  return list.map((hider) => ({
    reason: reasonOf(bench.phase === "strip" ? "sequence/blocked" : "refit/impossible", {
      thing: item.index,
      by: [hider],
      left: leftOf(bench, [hider]),
      words: ["behind"],
      at: item.at,
    }),
    assume: () => assumeOutOfTheWay(bench, item, hider, act, around),
  }));
}

/**
 * What is in the way of fitting `thing`, as obstacles. `item` says what has to be away: the thing itself, or a tie that is made with it.
 */
export function inTheWay(
  bench: Bench,
  thing: ThingIndex,
  item: Part | Tie,
  lump: number,
  hosts: readonly ThingIndex[],
  moving: ReadonlySet<ThingIndex> = nothing,
): readonly Obstacle[] {
  if (item.behind.length === 0 || isWhereUnknown(bench, item)) return noObstacles;
  return hiders(bench, item.behind, lump, hosts, moving)
    .filter((hider) => !isAssumed(bench, hider, A_ON))
    .map((hider) => ({
      reason: reasonOf("refit/impossible", {
        thing,
        by: [hider],
        left: leftOf(bench, [hider]),
        words: ["behind"],
        at: item.at,
      }),
      assume: () => assume(bench, hider, A_AWAY),
    }));
}

/** It was assumed away itself, or what it sits on was: what stands before it then is unknown too. */
export function isWhereUnknown(bench: Bench, item: Part | Tie): boolean {
  if (bench.state.assumptions === 0) return false;
  const seen = new Set<ThingIndex>(),
    isAway = (part: ThingIndex): boolean => {
      if (seen.has(part) || bench.machine.isBase(part)) return false;
      seen.add(part);
      return isAssumed(bench, part, A_AWAY | A_OFF) || bench.machine.hosts[part]!.some(isAway);
    };
  if (item.is === "part") return isAway(item.index);
  return item.lowers.some(isAway) || (item.into !== undefined && isAway(item.into));
}

/** The least that makes the hider no hider: a tie is out; a part is out of the way, nobody knows how; of what plays the base, that the host is off. */
function assumeOutOfTheWay(bench: Bench, item: Part | Tie, hider: ThingIndex, act: Act, around: Around): void {
  if (isTie(bench.model, hider)) assumeOut(bench, hider, act, around);
  else if (anchorsOf(bench, bench.state, lumpOf(bench.state, hider), nothing).includes(hider))
    for (const part of item.is === "tie" ? item.lowers : hostsOf(bench, item)) assume(bench, part, A_AWAY);
  assume(bench, hider, A_AWAY);
}

/** A tie is taken as undone. Its event is assumed, so that the refit makes it again. */
export function assumeOut(bench: Bench, tie: ThingIndex, act: Act, around: Around): void {
  if (isOut(bench.model, bench.state, tie)) return;
  const event = happen(bench, "out", tie, act, around, [], {
    count: left(bench.model, bench.state, tie),
    assumed: true,
  });
  const s = bench.state;
  bench.state = {
    ...s,
    out: set(s.out, tie, tieOf(bench.model, tie).count),
    slack: set(s.slack, tie, TIGHT),
    outBy: set(s.outBy, tie, event),
  };
  assume(bench, tie, A_OUT);
}

/** Where a tie is: on what it ties, or in what it sits. */
export const partsOf = ({ lowers, uppers, into }: Tie): readonly ThingIndex[] =>
  lowers.length + uppers.length > 0 ? [...lowers, ...uppers] : into === undefined ? [] : [into];

/** The events that brought what hides this item out of its way. */
export function cleared(
  bench: Bench,
  item: Part | Tie,
  needs: Set<number>,
  behind: readonly ThingIndex[] = item.behind,
): void {
  if (behind.length === 0) return;
  const { state: s, model } = bench,
    seat = seatOf(bench, item),
    hosts = hostsOf(bench, item);
  const add = (event: number): void => {
    if (event !== NEVER) needs.add(event);
  };
  for (const hider of behind) {
    if (isTie(model, hider)) {
      // Out, or still in what it ties, which left with it.
      if (isOut(model, s, hider) || at(s.slack, hider) === BACKED_OUT || seat === undefined) add(at(s.outBy, hider));
      else for (const part of partsOf(tieOf(model, hider))) add(partingOf(s, part, seat));
    } else if (!isPart(model, hider) || seat === undefined) continue;
    else if (together(s, hider, seat) && lumpOf(s, seat) !== ON_BASE && carries(bench, hider, hosts))
      add(at(s.lumpBy, seat));
    // Behind a side of its own it is made once they are together again, on the bench.
    else if (item.is === "tie" && item.uppers.includes(hider) && !together(s, hider, seat)) add(at(s.lumpBy, hider));
    else if (isAside(s, hider) && at(s.asideBy, hider) !== NEVER) add(at(s.asideBy, hider));
    else add(partingOf(s, hider, seat));
  }
}

/**
 * Ties between these parts and what stays with none of them in that sub-assembly, which part or meet in passing with them, and which say
 * for themselves what they are behind or in which position they let go.
 */
export function inPassing(bench: Bench, moved: ReadonlySet<ThingIndex>, lump: number): readonly Tie[] {
  let found: Set<Tie> | undefined;
  for (const part of moved)
    for (const tie of bench.machine.tiesOf[part]!)
      if (
        tie.passing &&
        (tie.behind.length > 0 || tie.positions.length > 0) &&
        !isOut(bench.model, bench.state, tie.index)
      ) {
        const others = tie.lowers.includes(part) ? tie.uppers : tie.lowers;
        if (others.some((other) => !moved.has(other) && lumpOf(bench.state, other) === lump))
          (found ??= new Set()).add(tie);
      }
  return found ? [...found] : noTies;
}
const noTies: readonly Tie[] = [];

/** `needs POSITION` binds while the item is on the base's assembly; in a computed refit the unit is turned. */
export function wrongPosition(bench: Bench, item: Part | Tie, lump: number): readonly Obstacle[] {
  if (item.positions.length === 0) return noObstacles;
  const { state: s } = bench,
    frame = frameOf(bench, item.prefix);
  if (frame) return wrongInside(bench, item, frame, lump);
  if (lump !== ON_BASE || item.positions.includes(s.position) || s.position === "?") return noObstacles;
  if (bench.computed) {
    bench.state = { ...s, position: item.positions[0]! };
    bench.turnedTo = item.positions[0]!;
    return noObstacles;
  }
  return [
    {
      reason: reasonOf("sequence/wrong-position", {
        thing: item.index,
        words: [s.position, ...item.positions],
        at: item.at,
      }),
      assume: () => {
        bench.state = { ...bench.state, position: "?" };
      },
    },
  ];
}

const UNKNOWN = A_OFF | A_OUT | A_ON | A_AWAY | A_SLACK;

/** Where a thing is rests on an assumption: its own, or that of what it sits on. */
export function isUnknown(
  bench: Pick<Bench, "model" | "machine" | "state">,
  thing: ThingIndex,
  seen = new Set<ThingIndex>(),
): boolean {
  if (bench.state.assumptions === 0 || seen.has(thing)) return false;
  seen.add(thing);
  if ((at(bench.state.assumed, thing) & UNKNOWN) !== 0) return true;
  const { model, machine } = bench;
  const under = isPart(model, thing)
    ? machine.hosts[thing]!
    : isTie(model, thing)
      ? [...tieOf(model, thing).lowers, ...tieOf(model, thing).uppers]
      : [];
  return under.some((part) => !machine.isBase(part) && isUnknown(bench, part, seen));
}

/** In the refit: taken as fitted, with all of its sub-assembly, beside the first of these that is elsewhere. */
export function assumeOn(bench: Bench, part: ThingIndex, beside: readonly ThingIndex[]): void {
  const s = bench.state,
    from = lumpOf(s, part),
    near = beside.find((p) => p !== part && lumpOf(s, p) !== from);
  const to = near === undefined ? ON_BASE : lumpOf(s, near);
  let lump = s.lump;
  const along = partsIn(bench.model, s, from);
  for (const p of along) lump = set(lump, p, to);
  bench.state = { ...s, lump };
  if (from !== ON_BASE) for (const p of along) assume(bench, p, A_ON);
  assume(bench, part, A_ON);
}

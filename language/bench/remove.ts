// Removing: a parting of two sides. What hangs on the parts comes along; ties that part in passing let go.

import { crewAt } from "./crew.ts";
import type { Act } from "../model/act.ts";
import type { ThingIndex } from "../model/model.ts";
import {
  assume,
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
import {
  assumeOut,
  cleared,
  hidden,
  hiders,
  inPassing,
  isAside,
  isWhereUnknown,
  leftOf,
  wrongPosition,
} from "./access.ts";
import { openingOf, spills } from "./fluids.ts";
import { touch, weightAlong } from "./hazards.ts";
import { isPart, isTie, partOf, tieOf } from "./machine.ts";
import { freeing, lookAt, type Look } from "./removal.ts";
import { chainToBase } from "./smallest-set.ts";
import { A_AWAY, A_DOUBT, A_OFF, A_ON, A_OUT, A_SLACK, HELD, NEVER, ON_BASE } from "./state.ts";
import { anchorsOf, clampOf, lumpOf, partingOf, together } from "./ties.ts";
import type { Around } from "./trace.ts";
import { at, set, setAll } from "./vector.ts";
import { undo } from "./undo.ts";

/** `remove`, `lift`: each part by itself, or all at once with `together`. A fastener or joint among them is undone. */
export function remove(bench: Bench, act: Act, things: readonly ThingIndex[], around: Around): void {
  const { model } = bench,
    parts: ThingIndex[] = [];
  for (const thing of things) {
    if (isTie(model, thing)) undo(bench, { ...act, verb: "undo" }, [thing], around);
    else if (isPart(model, thing)) parts.push(thing);
  }
  if (parts.length === 0) return;
  if ((act.count !== undefined || act.rest) && !someOf(bench, act, parts[0]!, around))
    return reachForSome(bench, act, parts[0]!, around);
  if (act.together) removeAtOnce(bench, act, parts, around);
  else for (const part of parts) removeAtOnce(bench, act, [part], around);
}

/** `remove 2 of X`: counts them; the part is off when the last one is. */
function someOf(bench: Bench, act: Act, part: ThingIndex, around: Around): boolean {
  const { count, countUnknown, at: declared } = partOf(bench.model, part),
    had = at(bench.state.out, part);
  const now = act.rest ? count : had + act.count!;
  if (now > count && !countUnknown)
    report(
      bench,
      act.at,
      [part],
      [reasonOf("sequence/over-count", { thing: part, numbers: [act.count!, count - had, count], at: declared })],
      act,
      around,
    );
  bench.state = { ...bench.state, out: set(bench.state.out, part, Math.min(now, count)) };
  return now >= count;
}

/** Of the first few pieces only what holds for each: that they can be reached, and touched. What holds them is judged with the last. */
function reachForSome(bench: Bench, act: Act, index: ThingIndex, around: Around): void {
  const part = partOf(bench.model, index),
    lump = lumpOf(bench.state, index);
  refuse(bench, act, around, index, [
    ...hidden(bench, part, lump, act, around),
    ...wrongPosition(bench, part, lump),
    ...touch(bench, [index], act, around, new Set(), new Set()),
  ]);
}

function removeAtOnce(bench: Bench, act: Act, asked: readonly ThingIndex[], around: Around): void {
  const { model, machine } = bench;
  const parts = asked.filter(
    (part) => isStillOn(bench, act, part, asked, around) && !staysOnStand(bench, act, part, around),
  );
  if (parts.length === 0) return;
  const look = lookAt(bench, parts),
    needs = new Set<number>(),
    hazards = new Set<ThingIndex>(),
    obstacles: Obstacle[] = [];
  const elsewhere = parts.filter((part) => lumpOf(bench.state, part) !== look.lump);
  if (elsewhere.length > 0)
    obstacles.push({
      reason: reasonOf("sequence/blocked", { thing: parts[0]!, by: elsewhere, words: ["not together"] }),
      assume: undefined,
    });
  const held = stillHeld(bench, act, parts, look, around);
  if (held) obstacles.push(held);
  for (const index of parts) {
    const part = partOf(model, index);
    const clamped = clampedBy(bench, act, index, parts, around);
    if (clamped) obstacles.push(clamped);
    else obstacles.push(...stillCovered(bench, index, parts, needs));
    obstacles.push(
      ...hidden(bench, part, look.lump, act, around),
      ...wrongPosition(bench, part, look.lump),
      ...touch(bench, [index], act, around, needs, hazards),
    );
    obstacles.push(...spills(bench, index, openedWith(bench, index, look.moved), needs));
    tooFewPeople(bench, act, index, around);
    cleared(bench, part, needs);
  }
  for (const index of look.moved) {
    if (parts.includes(index)) continue;
    const part = partOf(model, index);
    if (part.behind.length === 0 || isWhereUnknown(bench, part)) continue;
    // Before a sub-assembly leaves, no member may be behind something that stays, save what its carrier hung on.
    for (const hider of hiders(bench, part.behind, look.lump, machine.hosts[index]!, look.moved)) {
      if (parts.some((carrier) => machine.hosts[carrier]!.includes(hider))) continue;
      obstacles.push({
        reason: reasonOf("sequence/blocked", {
          thing: index,
          by: [hider],
          left: leftOf(bench, [hider]),
          words: ["comes along"],
          at: part.at,
        }),
        assume: () => (isTie(model, hider) ? assumeOut(bench, hider, act, around) : assume(bench, hider, A_AWAY)),
      });
    }
    cleared(
      bench,
      part,
      needs,
      part.behind.filter((hider) => !look.moved.has(hider)),
    );
  }
  for (const tie of inPassing(bench, look.moved, look.lump)) {
    for (const hider of isWhereUnknown(bench, tie)
      ? []
      : hiders(bench, tie.behind, look.lump, machine.hosts[parts[0]!]!, look.moved))
      obstacles.push({
        reason: reasonOf("sequence/blocked", {
          thing: parts[0]!,
          by: [hider],
          left: leftOf(bench, [hider]),
          words: ["behind"],
          at: tie.at,
        }),
        assume: () => (isTie(model, hider) ? assumeOut(bench, hider, act, around) : assume(bench, hider, A_AWAY)),
      });
    obstacles.push(...wrongPosition(bench, tie, look.lump));
    cleared(
      bench,
      tie,
      needs,
      tie.behind.filter((hider) => !look.moved.has(hider)),
    );
  }
  if (look.moved.size > 1) {
    const along = [...look.moved].filter((index) => !parts.includes(index));
    obstacles.push(...weightAlong(bench, along, act, around, needs, hazards));
  }
  refuse(bench, act, around, parts[0]!, obstacles);
  // What is taken as done after a refusal may let more come along.
  part(bench, act, parts, around, obstacles.length > 0 ? lookAt(bench, parts) : look, needs, hazards);
}

/** The base is what the rest comes off: it is not taken off itself. The act is passed over. */
function staysOnStand(bench: Bench, act: Act, part: ThingIndex, around: Around): boolean {
  if (!bench.machine.isBase(part) || lumpOf(bench.state, part) !== ON_BASE || bench.phase !== "strip") return false;
  const at = partOf(bench.model, part).at;
  report(bench, act.at, [part], [reasonOf("sequence/base-stays", { thing: part, at })], act, around);
  return true;
}

/** Off already: silent where it came along with another in this very step, or where it was only assumed. */
function isStillOn(bench: Bench, act: Act, part: ThingIndex, asked: readonly ThingIndex[], around: Around): boolean {
  const s = bench.state,
    lump = lumpOf(s, part);
  if (lump === ON_BASE || anchorsOf(bench, s, lump, new Set(asked)).length > 0) return true;
  if (isAssumed(bench, part, A_OFF)) {
    forget(bench, part, A_OFF);
    return false;
  }
  // Taken off before by an act that was refused: what was wrong there is said there.
  if (isAssumed(bench, part, A_DOUBT) && bench.problems.some((p) => p.act !== undefined && p.about[0] === part))
    return false;
  const before = bench.events[at(s.lumpBy, part)];
  if (!before || before.around.step !== around.step || before.things.includes(part)) {
    report(
      bench,
      act.at,
      [part],
      [reasonOf("sequence/already-undone", { thing: part, words: ["off"], at: before?.act.at })],
      act,
      around,
    );
  }
  return false;
}

function stillHeld(
  bench: Bench,
  act: Act,
  parts: readonly ThingIndex[],
  look: Look,
  around: Around,
): Obstacle | undefined {
  if (look.held.size === 0 || [...look.held].every((tie) => isAssumed(bench, tie, A_OUT))) return undefined;
  const set = freeing(bench, parts, look),
    first = set[0];
  // How it is held is unknown where it was assumed out of the way, or its ties loose: then they are out, and nothing is said again.
  if (
    set.length > 0 &&
    (parts.every((part) => isAssumed(bench, part, A_AWAY)) ||
      set.every((tie) => isAssumed(bench, tie, A_OUT | A_SLACK)))
  ) {
    for (const tie of set) assumeOut(bench, tie, act, around);
    return undefined;
  }
  return {
    reason: reasonOf("sequence/still-held", {
      thing: parts[0]!,
      by: set,
      left: leftOf(bench, set),
      at: first === undefined ? undefined : tieOf(bench.model, first).at,
      chain: chainToBase(bench, bench.state, parts[0]!, anchorsOf(bench, bench.state, look.lump, new Set(parts))),
    }),
    assume: () => {
      for (const tie of set) assumeOut(bench, tie, act, around);
    },
  };
}

/**
 * What lies in a joint that is undone comes out once the two sides are apart, or one of them is aside. Notes the events that parted
 * them. Between sides that nothing undoable joins (a shim on a shaft, a ring in its groove) the part itself says what is in its way.
 */
function stillCovered(
  bench: Bench,
  index: ThingIndex,
  parts: readonly ThingIndex[],
  needs: Set<number>,
): readonly Obstacle[] {
  const { model, machine, state: s } = bench,
    part = partOf(model, index);
  if (!part.between) return noObstacles;
  const obstacles: Obstacle[] = [];
  const isGone = (side: ThingIndex): boolean =>
    parts.includes(side) || isAside(s, side) || isAssumed(bench, side, A_AWAY | A_OFF);
  for (const a of part.between[0])
    for (const b of part.between[1]) {
      for (const side of [a, b]) if (isAside(s, side) && at(s.asideBy, side) !== NEVER) needs.add(at(s.asideBy, side));
      if (lumpOf(s, a) !== lumpOf(s, b)) {
        const parting = partingOf(s, a, b);
        if (parting !== NEVER) needs.add(parting);
        continue;
      }
      if (lumpOf(s, a) !== lumpOf(s, index) || isGone(a) || isGone(b)) continue;
      const closing = machine.clamps[index]!.some((tie) => !tie.passing);
      if (!closing || obstacles.length > 0) continue;
      obstacles.push({
        reason: reasonOf("sequence/blocked", { thing: index, by: [a, b], words: ["between"], at: part.at }),
        assume: () => assume(bench, machine.isBase(a) ? b : a, A_AWAY),
      });
    }
  return obstacles;
}

function clampedBy(
  bench: Bench,
  act: Act,
  part: ThingIndex,
  parts: readonly ThingIndex[],
  around: Around,
): Obstacle | undefined {
  const clamps = clampOf(bench, part, bench.state);
  if (clamps.length === 0) return undefined;
  const ties = clamps
    .filter(
      (tie) =>
        !parts.some((p) => tie.lowers.includes(p) || tie.uppers.includes(p)) &&
        !isAssumed(bench, tie.index, A_OUT) &&
        ![...tie.lowers, ...tie.uppers].some((side) => isAssumed(bench, side, A_AWAY)),
    )
    .map((tie) => tie.index);
  if (ties.length === 0) return undefined;
  return {
    reason: reasonOf("sequence/still-held", {
      thing: part,
      by: ties,
      left: leftOf(bench, ties),
      words: ["clamped"],
      at: tieOf(bench.model, ties[0]!).at,
    }),
    // What lets go in passing lets go when the part that hangs by it leaves: that one is out of the way.
    assume: () => {
      for (const index of ties) {
        const tie = tieOf(bench.model, index);
        if (!tie.passing) assumeOut(bench, index, act, around);
        else for (const side of tie.lowers) if (!bench.machine.isBase(side)) assume(bench, side, A_AWAY);
      }
    },
  };
}

/** A part's own `lift by 2 people` binds every removal and fit of it, unless a holder carries it. */
export function tooFewPeople(bench: Bench, act: Act, index: ThingIndex, around: Around): void {
  const part = partOf(bench.model, index),
    here = Math.max(act.people ?? 0, crewAt(around));
  if (part.liftPeople === undefined || part.liftPeople <= here || bench.computed) return;
  report(
    bench,
    act.at,
    [index],
    [reasonOf("lift/people", { thing: index, numbers: [part.liftPeople, here], at: part.at })],
    act,
    around,
  );
}

/** The parting itself. */
function part(
  bench: Bench,
  act: Act,
  parts: readonly ThingIndex[],
  around: Around,
  look: Look,
  needs: Set<number>,
  hazards: ReadonlySet<ThingIndex>,
): void {
  const { machine } = bench,
    s = bench.state;
  // Every tie that had to be out for this.
  const stayed = (p: ThingIndex): boolean => !look.moved.has(p) && lumpOf(s, p) === look.lump;
  for (const index of look.moved)
    for (const tie of machine.tiesOf[index]!) {
      const by = at(s.outBy, tie.index);
      if (by === NEVER) continue;
      if (tie.lowers.some(stayed) || tie.uppers.some(stayed)) needs.add(by);
    }
  for (const index of parts) {
    const by = at(s.heldBy, index);
    if (by !== NEVER && (at(s.flags, index) & HELD) !== 0) needs.add(by);
  }
  const event = happen(bench, "off", parts[0]!, act, around, needs, {
    things: parts,
    moved: [...look.moved],
    from: look.lump,
    hazards: [...hazards],
  });
  const lump = event + 1;
  bench.state = {
    ...s,
    lump: setAll(s.lump, look.moved, lump),
    lumpBy: setAll(s.lumpBy, look.moved, event),
    offBy: setAll(s.offBy, parts, event),
    carriers: s.carriers.with(lump, { carrier: carrierOf(bench, parts, look), from: look.lump }),
  };
  if (s.assumptions > 0) for (const index of look.moved) forget(bench, index, A_OFF | A_ON);
}

/** The fluids that run out when a part on their path leaves; not those whose whole path, of several parts, leaves with it, closed as it was. */
function openedWith(bench: Bench, index: ThingIndex, moved: ReadonlySet<ThingIndex>): readonly ThingIndex[] {
  const through = bench.machine.fluidsIn[index]!;
  if (through.length === 0) return through;
  return through.filter((thing) => {
    const fluid = bench.model.things[thing];
    if (fluid?.is !== "fluid") return false;
    const stations = new Set(fluid.path.filter((one) => isPart(bench.model, one)));
    return (
      stations.size < 2 || [...stations].some((station) => !moved.has(station)) || openingOf(bench, fluid) !== undefined
    );
  });
}

/** What the sub-assembly was removed by; in a freed group the part that hung on the base last, or that the others hang on. */
function carrierOf(bench: Bench, parts: readonly ThingIndex[], look: Look): ThingIndex {
  if (parts.length === 1) return parts[0]!;
  const { hosts } = bench.machine,
    hung = parts.filter((p) => hosts[p]!.some((h) => !look.moved.has(h) && together(bench.state, h, p))),
    lowest = parts.filter((p) => !hosts[p]!.some((h) => look.moved.has(h)));
  if (hung.length > 0) return hung.at(-1)!;
  if (lowest.length > 0) return lowest.at(-1)!;
  return parts.at(-1)!;
}

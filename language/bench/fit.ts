// Fitting a part: two sides meet. It goes to what it hangs on, fits or lies on, wherever that is.

import type { Act } from "../model/act.ts";
import type { Part, ThingIndex } from "../model/model.ts";
import {
  forget,
  happen,
  isAssumed,
  isPuttingBack,
  joinsSameLack,
  noObstacles,
  reasonOf,
  refuse,
  report,
  wholeSoFar,
  type Bench,
  type Obstacle,
} from "./bench.ts";
import {
  assumeOn,
  hiders,
  inPassing,
  inTheWay,
  isAside,
  isUnknown,
  isWhereUnknown,
  leftOf,
  wrongPosition,
} from "./access.ts";
import { assume } from "./bench.ts";
import { touch, weightAlong } from "./hazards.ts";
import { matchedSets } from "./matched.ts";
import { partOf } from "./machine.ts";
import { tooFewPeople } from "./remove.ts";
import { A_AWAY, A_DOUBT, A_ON, NEVER, ON_BASE, RENEWED } from "./state.ts";
import { holds, hostsTogether, lumpOf, nameOf, partsIn, together } from "./ties.ts";
import type { Around, Event } from "./trace.ts";
import { turnedBack } from "./turned-inside.ts";
import { at, set, setAll } from "./vector.ts";

/** `parted`: the parting that this is the way back of; what came off `together` there goes on together, as one side. */
export function fit(
  bench: Bench,
  act: Act,
  index: ThingIndex,
  around: Around,
  onto: readonly ThingIndex[] = [],
  parted?: Event,
): void {
  const { model, state: s } = bench,
    part = partOf(model, index),
    own = lumpOf(s, index),
    hosts = hostsTogether(bench.machine, index, parted?.things ?? []);
  if (isAssumed(bench, index, A_ON)) return forget(bench, index, A_ON);
  const had = bench.partial.get(index) ?? 0;
  if (act.count !== undefined && had + act.count > part.count && !part.countUnknown) {
    report(
      bench,
      act.at,
      [index],
      [
        reasonOf("sequence/over-count", {
          thing: index,
          numbers: [act.count, part.count - had, part.count],
          words: ["fit"],
          at: part.at,
        }),
      ],
      act,
      around,
    );
  }
  if (act.count !== undefined) bench.partial.set(index, (bench.partial.get(index) ?? 0) + act.count);
  else bench.partial.delete(index);
  if (onto.length > 0 && (at(s.flags, index) & RENEWED) === 0) belongsThere(bench, act, part, around, onto);
  const target = whereTo(bench, part, own, hosts, onto, parted);
  if (target === undefined || target === own) {
    if (
      !isUnknown(bench, index) &&
      isPuttingBack(bench) &&
      act.count === undefined &&
      // What came along with another in this step may be named again; what was named itself may not.
      (isNamedTwice(bench, act, index, around) ||
        (!bench.computed && !(bench.metIn.has(index) && bench.metIn.get(index) === around.step)))
    ) {
      const aside = isAside(s, index),
        words = aside ? (["aside"] as const) : (["already on", ...wholeSoFar(bench)] as const),
        reasons = [reasonOf("refit/impossible", { thing: index, words, at: part.at })];
      if (!joinsSameLack(bench, reasons, around)) report(bench, act.at, [index], reasons, act, around);
      // That it is not moved back is the same mistake.
      if (aside) assume(bench, index, A_DOUBT);
    }
    return;
  }
  const needs = new Set<number>(),
    hazards = new Set<ThingIndex>(),
    moving = partsIn(model, s, own);
  if (target === ON_BASE) turnedBack(bench, moving, act, around);
  const obstacles = [...inTheWay(bench, index, part, target, hosts)];
  for (const other of moving) {
    if (other === index) continue;
    const its = partOf(model, other);
    if (its.behind.length === 0 || isWhereUnknown(bench, its)) continue;
    for (const hider of hiders(bench, its.behind, target, hosts)) {
      if (hosts.includes(hider) || isAssumed(bench, hider, A_ON)) continue;
      obstacles.push({
        reason: reasonOf("refit/impossible", {
          thing: other,
          by: [hider],
          left: leftOf(bench, [hider]),
          words: ["comes along"],
          at: its.at,
        }),
        assume: undefined,
      });
    }
  }
  const comes = new Set(moving);
  for (const tie of inPassing(bench, comes, target)) {
    obstacles.push(...inTheWay(bench, index, tie, target, hosts, comes));
    obstacles.push(...wrongPosition(bench, tie, target === ON_BASE || own === ON_BASE ? ON_BASE : target));
  }
  const closed = closedJoint(bench, part, target);
  if (closed.length > 0)
    obstacles.push({
      reason: reasonOf("refit/impossible", {
        thing: index,
        by: closed,
        left: leftOf(bench, closed),
        words: ["closed"],
        at: part.at,
      }),
      assume: undefined,
    });
  obstacles.push(...orderedLater(bench, index, around));
  obstacles.push(
    ...wrongPosition(bench, part, target === ON_BASE || own === ON_BASE ? ON_BASE : target),
    ...touch(bench, [index], act, around, needs, hazards),
    ...(moving.length > 1
      ? weightAlong(
          bench,
          moving.filter((other) => other !== index),
          act,
          around,
          needs,
          hazards,
        )
      : noObstacles),
  );
  tooFewPeople(bench, act, index, around);
  refuse(bench, act, around, index, obstacles);
  meet(bench, act, index, own, target, moving, needs, hazards, around);
}

/**
 * What is matched goes back to its own, and one of several pieces to the piece of its own name, left to left: fitted to one of another set
 * or place it is said. A new one has neither yet.
 */
function belongsThere(bench: Bench, act: Act, part: Part, around: Around, onto: readonly ThingIndex[]): void {
  const { model, machine, state } = bench,
    said = (other: ThingIndex, belongs: readonly ThingIndex[], words: readonly string[]): void =>
      report(
        bench,
        act.at,
        [part.index],
        [reasonOf("refit/mismatched", { thing: part.index, by: [other, ...belongs], words, at: part.at })],
        act,
        around,
      );
  const sets = matchedSets(model),
    own = sets.get(part.index),
    ofOther = own && onto.find((host) => sets.get(host) !== undefined && sets.get(host) !== own);
  if (own && ofOther !== undefined) {
    if ((at(state.flags, ofOther) & RENEWED) === 0)
      said(
        ofOther,
        own.filter((one) => one !== part).map(({ index }) => index),
        [],
      );
    return;
  }
  const hosts = machine.hosts[part.index]!;
  if (part.piece === "" || onto.some((one) => hosts.includes(one))) return;
  for (const other of onto) {
    const there = model.things[other]!,
      place = hosts.find((host) => {
        const { declared, prefix, piece } = partOf(model, host);
        return declared === there.declared && prefix === there.prefix && piece !== "";
      });
    if (place !== undefined) return said(other, [place], ["place"]);
  }
}

/** The sub-assembly that it goes to; undefined where it has nothing to go to. */
function whereTo(
  bench: Bench,
  part: Part,
  own: number,
  all: readonly ThingIndex[],
  onto: readonly ThingIndex[],
  parted: Event | undefined,
): number | undefined {
  const { machine, state: s } = bench,
    elsewhere = (h: ThingIndex): boolean => lumpOf(s, h) !== own;
  const hosts = (onto.length > 0 ? [...onto, ...all] : all).filter(elsewhere),
    hung = (): ThingIndex[] => machine.edges[part.index]!.filter((e) => !e.hangs && elsewhere(e.to)).map((e) => e.to);
  const parting = parted ?? bench.events[at(s.offBy, part.index)];
  const stayed = (h: ThingIndex): boolean =>
    parting !== undefined && !parting.moved.includes(h) && lumpOf(parting.before, h) === parting.from;
  const sides = parting ? hosts.filter(stayed) : hosts;
  // Never taken off by itself: where it belongs is where it rides.
  if (!parting && onto.length === 0 && all.some((h) => lumpOf(s, h) === own)) return own;
  if (all.length === 0 && hung().length === 0) return ON_BASE;
  // Nothing says what it hangs on: it goes back to where it was, and what hangs on it comes after.
  if (all.length === 0 && onto.length === 0 && parting && bench.builtOn.length === 0 && !machine.isBase(part.index))
    return nameOf(s, parting.from);
  // What it hangs on had left before it (a shaft drawn out of a wheel, the wheel lifted out after that): it lay where it was, and goes
  // back there also with that on it again.
  if (bench.computed && parting && all.length > 0 && sides.length === 0 && onto.length === 0)
    return nameOf(s, parting.from);
  const onBase = (list: readonly ThingIndex[]): ThingIndex | undefined => list.find((h) => lumpOf(s, h) === ON_BASE);
  const near =
    onto[0] ??
    (bench.builtOn.length === 0
      ? undefined
      : [...hosts, ...hung()].find((h) => bench.builtOn.some((base) => together(s, base, h)))) ??
    onBase(sides) ??
    sides[0] ??
    onBase(hosts) ??
    hosts[0] ??
    (all.some((h) => lumpOf(s, h) === own) ? undefined : largest(bench, hung()));
  return near === undefined ? own : lumpOf(s, near);
}

/** Of things that hang on a part, those of the largest sub-assembly: a base is fitted to what is built up. */
function largest(bench: Bench, things: readonly ThingIndex[]): ThingIndex | undefined {
  const onBase = things.find((h) => lumpOf(bench.state, h) === ON_BASE);
  if (onBase !== undefined || things.length < 2) return onBase ?? things[0];
  const size = new Map<number, number>();
  for (const part of bench.model.parts) {
    const lump = lumpOf(bench.state, part.index);
    size.set(lump, (size.get(lump) ?? 0) + 1);
  }
  return [...things].sort((a, b) => size.get(lumpOf(bench.state, b))! - size.get(lumpOf(bench.state, a))!)[0];
}

/** An earlier line of this step fitted it by its name, and nothing took it off since. */
const isNamedTwice = (bench: Bench, act: Act, index: ThingIndex, { step, pieces }: Around): boolean =>
  (bench.computed && act.names.length > 0 && bench.fittedIn.has(index) && bench.fittedIn.get(index) === step) ||
  bench.performed.some(
    (one) =>
      one.act !== act &&
      one.act.verb === "fit" &&
      act.verb === "fit" &&
      one.act.count === undefined &&
      !one.refused &&
      one.around.step === step &&
      one.around.pieces.join() === pieces.join() &&
      one.things.includes(index),
  );

/** Ties that already close the joint that a part has to lie in. */
function closedJoint(bench: Bench, part: Part, target: number): ThingIndex[] {
  if (!part.between) return [];
  const { state: s, model } = bench,
    [a, b] = part.between;
  if (!a.some((x) => lumpOf(s, x) === target) || !b.some((y) => lumpOf(s, y) === target)) return [];
  return bench.machine.clamps[part.index]!.filter(
    (tie) => holds(model, s, tie.index) && !tie.passing && !isAssumed(bench, tie.index, A_ON),
  ).map((tie) => tie.index);
}

/** The unit's `order` holds for a written refit too. */
function orderedLater(bench: Bench, index: ThingIndex, around: Around): Obstacle[] {
  const { model, state: s } = bench,
    obstacles: Obstacle[] = [];
  if (model.orders.length === 0 || bench.computed) return obstacles;
  const scope = model.scopes.get(around.prefix) ?? model.scopes.get("");
  for (const order of model.orders) {
    if (!order.names.some((name) => scope?.get(name.text)?.includes(index))) continue;
    for (const name of order.after)
      for (const later of scope?.get(name.text) ?? []) {
        if (
          later >= model.parts.length ||
          at(s.lumpBy, later) === NEVER ||
          lumpOf(s, later) === ON_BASE ||
          isAssumed(bench, later, A_ON)
        )
          continue;
        obstacles.push({
          reason: reasonOf("refit/contradiction", { thing: index, by: [later], words: ["unit order"], at: order.at }),
          assume: () => assumeOn(bench, later, bench.machine.hosts[later]!),
        });
      }
  }
  return obstacles;
}

function meet(
  bench: Bench,
  act: Act,
  index: ThingIndex,
  own: number,
  target: number,
  moving: readonly ThingIndex[],
  needs: Set<number>,
  hazards: ReadonlySet<ThingIndex>,
  around: Around,
): void {
  const s = bench.state;
  const alone = isAssumed(bench, index, A_AWAY) && at(s.lumpBy, index) === NEVER;
  // The base keeps its name, whichever side moves.
  const into = own === ON_BASE ? own : target,
    from = own === ON_BASE ? target : own;
  const relabelled = alone ? [index] : from === own ? moving : partsIn(bench.model, s, from);
  for (const part of relabelled) bench.metIn.set(part, around.step);
  const event =
    bench.phase === "strip"
      ? happen(bench, "met", index, act, around, needs, {
          moved: moving,
          from: nameOf(s, target),
          hazards: [...hazards],
        })
      : NEVER;
  const now = bench.state,
    left = now.carriers.get(from);
  bench.state = {
    ...now,
    lump: setAll(now.lump, relabelled, alone ? target : into),
    // Pieces that were counted off one by one count as on again.
    out: at(now.out, index) === 0 ? now.out : set(now.out, index, 0),
    carriers: left && !alone ? now.carriers.with(from, { ...left, joined: into }) : now.carriers,
    metBy: event === NEVER ? now.metBy : set(now.metBy, index, event),
    lumpBy: event === NEVER ? now.lumpBy : set(now.lumpBy, index, event),
  };
}

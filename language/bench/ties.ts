// What is tied to what at a moment, and in which sub-assembly a part is. Questions only.

import type { Model, ThingIndex, Tie } from "../model/model.ts";
import type { Bench } from "./bench.ts";
import { tieOf, type Edge, type Machine } from "./machine.ts";
import { BACKED_OUT, NEVER, ON_BASE, type State } from "./state.ts";
import { at } from "./vector.ts";

export const lumpOf = (s: State, part: ThingIndex): number => at(s.lump, part);
export const together = (s: State, a: ThingIndex, b: ThingIndex): boolean => at(s.lump, a) === at(s.lump, b);

/** The parts that are in this sub-assembly, by ascending number. */
export function partsIn({ parts }: Model, s: State, lump: number): ThingIndex[] {
  const found: ThingIndex[] = [];
  for (let part = 0; part < parts.length; part++) if (at(s.lump, part) === lump) found.push(part);
  return found;
}

export const left = (model: Model, s: State, tie: ThingIndex): number => tieOf(model, tie).count - at(s.out, tie);
export const isOut = (model: Model, s: State, tie: ThingIndex): boolean => at(s.out, tie) >= tieOf(model, tie).count;

/** A tie holds while one of its fasteners is in and not backed out. */
export const holds = (model: Model, s: State, tie: ThingIndex): boolean =>
  !isOut(model, s, tie) && at(s.slack, tie) !== BACKED_OUT;

export function isLive(model: Model, s: State, from: ThingIndex, edge: Edge): boolean {
  return together(s, from, edge.to) && (edge.tie < 0 || holds(model, s, edge.tie));
}

/** Everything that can be reached from these without passing `barred`, over the edges that `follow` allows. */
export function reach(
  bench: Bench,
  s: State,
  from: Iterable<ThingIndex>,
  barred: ReadonlySet<ThingIndex>,
  follow?: (edge: Edge, from: ThingIndex) => boolean,
): Set<ThingIndex> {
  const seen = new Set<ThingIndex>(),
    queue: ThingIndex[] = [];
  for (const part of from)
    if (!barred.has(part) && !seen.has(part)) {
      seen.add(part);
      queue.push(part);
    }
  for (let i = 0; i < queue.length; i++) {
    const part = queue[i]!;
    for (const edge of bench.machine.edges[part]!) {
      if (
        seen.has(edge.to) ||
        barred.has(edge.to) ||
        !isLive(bench.model, s, part, edge) ||
        (follow && !follow(edge, part))
      )
        continue;
      seen.add(edge.to);
      queue.push(edge.to);
    }
  }
  return seen;
}

/** What plays the base of a sub-assembly: the unit's base, or what it was removed by. Without `xs`. */
export function anchorsOf(bench: Bench, s: State, lump: number, xs: ReadonlySet<ThingIndex>): ThingIndex[] {
  if (lump === ON_BASE) return bench.model.base.filter((b) => !xs.has(b) && at(s.lump, b) === ON_BASE);
  const carrier = s.carriers.get(lump)?.carrier;
  return carrier !== undefined && !xs.has(carrier) && at(s.lump, carrier) === lump ? [carrier] : [];
}

/** What these hang on, or lie on, beside each other: of what came off together, the one that carries the rest first. */
export function hostsTogether(
  { hosts }: Machine,
  carrier: ThingIndex,
  things: readonly ThingIndex[],
): readonly ThingIndex[] {
  if (things.length < 2) return hosts[carrier]!;
  const carrierFirst = [carrier, ...things.filter((thing) => thing !== carrier)];
  return carrierFirst.flatMap((thing) => hosts[thing]!).filter((host) => !things.includes(host));
}

/** The ties that clamp a part which lies between two others, now. */
export function clampOf(bench: Bench, part: ThingIndex, s: State): readonly Tie[] {
  const clamps = bench.machine.clamps[part]!;
  if (clamps.length === 0) return clamps;
  const [a, b] = bench.model.parts[part]!.between!;
  if (!a.some((x) => together(s, x, part)) || !a.some((x) => b.some((y) => together(s, x, y)))) return [];
  return clamps.filter((tie) => holds(bench.model, s, tie.index));
}

/** The event that parted these two, NEVER while they are together or where they were apart from the start. */
export function partingOf(s: State, a: ThingIndex, b: ThingIndex): number {
  let x = at(s.lump, a),
    y = at(s.lump, b);
  if (x === y) return NEVER;
  const leftBy = new Map<number, number>(); // sub-assembly of a's history -> the parting by which a left it
  for (let by = NEVER; ;) {
    leftBy.set(x, by);
    if (x === ON_BASE) break;
    by = x > 0 ? x - 1 : NEVER;
    x = homeOf(s, x);
  }
  for (let by = NEVER; ;) {
    const other = leftBy.get(y);
    if (other !== undefined) return by === NEVER ? other : other === NEVER ? by : Math.min(by, other);
    if (y === ON_BASE) return NEVER;
    by = y > 0 ? y - 1 : NEVER;
    y = homeOf(s, y);
  }
}

/** The sub-assembly that this one left, by its present name where that has been joined to another since. */
function homeOf(s: State, lump: number): number {
  return nameOf(s, s.carriers.get(lump)?.from ?? ON_BASE);
}

/** The present name of a sub-assembly: those that met have one name from then on. */
export function nameOf(s: State, lump: number): number {
  let name = lump;
  for (let seen = 0; seen < 1000; seen++) {
    const joined = s.carriers.get(name)?.joined;
    if (joined === undefined || joined === name) break;
    name = joined;
  }
  return name;
}

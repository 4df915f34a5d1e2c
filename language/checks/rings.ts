// Rings of things each behind the next. Found in the declarations, before any procedure.

import type { Problem } from "../bench/trace.ts";
import { kept } from "../model/kept.ts";
import type { Model, Part, ThingIndex, Tie } from "../model/model.ts";
import { kindIn, partKinds } from "../tables/index.ts";
import type { Met } from "./check.ts";
import { onlyReasons } from "./only-reasons.ts";

const found = kept<Model, readonly (readonly ThingIndex[])[]>();
/** One ring, the shortest through its first thing, of each knot of things that go round. Worked out once a model. */
export const ringsIn = (model: Model): readonly (readonly ThingIndex[])[] => found(model, () => ringsOf(model));

/** Without the reasons that one thing is in front of another where the two are in a ring, each behind the next: `sequence/cycle` reports that ring. */
export function withoutRings(problem: Problem, { settings, performance: { model } }: Met): Problem | undefined {
  const rings = settings.severity["sequence/cycle"] === "off" ? [] : ringsIn(model);
  if (rings.length === 0) return problem;
  return onlyReasons(
    problem,
    ({ rule, thing, by }) =>
      rule !== "sequence/blocked" ||
      thing === undefined ||
      !rings.some((ring) => ring.includes(thing) && by.every((one) => ring.includes(one))),
  );
}

export const behindOf = (model: Model, index: ThingIndex): readonly ThingIndex[] => {
  const thing = model.things[index]!;
  return thing.is === "part" || thing.is === "tie" ? thing.behind : none;
};
const none: readonly ThingIndex[] = [];

type Edges = (index: ThingIndex) => readonly ThingIndex[];

/** What must be away or undone before a thing can be worked on, and before a part that hides something can go. */
function edgesOf(model: Model): Edges {
  // From what holds a part a ring goes on only where that is behind something itself.
  if (model.ties.every(({ behind }) => behind.length === 0)) return (index) => behindOf(model, index);
  const edges: ThingIndex[][] = model.things.map((thing) => [...behindOf(model, thing.index)]),
    onBase = new Set(model.base),
    swings = new Set<ThingIndex>();
  const flexible = (index: ThingIndex): boolean => kindIn(partKinds, model.parts[index]?.kind)?.flexible ?? false;
  const link = (a: ThingIndex, b: ThingIndex): void => {
    if (flexible(a)) swings.add(b);
    if (flexible(b)) swings.add(a);
  };
  for (const part of model.parts) for (const host of part.hosts) link(part.index, host);
  for (const tie of model.ties) for (const lower of tie.lowers) for (const upper of tie.uppers) link(lower, upper);
  for (const tie of model.ties) {
    // What is held by something else than the base may leave with that, and what swings need not leave: only the rest must be undone first.
    if (tie.passing || tie.uppers.length === 0 || !tie.uppers.every((upper) => onBase.has(upper))) continue;
    for (const lower of tie.lowers) if (!swings.has(lower)) edges[lower]!.push(tie.index);
  }
  return (index) => edges[index]!;
}

/** Linear, without recursion. Every ring goes through something that is behind: nothing else is begun from, and of most models that is little. */
function ringsOf(model: Model): ThingIndex[][] {
  const isBehind = ({ behind }: Part | Tie): boolean => behind.length > 0,
    begins = [...model.parts.filter(isBehind), ...model.ties.filter(isBehind)],
    rings: ThingIndex[][] = [];
  if (begins.length === 0) return rings;
  const edges = edgesOf(model),
    order = new Map<ThingIndex, number>(),
    low = new Map<ThingIndex, number>(),
    knot = new Map<ThingIndex, ThingIndex>(),
    next = new Map<ThingIndex, number>();
  const open: ThingIndex[] = [],
    path: ThingIndex[] = [],
    lower = (at: ThingIndex, to: number): void => {
      low.set(at, Math.min(low.get(at)!, to));
    };
  for (const { index: start } of begins) {
    if (order.has(start)) continue;
    path.push(start);
    while (path.length > 0) {
      const at = path[path.length - 1]!;
      if (!order.has(at)) {
        low.set(at, order.size);
        order.set(at, order.size);
        open.push(at);
      }
      const done = next.get(at) ?? 0,
        to = edges(at)[done];
      if (to !== undefined) {
        next.set(at, done + 1);
        if (!order.has(to)) path.push(to);
        else if (!knot.has(to)) lower(at, order.get(to)!);
        continue;
      }
      path.pop();
      if (path.length > 0) lower(path[path.length - 1]!, low.get(at)!);
      if (low.get(at) !== order.get(at)) continue;
      const members: ThingIndex[] = [];
      let one: ThingIndex;
      do {
        one = open.pop()!;
        knot.set(one, at);
        members.push(one);
      } while (one !== at);
      if (members.length > 1 || edges(at).includes(at)) rings.push(shortest(Math.min(...members), edges, knot));
    }
  }
  return rings.sort((a, b) => a[0]! - b[0]!);
}

/** Breadth first inside the knot, from the thing back to itself. */
function shortest(start: ThingIndex, edges: Edges, knot: ReadonlyMap<ThingIndex, ThingIndex>): ThingIndex[] {
  const from = new Map<ThingIndex, ThingIndex>(),
    queue = [start];
  for (const at of queue) {
    for (const to of edges(at)) {
      if (knot.get(to) !== knot.get(start)) continue;
      if (to === start) {
        const ring = [at];
        while (ring[0] !== start) ring.unshift(from.get(ring[0]!)!);
        return ring;
      }
      if (from.has(to)) continue;
      from.set(to, at);
      queue.push(to);
    }
  }
  return [start];
}

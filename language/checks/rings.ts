// Rings of things each behind the next. Found in the declarations, before any procedure.

import type { Problem } from "../bench/trace.ts";
import { kept } from "../model/kept.ts";
import type { Model, ThingIndex } from "../model/model.ts";
import { kindIn, partKinds } from "../tables/index.ts";
import type { Met } from "./check.ts";
import { onlyReasons } from "./only-reasons.ts";

const found = kept<Model, readonly (readonly ThingIndex[])[]>();
/** One ring, the shortest through its first thing, of each knot of things that go round. Worked out once a model. */
export const ringsIn = (model: Model): readonly (readonly ThingIndex[])[] =>
  found(model, () => (holdsBehind(model.parts) || holdsBehind(model.ties) ? ringsOf(edgesOf(model)) : []));

/** Every ring has one of these in it: what holds a part hangs on nothing else. */
const holdsBehind = (things: readonly { readonly behind: readonly ThingIndex[] }[]): boolean =>
  things.some(({ behind }) => behind.length > 0);

/** Of two things that are each behind the other, that ring is said; that the one is in front of the other is the same again. */
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

/** What must be away or undone before a thing can be worked on, and before a part that hides something can go. */
function edgesOf(model: Model): readonly (readonly ThingIndex[])[] {
  const edges = model.things.map((thing) => behindOf(model, thing.index));
  // From what holds a part a ring goes on only where that is behind something itself.
  if (!holdsBehind(model.ties)) return edges;
  const onBase = new Set(model.base),
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
    for (const lower of tie.lowers) if (!swings.has(lower)) edges[lower] = [...edges[lower]!, tie.index];
  }
  return edges;
}

/** Linear, without recursion. */
function ringsOf(edges: readonly (readonly ThingIndex[])[]): ThingIndex[][] {
  const n = edges.length,
    order = new Int32Array(n).fill(-1),
    low = new Int32Array(n),
    knot = new Int32Array(n).fill(-1),
    next = new Int32Array(n);
  const open: ThingIndex[] = [],
    path: ThingIndex[] = [],
    rings: ThingIndex[][] = [];
  let count = 0;
  for (let start = 0; start < n; start++) {
    if (order[start] !== -1 || edges[start]!.length === 0) continue;
    path.push(start);
    while (path.length > 0) {
      const at = path[path.length - 1]!;
      if (order[at] === -1) {
        order[at] = low[at] = count++;
        open.push(at);
      }
      const to = edges[at]![next[at]!];
      if (to !== undefined) {
        next[at]!++;
        if (order[to] === -1) path.push(to);
        else if (knot[to] === -1) low[at] = Math.min(low[at]!, order[to]!);
        continue;
      }
      path.pop();
      const above = path[path.length - 1];
      if (above !== undefined) low[above] = Math.min(low[above]!, low[at]!);
      if (low[at] !== order[at]) continue;
      const members: ThingIndex[] = [];
      let one: ThingIndex;
      do {
        one = open.pop()!;
        knot[one] = at;
        members.push(one);
      } while (one !== at);
      if (members.length > 1 || edges[at]!.includes(at)) rings.push(shortest(Math.min(...members), edges, knot));
    }
  }
  return rings.sort((a, b) => a[0]! - b[0]!);
}

/** Breadth first inside the knot, from the thing back to itself. */
function shortest(start: ThingIndex, edges: readonly (readonly ThingIndex[])[], knot: Int32Array): ThingIndex[] {
  const from = new Map<ThingIndex, ThingIndex>(),
    queue = [start];
  for (const at of queue) {
    for (const to of edges[at]!) {
      if (knot[to] !== knot[start]) continue;
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

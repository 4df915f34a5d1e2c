// The smallest set of ties that would free some parts: a minimum cut over groups, cheapest by groups, then by pieces, then by
// distance. Asked only when an act was refused, so it may take its time.

import type { ThingIndex } from "../model/model.ts";
import type { Bench } from "./bench.ts";
import type { State } from "./state.ts";
import { clampOf, isLive, left } from "./ties.ts";

const GROUP = 1e9,
  PIECE = 1e4,
  FARTHEST = 999;

/** Ties between `from` and `anchors`, all of which must be undone; empty where nothing that can be undone lies between them. */
export function smallestSet(
  bench: Bench,
  s: State,
  from: readonly ThingIndex[],
  anchors: readonly ThingIndex[],
): ThingIndex[] {
  const { model, machine } = bench;
  const flow = new Map<string, Map<string, number>>(); // what may still flow
  const pipe = (a: string, b: string, capacity: number): void => {
    let forth = flow.get(a),
      back = flow.get(b);
    if (!forth) flow.set(a, (forth = new Map()));
    if (!back) flow.set(b, (back = new Map()));
    forth.set(b, (forth.get(b) ?? 0) + capacity);
    if (!back.has(a)) back.set(a, 0);
  };
  const distance = new Map<ThingIndex, number>(from.map((part) => [part, 0])),
    queue = [...from],
    ties = new Set<ThingIndex>(),
    ends = new Set(anchors);
  const neighbours = (part: ThingIndex): { tie: ThingIndex; to: ThingIndex }[] => {
    const list: { tie: ThingIndex; to: ThingIndex }[] = [];
    for (const edge of machine.edges[part]!)
      if (edge.tie >= 0 && edge.undone && isLive(model, s, part, edge)) list.push({ tie: edge.tie, to: edge.to });
    for (const tie of clampOf(bench, part, s))
      for (const to of [...tie.lowers, ...tie.uppers]) list.push({ tie: tie.index, to });
    return list;
  };
  for (let i = 0; i < queue.length; i++) {
    const part = queue[i]!,
      far = distance.get(part)!;
    for (const { tie, to } of neighbours(part)) {
      if (!ties.has(tie)) {
        ties.add(tie);
        pipe(`${tie}<`, `${tie}>`, GROUP + left(model, s, tie) * PIECE + Math.min(far, FARTHEST));
      }
      pipe(`:${part}`, `${tie}<`, Infinity);
      pipe(`${tie}>`, `:${to}`, Infinity);
      if (distance.has(to)) continue;
      distance.set(to, far + 1);
      if (!ends.has(to)) queue.push(to);
    }
  }
  for (const part of from) pipe("source", `:${part}`, Infinity);
  for (const part of anchors) pipe(`:${part}`, "sink", Infinity);
  for (let rounds = 0; rounds < 500; rounds++) {
    const way = wayThrough(flow);
    if (!way.has("sink")) return [...ties].filter((tie) => way.has(`${tie}<`) && !way.has(`${tie}>`));
    const path: [string, string][] = [];
    for (let to = "sink"; to !== "source"; to = way.get(to)!) path.push([way.get(to)!, to]);
    const least = Math.min(...path.map(([a, b]) => flow.get(a)!.get(b)!));
    if (least === Infinity) return [];
    for (const [a, b] of path) {
      flow.get(a)!.set(b, flow.get(a)!.get(b)! - least);
      flow.get(b)!.set(a, flow.get(b)!.get(a)! + least);
    }
  }
  return [];
}

/** A breadth-first way from source to sink where something may still flow: node -> the one before it. */
function wayThrough(flow: ReadonlyMap<string, ReadonlyMap<string, number>>): Map<string, string> {
  const way = new Map<string, string>([["source", ""]]),
    queue = ["source"];
  for (let i = 0; i < queue.length && !way.has("sink"); i++) {
    for (const [to, free] of flow.get(queue[i]!) ?? [])
      if (free > 0 && !way.has(to)) {
        way.set(to, queue[i]!);
        queue.push(to);
      }
  }
  return way;
}

/** From a part to the base, tie by tie: the shortest way over what is undone by an action. */
export function chainToBase(bench: Bench, s: State, part: ThingIndex, anchors: readonly ThingIndex[]): ThingIndex[] {
  const ends = new Set(anchors),
    before = new Map<ThingIndex, { from: ThingIndex; tie: ThingIndex }>(),
    queue = [part];
  for (let i = 0; i < queue.length; i++) {
    const here = queue[i]!;
    if (ends.has(here)) {
      const chain: ThingIndex[] = [here];
      for (let p = here; p !== part; p = before.get(p)!.from) {
        const step = before.get(p)!;
        if (step.tie >= 0) chain.unshift(step.tie);
        chain.unshift(step.from);
      }
      return chain;
    }
    for (const edge of bench.machine.edges[here]!) {
      if (before.has(edge.to) || edge.to === part || !isLive(bench.model, s, here, edge)) continue;
      before.set(edge.to, { from: here, tie: edge.tie });
      queue.push(edge.to);
    }
  }
  return [];
}

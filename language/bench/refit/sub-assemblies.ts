// The sub-assemblies as the strip left them. Each parting links two of them, so between any two there is one way: the meetings that
// bring their parts together again.

import type { Model, ThingIndex } from "../../model/model.ts";
import { machineOf } from "../machine.ts";
import { ON_BASE, type State } from "../state.ts";
import { hostsTogether } from "../ties.ts";
import type { Event } from "../trace.ts";
import { at } from "../vector.ts";

export interface SubAssemblies {
  /** The partings between two parts; empty where they are together, or where no parting of this strip links them. */
  between(a: ThingIndex, b: ThingIndex): readonly number[];
  /** Did it stay where the others left? */
  stayed(event: Event, part: ThingIndex): boolean;
  moved(event: Event, part: ThingIndex): boolean;
}

interface Node {
  readonly up: number;
  readonly by: number;
  readonly depth: number;
}

/** A parting, the sub-assembly that its way back brings, and where that goes: to what is on the base first. */
interface Link {
  readonly event: Event;
  readonly from: number;
  readonly to: number;
  /** What it hangs on, where that lies in several sub-assemblies and none of them is the base: which it comes to first is open. */
  readonly open: readonly ThingIndex[];
}

type Moved = (event: Event, part: ThingIndex) => boolean;
interface Sides {
  readonly moved: Moved;
  readonly stayed: Moved;
}

function sidesOf(): Sides {
  const sets = new Map<number, ReadonlySet<ThingIndex>>();
  const moved: Moved = (event, part) => {
    if (event.moved.length < 8) return event.moved.includes(part);
    let set = sets.get(event.index);
    if (!set) sets.set(event.index, (set = new Set(event.moved)));
    return set.has(part);
  };
  return { moved, stayed: (event, part) => at(event.before.lump, part) === event.from && !moved(event, part) };
}

function linksOf(model: Model, events: readonly Event[], end: State, { stayed }: Sides): Link[] {
  const machine = machineOf(model),
    links: Link[] = [];
  for (const event of events) {
    if (event.kind !== "off") continue;
    const home = event.from === ON_BASE ? model.base[0] : event.before.carriers.get(event.from)?.carrier;
    // It goes back to what is on the base first, as fitting does. Where its hosts have left one another since and none of them is on
    // the base, which one it comes to first depends on the line that is taken.
    const carrier = end.carriers.get(event.index + 1)?.carrier ?? event.thing,
      hosts = hostsTogether(machine, carrier, event.things).filter((h) => stayed(event, h));
    const host =
      hosts.find((h) => at(end.lump, h) === ON_BASE) ??
      hosts[0] ??
      (home !== undefined && stayed(event, home) ? home : undefined);
    if (host === undefined) continue;
    const from = at(end.lump, carrier),
      to = at(end.lump, host),
      others = to === ON_BASE ? [] : hosts.filter((h) => at(end.lump, h) !== to);
    links.push({ event, from, to, open: others.length > 0 ? [host, ...others] : [] });
  }
  return links;
}

/**
 * Which parts are together when all has gone back that goes back: what came off what is left off goes back on that, and is left off with
 * it.
 */
export function togetherAtLast(
  model: Model,
  events: readonly Event[],
  end: State,
  isLeftOff: (event: Event) => boolean,
): (a: ThingIndex, b: ThingIndex) => boolean {
  const name = new Map<number, number>(),
    nameOf = (lump: number): number => {
      let last = lump;
      for (let next = name.get(last); next !== undefined; next = name.get(last)) last = next;
      return last;
    };
  for (const { event, from, to } of linksOf(model, events, end, sidesOf()))
    if (!isLeftOff(event) && nameOf(from) !== nameOf(to)) name.set(nameOf(from), nameOf(to));
  return (a, b) => nameOf(at(end.lump, a)) === nameOf(at(end.lump, b));
}

export function subAssemblies(model: Model, events: readonly Event[], end: State): SubAssemblies {
  const { moved, stayed } = sidesOf(),
    links = new Map<number, { to: number; by: number }[]>(),
    left = new Map<number, number>(),
    unsure = new Map<number, readonly ThingIndex[]>();
  const link = (a: number, b: number, by: number): void => {
    const list = links.get(a);
    if (list) list.push({ to: b, by });
    else links.set(a, [{ to: b, by }]);
  };
  for (const event of events) if (event.kind === "off") left.set(event.index + 1, event.from);
  for (const { event, from, to, open } of linksOf(model, events, end, { moved, stayed })) {
    if (open.length > 0) unsure.set(event.index, open);
    if (from === to) continue;
    link(from, to, event.index);
    link(to, from, event.index);
  }
  // Rooted once; the way between two is up from both until they meet.
  const nodes = new Map<number, Node>();
  for (const root of [ON_BASE, ...links.keys()]) {
    if (nodes.has(root)) continue;
    nodes.set(root, { up: root, by: -1, depth: 0 });
    const queue = [root];
    for (let i = 0; i < queue.length; i++)
      for (const { to, by } of links.get(queue[i]!) ?? []) {
        if (nodes.has(to)) continue;
        nodes.set(to, { up: queue[i]!, by, depth: nodes.get(queue[i]!)!.depth + 1 });
        queue.push(to);
      }
  }
  /** The way by what each left, whatever it hung on there. */
  const byLeaving = (from: number, to: number): readonly number[] => {
    const path: number[] = [];
    let x = from,
      y = to;
    while (x !== y) {
      const later = Math.max(x, y),
        home = left.get(later);
      if (home === undefined) return [];
      path.push(later - 1);
      if (x === later) x = home;
      else y = home;
    }
    return path;
  };
  const way = (from: number, to: number): readonly number[] => {
    const path: number[] = [];
    let x = from,
      y = to;
    while (x !== y) {
      const one = nodes.get(x),
        other = nodes.get(y);
      if (!one || !other || (one.by < 0 && other.by < 0)) return [];
      if (one.depth >= other.depth && one.by >= 0) {
        path.push(one.by);
        x = one.up;
      } else {
        path.push(other.by);
        y = other.up;
      }
    }
    return path;
  };
  const between = (a: ThingIndex, b: ThingIndex): readonly number[] => {
    const x = at(end.lump, a),
      y = at(end.lump, b);
    if (x === y) return [];
    const path = way(x, y);
    if (unsure.size === 0 || !path.some((by) => unsure.has(by))) return path;
    // To whichever of its hosts it comes first: those are together as well.
    const all = new Set([...path, ...byLeaving(x, y)]);
    for (const by of all) {
      const [host, ...others] = unsure.get(by) ?? [];
      for (const other of others) for (const one of way(at(end.lump, host!), at(end.lump, other))) all.add(one);
    }
    return [...all];
  };
  return { between, stayed, moved };
}

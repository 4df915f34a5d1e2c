// What comes along when parts are removed, and which ties still hold them. Questions only; local to what hangs on the parts.

import type { ThingIndex } from "../model/model.ts";
import { kindIn, partKinds } from "../tables/index.ts";
import type { Bench } from "./bench.ts";
import { partOf, tieOf, type Edge } from "./machine.ts";
import { smallestSet } from "./smallest-set.ts";
import type { State } from "./state.ts";
import { anchorsOf, clampOf, isLive, lumpOf, reach } from "./ties.ts";
import { set } from "./vector.ts";

export interface Look {
  /** The parts named and all that comes along. */
  readonly moved: ReadonlySet<ThingIndex>;
  /** Ties that are undone by an action and still hold them. */
  readonly held: ReadonlySet<ThingIndex>;
  readonly lump: number;
}

/** What would happen if these, all in one sub-assembly, were taken off together. */
export function lookAt(bench: Bench, parts: readonly ThingIndex[], s: State = bench.state): Look {
  const { machine, model } = bench;
  const named = new Set(parts),
    lump = lumpOf(s, parts[0]!),
    anchors = anchorsOf(bench, s, lump, named);
  let fixed: ((part: ThingIndex) => boolean) | undefined; // asked only where something hangs on them
  const moved = dependents(bench, s, named, (part) => (fixed ??= fixedTo(bench, s, anchors, named))(part));
  const held = new Set<ThingIndex>();
  for (let again = true; again;) {
    again = false;
    held.clear();
    for (const part of moved)
      for (const edge of machine.edges[part]!) {
        if (moved.has(edge.to) || !isLive(model, s, part, edge)) continue;
        if (edge.tie >= 0 && edge.undone) {
          // Bolted to what goes and held by the rest only in passing: it comes along.
          if (!edge.hangs && !named.has(edge.to)) {
            const its = reach(bench, s, [edge.to], moved, (e) => e.undone);
            if (comesAlong(bench, s, its, anchors, moved)) {
              const barred = new Set(anchors);
              for (const one of dependents(bench, s, its, (p) => moved.has(p) || barred.has(p))) moved.add(one);
              again = true;
            }
          }
          held.add(edge.tie);
        } else if (edge.tie < 0 && !edge.hangs && partOf(model, edge.to).rests.includes(part)) {
          // The upper goes with the lower; it holds it only where it is fixed elsewhere itself.
          for (const e of machine.edges[edge.to]!)
            if (e.undone && e.tie >= 0 && e.hangs && !moved.has(e.to) && isLive(model, s, edge.to, e)) held.add(e.tie);
        }
      }
  }
  return { moved, held, lump };
}

function comesAlong(
  bench: Bench,
  s: State,
  its: ReadonlySet<ThingIndex>,
  anchors: readonly ThingIndex[],
  moved: ReadonlySet<ThingIndex>,
): boolean {
  if (anchors.some((a) => its.has(a))) return false;
  for (const part of its) {
    if (clampOf(bench, part, s).length > 0) return false;
    // A lead or hose that is laid in something which stays is torn out of it, or holds what goes.
    const isLaid = kindIn(partKinds, partOf(bench.model, part).kind)?.limp === true;
    for (const e of bench.machine.edges[part]!)
      if ((e.undone || isLaid) && e.hangs && !its.has(e.to) && !moved.has(e.to) && isLive(bench.model, s, part, e))
        return false;
  }
  return true;
}

/** Does anything hang on this part? Else nothing but itself comes along. */
export const carriesAny = ({ machine, model, state }: Bench, part: ThingIndex): boolean =>
  machine.edges[part]!.some((edge) => !edge.hangs && isLive(model, state, part, edge));

/** These and all that hangs on them, level by level, save what is barred. */
function dependents(
  bench: Bench,
  s: State,
  from: Iterable<ThingIndex>,
  barred: (part: ThingIndex) => boolean,
): Set<ThingIndex> {
  const seen = new Set<ThingIndex>(from),
    queue = [...seen];
  for (let i = 0; i < queue.length; i++)
    for (const edge of bench.machine.edges[queue[i]!]!) {
      if (edge.hangs || seen.has(edge.to) || !isLive(bench.model, s, queue[i]!, edge) || barred(edge.to)) continue;
      seen.add(edge.to);
      queue.push(edge.to);
    }
  return seen;
}

/**
 * Is a part still connected to the anchors without passing the named ones? Asked part by part and remembered: the search climbs from
 * the part towards what it hangs on, so that taking off one of a thousand parts does not walk through the other 999.
 */
function fixedTo(
  bench: Bench,
  s: State,
  anchors: readonly ThingIndex[],
  named: ReadonlySet<ThingIndex>,
): (part: ThingIndex) => boolean {
  const known = new Map<ThingIndex, boolean>(anchors.map((a) => [a, true]));
  return (part) => {
    const had = known.get(part);
    if (had !== undefined) return had;
    const seen = new Set<ThingIndex>([part]),
      stack = [part];
    let found = false;
    while (stack.length > 0 && !found) {
      const here = stack.pop()!,
        edges = bench.machine.edges[here]!;
      const visit = (edge: Edge): void => {
        if (found || seen.has(edge.to) || named.has(edge.to) || !isLive(bench.model, s, here, edge)) return;
        if (known.get(edge.to) === true) {
          found = true;
          return;
        }
        seen.add(edge.to);
        stack.push(edge.to);
      };
      for (const edge of edges) if (!edge.hangs) visit(edge); // last in, first out: upwards first
      for (const edge of edges) if (edge.hangs) visit(edge);
    }
    for (const one of seen) known.set(one, found);
    return found;
  };
}

/** The least that would free them: fewest groups, then fewest pieces, then the nearest. */
export function freeing(bench: Bench, parts: readonly ThingIndex[], look: Look): ThingIndex[] {
  if (look.held.size === 0) return [];
  const least = smallestSet(bench, bench.state, parts, anchorsOf(bench, bench.state, look.lump, new Set(parts)));
  let s = bench.state;
  for (let rounds = 0; rounds < 50; rounds++) {
    let out = s.out;
    for (const tie of least) out = set(out, tie, tieOf(bench.model, tie).count);
    s = { ...s, out };
    const still = lookAt(bench, parts, s).held;
    if (still.size === 0) break;
    least.push(...still);
  }
  // Rounds before may have put ties on the list that the last ones made needless: each is left out if the parts come free without it.
  for (const tie of [...least]) {
    if (least.length === 1) break;
    const rest = least.filter((other) => other !== tie);
    let { out } = bench.state;
    for (const other of rest) out = set(out, other, tieOf(bench.model, other).count);
    if (lookAt(bench, parts, { ...bench.state, out }).held.size === 0) least.splice(least.indexOf(tie), 1);
  }
  return least;
}

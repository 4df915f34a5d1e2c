// Lines of a partial order: the printed one, nearest to last off, first on; or any, drawn with a die.

import type { RefitOp } from "../trace.ts";

/**
 * Ops by number. With a die (0 up to 1) any line of the order may come out; without, the highest rank that is free comes next. Where the
 * rest wait for each other in a ring (what was done cannot be undone in any order) the highest rank comes all the same: no act is lost,
 * and performing it shows what stands against it.
 */
export function lineOf(ops: readonly RefitOp[], later: readonly (readonly number[])[], die?: () => number): number[] {
  const waits = new Int32Array(ops.length),
    line: number[] = [];
  for (const list of later) for (const next of list) waits[next]!++;
  const ready: number[] = [];
  const swap = (i: number, k: number): void => {
    const one = ready[i]!;
    ready[i] = ready[k]!;
    ready[k] = one;
  };
  const push = (n: number): void => {
    ready.push(n);
    if (die) return;
    for (let i = ready.length - 1; i > 0;) {
      const parent = (i - 1) >> 1;
      if (!isBefore(ready[i]!, ready[parent]!)) break;
      swap(i, parent);
      i = parent;
    }
  };
  const isBefore = (a: number, b: number): boolean =>
    ops[a]!.rank > ops[b]!.rank || (ops[a]!.rank === ops[b]!.rank && a < b);
  const pop = (): number => {
    if (die) return ready.splice(Math.floor(die() * ready.length), 1)[0]!;
    const top = ready[0]!,
      last = ready.pop()!;
    if (ready.length === 0) return top;
    ready[0] = last;
    for (let i = 0; ;) {
      const end = Math.min(2 * i + 3, ready.length);
      let best = i;
      for (let child = 2 * i + 1; child < end; child++) if (isBefore(ready[child]!, ready[best]!)) best = child;
      if (best === i) return top;
      swap(i, best);
      i = best;
    }
  };
  for (const op of ops) if (waits[op.number] === 0) push(op.number);
  while (line.length < ops.length) {
    if (ready.length === 0) {
      const held = ops.map((op) => op.number).filter((n) => waits[n]! > 0);
      push(held.reduce((best, n) => (isBefore(n, best) ? n : best)));
    }
    const n = pop();
    line.push(n);
    waits[n] = 0;
    for (const next of later[n]!) if (waits[next]! > 0 && --waits[next]! === 0) push(next);
  }
  return line;
}

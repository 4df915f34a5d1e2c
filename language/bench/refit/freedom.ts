// Which acts may swap: for planning, and for comparing two refits by what must be, not by how they were printed.

import type { RefitOrder } from "../trace.ts";

/** For each op, the ops that must come after it, directly or not. */
export function mustFollow(order: Pick<RefitOrder, "ops" | "later">): readonly ReadonlySet<number>[] {
  const all: Set<number>[] = order.ops.map(() => new Set<number>()),
    state = new Uint8Array(order.ops.length);
  for (const op of order.ops) {
    const stack = [op.number];
    while (stack.length > 0) {
      const n = stack[stack.length - 1]!;
      if (state[n] === 0) {
        state[n] = 1;
        for (const next of order.later[n]!) if (state[next] === 0) stack.push(next);
        continue;
      }
      stack.pop();
      if (state[n] === 2) continue;
      state[n] = 2;
      for (const next of order.later[n]!) {
        all[n]!.add(next);
        for (const far of all[next]!) all[n]!.add(far);
      }
    }
  }
  return all;
}

/** May the two come in either order? */
export function maySwap(following: readonly ReadonlySet<number>[], a: number, b: number): boolean {
  return a !== b && !following[a]!.has(b) && !following[b]!.has(a);
}

/** The order without what follows from the rest, each link with its reason: what a diagram draws and a list of needs prints. */
export function reduced(order: RefitOrder): { readonly from: number; readonly to: number; readonly why: string }[] {
  const following = mustFollow(order),
    links: { from: number; to: number; why: string }[] = [];
  order.later.forEach((list, from) => {
    list.forEach((to, i) => {
      if (!list.some((other) => other !== to && following[other]!.has(to)))
        links.push({ from, to, why: order.why[from]![i]! });
    });
  });
  return links;
}

/** Is this sequence of ops a line of the order? */
export function isLine(order: Pick<RefitOrder, "ops" | "later">, line: readonly number[]): boolean {
  const place = new Map(line.map((n, i) => [n, i]));
  return (
    line.length === order.ops.length &&
    order.later.every((list, from) => list.every((to) => place.get(from)! < place.get(to)!))
  );
}

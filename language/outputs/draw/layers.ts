// Places for the boxes of a graph that runs from top to bottom: rows by longest path, order in the rows by barycentre, columns by least
// squares. It knows nothing of what the boxes mean and draws nothing.

import { columns, type Slot } from "./columns.ts";

export interface Box {
  readonly width: number;
  readonly height: number;
}

/** From the upper box to the lower, by their numbers. */
export type Link = readonly [from: number, to: number];

export interface Placed {
  /** Middle of the box, and its upper edge. */
  readonly x: number;
  readonly y: number;
}

export interface Layout {
  readonly width: number;
  readonly height: number;
  readonly boxes: readonly Placed[];
  /** For each link the points that it passes, from edge to edge. Two points in one row of boxes stand one above the other. */
  readonly routes: readonly (readonly { readonly x: number; readonly y: number }[])[];
}

export interface LayoutOptions {
  /** A row that is wider is broken into several. */
  readonly rowWidth: number;
  readonly gap: number;
  readonly rowGap: number;
}

/** Boxes in their rows, before it is worked out how they stand in them. */
export interface Rows {
  readonly height: number;
  /** What it is wide at least. */
  readonly least: number;
  readonly placed: () => Layout;
}

/** The links must make no ring. Throws where they do: that is a fault of the caller. */
export function rowsOf(boxes: readonly Box[], links: readonly Link[], options: LayoutOptions): Rows {
  const rows = brokenRows(ranks(boxes.length, links), boxes, links, options),
    rowOf = new Map(rows.flatMap((row, i) => row.map((box) => [box, i] as const))),
    heights = rows.map((row) => Math.max(0, ...row.map((box) => boxes[box]!.height))),
    widths = rows.map((row) => row.reduce((sum, box) => sum + boxes[box]!.width + options.gap, -options.gap));
  for (const [from, to] of links)
    for (let row = rowOf.get(from)! + 1; row < rowOf.get(to)!; row++) widths[row]! += passing + options.gap;
  return {
    height: heights.reduce((sum, each) => sum + each, 0) + Math.max(0, rows.length - 1) * options.rowGap,
    least: Math.max(0, ...widths),
    placed: () => placed(rows, rowOf, heights, boxes, links, options),
  };
}

/** Width of what a link takes of a row that it passes. */
const passing = 6;

function placed(
  rows: readonly (readonly number[])[],
  rowOf: ReadonlyMap<number, number>,
  heights: readonly number[],
  boxes: readonly Box[],
  links: readonly Link[],
  options: LayoutOptions,
): Layout {
  // A link over several rows gets a thin slot in each row that it passes, so that no box stands in its way.
  const slots: Slot[] = boxes.map(({ width }) => ({ width, up: [], down: [] })),
    grid: number[][] = rows.map((row) => [...row]),
    chains: number[][] = [];
  for (const [from, to] of links) {
    const chain = [from];
    for (let row = rowOf.get(from)! + 1; row < rowOf.get(to)!; row++) {
      chain.push(slots.length);
      grid[row]!.push(slots.length);
      slots.push({ width: passing, up: [], down: [] });
    }
    chain.push(to);
    for (let i = 1; i < chain.length; i++) {
      slots[chain[i - 1]!]!.down.push(chain[i]!);
      slots[chain[i]!]!.up.push(chain[i - 1]!);
    }
    chains.push(chain);
  }
  const ordered = untangled(grid, slots),
    xs = columns(ordered, slots, options.gap);
  const tops: number[] = [];
  let y = 0;
  for (const height of heights) {
    tops.push(y);
    y += height + options.rowGap;
  }
  const left = Math.min(...xs.map((x, slot) => x - slots[slot]!.width / 2)),
    right = Math.max(...xs.map((x, slot) => x + slots[slot]!.width / 2));
  const at = (slot: number): number => xs[slot]! - left;
  const topOf = (box: number): number => {
    const row = rowOf.get(box)!;
    return tops[row]! + (heights[row]! - boxes[box]!.height) / 2;
  };
  return {
    width: boxes.length === 0 ? 0 : right - left,
    height: Math.max(0, y - options.rowGap),
    boxes: boxes.map((_, box) => ({ x: at(box), y: topOf(box) })),
    routes: links.map(([from, to], i) => {
      const chain = chains[i]!,
        row = rowOf.get(from)!;
      return [
        { x: at(from), y: topOf(from) + boxes[from]!.height },
        ...chain.slice(1, -1).flatMap((slot, step) => [
          { x: at(slot), y: tops[row + 1 + step]! },
          { x: at(slot), y: tops[row + 1 + step]! + heights[row + 1 + step]! },
        ]),
        { x: at(to), y: topOf(to) },
      ];
    }),
  };
}

/** Longest path from the top; then each box as low as what hangs on it allows, so that links stay short. */
function ranks(count: number, links: readonly Link[]): number[] {
  const down: number[][] = Array.from({ length: count }, () => []),
    open = new Array<number>(count).fill(0),
    rank = new Array<number>(count).fill(0);
  for (const [from, to] of links) {
    down[from]!.push(to);
    open[to]!++;
  }
  const line = [...open.keys()].filter((box) => open[box] === 0);
  for (let i = 0; i < line.length; i++) {
    for (const next of down[line[i]!]!) {
      rank[next] = Math.max(rank[next]!, rank[line[i]!]! + 1);
      if (--open[next]! === 0) line.push(next);
    }
  }
  if (line.length < count) throw new Error("the links of a drawing make a ring");
  for (const box of line.toReversed())
    if (down[box]!.length > 0) rank[box] = Math.min(...down[box]!.map((next) => rank[next]!)) - 1;
  return rank;
}

/** Rows of boxes, none wider than asked where it has more than one box. Those that lead to the same box stay side by side. */
function brokenRows(
  rank: readonly number[],
  boxes: readonly Box[],
  links: readonly Link[],
  { rowWidth, gap }: LayoutOptions,
): number[][] {
  const first = boxes.map(() => boxes.length);
  for (const [from, to] of links) first[from] = Math.min(first[from]!, to);
  const levels = Map.groupBy([...rank.keys()], (box) => rank[box]!),
    rows: number[][] = [];
  for (const level of [...levels.keys()].sort((a, b) => a - b)) {
    let width = Number.POSITIVE_INFINITY;
    const boxesHere = levels.get(level)!;
    if (boxesHere.length > 1) boxesHere.sort((a, b) => first[a]! - first[b]! || a - b);
    for (const box of boxesHere) {
      if (width + gap + boxes[box]!.width > rowWidth) {
        rows.push([]);
        width = -gap;
      }
      rows[rows.length - 1]!.push(box);
      width += gap + boxes[box]!.width;
    }
  }
  return rows;
}

/** The order with the fewest crossings that sweeps by barycentre find; ties keep their order. */
function untangled(grid: readonly (readonly number[])[], slots: readonly Slot[]): number[][] {
  let rows = grid.map((row) => [...row]),
    best = rows,
    fewest = crossings(rows, slots);
  for (let sweep = 0; sweep < 16 && fewest > 0; sweep++) {
    const isDown = sweep % 2 === 0,
      next = rows.map((row) => [...row]);
    for (let step = 1; step < next.length; step++) {
      const i = isDown ? step : next.length - 1 - step,
        place = new Map(next[isDown ? i - 1 : i + 1]!.map((slot, at) => [slot, at]));
      const centre = new Map(
        next[i]!.map((slot, at) => {
          const near = slots[slot]![isDown ? "up" : "down"].flatMap((each) => place.get(each) ?? []);
          return [slot, near.length > 0 ? near.reduce((sum, each) => sum + each, 0) / near.length : at];
        }),
      );
      next[i]!.sort((a, b) => centre.get(a)! - centre.get(b)!);
    }
    rows = next;
    const count = crossings(rows, slots);
    if (count < fewest) {
      fewest = count;
      best = rows;
    }
  }
  return best;
}

function crossings(rows: readonly (readonly number[])[], slots: readonly Slot[]): number {
  let count = 0;
  for (let i = 1; i < rows.length; i++) {
    const place = new Map(rows[i]!.map((slot, at) => [slot, at]));
    const ends = rows[i - 1]!.flatMap((slot, at) =>
      slots[slot]!.down.flatMap((to) => (place.has(to) ? [[at, place.get(to)!] as const] : [])),
    );
    for (let a = 0; a < ends.length; a++)
      for (let b = a + 1; b < ends.length; b++)
        if ((ends[a]![0] - ends[b]![0]) * (ends[a]![1] - ends[b]![1]) < 0) count++;
  }
  return count;
}

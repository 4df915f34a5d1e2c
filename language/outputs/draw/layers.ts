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
    rowOf = new Int32Array(boxes.length),
    heights: number[] = [],
    widths: number[] = [];
  rows.forEach((row, i) => {
    let height = 0,
      width = -options.gap;
    for (const box of row) {
      rowOf[box] = i;
      height = Math.max(height, boxes[box]!.height);
      width += boxes[box]!.width + options.gap;
    }
    heights.push(height);
    widths.push(width);
  });
  for (const [from, to] of links)
    for (let row = rowOf[from]! + 1; row < rowOf[to]!; row++) widths[row]! += passing + options.gap;
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
  rowOf: Int32Array,
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
    for (let row = rowOf[from]! + 1; row < rowOf[to]!; row++) {
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
    const row = rowOf[box]!;
    return tops[row]! + (heights[row]! - boxes[box]!.height) / 2;
  };
  return {
    width: boxes.length === 0 ? 0 : right - left,
    height: Math.max(0, y - options.rowGap),
    boxes: boxes.map((_, box) => ({ x: at(box), y: topOf(box) })),
    routes: links.map(([from, to], i) => {
      const chain = chains[i]!,
        row = rowOf[from]!;
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
function ranks(count: number, links: readonly Link[]): Int32Array {
  // The links of a box hang on each other by their numbers: no list for each of them.
  const last = new Int32Array(count).fill(none),
    before = new Int32Array(links.length),
    open = new Int32Array(count),
    rank = new Int32Array(count),
    line: number[] = [];
  links.forEach(([from, to], link) => {
    before[link] = last[from]!;
    last[from] = link;
    open[to]!++;
  });
  for (let box = 0; box < count; box++) if (open[box] === 0) line.push(box);
  for (let i = 0; i < line.length; i++) {
    const box = line[i]!;
    for (let link = last[box]!; link !== none; link = before[link]!) {
      const next = links[link]![1];
      rank[next] = Math.max(rank[next]!, rank[box]! + 1);
      if (--open[next]! === 0) line.push(next);
    }
  }
  if (line.length < count) throw new Error("the links of a drawing make a ring");
  for (let i = line.length - 1; i >= 0; i--) {
    const box = line[i]!;
    if (last[box] === none) continue;
    let least = count;
    for (let link = last[box]!; link !== none; link = before[link]!) least = Math.min(least, rank[links[link]![1]]!);
    rank[box] = least - 1;
  }
  return rank;
}

const none = -1;

/** Rows of boxes, none wider than asked where it has more than one box. Those that lead to the same box stay side by side. */
function brokenRows(
  rank: Int32Array,
  boxes: readonly Box[],
  links: readonly Link[],
  { rowWidth, gap }: LayoutOptions,
): number[][] {
  const first = boxes.map(() => boxes.length);
  for (const [from, to] of links) first[from] = Math.min(first[from]!, to);
  const levels: number[][] = [],
    rows: number[][] = [];
  rank.forEach((level, box) => (levels[level] ??= []).push(box));
  for (const level of levels) {
    // No box may be left on a level.
    if (!level) continue;
    let width = Number.POSITIVE_INFINITY;
    if (level.length > 1) level.sort((a, b) => first[a]! - first[b]! || a - b);
    for (const box of level) {
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
  const place = new Int32Array(slots.length),
    centre = new Float64Array(slots.length);
  let rows = grid.map((row) => [...row]),
    best = rows,
    fewest = crossings(rows, slots);
  for (let sweep = 0; sweep < 16 && fewest > 0; sweep++) {
    const isDown = sweep % 2 === 0,
      next = rows.map((row) => [...row]);
    for (let step = 1; step < next.length; step++) {
      const i = isDown ? step : next.length - 1 - step;
      next[isDown ? i - 1 : i + 1]!.forEach((slot, at) => (place[slot] = at));
      // A slot is linked with the rows beside it alone.
      next[i]!.forEach((slot, at) => {
        const near = slots[slot]![isDown ? "up" : "down"];
        let sum = 0;
        for (const each of near) sum += place[each]!;
        centre[slot] = near.length > 0 ? sum / near.length : at;
      });
      next[i]!.sort((a, b) => centre[a]! - centre[b]!);
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

// How far to the right each slot of a row stands: as near to its neighbours above and below as the order and the gaps allow.

export interface Slot {
  readonly width: number;
  /** Slots of the row above and of the row below that it is linked with. */
  readonly up: number[];
  readonly down: number[];
}

/** Middle of each slot, by number. Rows keep their order; no two slots of a row come nearer than `gap`. */
export function columns(rows: readonly (readonly number[])[], slots: readonly Slot[], gap: number): readonly number[] {
  const xs = new Array<number>(slots.length).fill(0);
  for (const row of rows) {
    let x = 0;
    for (const slot of row) {
      xs[slot] = x + slots[slot]!.width / 2;
      x += slots[slot]!.width + gap;
    }
    for (const slot of row) xs[slot] = xs[slot]! - (x - gap) / 2;
  }
  const runs = rows.map((row): Run => {
    let offset = 0;
    return row.map((slot, i) => {
      if (i > 0) offset = offset + (slots[row[i - 1]!]!.width + slots[slot]!.width) / 2 + gap;
      const { up, down } = slots[slot]!;
      return { slot, offset, up, down, both: [...up, ...down] };
    });
  });
  const upwards = runs.toReversed(),
    longest = Math.max(0, ...rows.map((row) => row.length)),
    pools: Pools = { sums: new Float64Array(longest), counts: new Int32Array(longest) };
  /** Down through the rows and up again. */
  const sweep = (down: Near, up: Near): void => {
    for (const run of runs) place(run, down, xs, pools);
    for (const run of upwards) place(run, up, xs, pools);
  };
  sweep("up", "down");
  sweep("up", "down");
  // Each sweep moves what is left to move by a fraction of what the last one moved: below what is drawn none changes anything.
  for (let more = 38, was: readonly number[]; more > 0; more--) {
    was = xs.slice();
    sweep("both", "both");
    if (xs.every((x, slot) => Math.abs(x - was[slot]!) < atRest)) break;
  }
  return xs;
}

/** Far below the hundredths in which a drawing is written. */
const atRest = 1e-6;

type Near = "up" | "down" | "both";

/** A row from left to right; `offset` is how far a slot stands from the first where all are as near as they may. */
type Run = readonly {
  readonly slot: number;
  readonly offset: number;
  readonly up: readonly number[];
  readonly down: readonly number[];
  readonly both: readonly number[];
}[];

/** Room for the pools of a row, taken once for all of them. */
interface Pools {
  readonly sums: Float64Array;
  readonly counts: Int32Array;
}

/** Least squares under the gaps: what would overlap stands together at its common mean (pool adjacent violators). */
function place(run: Run, by: Near, xs: number[], { sums, counts }: Pools): void {
  let pools = 0;
  for (const { slot, offset, [by]: near } of run) {
    let sum = 0;
    for (const each of near) sum += xs[each]!;
    sum = (near.length > 0 ? sum / near.length : xs[slot]!) - offset;
    let count = 1;
    while (pools > 0 && sums[pools - 1]! / counts[pools - 1]! > sum / count) {
      pools--;
      sum += sums[pools]!;
      count += counts[pools]!;
    }
    sums[pools] = sum;
    counts[pools++] = count;
  }
  let at = 0;
  for (let pool = 0; pool < pools; pool++) {
    const mean = sums[pool]! / counts[pool]!;
    for (const end = at + counts[pool]!; at < end; at++) xs[run[at]!.slot] = mean + run[at]!.offset;
  }
}

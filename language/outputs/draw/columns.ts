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
  for (let sweep = 0; sweep < 80; sweep++) {
    for (const row of sweep % 2 === 0 ? rows : rows.toReversed()) {
      const wanted = row.map((slot) => {
        const { up, down } = slots[slot]!,
          near = sweep < 4 ? (sweep % 2 === 0 ? up : down) : [...up, ...down];
        return near.length > 0 ? near.reduce((sum, each) => sum + xs[each]!, 0) / near.length : xs[slot]!;
      });
      placed(row, wanted, slots, gap).forEach((x, i) => {
        xs[row[i]!] = x;
      });
    }
  }
  return xs;
}

/** Least squares under the gaps: what would overlap stands together at its common mean (pool adjacent violators). */
function placed(row: readonly number[], wanted: readonly number[], slots: readonly Slot[], gap: number): number[] {
  const offsets: number[] = [];
  row.forEach((slot, i) => {
    offsets.push(i === 0 ? 0 : offsets[i - 1]! + (slots[row[i - 1]!]!.width + slots[slot]!.width) / 2 + gap);
  });
  const pools: { sum: number; count: number }[] = [];
  wanted.forEach((x, i) => {
    let pool = { sum: x - offsets[i]!, count: 1 };
    for (let last = pools.at(-1); last && last.sum / last.count > pool.sum / pool.count; last = pools.at(-1)) {
      pool = { sum: pool.sum + last.sum, count: pool.count + last.count };
      pools.pop();
    }
    pools.push(pool);
  });
  return pools
    .flatMap(({ sum, count }) => new Array<number>(count).fill(sum / count))
    .map((mean, i) => mean + offsets[i]!);
}

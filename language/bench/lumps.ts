// The sub-assemblies that partings made, by number: a table that is never changed in place and cheap to add to.

import type { ThingIndex } from "../model/model.ts";

export interface Lump {
  /** The part that plays the base on the bench: what it was removed by. */
  readonly carrier: ThingIndex;
  /** The sub-assembly that it left. */
  readonly from: number;
  /** The one that it was joined to since. */
  readonly joined?: number;
}

const ROW = 5,
  SIZE = 1 << ROW,
  MASK = SIZE - 1;

export interface Lumps {
  /** Undefined for the unit on its base, and for numbers that no parting made. */
  get(lump: number): Lump | undefined;
  with(lump: number, is: Lump): Lumps;
  /** All of them, by ascending number. */
  entries(): Iterable<readonly [number, Lump]>;
}

/** `before`: those of earlier procedures, by negative numbers. */
export function lumps(before: ReadonlyMap<number, Lump> = new Map()): Lumps {
  return new Table([], before);
}

/** A class, since each parting and each meeting makes one: an object with functions of its own would make those anew each time. */
class Table implements Lumps {
  readonly #rows: readonly (readonly (Lump | undefined)[])[];
  readonly #before: ReadonlyMap<number, Lump>;

  constructor(rows: readonly (readonly (Lump | undefined)[])[], before: ReadonlyMap<number, Lump>) {
    this.#rows = rows;
    this.#before = before;
  }

  get(lump: number): Lump | undefined {
    return lump < 0 ? this.#before.get(lump) : this.#rows[lump >> ROW]?.[lump & MASK];
  }

  with(lump: number, is: Lump): Lumps {
    if (lump < 0) return new Table(this.#rows, new Map(this.#before).set(lump, is));
    const next = this.#rows.slice();
    while (next.length <= lump >> ROW) next.push([]);
    const row = next[lump >> ROW]!.slice();
    row[lump & MASK] = is;
    next[lump >> ROW] = row;
    return new Table(next, this.#before);
  }

  *entries(): Generator<readonly [number, Lump]> {
    for (const [lump, is] of [...this.#before].sort((a, b) => a[0] - b[0])) yield [lump, is] as const;
    for (const [i, row] of this.#rows.entries())
      for (const [k, is] of row.entries()) if (is) yield [i * SIZE + k, is] as const;
  }
}

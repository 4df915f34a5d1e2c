// A vector that is never changed in place: setting one place copies one short row and shares the rest, so that every state of
// the bench can be kept at no great cost.

const ROW = 4,
  SIZE = 1 << ROW,
  MASK = SIZE - 1;

export type Vector = readonly (readonly number[])[];

/** A vector of `length` places, all `value`. Its rows are one shared row until they are set. */
export function vector(length: number, value: number): Vector {
  const row = new Array<number>(SIZE).fill(value);
  return new Array<readonly number[]>((length + MASK) >> ROW).fill(row);
}

export function at(v: Vector, index: number): number {
  return v[index >> ROW]![index & MASK]!;
}

/** The same vector where nothing changes. */
export function set(v: Vector, index: number, value: number): Vector {
  const row = v[index >> ROW]!;
  if (row[index & MASK] === value) return v;
  const newRow = row.slice();
  newRow[index & MASK] = value;
  const next = v.slice();
  next[index >> ROW] = newRow;
  return next;
}

export function setAll(v: Vector, indexes: Iterable<number>, value: number): Vector {
  const next = v.slice();
  for (const index of indexes) {
    const r = index >> ROW;
    if (next[r]![index & MASK] === value) continue;
    if (next[r] === v[r]) next[r] = next[r]!.slice();
    (next[r] as number[])[index & MASK] = value;
  }
  return next;
}

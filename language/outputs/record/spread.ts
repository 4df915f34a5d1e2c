// How the figures of one reading lie over many units. Plain statistics: it judges nothing.

export interface Spread {
  readonly count: number;
  readonly lowest: number;
  readonly highest: number;
  readonly median: number;
  readonly mean: number;
  /** Of the sample, with n - 1; undefined for one figure. */
  readonly deviation: number | undefined;
}

/** Five figures are more than any gauge of a workshop reads. */
export const figureOf = (value: number | undefined): string =>
  value === undefined ? "" : String(Number(value.toPrecision(5)));

/** Undefined without figures. The deviation is taken about the mean in a second pass, so that large figures close together lose nothing. */
export function spreadOf(values: readonly number[]): Spread | undefined {
  const sorted = [...values].sort((a, b) => a - b),
    count = sorted.length;
  if (count === 0) return undefined;
  const middle = (sorted[Math.floor((count - 1) / 2)]! + sorted[Math.floor(count / 2)]!) / 2,
    rough = sorted.reduce((sum, each) => sum + each, 0) / count;
  const mean = rough + sorted.reduce((sum, each) => sum + (each - rough), 0) / count;
  const squares = sorted.reduce((sum, each) => sum + (each - mean) ** 2, 0),
    rest = sorted.reduce((sum, each) => sum + (each - mean), 0);
  return {
    count,
    lowest: sorted[0]!,
    highest: sorted[count - 1]!,
    median: middle,
    mean,
    deviation: count > 1 ? Math.sqrt(Math.max(0, squares - (rest * rest) / count) / (count - 1)) : undefined,
  };
}

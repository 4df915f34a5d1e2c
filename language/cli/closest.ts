// The nearest of some names to one that was mistyped.

/** At most three, nearest first; none where nothing is near. */
export function closest(name: string, names: readonly string[]): string[] {
  const scored = names.map((one) => ({ one, distance: distance(name, one) })).filter(({ one, distance: d }) => d <= Math.max(2, Math.floor(one.length / 3)));
  return scored.sort((a, b) => a.distance - b.distance || (a.one < b.one ? -1 : 1)).slice(0, 3).map(({ one }) => one);
}

/** Edits between two names: insert, delete, replace, swap of neighbours. */
function distance(a: string, b: string): number {
  let before: number[] = [], previous = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      const same = a[i - 1] === b[j - 1] ? 0 : 1;
      row[j] = Math.min(previous[j]! + 1, row[j - 1]! + 1, previous[j - 1]! + same);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) row[j] = Math.min(row[j]!, before[j - 2]! + 1);
    }
    before = previous;
    previous = row;
  }
  return previous[b.length]!;
}

// Names that a misspelt one may have meant, ranked. Knows nothing of what the names stand for.

/**
 * Letters changed, added, left out, or swapped with a neighbour between two words: the restricted edit distance of Damerau and
 * Levenshtein. Stops early and returns `limit + 1` once it must exceed `limit`.
 */
export function editDistance(a: string, b: string, limit = Infinity): number {
  if (Math.abs(a.length - b.length) > limit) return limit + 1;
  let before: number[] = [],
    above = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    let least = i;
    for (let j = 1; j <= b.length; j++) {
      const same = a.charCodeAt(i - 1) === b.charCodeAt(j - 1);
      let best = Math.min(above[j]! + 1, row[j - 1]! + 1, above[j - 1]! + (same ? 0 : 1));
      if (i > 1 && j > 1 && a.charCodeAt(i - 1) === b.charCodeAt(j - 2) && a.charCodeAt(i - 2) === b.charCodeAt(j - 1))
        best = Math.min(best, before[j - 2]! + 1);
      row.push(best);
      least = Math.min(least, best);
    }
    if (least > limit && Math.min(...above) > limit) return limit + 1; // a swap reaches back two rows
    before = above;
    above = row;
  }
  return Math.min(above[b.length]!, limit + 1);
}

/** How many slips a word of this length may hold and still be recognised: one for each three letters, at most three. */
export const slipsAllowed = (length: number): number => Math.min(3, Math.floor(length / 3));

/**
 * The names nearest to a written one, best first, at most `most`. Capitals and hyphens count less than letters: `Oring` is
 * nearer to `o-ring` than any other word. Equally near names keep the order in which they are given.
 */
export function nearNames(written: string, names: Iterable<string>, most = 3): string[] {
  const wanted = folded(written),
    allowed = slipsAllowed(wanted.length),
    scored: { name: string; score: number }[] = [];
  for (const name of names) {
    if (name === written) continue;
    const score = editDistance(wanted, folded(name), allowed);
    if (score <= allowed) scored.push({ name, score });
  }
  return scored
    .sort((a, b) => a.score - b.score)
    .slice(0, most)
    .map((one) => one.name);
}

const folded = (name: string): string => name.normalize("NFC").toLowerCase().replaceAll(/[-_]/g, "");

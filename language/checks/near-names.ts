// The names that a misspelt one may have meant. A proposal for a fix, never a decision.

/** At most so many slips of the hand, by the length of the word. */
const allowed = (length: number): number => (length <= 2 ? 0 : length <= 5 ? 1 : length <= 9 ? 2 : 3);

/** The nearest of these names, undefined where none is near enough. Equal ones: the first in alphabetical order. */
export function nearestName(wanted: string, candidates: Iterable<string>): string | undefined {
  let best: string | undefined,
    fewest = allowed(wanted.length) + 1;
  const low = wanted.toLowerCase();
  for (const candidate of candidates) {
    if (candidate === wanted || Math.abs(candidate.length - wanted.length) >= fewest + 1) continue;
    const count = slips(low, candidate.toLowerCase(), fewest);
    if (count < fewest || (count === fewest && best !== undefined && candidate < best)) {
      fewest = count;
      best = candidate;
    }
  }
  return best;
}

/** Letters changed, added, left out or swapped between two words; any number over the limit once that is passed. */
function slips(a: string, b: string, limit: number): number {
  let before: number[] = [],
    last = Array.from({ length: b.length + 1 }, (_, j) => j);
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    let least = i;
    for (let j = 1; j <= b.length; j++) {
      const cost = a[i - 1] === b[j - 1] ? 0 : 1;
      let best = Math.min(last[j]! + 1, row[j - 1]! + 1, last[j - 1]! + cost);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) best = Math.min(best, before[j - 2]! + 1);
      row.push(best);
      least = Math.min(least, best);
    }
    if (least > limit) return limit + 1;
    before = last;
    last = row;
  }
  return last[b.length]!;
}

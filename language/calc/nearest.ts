// Words that a mistyped one may have meant. It only ranks; what is done with them the caller says.

/**
 * The words nearest to a wrong one, nearest first, at most three: those that begin or are begun by it, then those within a third of its letters of it.
 * Ties stand in the order given, so that the answer never depends on anything else.
 */
export function nearestWords(wrong: string, words: readonly string[]): readonly string[] {
  const wanted = wrong.toLowerCase();
  const scored = words.map((word, at) => {
    const plain = word.toLowerCase();
    const begins =
      wanted.length >= 2 && (plain.startsWith(wanted) || wanted.startsWith(plain) || plain.split("-").includes(wanted));
    return { word, at, score: begins ? 0.5 : edits(wanted, plain) };
  });
  const limit = Math.max(1, Math.floor(wrong.length / 3));
  return scored
    .filter((one) => one.score <= limit)
    .sort((a, b) => a.score - b.score || a.at - b.at)
    .slice(0, 3)
    .map((one) => one.word);
}

/** Letters changed, added or left out between two words, neighbours swapped counting once. */
function edits(a: string, b: string): number {
  let [older, old]: number[][] = [[], Array.from({ length: b.length + 1 }, (_, j) => j)];
  for (let i = 1; i <= a.length; i++) {
    const row = [i];
    for (let j = 1; j <= b.length; j++) {
      let best = Math.min(old![j]! + 1, row[j - 1]! + 1, old![j - 1]! + (a[i - 1] === b[j - 1] ? 0 : 1));
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1]) best = Math.min(best, older![j - 2]! + 1);
      row.push(best);
    }
    [older, old] = [old!, row];
  }
  return old![b.length]!;
}

// Proves of a vocabulary that the next token alone decides: whether an item goes on or another begins, and which way it goes on.

import { unitSets, startOf, type Leaf } from "../../language/syntax/shapes.ts";
import { scan } from "../../language/syntax/scanner.ts";
import { SizeWord, Word } from "../../language/syntax/tokens.ts";
import { kinds, type Entry, type KindList } from "../../language/vocabulary/index.ts";

export type Conflict = {
  kind: "goes-on-or-begins" | "two-ways" | "not-one-token" | "starts-with-a-name";
  place: string;
  word: string;
  after: string;
  next: string;
};
export type Remark = { kind: "hides-a-name" | "cannot-open-a-line" | "near-words"; words: string; where: string };

/** What the check reads of an entry. */
export type Checked = Pick<Entry, "word" | "place" | "shape" | "block" | "blockNeeded">;

/** Every clash of the vocabulary, remarks that are no clash, and how many states were looked at. */
export function checkVocabulary(entries: readonly Checked[]): {
  conflicts: Conflict[];
  remarks: Remark[];
  states: number;
} {
  const conflicts: Conflict[] = [],
    remarks: Remark[] = [];
  const starters = new Map<string, Set<string>>(),
    outer = new Map<string, Set<string>>();
  let states = 0;
  for (const { place, word, block } of entries) {
    starters.set(place, (starters.get(place) ?? new Set()).add(word));
    if (block && block !== place) outer.set(block, (outer.get(block) ?? new Set()).add(place));
  }
  for (const entry of entries) {
    const { place, word } = entry,
      here = starters.get(place)!;
    if (word === "<name>")
      conflicts.push({ kind: "starts-with-a-name", place, word, after: word, next: "every misspelt word" });
    else if (!isOneWord(word)) conflicts.push({ kind: "not-one-token", place, word, after: "", next: "" });
    walk(startOf(entry.shape), (state, path) => {
      states++;
      const after = [word, ...path].join(" ");
      for (const [i, leaf] of state.follow.entries()) {
        if (state.ends && !entry.blockNeeded) {
          // else only { can end the head
          const both =
            here.has("<name>") && wordLike(leaf)
              ? ["any name"]
              : [...here].filter((starter) => accepts(leaf, starter, true));
          if (both.length > 0)
            conflicts.push({
              kind: "goes-on-or-begins",
              place,
              word,
              after,
              next: both.length > 3 ? "any word of the block" : both.join(", "),
            });
        }
        if (leaf.is === "word" && enclosing(place).some((outerPlace) => starters.get(outerPlace)!.has(leaf.text))) {
          remarks.push({ kind: "cannot-open-a-line", words: leaf.text, where: `${after} | in ${place}` });
        }
        for (const other of state.follow.slice(i + 1)) {
          const hides = (leaf.is === "word" && namesThing(other)) || (other.is === "word" && namesThing(leaf));
          if (hides)
            remarks.push({
              kind: "hides-a-name",
              words: leaf.is === "word" ? leaf.text : other.text,
              where: `${after} | in ${place}`,
            });
          else if (overlap(leaf, other))
            conflicts.push({ kind: "two-ways", place, word, after, next: `${show(leaf)} / ${show(other)}` });
        }
      }
    });
  }
  for (const [place, words] of starters) {
    const sorted = [...words].sort();
    sorted.forEach((a, i) =>
      sorted.slice(i + 1).forEach((b) => {
        if (oneLetterOff(a, b)) remarks.push({ kind: "near-words", words: `${a}, ${b}`, where: place });
      }),
    );
  }
  return { conflicts, remarks, states };

  function enclosing(place: string, seen = new Set<string>()): string[] {
    if (seen.has(place)) return [];
    seen.add(place);
    for (const around of outer.get(place) ?? []) enclosing(around, seen);
    return [...seen];
  }
}

function walk(start: Leaf, visit: (state: Leaf, path: string[]) => void): void {
  const seen = new Set<Leaf>([start]);
  const queue: [Leaf, string[]][] = [[start, []]];
  for (const [state, path] of queue) {
    visit(state, path);
    for (const next of state.follow) {
      if (seen.has(next)) continue;
      seen.add(next);
      queue.push([next, [...path, show(next)]]);
    }
  }
}

const show = (leaf: Leaf): string =>
  leaf.is === "word" || leaf.is === "sign"
    ? leaf.text
    : leaf.is === "unit"
      ? `UNIT(${leaf.text})`
      : leaf.is === "kind"
        ? `KIND(${leaf.text})`
        : leaf.is.toUpperCase();
const wordLike = (leaf: Leaf): boolean => ["word", "name", "item", "label", "kind", "unit", "thread"].includes(leaf.is);
const namesThing = (leaf: Leaf): boolean => ["name", "item", "label"].includes(leaf.is);
const setOf = (leaf: Leaf): ReadonlySet<string> | undefined =>
  leaf.is === "unit" ? unitSets.any : leaf.is === "kind" ? kinds[leaf.text as KindList] : undefined;

/** Could this word of the language be read as this place of a shape? */
function accepts(leaf: Leaf, word: string, mayEnd = false): boolean {
  return leaf.is === "word" ? leaf.text === word : ((mayEnd ? leaf.set : setOf(leaf))?.has(word) ?? namesThing(leaf));
}
function overlap(a: Leaf, b: Leaf): boolean {
  if (a.is === "sign" || b.is === "sign") return a.is === b.is && a.text === b.text;
  if (wordLike(a) && wordLike(b)) {
    if (a.is === "word") return accepts(b, a.text);
    if (b.is === "word") return accepts(a, b.text);
    const one = setOf(a),
      two = setOf(b);
    return one && two ? [...one].some((word) => two.has(word)) : true;
  }
  return a.is === b.is || (a.is === "label" && b.is === "number") || (a.is === "number" && b.is === "label");
}
function isOneWord(word: string): boolean {
  const { tokens } = scan(word);
  return tokens.length === 1 && (tokens[0]!.tokenType === Word || tokens[0]!.tokenType === SizeWord);
}
function oneLetterOff(one: string, other: string): boolean {
  const [a, b] = one.length > other.length ? [other, one] : [one, other];
  if (b.length - a.length > 1) return false;
  let i = 0;
  while (i < a.length && a[i] === b[i]) i++;
  return a.length === b.length ? a.slice(i + 1) === b.slice(i + 1) : a.slice(i) === b.slice(i + 1);
}

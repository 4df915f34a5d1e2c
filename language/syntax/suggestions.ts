// What an unknown word may have meant: the trade's other word for ours, or a slip of the hand. Only proposes; asked on errors only.

import { phrases, wordsFromElsewhere, type Elsewhere } from "../tables/speech.ts";
import { synonyms, type SynonymOf } from "../tables/synonyms.ts";
import { kinds, type KindList } from "../vocabulary/kinds.ts";
import { editDistance, nearNames } from "./near-names.ts";

export type Suggestion = {
  readonly word: string;
  /** Why this word, where the trade's word could mean two things. */
  readonly why: string | undefined;
  /** What goes into its place. */
  readonly write: string;
  /** Nothing else is as near, so that the text may be read as if it stood there. */
  readonly sure: boolean;
};

/** The word of the language that may be meant here: a synonym first, then a near name among `words`. */
export function suggestWord(
  written: string,
  words: ReadonlySet<string> | ReadonlyMap<string, unknown>,
): Suggestion | undefined {
  return bySynonym(written, "word", (word) => words.has(word)) ?? bySlip(written, words.keys());
}

/** The word of the language that the trade's other word stands for in one of these places, or none. */
export const synonymAmong = (
  written: string,
  words: ReadonlySet<string> | ReadonlyMap<string, unknown>,
): Suggestion | undefined => bySynonym(written, "word", (word) => words.has(word));

/** The kind of this list that may be meant. */
export function suggestKind(written: string, list: KindList): Suggestion | undefined {
  return bySynonym(written, list, () => true) ?? bySlip(written, kinds[list]);
}

/** Is it the trade's other word for one of this place, or surely a slip of the hand for one? A short one may be anything. */
export const isMeantAmong = (written: string, words: ReadonlyMap<string, unknown>): boolean =>
  bySynonym(written, "word", (word) => words.has(word)) !== undefined ||
  (written.length > 3 && bySlip(written, words.keys())?.sure === true);

/** What a word that belongs elsewhere is meant for in this place: `torque` among actions. */
export const wordMeantHere = (written: string, words: ReadonlyMap<string, unknown>): Elsewhere | undefined =>
  wordsFromElsewhere.find(({ says, is }) => says === written && words.has(is));

const declaredBy: readonly KindList[] = ["fastener", "part", "joint", "fluid"];

/** A kind that stands as a word of its own, `nut castle-nut "…"`, and the word that declares things of it. */
export function suggestDeclaration(
  written: string,
  words: ReadonlyMap<string, unknown>,
): { readonly word: string; readonly kind: string } | undefined {
  const lower = written.toLowerCase();
  for (const one of [lower, lower.replace(/s$/, "")])
    for (const word of declaredBy) {
      if (!words.has(word)) continue;
      const kind = kinds[word].has(one) ? one : bySynonym(one, word, () => true)?.word;
      if (kind !== undefined) return { word, kind };
    }
  return undefined;
}

const phraseStarts: ReadonlySet<string> = new Set(Object.keys(phrases).map((phrase) => phrase.split(" ")[0]!));

/** The word of this place that two words of speech stand for: `take off`. Asked of every line: most words begin no phrase. */
export const phraseAmong = (first: string, second: string, words: ReadonlyMap<string, unknown>): string | undefined => {
  const begins = first.toLowerCase();
  if (!phraseStarts.has(begins)) return undefined;
  const meant = phrases[`${begins} ${second.toLowerCase()}`];
  return meant !== undefined && words.has(meant) ? meant : undefined;
};

function bySynonym(written: string, of: SynonymOf, isHere: (word: string) => boolean): Suggestion | undefined {
  const wanted = written.toLowerCase();
  const found = synonyms.find((one) => one.of === of && one.says === wanted && isHere(one.is));
  return found && { word: found.is, why: found.why, write: found.write ?? found.is, sure: true };
}

function bySlip(written: string, words: Iterable<string>): Suggestion | undefined {
  const near = nearNames(written, words),
    [best, second] = near;
  if (best === undefined) return undefined;
  return {
    word: best,
    why: undefined,
    write: best,
    sure: second === undefined || editDistance(written, best) < editDistance(written, second),
  };
}

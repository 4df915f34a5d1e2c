// A word that opens a line where it cannot stand: what is said of it, and the word that it is read as.

import type { Elsewhere } from "../tables/speech.ts";
import { kinds, type KindList } from "../vocabulary/kinds.ts";
import { placeNames, placesOf, type Entry } from "../vocabulary/index.ts";
import { startOf, step } from "./shapes.ts";
import { suggestDeclaration, suggestWord, synonymAmong, wordMeantHere, type Suggestion } from "./suggestions.ts";
import { SizeWord, Word } from "./tokens.ts";
import type { SyntaxFix, Token } from "./tree.ts";
import { beginsWith, replaced } from "./word-errors.ts";
import { oneOf, shown } from "./wording.ts";

/** The block that the word stands in, and those around it. */
export type Around = {
  readonly place: string;
  readonly words: ReadonlyMap<string, Entry>;
  readonly outer: Around | undefined;
};
/** What is told of it, and what it is read as, if that is plain, so that what it declares is not lost. */
export type Told = {
  readonly entry: Entry | undefined;
  readonly code: string;
  readonly says: string;
  readonly fix?: SyntaxFix | undefined;
};

/** Does this word take what follows it? */
export const takes = (entry: Entry | undefined, next: Token): boolean =>
  entry !== undefined && step(startOf(entry.shape), next) !== undefined;

/** Is it a kind of what this block declares? */
export const isKindOf = (place: string, word: string): boolean =>
  Object.hasOwn(kinds, place) && kinds[place as KindList].has(word);

/** `next` is the token behind the word. */
export function wordElsewhere(word: Token, next: Token, around: Around): Told {
  const { place, words } = around,
    where = placeNames[place] ?? "here",
    meantHere = wordMeantHere(word.text, words);
  if (meantHere) return meantInstead(word, words.get(meantHere.is)!, meantHere, where);
  if (placesOf(word.text).length > 0) return misplaced(word, next, around, where);
  const declares = suggestDeclaration(word.text, words);
  if (declares) return kindAsWord(word, next, words.get(declares.word)!, declares);
  if (isKindOf(place, word.text))
    return {
      entry: undefined,
      code: "syntax/word-unknown",
      says: `${word.text} is a kind of ${place}: it stands behind the name, ${place} NAME ${word.text}`,
    };
  const further = suggestWord(word.text, words) ?? meantAround(word, next, around.outer);
  if (!further) {
    const why =
      word.tokenType === SizeWord
        ? "a thread stands behind its word, as in size M8x35"
        : `every line begins with a word of the language${beginsWith(place)}`;
    return { entry: undefined, code: "syntax/word-unknown", says: `Unknown word ${shown(word)}: ${why}` };
  }
  return {
    entry: words.get(further.word) ?? placesOf(further.word)[0],
    code: "syntax/word-unknown",
    says: `Unknown word ${shown(word)}: here it is called ${further.word}${further.why ? ` (${further.why})` : ""}`,
    fix: replaced(word, further.write),
  };
}

/** A word of the language that stands in other blocks only. */
function misplaced(word: Token, next: Token, { words, outer }: Around, where: string): Told {
  const code = "syntax/word-misplaced",
    all = placesOf(word.text);
  if (words.has("precaution") && kinds.precaution.has(word.text))
    return {
      entry: all[0],
      code,
      says: `${word.text} cannot stand ${where}: what is done against it is written precaution ${word.text} "…"`,
      fix: {
        title: `Write precaution ${word.text}`,
        edits: [{ start: word.startOffset, end: word.startOffset, text: "precaution " }],
        certain: false,
      },
    };
  // Where what follows it fits: `torque 9 N·m` belongs to a fastener, though a unit has a word torque too.
  const fitting = all.filter((entry) => next.opensLine || takes(entry, next));
  for (let frame = outer; frame; frame = frame.outer) {
    const entry = frame.words.get(word.text);
    if (entry && (fitting.length === 0 || next.opensLine || takes(entry, next)))
      return {
        entry,
        code,
        says: `${word.text} cannot stand ${where}: it stands ${placeNames[frame.place] ?? "around it"}`,
      };
  }
  const likely = fitting.length > 0 ? fitting : all,
    places = [...new Set(likely.map((entry) => placeNames[entry.place] ?? entry.place))];
  return {
    entry: likely[0],
    code,
    says: `${word.text} cannot stand ${where}: it stands ${oneOf(places.slice(0, 3))}`,
  };
}

/** A word of the language that here stands for another one. */
function meantInstead(word: Token, entry: Entry, { is, why, write }: Elsewhere, where: string): Told {
  return {
    entry,
    code: "syntax/word-misplaced",
    says: `${word.text} cannot stand ${where}: ${write === undefined ? why : `here it is called ${is} (${why})`}`,
    fix: write === undefined ? undefined : replaced(word, write),
  };
}

/** `nut castle-nut "Castle nut"`: read as what it declares. */
function kindAsWord(
  word: Token,
  name: Token,
  entry: Entry,
  { word: declares, kind }: { readonly word: string; readonly kind: string },
): Told {
  const named = name.tokenType === Word && !name.opensLine,
    right = `${declares} ${named ? name.text : "NAME"} ${kind}`;
  return {
    entry,
    code: "syntax/word-unknown",
    says: `Unknown word ${shown(word)}: it is a kind, and stands behind the name: ${right}`,
    fix: named
      ? {
          title: `Write ${right}`,
          edits: [{ start: word.startOffset, end: name.endOffset! + 1, text: right }],
          certain: false,
        }
      : undefined,
  };
}

/** A word of a block around it. A slip for one has to be a long word, and what follows has to fit: `roll drum` is no `role`. */
function meantAround(word: Token, next: Token, outer: Around | undefined): Suggestion | undefined {
  for (let frame = outer; frame; frame = frame.outer) {
    const meant = synonymAmong(word.text, frame.words);
    if (meant) return meant;
    const slip = word.text.length > 4 ? suggestWord(word.text, frame.words) : undefined;
    if (slip && (next.opensLine || takes(frame.words.get(slip.word), next))) return slip;
  }
  return undefined;
}

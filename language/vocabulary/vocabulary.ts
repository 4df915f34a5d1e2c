// THE table of words: one entry per word and place, the one source of parser, messages, completion, hover, highlighting, formatter
// and reference page. Adding a word is adding one row to the file of its place, and using it in tests/syntax/every-word.strip.

import type { Entry } from "./entry.ts";
import { wordsAction } from "./words-action.ts";
import { wordsEverywhere } from "./words-everywhere.ts";
import { wordsFile } from "./words-file.ts";
import { wordsHazard } from "./words-hazard.ts";
import { wordsJoining } from "./words-joining.ts";
import { wordsProcedure } from "./words-procedure.ts";
import { wordsUnit } from "./words-unit.ts";

/** Every word in every place. */
export const vocabulary: readonly Entry[] = [
  ...wordsFile,
  ...wordsEverywhere,
  ...wordsUnit,
  ...wordsJoining,
  ...wordsHazard,
  ...wordsProcedure,
  ...wordsAction,
];

const byPlace = new Map<string, Map<string, Entry>>();
const byWord = new Map<string, Entry[]>();
for (const entry of vocabulary) {
  const place = byPlace.get(entry.place) ?? new Map<string, Entry>();
  byPlace.set(entry.place, place.set(entry.word, entry));
  byWord.set(entry.word, [...(byWord.get(entry.word) ?? []), entry]);
}

/** The words that may stand in this kind of block; none for a kind that does not exist. */
export function wordsIn(place: string): ReadonlyMap<string, Entry> {
  return byPlace.get(place) ?? nothing;
}
const nothing: ReadonlyMap<string, Entry> = new Map();

/** Every place of this word; empty if it is no word of the language. */
export function placesOf(word: string): readonly Entry[] {
  return byWord.get(word) ?? [];
}

/** All words, each once, in the order of the table. */
export const allWords: readonly string[] = [...byWord.keys()];

/** All kinds of block, `file` first. */
export const places: readonly string[] = [...byPlace.keys()];

/** How a kind of block is called in a sentence. */
export const placeNames: Readonly<Record<string, string>> = {
  file: "at the top of a file",
  unit: "in a unit",
  part: "in a part",
  fastener: "in a fastener",
  joint: "in a joint",
  fluid: "in a fluid",
  hazard: "in a hazard",
  tool: "in a tool",
  consumable: "in a consumable",
  "torque-table": "in a torque table",
  photo: "in a photo",
  procedure: "in a procedure",
  step: "in a step",
  refit: "in a refit block",
  finish: "in finish",
};

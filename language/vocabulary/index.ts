// The door to the vocabulary.

export { type Entry } from "./entry.ts";
export { kindListNames, kinds, kindTexts, type KindList, type KindText } from "./kinds.ts";
export { macros, reservedNames } from "./macros.ts";
export { allWords, placeNames, places, placesOf, vocabulary, wordsIn } from "./vocabulary.ts";

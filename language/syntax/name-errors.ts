// What is said where names are written as in speech: with an article, parted by `and`, in two words, in quotes.

import { linkWords } from "../tables/speech.ts";
import { reservedNames } from "../vocabulary/macros.ts";
import { placesOf } from "../vocabulary/index.ts";
import { at, endOf, replacing, type Mended, type Misfit } from "./misfit.ts";
import { step } from "./shapes.ts";
import { Str, Word } from "./tokens.ts";

/** What stands before a name in speech, and is no name. */
const beforeNames = new Set(["the", "an", "all", "both", "new", "old", "off", "out", "up", "down"]);

/** `in tray A`: another small word stands here. */
export function linkWord({ state, token }: Misfit): Mended | undefined {
  const meant = linkWords[token.text],
    next = state.follow.find((leaf) => leaf.is === "word" && leaf.text === meant);
  return (
    next && {
      error: at(
        token,
        "syntax/unexpected",
        `${token.text} is out of place: here it is called ${meant}`,
        replacing(token, next.text, `Write ${next.text}`, false),
      ),
      next,
    }
  );
}

const isWordOfTheLanguage = (word: string): boolean => placesOf(word).length > 0;

/** Words of speech: an article or a second verb before a name is left out, names are parted by commas and not by `and`. */
export function fillerWord({ word, state, last, token }: Misfit): Mended | undefined {
  if (token.opensLine) return undefined;
  const comma = state.follow.find((leaf) => leaf.text === ",");
  if (!comma) return undefined;
  if (token.text === "and" || token.text === "plus")
    return {
      error: at(token, "syntax/unexpected", `Names are parted by commas here, not by ${token.text}`, {
        title: "Write a comma",
        edits: [{ start: endOf(last), end: endOf(token), text: "," }],
        certain: false,
      }),
      next: comma,
    };
  if (token.text === "then")
    return {
      error: at(token, "syntax/unexpected", "The next action simply follows: leave then out", {
        title: "Take it out",
        edits: [{ start: endOf(last), end: endOf(token), text: "" }],
        certain: false,
      }),
      next: state,
    };
  if (token.tokenType !== Word || last === word || !(beforeNames.has(last.text) || isWordOfTheLanguage(last.text)))
    return undefined;
  return {
    error: at(
      last,
      "syntax/unexpected",
      `${last.text} is no name: ${last.text === "new" ? "a new one is renew X, or renew always in its block" : "leave it out"}`,
      {
        title: "Take it out",
        edits: [{ start: last.startOffset, end: token.startOffset, text: "" }],
        certain: false,
      },
    ),
    next: state,
  };
}

/** Neither of the two is a word of the language, and both stand on one line. */
export const mayBeOneName = ({ word, last, token }: Misfit): boolean =>
  last !== word &&
  last.tokenType === Word &&
  token.tokenType === Word &&
  !token.opensLine &&
  !reservedNames.has(token.text) &&
  !isWordOfTheLanguage(token.text);

/** `with strap wrench`, `turn on side`: a blank inside a name, where only one name can stand. */
export function nameInTwoWords(misfit: Misfit): Mended | undefined {
  const { state, last, token, after } = misfit;
  if ((state.is !== "name" && state.is !== "item") || state.declares || state.follow.some((leaf) => leaf.text === ","))
    return undefined;
  if (!mayBeOneName(misfit) || !(state.ends || (!after.opensLine && step(state, after)))) return undefined;
  const name = `${last.text}-${token.text}`;
  return {
    error: at(token, "syntax/unexpected", `${token.text} is out of place: a name is one word, as ${name}`, {
      title: `Write ${name}`,
      edits: [{ start: last.startOffset, end: endOf(token), text: name }],
      certain: false,
    }),
    next: state,
  };
}

/** `wear "gloves"`, `undo "Lid screws"`: what is named stands without quotes; only what is printed has them. */
export function nameInQuotes({ word, state, last, token }: Misfit): Mended | undefined {
  if (token.tokenType !== Str || token.opensLine) return undefined;
  if (!state.follow.some((leaf) => leaf.is === "name" || leaf.is === "item") || state.ends) return undefined;
  const name = token.text
    .replace(/^"|"$/g, "")
    .toLowerCase()
    .replace(/[^a-z0-9-]+/g, "-")
    .replace(/^[-0-9]+|-+$/g, "");
  if (name === "") return undefined;
  const says = `a name stands without quotes here, as ${last.text === "," ? word.text : last.text} ${name}`;
  return {
    error: at(
      token,
      "syntax/unexpected",
      `This text is out of place: ${says}`,
      replacing(token, name, `Write ${name}`, false),
    ),
    next: undefined,
  };
}

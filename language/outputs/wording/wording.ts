// The catalogue of every sentence that the program itself prints. One catalogue a language; the type is that of the British English
// one, so that a language that lacks a sentence does not compile. Texts of authors never stand here.

import { enGb } from "./en-gb/en-gb.ts";

export type Wording = typeof enGb;

/** Every language that there is, by BCP 47 tag. */
export const wordings: Readonly<Record<string, Wording>> = { [enGb.tag]: enGb };

/** The language asked for, by its tag in any case; undefined where there is no such catalogue. */
export function wordingFor(tag: string): Wording | undefined {
  const wanted = tag.toLowerCase(),
    own = Object.values(wordings);
  return (
    own.find((each) => each.tag.toLowerCase() === wanted) ??
    own.find((each) => each.tag.toLowerCase().split("-")[0] === wanted)
  );
}

export const defaultWording: Wording = enGb;

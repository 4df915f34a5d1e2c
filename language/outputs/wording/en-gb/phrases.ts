// Building blocks of British English sentences: names in a sentence, lists, counts, verbs with their object.

import { looksPlural } from "../../../tables/plural-names.ts";

export { capital, sentence } from "../phrases.ts";
export { looksPlural };

/**
 * A declared name inside a sentence: "Casing nuts" becomes "casing nuts", "O-ring" and "MW-16 frame" stay. Only a first word of one
 * capital and small letters changes.
 */
export function inside(name: string): string {
  const word = /^\p{Lu}\p{Ll}+(?![\p{L}\d])/u.exec(name)?.[0];
  return word === undefined ? name : name.charAt(0).toLowerCase() + name.slice(1);
}

/** "the casing nuts"; a numbered piece has no article: "bearing cap 3". */
export const the = (name: string, numbered = false): string => (numbered ? inside(name) : `the ${inside(name)}`);

export function list(items: readonly string[], and = "and"): string {
  if (items.length < 2) return items.join("");
  return `${items.slice(0, -1).join(", ")} ${and} ${items[items.length - 1]!}`;
}

/** "the 8 casing nuts", "2 of the 8 casing nuts", "the guard screw, 4 off", "the impeller nut". */
export function some(
  name: string,
  numbered: boolean,
  count: number | undefined,
  total: number,
  rest: boolean,
  unknown: boolean,
): string {
  const plain = inside(name);
  if (unknown) return `all of ${the(name, numbered)} (count not given: count them)`;
  if (total <= 1) return the(name, numbered);
  if (count !== undefined && count < total) {
    if (rest)
      return looksPlural(name)
        ? `the last ${count} of the ${total} ${plain}`
        : `${the(name, numbered)}, the last ${count} of ${total}`;
    return looksPlural(name) ? `${count} of the ${total} ${plain}` : `${the(name, numbered)}, ${count} of ${total}`;
  }
  return looksPlural(name) && !numbered ? `the ${total} ${plain}` : `${the(name, numbered)}, ${total} off`;
}

/** A verb of the tables with its object; one that holds its own object ("Let the spring down") gets the name behind a colon. */
export const verbWith = (verb: string, object: string): string =>
  /\bthe\b/.test(verb) ? `${verb}: ${object.replace(/^the /, "")}` : `${verb} ${object}`;

/** "1 step", "3 steps". */
export const counted = (count: number, one: string, many = `${one}s`): string => `${count} ${count === 1 ? one : many}`;

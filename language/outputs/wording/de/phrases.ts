// Building blocks of German sentences. A name stays as its author wrote it: nouns have a capital anyway.

import { listWith } from "../phrases.ts";

export const list = listWith("und");

export const the = (name: string): string => name;

/** "1 Befund", "3 Befunde". */
export const counted = (count: number, one: string, many: string): string => `${count} ${count === 1 ? one : many}`;

export const people = (count: number): string => counted(count, "Person", "Personen");

/** A verb behind its object; one that holds its own object ("Feder entspannen") has a capital and stands before the name. */
export const verbWith = (verb: string, object: string): string =>
  /^\p{Lu}/u.test(verb) ? `${verb}: ${object}` : `${object} ${verb}`;

/** "Gehäusemuttern (8 Stück)", "Gehäusemuttern (2 von 8)". */
export function some(
  name: string,
  _numbered: boolean,
  count: number | undefined,
  total: number,
  rest: boolean,
  unknown: boolean,
): string {
  if (unknown) return `${name} (alle; Anzahl nicht angegeben: zählen)`;
  if (total <= 1) return name;
  if (count !== undefined && count < total) return `${name} (${rest ? "die letzten " : ""}${count} von ${total})`;
  return `${name} (${total} Stück)`;
}

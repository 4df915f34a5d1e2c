// Building blocks of French sentences.

import { joined, listWith, sentence } from "../phrases.ts";

export const list = listWith("et");

/** A name in a sentence begins small, save for what is no plain word ("O-ring", "MW-16"). */
export function the(name: string): string {
  const word = /^\p{Lu}\p{Ll}+(?![\p{L}\d])/u.exec(name)?.[0];
  return word === undefined ? name : name.charAt(0).toLowerCase() + name.slice(1);
}

/** "Titre : texte", with the no-break space before the colon. */
export const titled = (title: string, text: string): string => `${title}\u00a0: ${text}`;

/** "1 constat", "3 constats"; 0 and 1 take the singular. */
export const counted = (count: number, one: string, many = `${one}s`): string => `${count} ${count < 2 ? one : many}`;

export const people = (count: number): string => counted(count, "personne");

/** "Déposer : couvercle ; avec : élingue ; 2 personnes." */
export const told = (verb: string, what: string, ...more: readonly (string | undefined)[]): string =>
  sentence(joined([what === "" ? verb : titled(verb, what), ...more], "\u00a0; "));

export const withTool = (tool: string | undefined): string => (tool ? titled("avec", the(tool)) : "");

/** "écrous du carter (8 pièces)", "écrous du carter (2 sur 8)". */
export function some(
  name: string,
  _numbered: boolean,
  count: number | undefined,
  total: number,
  rest: boolean,
  unknown: boolean,
): string {
  const plain = the(name);
  if (unknown) return `${plain} (toutes les pièces\u00a0; nombre non indiqué\u00a0: les compter)`;
  if (total <= 1) return plain;
  if (count !== undefined && count < total)
    return `${plain} (${rest ? `les ${count} dernières pièces` : `${count}`} sur ${total})`;
  return `${plain} (${total} pièces)`;
}

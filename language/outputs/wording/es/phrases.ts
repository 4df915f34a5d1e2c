// Building blocks of Spanish sentences.

import { joined, sentence } from "../phrases.ts";

/** "A, B y C"; "e" before the sound of i. */
export function list(items: readonly string[]): string {
  if (items.length < 2) return items.join("");
  const last = items[items.length - 1]!;
  return `${items.slice(0, -1).join(", ")} ${/^h?[ií](?![aeoáéó])/i.test(last) ? "e" : "y"} ${last}`;
}

/** A name in a sentence begins small, save for what is no plain word ("O-ring", "MW-16"). */
export function the(name: string): string {
  const word = /^\p{Lu}\p{Ll}+(?![\p{L}\d])/u.exec(name)?.[0];
  return word === undefined ? name : name.charAt(0).toLowerCase() + name.slice(1);
}

export const titled = (title: string, text: string): string => `${title}: ${text}`;

/** "1 hallazgo", "3 hallazgos". */
export const counted = (count: number, one: string, many = `${one}s`): string => `${count} ${count === 1 ? one : many}`;

export const people = (count: number): string => counted(count, "persona");

/** "Desmontar: tapa; con: eslinga; 2 personas." */
export const told = (verb: string, what: string, ...more: readonly (string | undefined)[]): string =>
  sentence(joined([what === "" ? verb : titled(verb, what), ...more], "; "));

export const withTool = (tool: string | undefined): string => (tool ? titled("con", the(tool)) : "");

/** "tuercas de la carcasa (8 piezas)", "tuercas de la carcasa (2 de 8)". */
export function some(
  name: string,
  _numbered: boolean,
  count: number | undefined,
  total: number,
  rest: boolean,
  unknown: boolean,
): string {
  const plain = the(name);
  if (unknown) return `${plain} (todas las piezas; cantidad no indicada: contarlas)`;
  if (total <= 1) return plain;
  if (count !== undefined && count < total)
    return `${plain} (${rest ? `las últimas ${count}` : `${count}`} de ${total})`;
  return `${plain} (${total} piezas)`;
}

// The sentences that the page's script says, as plain texts with `{0}`, `{1}` where something is put in: a script in a page cannot carry
// the catalogue's functions.

import type { Wording } from "../../wording/wording.ts";

export type Said<T> = T extends (...args: never[]) => string
  ? string
  : T extends string
    ? string
    : { readonly [Key in keyof T]: Said<T[Key]> };

export interface TabletWords extends Said<Wording["tablet"]> {
  readonly troubles: Said<Wording["record"]["troubles"]>;
  readonly noConsequence: string;
  /** The decimal sign. */
  readonly point: string;
}

export const tabletWords = ({ tablet, record, figures }: Wording): TabletWords => ({
  ...said(tablet),
  troubles: record.troubles,
  noConsequence: record.noConsequence,
  point: figures.number("0.5").replace(/\d/g, ""),
});

function said<T>(value: T): Said<T> {
  if (typeof value === "function") return (value as (...args: string[]) => string)("{0}", "{1}", "{2}") as Said<T>;
  if (typeof value !== "object" || value === null) return value as Said<T>;
  return Object.fromEntries(Object.entries(value).map(([key, each]) => [key, said(each)])) as Said<T>;
}

/** Puts values in; a text that holds `{1}` itself stays as it is. */
export const filled = (text: string, ...values: readonly (string | number)[]): string =>
  text.replace(/\{(\d)\}/g, (mark, place: string) => String(values[Number(place)] ?? mark));

/** Several texts as one, as the language sets them. */
export const listed = ({ then }: Pick<TabletWords, "then">, texts: readonly string[]): string =>
  texts.length === 0 ? "" : texts.reduce((first, second) => filled(then, first, second));

/** A figure as the language writes it. */
export const figureText = (value: number, { point }: Pick<TabletWords, "point">): string =>
  String(value).replace(".", point);

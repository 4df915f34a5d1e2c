// The file beside a source that holds its texts in another language: `pump.de.texts.json` beside `pump.strip`. It is made by
// `stripdown text import` and read where a paper is written in that language.

import type { AuthorText } from "./author-texts.ts";

export interface Translations {
  readonly format: "stripdown-texts";
  readonly version: 1;
  /** BCP 47 tags of what the author wrote in, and of these texts. */
  readonly from: string;
  readonly lang: string;
  readonly texts: readonly { readonly id: string; readonly source: string; readonly text: string }[];
}

/** Where the texts of a source stand. */
export const translationsPath = (source: string, lang: string): string =>
  `${source.replace(/\.strip$/, "")}.${lang}.texts.json`;

export const translationsText = (of: Translations): string => `${JSON.stringify(of, undefined, 2)}\n`;

/** A language tag as RFC 5646 forms it, so far as it can stand in a file's name. */
export const isTag = (tag: string): boolean => /^[A-Za-z]{2,8}(?:-[A-Za-z0-9]{1,8})*$/.test(tag);

/** Takes text that anybody may have written. */
export function readTranslations(text: string): Translations | { readonly problem: string } {
  let value: unknown;
  try {
    value = JSON.parse(text.replace(/^\uFEFF/, ""));
  } catch {
    return { problem: "it is no JSON" };
  }
  const is = (each: unknown): each is Readonly<Record<string, unknown>> =>
    typeof each === "object" && each !== null && !Array.isArray(each);
  if (!is(value) || value["format"] !== "stripdown-texts") return { problem: 'its format is not "stripdown-texts"' };
  if (value["version"] !== 1) return { problem: "its version is not 1: a newer Stripdown may have written it" };
  const { from, lang, texts } = value;
  if (typeof from !== "string" || !isTag(from)) return { problem: "from: a language tag is due" };
  if (typeof lang !== "string" || !isTag(lang)) return { problem: "lang: a language tag is due" };
  if (!Array.isArray(texts)) return { problem: "texts: a list is due" };
  const read: { id: string; source: string; text: string }[] = [];
  for (const [i, each] of (texts as readonly unknown[]).entries()) {
    if (!is(each)) return { problem: `texts[${i}]: an object is due` };
    const { id, source, text: said } = each;
    if (typeof id !== "string" || typeof source !== "string" || typeof said !== "string")
      return { problem: `texts[${i}]: id, source and text are due, each a text` };
    read.push({ id, source, text: said });
  }
  return { format: "stripdown-texts", version: 1, from, lang, texts: read };
}

/** What is wrong with a translation of a text, in words; undefined where nothing shows. It cannot tell whether the words are right. */
export function amissWith(source: string, text: string): string | undefined {
  if (text.trim() === "") return "it is empty";
  const missing = figuresIn(source).filter((figure) => !figuresIn(text).includes(figure)),
    added = figuresIn(text).filter((figure) => !figuresIn(source).includes(figure));
  if (missing.length > 0 || added.length > 0)
    return `its figures are not those of the source (${[missing.length > 0 ? `without ${missing.join(", ")}` : "", added.length > 0 ? `with ${added.join(", ")}` : ""].filter(Boolean).join("; ")})`;
  return undefined;
}

/** Numbers with a point, however the language writes its decimal sign. */
const figuresIn = (text: string): string[] =>
  (text.match(/\d+(?:[.,]\d+)*/g) ?? []).map((figure) => figure.replaceAll(",", "."));

/** The translation of each text by its id; where the source text differs from what was translated, there is none. */
export function translationOf(of: Translations): (text: Pick<AuthorText, "id" | "text">) => string | undefined {
  const byId = new Map(of.texts.map((each) => [each.id, each]));
  return ({ id, text }) => {
    const found = byId.get(id);
    return found !== undefined && found.source === text && found.text.trim() !== "" ? found.text : undefined;
  };
}

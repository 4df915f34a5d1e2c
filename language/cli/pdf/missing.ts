// Characters that no font of the PDF has: each is printed by its number, and told with the text that it stands in. Scripts that the
// renderer does not set as they are written are told too.

import type { PrintDocument } from "../../outputs/pdf/print.ts";

/** What breaks and joins text but is never seen. */
const unseen = /[\s\u00AD\u200B-\u200F\u2060]|[\uFE00-\uFE0F]/u;

export interface Missing {
  readonly sign: string;
  readonly text: string;
}

export interface Printable {
  /** With the number in the place of each character that no font has. */
  readonly document: PrintDocument;
  /** Each once, with the first text that it stands in. */
  readonly missing: readonly Missing[];
  /** The first text that is written from right to left. */
  readonly rightToLeft: string | undefined;
}

export function printable(document: PrintDocument, has: (codePoint: number) => boolean): Printable {
  const found = new Map<string, string>();
  let rightToLeft: string | undefined;
  const text = (value: string, whole: string): string => {
    if (isPlain.test(value)) return value;
    let out = "";
    for (const sign of value) {
      const lacks = !has(sign.codePointAt(0)!) && !unseen.test(sign);
      if (lacks && !found.has(sign)) found.set(sign, whole);
      out += lacks ? `[${numberOf(sign)}]` : sign;
    }
    if (/[\p{Script=Hebrew}\p{Script=Arabic}\p{Script=Syriac}\p{Script=Thaana}\p{Script=Nko}]/u.test(value))
      rightToLeft ??= whole;
    return out;
  };
  const put = (value: unknown, whole?: string): unknown => {
    if (typeof value === "string") return text(value, whole ?? value);
    if (Array.isArray(value)) {
      const isRuns =
        value.length > 0 && value.every((each) => typeof each === "object" && each !== null && "t" in each);
      const all = isRuns ? value.map((each: { t: string }) => each.t).join("") : whole;
      return value.map((each: unknown) => put(each, all));
    }
    if (typeof value !== "object" || value === null) return value;
    return Object.fromEntries(
      Object.entries(value).map(([key, each]) => [key, notShown.has(key) ? each : put(each, whole)]),
    );
  };
  const made = put(document) as PrintDocument;
  return { document: made, missing: [...found].map(([sign, of]) => ({ sign, text: of })), rightToLeft };
}

// Most texts: nothing in them is looked up.
const isPlain = /^[\n -~]*$/;

/** Names and numbers for the template; what is only heard needs no font. */
const notShown: ReadonlySet<string> = new Set(["is", "files", "file", "lang", "l", "id", "alt"]);

const numberOf = (sign: string): string => `U+${sign.codePointAt(0)!.toString(16).toUpperCase().padStart(4, "0")}`;

const ideographs = /[\p{Script=Han}\p{Script=Hiragana}\p{Script=Katakana}\p{Script=Hangul}\p{Script=Bopomofo}]/u;

/** What is to be told, a line each; none where every character is printed as it is written. */
export function printedOtherwise({ missing, rightToLeft }: Omit<Printable, "document">): string[] {
  const shown = missing.slice(0, 5).map(({ sign, text }) => `“${sign}” (${numberOf(sign)}) in “${short(text)}”`),
    more = missing.length > 5 ? `, and ${missing.length - 5} more` : "",
    isEastAsian = missing.some(({ sign }) => ideographs.test(sign));
  return [
    ...(missing.length === 0
      ? []
      : [
          `no font of the PDF has ${missing.length === 1 ? "this character, which is" : "these characters, which are"} printed by number: ${shown.join("; ")}${more}. ${isEastAsian ? "Chinese, Japanese and Korean need a font of this machine: " : ""}--font FILE.ttf gives one that has ${missing.length === 1 ? "it" : "them"}, or use the HTML`,
        ]),
    ...(rightToLeft === undefined
      ? []
      : [
          `text from right to left is not set well in the PDF, and is copied out of it in another order: “${short(rightToLeft)}”. Look at it, or use the HTML`,
        ]),
  ];
}

const short = (text: string): string => (text.length > 60 ? `${text.slice(0, 59)}…` : text);

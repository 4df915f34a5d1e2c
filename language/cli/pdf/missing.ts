// Characters that no font of the PDF has, each with the text that it stands in.

import type { PrintDocument } from "../../outputs/pdf/print.ts";

/** What breaks and joins text but is never seen. */
const unseen = /[\s\u00AD\u200B-\u200F\u2060]|[\uFE00-\uFE0F]/u;

export interface Missing {
  readonly sign: string;
  readonly text: string;
}

/** Each once, with the first text that it stands in. */
export function missingIn(document: PrintDocument, has: (codePoint: number) => boolean): Missing[] {
  const found = new Map<string, string>();
  const look = (value: unknown, whole?: string): void => {
    if (typeof value === "string") {
      for (const sign of value)
        if (!has(sign.codePointAt(0)!) && !unseen.test(sign) && !found.has(sign)) found.set(sign, whole ?? value);
    } else if (Array.isArray(value)) {
      const isRuns = value.every((each) => typeof each === "object" && each !== null && "t" in each);
      const text = isRuns && value.length > 0 ? value.map((each: { t: string }) => each.t).join("") : whole;
      for (const each of value as unknown[]) look(each, text);
    } else if (typeof value === "object" && value !== null)
      for (const [key, each] of Object.entries(value)) if (!notShown.has(key)) look(each, whole);
  };
  look(document);
  return [...found].map(([sign, text]) => ({ sign, text }));
}

/** Names and numbers for the template, and the markup of pictures, whose words are checked by their title. */
const notShown: ReadonlySet<string> = new Set(["is", "files", "file", "lang", "id", "alt"]);

export function missingText(missing: readonly Missing[]): string {
  const shown = missing.slice(0, 5).map(({ sign, text }) => {
    const code = sign.codePointAt(0)!.toString(16).toUpperCase().padStart(4, "0");
    return `“${sign}” (U+${code}) in “${text.length > 60 ? `${text.slice(0, 59)}…` : text}”`;
  });
  const more = missing.length > 5 ? `, and ${missing.length - 5} more` : "";
  return `no font of the PDF has ${missing.length === 1 ? "this character" : "these characters"}: ${shown.join("; ")}${more}. Write the text without, or use the HTML, which takes the fonts of the machine`;
}

// Texts as an XLIFF 2.1 document (OASIS Standard, 13 February 2018): core elements alone, one unit a text, nothing segmented.

import type { AuthorText } from "./author-texts.ts";

export interface XliffFile {
  /** The source as it is named to the user. */
  readonly original: string;
  readonly texts: readonly (AuthorText & { readonly target: string | undefined })[];
}

export interface Xliff {
  readonly from: string;
  readonly to: string;
  readonly files: readonly XliffFile[];
}

export const xliffNamespace = "urn:oasis:names:tc:xliff:document:2.0";

export function xliffText({ from, to, files }: Xliff): string {
  const out = [
    '<?xml version="1.0" encoding="UTF-8"?>',
    `<xliff xmlns="${xliffNamespace}" version="2.1" srcLang="${attribute(from)}" trgLang="${attribute(to)}">`,
  ];
  files.forEach(({ original, texts }, i) => {
    out.push(`  <file id="f${i + 1}" original="${attribute(original)}">`);
    for (const { id, word, text, line, target } of texts) {
      out.push(
        `    <unit id="${attribute(id)}" canResegment="no" xml:space="preserve">`,
        `      <notes><note category="place">${content(`${word}, line ${line}`)}</note></notes>`,
        `      <segment state="${target === undefined ? "initial" : "translated"}">`,
        `        <source>${content(text)}</source>`,
        ...(target === undefined ? [] : [`        <target>${content(target)}</target>`]),
        "      </segment>",
        "    </unit>",
      );
    }
    out.push("  </file>");
  });
  out.push("</xliff>", "");
  return out.join("\n");
}

const entities: Readonly<Record<string, string>> = { "&": "&amp;", "<": "&lt;", ">": "&gt;", '"': "&quot;" };

/** Signs that XML 1.0 cannot hold stand as `cp` elements, as the core provides (4.2.3.1). */
const content = (text: string): string =>
  text
    .replace(/\r\n?/g, "\n")
    .replace(/[&<>]/g, (sign) => entities[sign]!)
    // Readers by XML 1.1 take these for line ends.
    .replace(/[\u0085\u2028\u2029]/g, (sign) => `&#x${sign.charCodeAt(0).toString(16)};`)
    .replace(
      /[\u0000-\u0008\u000B\u000C\u000E-\u001F\uFFFE\uFFFF]|[\uD800-\uDBFF](?![\uDC00-\uDFFF])|(?<![\uD800-\uDBFF])[\uDC00-\uDFFF]/g,
      (sign) => `<cp hex="${sign.charCodeAt(0).toString(16).toUpperCase().padStart(4, "0")}"/>`,
    );

const attribute = (text: string): string =>
  text
    .replace(/[&<>"]/g, (sign) => entities[sign]!)
    .replace(/[\u0000-\u001F\uFFFE\uFFFF\uD800-\uDFFF]/g, (sign) => (sign === "\t" || sign === "\n" ? " " : "?"));

// A language for tests in which every sentence of the catalogue is marked, so that what is printed without having come from it shows.

import type { Wording } from "../../language/outputs/wording/wording.ts";

export const open = "⟦",
  close = "⟧";

/** What names the language itself is read by programs, not printed. */
const unmarked: ReadonlySet<string> = new Set(["/tag", "/manual/htmlLang", "/review/is"]);

const mark = (text: string): string => (text === "" ? "" : open + text + close);

function marked(value: unknown, key: string): unknown {
  if (typeof value === "string") return unmarked.has(key) ? value : mark(value);
  if (typeof value === "function")
    return (...args: unknown[]) => marked((value as (...of: unknown[]) => unknown)(...args), `${key}()`);
  if (Array.isArray(value)) return value.map((each) => marked(each, key));
  if (typeof value === "object" && value !== null)
    return Object.fromEntries(Object.entries(value).map(([name, each]) => [name, marked(each, `${key}/${name}`)]));
  return value;
}

export const pseudo = (wording: Wording): Wording => marked(wording, "") as Wording;

/** A text without all that is marked, marks in marks too. */
export function unmarkedPart(text: string): string {
  let depth = 0,
    out = "";
  for (const sign of text) {
    if (sign === open) depth++;
    else if (sign === close) depth--;
    else if (depth === 0) out += sign;
    else if (sign === "\n") out += sign;
    if (sign === close && depth === 0) out += " ";
  }
  return out;
}

const greek = "αβγδεζηθικλμνξοπρστυφχψωάέή";

/** A text of an author in letters that no catalogue uses: digits and signs stay. */
export const foreign = (text: string): string =>
  text.replace(/[A-Za-z]/g, (letter) => {
    const lower = greek[(letter.toLowerCase().codePointAt(0)! - 97) % greek.length]!;
    return letter === letter.toLowerCase() ? lower : lower.toUpperCase();
  });

/** The source with every string of its author in foreign letters; names of files stay, since they are read. */
export function foreignSource(source: string): string {
  const token = /#[^\n]*|"""[^]*?"""|"(?:\\.|[^"\\\n])*"/g;
  let out = "",
    last = 0;
  for (const match of source.matchAll(token)) {
    const before = source.slice(last, match.index),
      [text] = match;
    out += before;
    last = match.index + text.length;
    out += text.startsWith("#") || /(?<![\w-])(?:use|photo|video)\s+$/.test(before) ? text : foreign(text);
  }
  return out + source.slice(last);
}

/** Words of a source that its author chose outside of strings: names of things, of trays, of positions. */
export function ownWords(source: string, vocabulary: ReadonlySet<string>): Set<string> {
  const bare = source.replace(/#[^\n]*|"""[^]*?"""|"(?:\\.|[^"\\\n])*"/g, " "),
    found = new Set<string>();
  for (const [word] of bare.matchAll(/[\p{L}\d][\p{L}\d_./-]*/gu)) {
    if (vocabulary.has(word)) continue;
    found.add(word);
    for (const part of word.split(/[-./]/)) if (!vocabulary.has(part)) found.add(part);
  }
  return found;
}

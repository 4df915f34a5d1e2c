// How a text from an author is shown in a file for people: as written, save for signs that would act on their surroundings.
// Control characters and the signs that turn the direction of text are shown by their number.

/** Controls but tab and line feed; bidi embeddings, overrides and isolates; line and paragraph separators; lone surrogates. */
// oxlint-disable-next-line no-control-regex
const acting =
  /[\u0000-\u0008\u000B-\u001F\u007F-\u009F\u202A-\u202E\u2066-\u2069\u2028\u2029\uFEFF]|[\uD800-\uDBFF](?![\uDC00-\uDFFF])|(?<![\uD800-\uDBFF])[\uDC00-\uDFFF]/g;

/** Most texts hold none of them, and are asked all the time. */
export const mayAct =
  /[\u0000-\u0008\u000B-\u001F\u007F-\u009F\u202A-\u202E\u2066-\u2069\u2028\u2029\uFEFF\uD800-\uDFFF]/; // oxlint-disable-line no-control-regex

/** `‹U+202E›` for such a sign; CRLF and CR are line feeds. */
export function shown(text: string): string {
  if (!mayAct.test(text)) return text;
  return text
    .replace(/\r\n?/g, "\n")
    .replace(acting, (sign) => `‹U+${sign.charCodeAt(0).toString(16).toUpperCase().padStart(4, "0")}›`);
}

/** The same on one line. */
export function shownOnOneLine(text: string): string {
  return shown(text)
    .replace(/\s*[\n\t]\s*/g, " ")
    .trim();
}

/** The paragraphs of a text of several lines: a line runs on in the next, a blank line begins a paragraph. */
export const paragraphs = (text: string): string[] =>
  text
    .split(/\n\s*\n/)
    .map(shownOnOneLine)
    .filter(Boolean);

// An author's words in our markup.

import { html, type Markup } from "../text/markup.ts";

/** Set apart, so that the direction of their script stays theirs; a word that is wider than its place may break anywhere. */
export const own = (text: string): Markup | false =>
  text === "" ? false : hasLongWord(text) ? html`<bdi class="long">${text}</bdi>` : html`<bdi>${text}</bdi>`;

/** Signs without a blank among them that may be wider than their place. */
const long = 28;

/** A word of so many signs stands on one of every so many places: of most texts a few signs are looked at. */
function hasLongWord(text: string): boolean {
  for (let at = long - 1; at < text.length; at += long) {
    let from = at,
      to = at;
    while (to < text.length && to - at < long && !isBlank(text, to)) to++;
    if (to === at) continue;
    while (from > 0 && to - from < long && !isBlank(text, from - 1)) from--;
    if (to - from >= long) return true;
  }
  return false;
}

const isBlank = (text: string, at: number): boolean => {
  const code = text.charCodeAt(at);
  return code === 32 || (code > 126 || code < 14 ? /\s/.test(text[at]!) : false);
};

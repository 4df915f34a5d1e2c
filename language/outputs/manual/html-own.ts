// An author's words in our markup.

import { html, type Markup } from "../text/markup.ts";

/** Set apart, so that the direction of their script stays theirs; a word that is wider than its place may break anywhere. */
export const own = (text: string): Markup | false =>
  text === "" ? false : html`<bdi${text.length >= 28 && /\S{28}/.test(text) && html` class="long"`}>${text}</bdi>`;

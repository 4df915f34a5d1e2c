// Warning signs drawn by us in the shapes of ISO 3864: a yellow triangle with a black edge and a black figure. The ISO 7010 number
// beside it names the sign that the standard has for the danger; its artwork is not copied. The words beside a sign carry the meaning.

import { html, type Markup } from "../text/markup.ts";

/** Number of the sign in ISO 7010 by kind of hazard; W001 is the general one. Read in public lists of the signs. */
export const signNumbers: Readonly<Record<string, string>> = {
  electrical: "W012",
  pressure: "W029",
  overhead: "W015",
  hot: "W017",
  magnetic: "W006",
  sharp: "W022",
  crushing: "W019",
  heavy: "W019",
  rotating: "W018",
  fire: "W021",
  suffocation: "W041",
  slipping: "W011",
  noise: "W038",
};

export const signNumber = (kind: string): string => signNumbers[kind] ?? "W001";

/** Black figures on a field of 100 x 88, the triangle's corners at (50, 0), (100, 88), (0, 88). */
const figures: Readonly<Record<string, Markup>> = {
  W012: html`<path d="M54 24 38 54h10l-6 24 22-34H53l9-20z"/>`,
  W029: html`<path d="M42 40h16v38H42zM45 34h10v5H45zM48 28h4v6h-4z"/><path d="M36 30l-6-6M64 30l6-6M34 40h-8M66 40h8" stroke="#000" stroke-width="4"/>`,
  W015: html`<path d="M34 56h32v20H34z"/><path d="M50 26v14a6 6 0 1 1-6 6M50 40 34 56M50 40l16 16" fill="none" stroke="#000" stroke-width="4"/>`,
  W017: html`<path d="M28 74h44" stroke="#000" stroke-width="5"/><path d="M36 68c-5-8 5-12 0-22M50 68c-5-10 5-16 0-28M64 68c-5-8 5-12 0-22" fill="none" stroke="#000" stroke-width="4"/>`,
  W006: html`<path d="M34 76V54a16 16 0 0 1 32 0v22H56V54a6 6 0 0 0-12 0v22z"/><path d="M34 70h10M56 70h10" stroke="#f9a800" stroke-width="3"/>`,
  W022: html`<path d="M24 76h52L62 62l-8 6-10-12-8 10z"/><path d="M50 30v22" stroke="#000" stroke-width="5"/>`,
  W019: html`<path d="M30 40h40v10H30zM26 70h48v8H26z"/><path d="M50 26v10M38 60h24" stroke="#000" stroke-width="6"/>`,
  W018: html`<path d="M50 38a16 16 0 1 1-14 8" fill="none" stroke="#000" stroke-width="6"/><path d="M28 50l6-14 10 10z"/><circle cx="50" cy="56" r="5"/>`,
  W021: html`<path d="M50 26c10 14 16 20 16 32a16 16 0 0 1-32 0c0-6 3-10 6-13 1 5 3 7 5 7 3 0 3-12 5-26z"/><path d="M30 78h40" stroke="#000" stroke-width="5"/>`,
  W011: html`<path d="M24 76h52" stroke="#000" stroke-width="5"/><path d="M32 66c6-6 10 6 16 0s10 6 16 0" fill="none" stroke="#000" stroke-width="4"/><circle cx="60" cy="32" r="5"/><path d="M58 40 44 48l8 10" fill="none" stroke="#000" stroke-width="5"/>`,
};

const general = html`<path d="M45 28h10l-2.500 30h-5z"/><circle cx="50" cy="70" r="5.500"/>`;

/** The triangle with its figure; `alt` is what it warns of. */
export function warningSign(kind: string, alt: string): Markup {
  return html`<svg class="sign" role="img" aria-label="${alt}" viewBox="-6 -6 112 100" width="56" height="50"><path d="M50 0 100 88H0z" fill="#f9a800" stroke="#000" stroke-width="7" stroke-linejoin="round"/><g fill="#000">${figures[signNumber(kind)] ?? general}</g></svg>`;
}

/** The safety alert symbol beside a signal word: a risk of injury, so never beside a notice. An ornament: the word says it. */
export const alertSymbol: Markup = html`<svg class="alert" aria-hidden="true" viewBox="-6 -6 112 100" width="22" height="20"><path d="M50 0 100 88H0z" fill="#fff" stroke="#000" stroke-width="9" stroke-linejoin="round"/><path d="M44 28h12l-3 30h-6z"/><circle cx="50" cy="72" r="6"/></svg>`;

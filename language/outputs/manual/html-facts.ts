// Facts with their labels, as a table.

import { html, type Markup } from "../text/markup.ts";
import type { Fact } from "./document.ts";
import { own } from "./html-own.ts";

export const factsTable = (facts: readonly Fact[]): Markup =>
  html`<table class="facts"><tbody>${facts.map(({ label, value, own: isOwn }) => html`<tr><th scope="row">${label}</th><td>${isOwn ? own(value) : value}</td></tr>`)}</tbody></table>`;

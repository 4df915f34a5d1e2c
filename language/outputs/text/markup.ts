// HTML and SVG by one tag: every value is escaped unless it is markup that this tag made. An author's text can become nothing else
// than text.

import { mayAct, shown } from "./shown.ts";

/** Text that is markup already. Only the tag below makes it. */
export class Markup {
  readonly source: string;
  constructor(source: string) {
    this.source = source;
  }
}

export type Value = Markup | string | number | undefined | false | readonly Value[];

const entities: Readonly<Record<string, string>> = {
  "&": "&amp;",
  "<": "&lt;",
  ">": "&gt;",
  '"': "&quot;",
  "'": "&#39;",
};

const escaped = (text: string): string => text.replace(/[&<>"']/g, (sign) => entities[sign]!);

/** Most texts hold no sign that is written otherwise, and are asked once. */
const mayDiffer = new RegExp(`[&<>"']|${mayAct.source}`);

function render(value: Value): string {
  if (typeof value === "string") return mayDiffer.test(value) ? escaped(shown(value)) : value;
  if (value instanceof Markup) return value.source;
  if (value === undefined || value === false) return "";
  return typeof value === "number" ? String(value) : value.map(render).join("");
}

/** Lists join; undefined and false vanish. Values stand in text or in quoted attributes, never in a tag's name, a script or a style. */
export function html(texts: TemplateStringsArray, ...values: readonly Value[]): Markup {
  let source = texts[0]!;
  for (let i = 0; i < values.length; i++) source += render(values[i]) + texts[i + 1]!;
  return new Markup(source);
}

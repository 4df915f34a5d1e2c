// HTML and SVG by one tag: every value is escaped unless it is markup that this tag made. An author's text can become nothing else
// than text.

import { mayAct, shown } from "./shown.ts";
import { unparted } from "./unparted.ts";

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

function render(value: Value, isText: boolean): string {
  if (typeof value === "string") {
    const text = isText ? unparted(value) : value;
    return mayDiffer.test(text) ? escaped(shown(text)) : text;
  }
  if (value instanceof Markup) return value.source;
  if (value === undefined || value === false) return "";
  return typeof value === "number" ? String(value) : value.map((each) => render(each, isText)).join("");
}

/** Which values of a template stand between tags; asked once for each template of the program. */
const known = new Map<TemplateStringsArray, readonly boolean[]>();

function textPlaces(texts: TemplateStringsArray): readonly boolean[] {
  const had = known.get(texts);
  if (had) return had;
  let inTag = false;
  const places = texts.map((text) => {
    const opened = text.lastIndexOf("<"),
      closed = text.lastIndexOf(">");
    if (opened !== closed) inTag = opened > closed;
    return !inTag && !text.endsWith('="');
  });
  known.set(texts, places);
  return places;
}

/** Lists join; undefined and false vanish. Values stand in text or in quoted attributes, never in a tag's name, a script or a style. */
export function html(texts: TemplateStringsArray, ...values: readonly Value[]): Markup {
  const isText = textPlaces(texts);
  let source = texts[0]!;
  for (let i = 0; i < values.length; i++) source += render(values[i], isText[i]!) + texts[i + 1]!;
  return new Markup(source);
}

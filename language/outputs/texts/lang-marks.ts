// Marks a page's texts that stand in another language than the page: a screen reader then reads them in their own.

import { html } from "../text/markup.ts";
import { finderOf } from "./lang-runs.ts";

/** @param texts as their author wrote them, in the language `lang`. */
export function withLang(page: string, texts: ReadonlySet<string>, lang: string): string {
  const signs: Readonly<Record<string, string>> = { amp: "&", lt: "<", gt: ">", quot: '"', "#39": "'" };
  const found = finderOf([...texts].map((text) => html`${text}`.source));
  return (
    page
      // Words of a drawing: a line of it may be a name with its count.
      .replace(/<text( [^>]*)>([^<]*)<\/text>/g, (whole, more: string, inner: string) => {
        const marked = found ? inner.replace(found, (text) => `<tspan lang="${lang}">${text}</tspan>`) : inner;
        return marked === inner ? whole : `<text${more}>${marked}</text>`;
      })
      .replace(/<bdi((?: class="[^"]*")?)>([^<]*)<\/bdi>/g, (whole, more: string, inner: string) =>
        texts.has(inner.replace(/&(amp|lt|gt|quot|#39);/g, (_, sign: string) => signs[sign]!))
          ? `<bdi${more} lang="${lang}">${inner}</bdi>`
          : whole,
      )
  );
}

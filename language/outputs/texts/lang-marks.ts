// Marks a page's texts that stand in another language than the page: a screen reader then reads them in their own.

/** @param texts as their author wrote them, in the language `lang`. */
export function withLang(page: string, texts: ReadonlySet<string>, lang: string): string {
  const signs: Readonly<Record<string, string>> = { amp: "&", lt: "<", gt: ">", quot: '"', "#39": "'" };
  return page.replace(/<bdi((?: class="[^"]*")?)>([^<]*)<\/bdi>/g, (whole, more: string, inner: string) =>
    texts.has(inner.replace(/&(amp|lt|gt|quot|#39);/g, (_, sign: string) => signs[sign]!))
      ? `<bdi${more} lang="${lang}">${inner}</bdi>`
      : whole,
  );
}

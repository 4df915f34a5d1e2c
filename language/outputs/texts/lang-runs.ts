// Marks a printed document's texts that stand in another language than the document, so that they are read aloud in their own.

import type { PrintDocument, Run } from "../pdf/print.ts";

/** Texts of an author of fewer letters are words of any language. */
const shortest = 3;

/** Finds texts in the sentences that they stand in, whole words alone, the longest first; undefined where there is none to find. */
export function finderOf(texts: Iterable<string>): RegExp | undefined {
  const all = [...texts]
    .map((text) => text.replace(/\s+/g, " ").trim())
    .filter((text) => text.length >= shortest)
    .sort((a, b) => b.length - a.length);
  if (all.length === 0) return undefined;
  const some = all.map((text) => text.replace(/[.*+?^${}()|[\]\\]/g, "\\$&")).join("|");
  return new RegExp(`(?<![\\p{L}\\p{N}])(?:${some})(?![\\p{L}\\p{N}])`, "gu");
}

/** @param texts as their author wrote them, in the language `lang`. */
export function withLangRuns(document: PrintDocument, texts: ReadonlySet<string>, lang: string): PrintDocument {
  const found = finderOf(texts);
  if (!found) return document;
  const split = (run: Run): Run[] => {
    const runs: Run[] = [];
    let last = 0;
    for (const match of run.t.matchAll(found)) {
      if (match.index > last) runs.push({ ...run, t: run.t.slice(last, match.index) });
      runs.push({ ...run, t: match[0], l: lang });
      last = match.index + match[0].length;
    }
    if (runs.length === 0) return [run];
    if (last < run.t.length) runs.push({ ...run, t: run.t.slice(last) });
    return runs;
  };
  const put = (value: unknown, key = ""): unknown => {
    if (typeof value === "string") {
      if (!isWords.has(key)) return value;
      const runs = split({ t: value });
      return runs.length === 1 && runs[0]!.l === undefined ? value : runs;
    }
    if (Array.isArray(value))
      return value.flatMap((each: unknown): unknown[] => {
        if (isRun(each)) return split(each);
        return [put(each, key)];
      });
    if (typeof value !== "object" || value === null) return value;
    return Object.fromEntries(Object.entries(value).map(([name, each]) => [name, put(each, name)]));
  };
  return { ...document, front: put(document.front) as never, blocks: put(document.blocks) as never };
}

const isRun = (value: unknown): value is Run => typeof value === "object" && value !== null && "t" in value;

/** Fields of blocks that hold words, alone or in lists; the others are names, numbers and texts of one language. */
const isWords: ReadonlySet<string> = new Set([
  "says",
  "items",
  "rows",
  "heads",
  "caption",
  "title",
  "lines",
  "side",
  "under",
  "label",
  "name",
  "facts",
]);

// How long the published procedures are when written in the language, against the number of facts that their fact files hold.
// `node tests/real-machines/size.ts` writes size.md. It judges nothing: size.test.ts does.

import { readFileSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { eachItem, parse, type Tree } from "../../language/syntax/index.ts";

export interface Size {
  readonly procedure: string;
  /** What is counted: parts, fasteners, joints, what is done. */
  readonly of: string;
  readonly lines: number;
  readonly words: number;
  readonly facts: number;
}

export interface ItemSize {
  readonly id: string;
  readonly lines: number;
  readonly facts: number;
}

const here = import.meta.dirname,
  procedures = join(here, "../procedures"),
  reference = join(here, "../reference/procedures");
const names = ["fan-drive", "oil-pump", "rear-hub"] as const;

/** What no author writes down: places in a list, values that we computed from others, our own remarks. */
const notFacts = new Set(["n", "note", "computed_newton_metres", "printed"]);

/** Single values that an author knows: texts, figures, yes and no, names. A list of names is as many facts as names. */
export function factsIn(value: unknown, key = ""): number {
  if (notFacts.has(key) || value === null || value === undefined) return 0;
  if (Array.isArray(value)) return value.reduce((sum: number, one) => sum + factsIn(one), 0);
  if (typeof value === "object") return Object.entries(value).reduce((sum, [name, one]) => sum + factsIn(one, name), 0);
  return 1;
}

/** Lines with anything but a comment on them, and words, of some items of a text: names, figures and words of the language alike, no signs. */
function counted(tree: Tree, wanted: (word: string) => boolean): { readonly lines: number; readonly words: number } {
  const lines = new Set<number>(),
    { tokens, text } = tree.scan;
  let words = 0;
  for (const item of tree.items.flatMap((top) =>
    wanted(top.entry?.word ?? "")
      ? [top]
      : (top.block?.items.filter((inner) => top.entry?.word === "unit" && wanted(inner.entry?.word ?? "")) ?? []),
  )) {
    for (let i = item.first; i <= item.last; i++) {
      const token = tokens[i]!,
        from = text.slice(0, token.startOffset).split("\n").length,
        parts = token.image.split("\n");
      // A line that holds nothing but the sign that ends a block says nothing.
      if (token.image !== "}" || text.split("\n")[from - 1]!.trim() !== "}")
        for (let k = 0; k < parts.length; k++) lines.add(from + k);
      if (/[\p{L}\p{N}]/u.test(token.image))
        words += token.image.split(/\s+/).filter((one) => /[\p{L}\p{N}]/u.test(one)).length;
    }
  }
  return { lines: lines.size, words };
}

const treeOf = (name: string): Tree => parse(readFileSync(join(procedures, `${name}.strip`), "utf8"));
const factsOf = (name: string): Record<string, unknown> =>
  JSON.parse(readFileSync(join(reference, `${name}.json`), "utf8")) as Record<string, unknown>;

export function sizes(): Size[] {
  return names.flatMap((procedure) => {
    const facts = factsOf(procedure),
      unit = treeOf(procedure),
      back = treeOf(`${procedure}-refit`),
      of = (...keys: string[]): number => keys.reduce((sum, key) => sum + factsIn(facts[key]), 0);
    const row = (what: string, trees: readonly Tree[], wanted: (word: string) => boolean, known: number): Size => {
      const all = trees.map((tree) => counted(tree, wanted));
      return {
        procedure,
        of: what,
        lines: all.reduce((sum, one) => sum + one.lines, 0),
        words: all.reduce((sum, one) => sum + one.words, 0),
        facts: known,
      };
    };
    return [
      row("parts", [unit], (word) => word === "part", of("parts")),
      row("fasteners", [unit], (word) => word === "fastener", of("fasteners")),
      row("joints", [unit], (word) => word === "joint", of("joints")),
      row(
        "stores and tools",
        [unit],
        (word) => word === "tool" || word === "consumable",
        of("consumables", "special_tools", "tools_listed"),
      ),
      row(
        "strip and printed way back",
        [unit, back],
        (word) => word === "procedure",
        of("strip_order", "inspections", "refit_order", "hazards", "people", "measurements"),
      ),
    ];
  });
}

/** Each part and fastener that both the text and the fact file name. */
export function itemSizes(): ItemSize[] {
  return names.flatMap((name) => {
    const facts = factsOf(name),
      tree = treeOf(name),
      { tokens, text } = tree.scan,
      known = new Map<string, number>(),
      found: ItemSize[] = [];
    for (const one of [
      ...(facts["parts"] as { id: string }[]),
      ...(facts["fasteners"] as { id: string }[]),
      ...(facts["joints"] as { id: string }[]),
    ])
      known.set(one.id, factsIn(one));
    eachItem(tree.items, (item) => {
      const word = item.entry?.word,
        id = item.arguments[0] && tokens[item.arguments[0].first]!.text,
        count = id === undefined ? undefined : known.get(id);
      if (count === undefined || (word !== "part" && word !== "fastener" && word !== "joint")) return;
      const lines = text
        .slice(tokens[item.first]!.startOffset, tokens[item.last]!.endOffset! + 1)
        .split("\n")
        .filter((line) => line.trim() !== "}" && !line.trim().startsWith("#"));
      found.push({ id: `${name} ${id}`, lines: lines.length, facts: count });
    });
    return found;
  });
}

export function sizeText(): string {
  const rows = sizes(),
    out = [
      "<!-- Written by `node tests/real-machines/size.ts`. -->",
      "",
      "# Length of the published procedures",
      "",
      "Lines (blank ones, comments and lone braces left out) and words of `tests/procedures/*.strip` against the facts in `tests/reference/procedures/*.json`: every single",
      "value there, save our own remarks and sums. A ratio under 1 is less than one line a fact.",
      "",
      "| procedure | of | lines | words | facts | lines a fact | words a fact |",
      "| --- | --- | --- | --- | --- | --- | --- |",
      ...rows.map(
        ({ procedure, of, lines, words, facts }) =>
          `| ${procedure} | ${of} | ${lines} | ${words} | ${facts} | ${ratio(lines, facts)} | ${ratio(words, facts)} |`,
      ),
    ];
  for (const name of names) {
    const of = rows.filter(({ procedure }) => procedure === name),
      sum = (key: "lines" | "words" | "facts"): number => of.reduce((total, row) => total + row[key], 0);
    out.push(
      `| **${name}** | **all** | ${sum("lines")} | ${sum("words")} | ${sum("facts")} | ${ratio(sum("lines"), sum("facts"))} | ${ratio(sum("words"), sum("facts"))} |`,
    );
  }
  return `${out.join("\n")}\n`;
}

const ratio = (of: number, facts: number): string => (facts === 0 ? "-" : (of / facts).toFixed(2));

if (import.meta.main) writeFileSync(join(here, "size.md"), sizeText());

// The outline of a file: what it declares and the steps of its procedures, nested as they stand.

import { textOf } from "../names/strings.ts";
import type { Item, Tree } from "../syntax/index.ts";

export interface OutlineEntry {
  readonly name: string;
  readonly detail: string;
  readonly word: string;
  readonly start: number;
  readonly end: number;
  readonly nameStart: number;
  readonly nameEnd: number;
  readonly inside: readonly OutlineEntry[];
}

const shown: ReadonlySet<string> = new Set([
  "unit",
  "procedure",
  "tool",
  "consumable",
  "role",
  "torque-table",
  "fastener",
  "hazard",
  "temporary",
  "part",
  "joint",
  "fluid",
  "step",
  "finish",
  "refit",
  "task",
  "option",
  "measure",
  "test",
  "repeat",
  "optional",
]);
/** Words whose line tells most in an outline. */
const telling: readonly string[] = ["count", "size", "torque", "mass", "volume", "capacity", "range", "pack", "is"];

export function outlineOf({ items, scan: { text, tokens } }: Tree): OutlineEntry[] {
  const span = (item: Item): [number, number] => [tokens[item.first]!.startOffset, tokens[item.last]!.endOffset! + 1];
  const visit = (list: readonly Item[]): OutlineEntry[] =>
    list.flatMap((item): OutlineEntry[] => {
      const word = item.entry?.word,
        inner = item.block ? visit(item.block.items) : [];
      if (word === undefined || !shown.has(word) || (item.broken && !item.block)) return inner;
      const declared = item.arguments.find((one) => one.declares) ?? item.arguments.find((one) => one.slot === "name"),
        title = item.arguments.find((one) => one.slot === "string");
      const at = tokens[declared?.first ?? item.first]!,
        [start, end] = span(item);
      const id = declared ? at.text : "",
        name = title ? textOf(tokens[title.first]!) : "";
      return [
        {
          name: id || name || word,
          detail: [id && name ? name : "", factsOf(item)].filter(Boolean).join(" · "),
          word,
          start,
          end,
          nameStart: at.startOffset,
          nameEnd: at.endOffset! + 1,
          inside: inner,
        },
      ];
    });
  function factsOf(item: Item): string {
    const facts = telling.flatMap((word) => {
      const line = item.block?.items.find((one) => one.entry?.word === word && !one.broken);
      if (!line || line.last === line.first) return [];
      const from = tokens[line.first + 1]!.startOffset,
        said = text.slice(from, span(line)[1]);
      return [word === "count" ? `${said} ×` : said];
    });
    return facts.join(", ").slice(0, 60);
  }
  return visit(items);
}

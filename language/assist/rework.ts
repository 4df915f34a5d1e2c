// Changes that an author asks for: the steps that free a part, two steps in the other order, a type of fasteners that repeat, figures
// with the other system first. Each is a set of edits; nothing is applied here.

import type { TextEdit } from "../findings/finding.ts";
import type { SourceFile } from "../names/project.ts";
import { convert, findUnit, format, isProblem, makeQuantity, type Quantity } from "../quantities/index.ts";
import { eachItem, type Item, type Token } from "../syntax/index.ts";
import { wordsIn } from "../vocabulary/index.ts";
import type { Checked } from "../workspace/check-project.ts";
import { momentAt } from "./bench-at.ts";
import { linesThatFree } from "./freeing.ts";
import { placeAt } from "./place.ts";
import { aroundAt } from "./trial.ts";

export interface Rework {
  readonly title: string;
  readonly edits: readonly TextEdit[];
}

const endOf = (token: Token): number => token.endOffset! + 1;
const spanOf = (
  {
    tree: {
      scan: { tokens },
    },
  }: SourceFile,
  item: Item,
): [number, number] => [tokens[item.first]!.startOffset, endOf(tokens[item.last]!)];
const textIn = (file: SourceFile, item: Item): string => file.text.slice(...spanOf(file, item));

/** Acts to insert before the act at an offset, so that the bench takes it. Undefined where it is taken as it is, or no way is known. */
export function freeingSteps(checked: Checked, file: SourceFile, offset: number): Rework | undefined {
  const { path } = placeAt(file.tree, offset),
    item = path[path.length - 1],
    verb = item?.entry?.word ?? "";
  if (
    !item ||
    item.broken ||
    !["step", "refit", "finish"].includes(item.entry?.place ?? "") ||
    !["remove", "lift", "undo", "loosen"].includes(verb)
  )
    return undefined;
  const [start] = spanOf(file, item),
    moment = momentAt(checked, file.path, start - 1),
    own = momentAt(checked, file.path, start);
  if (!moment || moment.half !== "strip" || !own?.done?.refused || own.done.act.at.start !== start) return undefined;
  const { model } = moment.performance,
    around = { ...own.done.around },
    lines: string[] = [];
  for (const name of own.done.act.names) {
    const found = linesThatFree(
      model,
      moment.state,
      around ?? aroundAt(moment),
      verb === "lift" ? "remove" : verb,
      name.text,
    );
    if (!found) return undefined;
    for (const line of found) if (!lines.includes(line)) lines.push(line);
  }
  if (lines.length === 0) return undefined;
  const lineStart = file.text.lastIndexOf("\n", start - 1) + 1,
    indent = /^\s*/.exec(file.text.slice(lineStart, start))![0],
    alone = lineStart + indent.length === start;
  const text = lines.map((line) => (alone ? `${line}\n${indent}` : `${line}  `)).join("");
  return {
    title: `Insert the ${lines.length === 1 ? "step that frees" : `${lines.length} acts that free`} ${own.done.act.names.map(({ text: name }) => name).join(", ")}`,
    edits: [{ file: file.path, start, end: start, text }],
  };
}

/** This step and the next one change places. */
export function reverseSteps(file: SourceFile, offset: number): Rework | undefined {
  const { path } = placeAt(file.tree, offset),
    at = path.findLastIndex((item) => item.entry?.word === "step"),
    step = path[at],
    around = path[at - 1];
  const siblings = around?.block?.items ?? [],
    next = step && siblings[siblings.indexOf(step) + 1];
  if (!step || next?.entry?.word !== "step" || step.broken || next.broken) return undefined;
  const [a, b] = [spanOf(file, step), spanOf(file, next)];
  return {
    title: "Change places with the next step",
    edits: [
      { file: file.path, start: a[0], end: a[1], text: textIn(file, next) },
      { file: file.path, start: b[0], end: b[1], text: textIn(file, step) },
    ],
  };
}

const typeWords: ReadonlySet<string> = new Set([
  "size",
  "class",
  "grade",
  "drive",
  "torque",
  "stages",
  "standard",
  "thread-locker",
  "lubricant",
  "passes",
  "sequence",
  "part-no",
]);

/** What two or more fasteners of a unit say alike becomes a type, and they are `like` it. */
export function typeOfFasteners(file: SourceFile, offset: number): Rework | undefined {
  const { path } = placeAt(file.tree, offset),
    unit = path[0],
    here = path.find((item) => item.entry?.word === "fastener");
  if (unit?.entry?.word !== "unit" || !here?.block || here === unit) return undefined;
  const { tokens } = file.tree.scan,
    kind = (item: Item): string => {
      const one = item.arguments.find((a) => a.slot === "kind:fastener");
      return one ? tokens[one.first]!.text : "";
    };
  const facts = (item: Item): Map<string, Item> =>
    new Map(
      (item.block?.items ?? [])
        .filter((line) => line.entry && !line.broken && typeWords.has(line.entry.word))
        .map((line) => [line.entry!.word, line]),
    );
  const hasLike = (item: Item): boolean => item.block?.items.some((line) => line.entry?.word === "like") ?? false;
  const own = facts(here),
    alike = (unit.block?.items ?? []).filter(
      (item) =>
        item.entry?.word === "fastener" && item.block && !item.broken && !hasLike(item) && kind(item) === kind(here),
    );
  const shared = [...own]
    .filter(([word, line]) => alike.filter((item) => same(facts(item).get(word), line)).length > 1)
    .map(([word]) => word);
  const like = alike.filter(
    (item) => shared.length > 0 && shared.every((word) => same(facts(item).get(word), own.get(word)!)),
  );
  if (hasLike(here) || shared.length < 2 || like.length < 2) return undefined;
  const names = new Set(tokens.map((token) => token.text)),
    id = nameOf(here);
  let type = `${id}-type`;
  for (let n = 2; names.has(type); n++) type = `${id}-type-${n}`;
  const [unitStart] = spanOf(file, unit);
  const edits: TextEdit[] = [
    {
      file: file.path,
      start: unitStart,
      end: unitStart,
      text: `fastener ${[type, kind(here)].filter(Boolean).join(" ")} { ${shared.map((word) => textIn(file, own.get(word)!)).join("  ")} }\n\n`,
    },
  ];
  for (const item of like) {
    const lines = facts(item),
      gone = shared.map((word) => lines.get(word)!).sort((a, b) => a.first - b.first);
    gone.forEach((line, i) => {
      const [start, end] = spanOf(file, line),
        next = tokens[line.last + 1];
      edits.push({
        file: file.path,
        start,
        end: next && next.line === tokens[line.last]!.endLine ? next.startOffset : end,
        text: i === 0 ? `like ${type}${next && next.line === tokens[line.last]!.endLine ? "  " : ""}` : "",
      });
    });
  }
  return { title: `Make a type of what ${like.length} fasteners say alike`, edits };

  function same(a: Item | undefined, b: Item): boolean {
    return a !== undefined && textIn(file, a).replace(/\s+/g, " ") === textIn(file, b).replace(/\s+/g, " ");
  }
  function nameOf(item: Item): string {
    const one = item.arguments.find((a) => a.declares);
    return one ? tokens[one.first]!.text : "fastener";
  }
}

/** The figures of a file with this system first. The author's own figure stays, in brackets: it is the one that counts. */
export function convertUnits(file: SourceFile, system: "metric" | "us"): Rework | undefined {
  const { tokens } = file.tree.scan,
    edits: TextEdit[] = [];
  eachItem(file.tree.items, (item) => {
    if (!item.entry || item.broken) return;
    for (const { slot, first, last } of item.arguments) {
      if (
        ["passes", "pack", "plane", "thread", "spanner"].includes(slot) ||
        !wordsIn(item.entry.place).has(item.entry.word)
      )
        continue;
      const read = quantityAt(tokens, first, last);
      if (!read) continue;
      const { quantity, unitIndex } = read,
        counterpart = findUnit(quantity.unit)?.counterpart;
      if (counterpart?.system !== system || quantity.form === "plus-minus") continue;
      const start = tokens[first]!.startOffset,
        own = file.text.slice(start, endOf(tokens[unitIndex]!)),
        pair =
          tokens[unitIndex + 1]?.text === "(" && unitIndex + 1 <= last
            ? file.text.slice(tokens[unitIndex + 2]!.startOffset, endOf(tokens[last - 1]!))
            : undefined;
      const other = pair ?? (convert(quantity, counterpart.unit) ? format(quantity, system) : undefined);
      if (other === undefined) continue;
      edits.push({ file: file.path, start, end: endOf(tokens[last]!), text: `${other} (${own})` });
    }
  });
  return edits.length === 0
    ? undefined
    : { title: system === "us" ? "Put US units first in this file" : "Put metric units first in this file", edits };
}

function quantityAt(
  tokens: readonly Token[],
  first: number,
  last: number,
): { quantity: Quantity; unitIndex: number } | undefined {
  const isRange = tokens[first + 1]?.text === ".." || tokens[first + 1]?.text === "±",
    unitIndex = first + (isRange ? 3 : 1),
    unit = tokens[unitIndex];
  if (!unit || unitIndex > last || !findUnit(unit.image)) return undefined;
  const quantity = makeQuantity({
    first: tokens[first]!.image,
    second: isRange ? tokens[first + 2]!.image : undefined,
    form: !isRange ? "single" : tokens[first + 1]!.text === ".." ? "range" : "plus-minus",
    unit: unit.image,
  });
  return isProblem(quantity) ? undefined : { quantity, unitIndex };
}

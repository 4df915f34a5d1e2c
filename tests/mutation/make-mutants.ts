// Every single-step mutant of one file, made on its syntax tree. Nothing here knows what the bench will say.

import type { SourceFile } from "../../language/names/project.ts";
import { precautions } from "../../language/tables/index.ts";
import { eachItem, type Item, type Tree } from "../../language/syntax/index.ts";
import { emptied, endOf, lineAt, startOf, written, type Mutant, type MutantClass } from "./mutant.ts";

/** What the unit of a procedure offers for a wrong name, a wrong position and a wrong count. */
export interface UnitFacts {
  readonly fasteners: readonly string[];
  readonly positions: readonly string[];
  /** Pieces in all of a declared thing; undefined where it has one, or nobody knows. */
  countOf(name: string): number | undefined;
  /** It must be new every time, by its own statement, its unit's rule or its kind. */
  isOneTime(name: string): boolean;
}

const actPlaces = new Set(["step", "refit", "finish"]);
const isAct = (item: Item): boolean =>
  item.entry !== undefined &&
  actPlaces.has(item.entry.place) &&
  item.entry.block === "" &&
  item.entry.word !== "reverse" &&
  item.entry.word !== "order";
const isPrecaution = (word: string): boolean => Object.hasOwn(precautions, word);

export function mutantsOf(file: SourceFile, unitOf: (start: number) => UnitFacts | undefined): Mutant[] {
  const { tree, text, path } = file,
    found: Mutant[] = [];
  const add = (
    of: MutantClass,
    item: Item,
    says: string,
    edits: Mutant["edits"],
    declared = false,
    others: readonly Item[] = [],
    other?: string,
  ): void => {
    found.push({
      class: of,
      file: path,
      line: lineAt(text, startOf(tree, item)),
      says,
      edits,
      starts: [item, ...others].map((one) => startOf(tree, one)),
      other,
      declared,
    });
  };
  const inBlock = (items: readonly Item[], facts: UnitFacts): void => {
    items.forEach((item, i) => {
      if (isAct(item)) {
        actMutants(tree, item, facts, add);
        const next = items[i + 1];
        if (next && isAct(next)) {
          const one = text.slice(startOf(tree, item), endOf(tree, item)),
            other = text.slice(startOf(tree, next), endOf(tree, next));
          if (one !== other)
            add(
              "swap two neighbours",
              item,
              `${written(tree, item)} | ${written(tree, next)}`,
              [
                { start: startOf(tree, item), end: endOf(tree, item), text: other },
                { start: startOf(tree, next), end: endOf(tree, next), text: one },
              ],
              false,
              [next],
            );
        }
      }
      if (item.block) inBlock(item.block.items, facts);
    });
  };
  for (const item of tree.items) {
    const facts = item.entry?.word === "procedure" ? unitOf(startOf(tree, item)) : undefined;
    if (facts && item.block) inBlock(item.block.items, facts);
    if (item.entry?.word === "unit") eachItem(item.block?.items ?? [], (inner) => declaredMutants(tree, inner, add));
  }
  return found;
}

type Add = (
  of: MutantClass,
  item: Item,
  says: string,
  edits: Mutant["edits"],
  declared?: boolean,
  others?: readonly Item[],
  other?: string,
) => void;

const undoing = new Set(["undo", "loosen", "back-out"]);

function actMutants(tree: Tree, item: Item, facts: UnitFacts, add: Add): void {
  const { tokens } = tree.scan,
    word = item.entry!.word,
    line = written(tree, item);
  const names = item.arguments
    .filter((a) => a.slot === "name" || a.slot === "item")
    .map((a) => ({
      text: tokens[a.first]!.text,
      start: tokens[a.first]!.startOffset,
      end: tokens[a.last]!.endOffset! + 1,
    }));
  add(
    isPrecaution(word)
      ? "drop a precaution"
      : word === "drain" || word === "recover"
        ? "drop a drain"
        : "drop an action",
    item,
    `${line} | dropped`,
    [emptied(tree, item)],
  );

  const first = tokens[item.first + 1],
    second = tokens[item.first + 2],
    counted = first !== undefined && /^\d+$/.test(first.text) && second?.text === "of";
  if (counted)
    for (const by of [1, -1]) {
      const count = Number(first.text) + by;
      if (count > 0)
        add(by > 0 ? "count + 1" : "count - 1", item, `${line} | ${count} of`, [
          { start: first.startOffset, end: first.endOffset! + 1, text: String(count) },
        ]);
    }
  else if (["undo", "fit", "remove"].includes(word) && names.length === 1 && first?.text !== "rest") {
    const whole = facts.countOf(names[0]!.text);
    if (whole !== undefined && whole > 1)
      for (const by of [1, -1]) {
        add(by > 0 ? "count + 1" : "count - 1", item, `${line} | ${whole + by} of`, [
          { start: names[0]!.start, end: names[0]!.start, text: `${whole + by} of ` },
        ]);
      }
  }
  if (word === "turn" && names.length > 0)
    for (const other of facts.positions) {
      if (other !== names[0]!.text)
        add("change a position", item, `${line} | ${other}`, [
          { start: names[0]!.start, end: names[0]!.end, text: other },
        ]);
    }
  if (undoing.has(word) || word === "fit" || word === "tighten")
    for (const name of names) {
      const at = facts.fasteners.indexOf(name.text);
      if (at < 0 || facts.fasteners.length < 2) continue;
      // The next one of the unit that the line does not name itself.
      for (let k = 1; k < facts.fasteners.length; k++) {
        const other = facts.fasteners[(at + k) % facts.fasteners.length]!;
        if (names.some((one) => one.text === other)) continue;
        add(
          "fastener renamed",
          item,
          `${line} | ${name.text} as ${other}`,
          [{ start: name.start, end: name.end, text: other }],
          false,
          [],
          other,
        );
        break;
      }
    }
  if (word === "renew")
    for (const name of names) {
      if (facts.isOneTime(name.text))
        add("one-time part reused", item, `${line} | reuse ${name.text}`, [
          { start: tokens[item.first]!.startOffset, end: tokens[item.first]!.endOffset! + 1, text: "reuse" },
        ]);
    }
  if ((word === "remove" || word === "undo") && item.entry!.place === "step")
    for (const name of names) {
      if (facts.isOneTime(name.text))
        add("one-time part reused", item, `${line} | reuse ${name.text}`, [
          { start: endOf(tree, item), end: endOf(tree, item), text: `  reuse ${name.text}` },
        ]);
    }
}

/** N·m for lb-ft and back: what one takes from the wrong column. */
const otherUnit: Readonly<Record<string, string>> = { "N·m": "lb-ft", "lb-ft": "N·m", "lb-in": "lb-ft" };

function declaredMutants(tree: Tree, item: Item, add: Add): void {
  const { tokens } = tree.scan,
    word = item.entry?.word ?? "",
    line = written(tree, item);
  const at = (i: number): { start: number; end: number } => ({
    start: tokens[i]!.startOffset,
    end: tokens[i]!.endOffset! + 1,
  });
  const stop = item.block ? item.block.first : item.last + 1;
  if (word === "precaution") {
    add("drop a precaution", item, `${line} | dropped`, [emptied(tree, item)], true);
    for (let i = item.first; i < stop; i++) {
      const amount = tokens[i + 1];
      if (tokens[i]!.text === "wait" && amount && Number.isFinite(Number(amount.text)))
        add("halve a wait", item, `${line} | halved`, [{ ...at(i + 1), text: String(Number(amount.text) / 2) }], true);
    }
  }
  if (word === "torque" || word === "stages") {
    const k = tokens.findIndex((token, i) => i >= item.first && i < stop && otherUnit[token.text] !== undefined);
    if (k >= 0)
      add(
        "torque unit swapped",
        item,
        `${line} | ${otherUnit[tokens[k]!.text]}`,
        [{ ...at(k), text: otherUnit[tokens[k]!.text]! }],
        true,
      );
  }
  if (word === "count" && item.entry?.place !== "tool") {
    const number = Number(tokens[item.first + 1]?.text);
    if (Number.isInteger(number))
      for (const by of [1, -1])
        if (number + by > 0)
          add(
            by > 0 ? "count + 1" : "count - 1",
            item,
            `${line} | ${number + by}`,
            [{ ...at(item.first + 1), text: String(number + by) }],
            true,
          );
  }
}

// The texts of an author that speak of a danger: what a check of wording looks at, and no other line.

import type { SourceFile } from "../names/project.ts";
import { textOf } from "../names/strings.ts";
import { eachItem, type Item } from "../syntax/index.ts";
import { precautions, signals } from "../tables/index.ts";

export interface SaidText {
  readonly start: number;
  readonly end: number;
  readonly text: string;
  /** The word that opens its item, and where that stands. */
  readonly word: string;
  readonly item: Item;
}

/** Every text of an item, in order. */
export function textsOf(file: SourceFile, item: Item): SaidText[] {
  const { tokens } = file.tree.scan;
  return item.arguments
    .filter(({ slot }) => slot === "string")
    .map(({ first }) => {
      const token = tokens[first]!;
      return {
        start: token.startOffset,
        end: token.endOffset! + 1,
        text: textOf(token),
        word: item.entry?.word ?? "",
        item,
      };
    });
}

/** All texts of a file. */
export function allTexts(file: SourceFile): SaidText[] {
  const found: SaidText[] = [];
  eachItem(file.tree.items, (item) => void found.push(...textsOf(file, item)));
  return found;
}

/** In a hazard, in a message with a signal word, at a precaution, and in a step that takes a precaution or gives one up. */
export function textsBesideHazards(file: SourceFile): SaidText[] {
  const seen = new Set<Item>(),
    found: SaidText[] = [];
  const take = (item: Item): void => {
    if (seen.has(item)) return;
    seen.add(item);
    found.push(...textsOf(file, item));
  };
  eachItem(file.tree.items, (item) => {
    const word = item.entry?.word ?? "";
    if (isBeside(word) || isPrecaution(word)) take(item);
    if (word === "hazard" || ((word === "step" || word === "finish") && takesPrecaution(item)))
      eachItem(item.block?.items ?? [], take);
  });
  return found.sort((a, b) => a.start - b.start);
}

const isPrecaution = (word: string): boolean => word === "restore" || Object.hasOwn(precautions, word);
export const isSignal = (word: string): boolean => Object.hasOwn(signals, word);

/** Lines that speak of a danger wherever they stand. */
const isBeside = (word: string): boolean => word === "hazard" || word === "no" || word === "warn" || isSignal(word);

function takesPrecaution(step: Item): boolean {
  let takes = false;
  eachItem(step.block?.items ?? [], (item) => {
    takes ||= isPrecaution(item.entry?.word ?? "");
  });
  return takes;
}

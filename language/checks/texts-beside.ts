// The texts of an author that speak of a danger: what a check of wording looks at, and no other line.

import { kept } from "../model/kept.ts";
import type { SourceFile } from "../names/project.ts";
import { textOf } from "../names/strings.ts";
import type { Item } from "../syntax/index.ts";
import { precautions, signals } from "../tables/index.ts";
import { itemsOf } from "./items-of.ts";

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
  const found: SaidText[] = [];
  addTexts(file, item, found);
  return found;
}

function addTexts(file: SourceFile, item: Item, to: SaidText[]): void {
  const given = item.arguments;
  for (let i = 0; i < given.length; i++) {
    const { slot, first } = given[i]!;
    if (slot !== "string") continue;
    const token = file.tree.scan.tokens[first]!;
    to.push({
      start: token.startOffset,
      end: token.endOffset! + 1,
      text: textOf(token),
      word: item.entry?.word ?? "",
      item,
    });
  }
}

/** All texts of a file. */
export function allTexts(file: SourceFile): SaidText[] {
  const found: SaidText[] = [];
  for (const item of itemsOf(file)) addTexts(file, item, found);
  return found;
}

const beside = kept<SourceFile, readonly SaidText[]>();

/** In a hazard, in a message with a signal word, at a precaution, and in a step that takes a precaution or gives one up. */
export function textsBesideHazards(file: SourceFile): readonly SaidText[] {
  return beside(file, () => {
    const found: SaidText[] = [];
    const look = (items: readonly Item[], all: boolean): void => {
      for (let i = 0; i < items.length; i++) {
        const item = items[i]!,
          word = item.entry?.word ?? "";
        if (all || besideWords.has(word)) addTexts(file, item, found);
        if (item.block)
          look(
            item.block.items,
            all || word === "hazard" || ((word === "step" || word === "finish") && holdsPrecaution(item.block.items)),
          );
      }
    };
    look(file.tree.items, false);
    return found;
  });
}

const precautionWords: ReadonlySet<string> = new Set([...Object.keys(precautions), "restore"]);
export const isSignal = (word: string): boolean => Object.hasOwn(signals, word);

/** Lines that speak of a danger wherever they stand. */
const besideWords: ReadonlySet<string> = new Set([...precautionWords, ...Object.keys(signals), "hazard", "no", "warn"]);

function holdsPrecaution(items: readonly Item[]): boolean {
  for (let i = 0; i < items.length; i++) {
    const { entry, block } = items[i]!;
    if ((entry && precautionWords.has(entry.word)) || (block && holdsPrecaution(block.items))) return true;
  }
  return false;
}

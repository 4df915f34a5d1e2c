// Words that give an assurance beside a hazard. Nobody can promise that on paper.

import { precautions, signals } from "../../tables/index.ts";
import { eachItem, type Item } from "../../syntax/index.ts";
import { check } from "../check.ts";
import { clearingWord } from "../clearing-words.ts";

export default check({
  code: "wording/clears",
  title: "A word that clears a danger",
  severity: "warning",
  why: "Text beside a hazard says what to do and what to read off, never that it is safe: the reader believes it on the day when it is not so.",
  source: "IEC/IEEE 82079-1; ANSI Z535.6",
  fails: `
    unit box "Box" {
      base foot
      part foot "Foot"
      hazard mains electrical danger "Mains" {
        on foot  source mains
        precaution isolate "Open the isolator: the box is now safe."
    #                      ^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^^ "safe" clears a danger: say what to do, or what to read off
        precaution prove-dead "Test all phases."
      }
    }
  `,
  mended: `
    unit box "Box" {
      base foot
      part foot "Foot"
      hazard mains electrical danger "Mains" {
        on foot  source mains
        precaution isolate "Open the isolator, lock it."
        precaution prove-dead "Test all phases."
      }
    }
  `,
  *file(file) {
    const { tokens } = file.tree.scan,
      seen = new Set<Item>(),
      found: { start: number; end: number; word: string }[] = [];
    const judge = (item: Item): void => {
      if (seen.has(item)) return;
      seen.add(item);
      for (const { slot, first } of item.arguments) {
        if (slot !== "string") continue;
        const { startOffset: start, endOffset } = tokens[first]!,
          end = endOffset! + 1,
          word = clearingWord(file.text.slice(start, end).replaceAll('"', " ").trim());
        if (word !== undefined) found.push({ start, end, word });
      }
    };
    eachItem(file.tree.items, (item) => {
      const word = item.entry?.word ?? "";
      if (isBeside(word) || isPrecaution(word)) judge(item);
      // All that is said in a hazard, and in a step that takes a precaution or gives one up.
      if (word === "hazard" || ((word === "step" || word === "finish") && takesPrecaution(item)))
        eachItem(item.block?.items ?? [], judge);
    });
    for (const { word, start, end } of found.sort((a, b) => a.start - b.start))
      yield {
        at: { file: file.path, start, end },
        says: `"${word}" clears a danger: say what to do, or what to read off`,
      };
  },
});

const isPrecaution = (word: string): boolean => word === "restore" || Object.hasOwn(precautions, word);

/** Lines that speak of a danger wherever they stand. */
const isBeside = (word: string): boolean =>
  word === "hazard" || word === "no" || word === "warn" || Object.hasOwn(signals, word);

function takesPrecaution(step: Item): boolean {
  let takes = false;
  eachItem(step.block?.items ?? [], (item) => {
    takes ||= isPrecaution(item.entry?.word ?? "");
  });
  return takes;
}

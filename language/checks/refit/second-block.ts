// Two refit blocks in one step: which of them stands first on the way back nobody can read.

import type { SourceFile } from "../../names/project.ts";
import type { Item } from "../../syntax/index.ts";
import { check, type Draft, type Say } from "../check.ts";
import { itemsWith } from "../items-of.ts";

export default check({
  code: "refit/second-block",
  title: "A second refit block",
  severity: "warning",
  why: "A step has one way back. With two blocks each adds its lines around the same reverse, and the reader of the text cannot tell their order: write them as one.",
  source: "common practice",
  fails: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid" { rests on foot }
    }
    procedure strip "Strip" for box {
      aim lid off
      step "Open" {
        remove lid
        refit { note "The lid dry." }
        refit { clean foot }
    #   ^^^^^ This step has a refit block already: write one
      }
    }
  `,
  mended: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid" { rests on foot }
    }
    procedure strip "Strip" for box {
      aim lid off
      step "Open" {
        remove lid
        refit { note "The lid dry."  clean foot }
      }
    }
  `,
  file(file, say) {
    if (itemsWith(file, "refit").length < 2) return;
    for (const item of itemsWith(file, "procedure")) secondIn(file, item, say);
    for (const item of itemsWith(file, "step")) secondIn(file, item, say);
  },
});

/** Those right in it: blocks under a condition are each for another build. */
function secondIn(file: SourceFile, { entry, block }: Item, say: Say): void {
  const { tokens } = file.tree.scan,
    [first, ...more] = (block?.items ?? []).filter((one) => one.entry?.word === "refit" && one.block && !one.broken);
  for (const one of more)
    say({
      at: placeOf(file, one),
      says: `This ${entry!.word} has a refit block already: write one`,
      because: [{ says: "the first stands here", at: placeOf(file, first!) }],
    });

  function placeOf({ path }: SourceFile, one: Item): Draft["at"] {
    const word = tokens[one.first]!;
    return { file: path, start: word.startOffset, end: word.endOffset! + 1 };
  }
}

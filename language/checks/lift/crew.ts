// An act that takes more people than the procedure says it has.

import type { Item } from "../../syntax/index.ts";
import type { SourceFile } from "../../names/project.ts";
import { check, type Say } from "../check.ts";
import { holdsWord } from "../items-of.ts";

export default check({
  code: "lift/crew",
  title: "More people than the crew has",
  severity: "warning",
  why: "Who plans the work reads the crew. The second pair of hands is called for while the part already hangs.",
  source: "common practice",
  fails: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid" { mass 30 kg  rests on foot }
    }
    procedure strip "Strip" for box {
      aim lid off
      crew 1
      step "Open" {
        lift lid by 2 people
    #            ^^^^^^^^^^^ 2 people are needed here, and the crew is 1: plan for as many
      }
    }
  `,
  mended: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid" { mass 30 kg  rests on foot }
    }
    procedure strip "Strip" for box {
      aim lid off
      crew 2
      step "Open" {
        lift lid by 2 people
      }
    }
  `,
  file(file, say) {
    if (!holdsWord(file, "crew")) return;
    for (const { word, item } of file.declarations) {
      if (word !== "procedure" || !item.block) continue;
      const crew = item.block.items.find((line) => line.entry?.word === "crew" && !line.broken);
      if (crew) moreThan(file, crew, item.block.items, say);
    }
  },
});

function moreThan(file: SourceFile, crew: Item, items: readonly Item[], say: Say): void {
  const { tokens } = file.tree.scan,
    said = tokens[crew.arguments[0]?.first ?? crew.first]!,
    most = Number(said.text);
  for (const item of items) {
    for (let i = item.broken ? item.last : item.first; i + 2 <= (item.block ? item.block.first : item.last); i++) {
      const [by, count, people] = [tokens[i]!, tokens[i + 1]!, tokens[i + 2]!];
      if (by.text !== "by" || people.text !== "people" || !(Number(count.text) > most)) continue;
      say({
        at: { file: file.path, start: by.startOffset, end: people.endOffset! + 1 },
        // One figure of the crew answers them all.
        answer: { key: `crew at ${file.path} ${said.startOffset}`, again: "and here" },
        says: `${count.text} people are needed here, and the crew is ${said.text}: plan for as many`,
        because: [
          { says: "the crew is said here", at: { file: file.path, start: said.startOffset, end: said.endOffset! + 1 } },
        ],
      });
    }
    if (item.block) moreThan(file, crew, item.block.items, say);
  }
}

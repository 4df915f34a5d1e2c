// Every block of every procedure and declaration taken out whole, head and braces with it, and the table of what was found.
// `node tests/mutation/blocks.ts` writes it.

import { writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import type { Item } from "../../language/syntax/index.ts";
import { editTable, type Edited } from "./edit-table.ts";
import { atWork } from "./judge.ts";
import { lineAt } from "./mutant.ts";
import { scenes } from "./scenes.ts";

export const classes = ["in a declaration", "declaration", "step", "in a procedure", "procedure"] as const;
type Class = (typeof classes)[number];

/** Where the block stands decides what its loss means. */
function classOf(word: string, parents: readonly string[]): Class {
  const [top] = parents;
  if (top === "procedure") return word === "step" ? "step" : "in a procedure";
  if (top === undefined) return word === "procedure" ? "procedure" : "declaration";
  return parents.length === 1 ? "declaration" : "in a declaration";
}

export const editBlocks = (): Edited<Class>[] =>
  scenes().flatMap((scene) => {
    const { texts, checked, found } = atWork(scene);
    return scene.files.flatMap((file) => {
      const text = texts.get(file)!,
        { tree } = checked.project.files.get(file)!,
        { tokens } = tree.scan,
        edited: Edited<Class>[] = [];
      const walk = (items: readonly Item[], parents: readonly string[]): void => {
        for (const item of items) {
          if (!item.block) continue;
          const word = item.entry?.word ?? "",
            start = tokens[item.first]!.startOffset,
            end = tokens[item.last]!.endOffset! + 1;
          // Line ends stay, so that what is found keeps its line.
          const without = text.slice(0, start) + text.slice(start, end).replaceAll(/[^\n]/g, "") + text.slice(end);
          edited.push({
            class: classOf(word, parents),
            file,
            line: lineAt(text, start),
            says: text.slice(start, end).split("\n")[0]!.trim(),
            findings: found(file, without),
          });
          walk(item.block.items, [...parents, word]);
        }
      };
      walk(tree.items, []);
      return edited;
    });
  });

export const tableOf = (edited: readonly Edited<Class>[]): string =>
  editTable(
    edited,
    classes,
    "Blocks taken out of every procedure",
    `Made by \`node tests/mutation/blocks.ts\`; a test holds it to the run. Each block, of declarations, steps and conditions, taken out with
its head and braces. No finding means that the text is still true without it. A declaration is one mistake. A step of a
strip is one too where a step at one place could have done all that its lines lack to parts that belong together
(\`language/checks/missing-step.ts\`). Else it is as many as there are lines left that ask for something it did, each said at its own line:
of parts that have nothing to do with each other, a step of a way back, a strip and its written way back, a name that is lost beside what
it stood for. Those are below, each with what was found.`,
  );

if (process.argv[1] === fileURLToPath(import.meta.url))
  writeFileSync(fileURLToPath(new URL("blocks.md", import.meta.url)), tableOf(editBlocks()));

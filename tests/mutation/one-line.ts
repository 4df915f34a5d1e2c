// One-line edits of every procedure, and the table of what each class gave. `node tests/mutation/one-line.ts` writes it.

import { writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { editTable, type Edited } from "./edit-table.ts";
import { atWork, type SceneAtWork } from "./judge.ts";
import { scenes } from "./scenes.ts";

export const classes = ["line deleted", "neighbours swapped", "one fastener fewer"] as const;

type Class = (typeof classes)[number];

const ofMutants: Readonly<Record<string, Class>> = {
  "swap two neighbours": "neighbours swapped",
  "count - 1": "one fastener fewer",
};

/** Every line of the file that says something, emptied: acts and declarations, the lines that open a block and those that close one. */
function* withoutOneLine({ scene, texts, found }: SceneAtWork): Generator<Edited<Class>> {
  for (const file of scene.files) {
    const lines = texts.get(file)!.split("\n");
    for (const [i, text] of lines.entries()) {
      if (/^\s*(?:#|$)/.test(text)) continue;
      const findings = found(file, [...lines.slice(0, i), "", ...lines.slice(i + 1)].join("\n"));
      yield { class: "line deleted", file, line: i + 1, says: text.trim(), findings };
    }
  }
}

export const editOneLine = (): Edited<Class>[] =>
  scenes().flatMap((scene) => {
    const work = atWork(scene);
    const acts = work.mutants.flatMap((mutant): Edited<Class>[] => {
      const name = mutant.declared ? undefined : ofMutants[mutant.class];
      if (!name) return [];
      const { findings } = work.judge(mutant);
      return [{ class: name, file: mutant.file, line: mutant.line, says: mutant.says, findings }];
    });
    return [...withoutOneLine(work), ...acts];
  });

export const tableOf = (edited: readonly Edited<Class>[]): string =>
  editTable(
    edited,
    classes,
    "One-line edits of every procedure",
    `Made by \`node tests/mutation/one-line.ts\`; a test holds it to the run. Each line that says something deleted, of declarations and of
steps, those that open and close a block too; neighbours swapped; one fastener fewer. No finding means that the text is still true, or
that nothing in it speaks against the edit: why an act is not missed stands in \`report.md\`.`,
  );

if (process.argv[1] === fileURLToPath(import.meta.url))
  writeFileSync(fileURLToPath(new URL("one-line.md", import.meta.url)), tableOf(editOneLine()));

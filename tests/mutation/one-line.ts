// One-line edits of the published procedures and of two written from knowledge of the trade, and the table of what each class gave. `node tests/mutation/one-line.ts` writes it.

import { writeFileSync } from "node:fs";
import { fileURLToPath } from "node:url";
import { atWork, type Judged } from "./judge.ts";
import { scenes } from "./scenes.ts";

const single: ReadonlySet<string> = new Set([
  "drop an action",
  "drop a precaution",
  "drop a drain",
  "swap two neighbours",
  "count - 1",
]);

const fromTheTrade: ReadonlySet<string> = new Set(["examples/lift-cylinder", "examples/milling-spindle"]);

export const judgeOneLine = (): Judged[] =>
  scenes()
    .filter(({ name }) => name.startsWith("tests/procedures/") || fromTheTrade.has(name))
    .flatMap((scene) => {
      const work = atWork(scene);
      return work.mutants.filter((mutant) => !mutant.declared && single.has(mutant.class)).map(work.judge);
    });

export function tableOf(judged: readonly Judged[]): string {
  const row = (name: string, list: readonly Judged[]): string => {
    const none = list.filter(({ findings }) => findings.length === 0).length,
      one = list.filter(({ findings }) => findings.length === 1).length;
    return `| ${name} | ${list.length} | ${none} | ${one} | ${list.length - none - one} |`;
  };
  const lines = [
    "# One-line edits of the published procedures, and of a cylinder and a spindle",
    "",
    "Made by `node tests/mutation/one-line.ts`. No finding means that the text is still true, or that nothing in it speaks against the edit: which of the two,",
    "and why, stands in `report.md` for each.",
    "",
  ];
  for (const [file, list] of Map.groupBy(judged, ({ mutant }) => mutant.file)) {
    lines.push(
      `## ${file}`,
      "",
      "| edit | made | no finding | one finding | more |",
      "| --- | ---: | ---: | ---: | ---: |",
    );
    for (const [name, of] of Map.groupBy(list, ({ mutant }) =>
      mutant.class === "count - 1"
        ? "one fastener fewer"
        : mutant.class === "swap two neighbours"
          ? "neighbours swapped"
          : "line deleted",
    ))
      lines.push(row(name, of));
    lines.push(row("**all**", list), "");
  }
  return lines.join("\n");
}

if (process.argv[1] === fileURLToPath(import.meta.url))
  writeFileSync(fileURLToPath(new URL("one-line.md", import.meta.url)), tableOf(judgeOneLine()));

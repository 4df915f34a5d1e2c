// Small machines that hold every construct of real machines: each is clean in every build, unchanged by the formatter, and means and
// prints what stands beside it (`cases/*.txt`, read by a person before it was kept).

import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { eachItem, parse } from "../../language/syntax/index.ts";
import { checkProject } from "../../language/workspace/check-project.ts";
import { worldOf } from "../bench/refit/stage.ts";
import { expectFormatted, manualOf, stand } from "./stand.ts";

const folder = join(import.meta.dirname, "cases"),
  cases = readdirSync(folder)
    .filter((name) => name.endsWith(".strip"))
    .sort();
/** Builds that are printed beside the plain one. */
const builds: Readonly<Record<string, readonly string[]>> = {
  branches: ["long with choice 2 and heater and bore failing and play failing and If the wheel is dirty"],
  "new-parts": ["drum-size failing"],
};
/** What a project of one file cannot have: pictures and finished trials are told of elsewhere. */
const beside = new Set(["names/unused", "refit/no-test"]);

for (const name of cases) {
  const text = readFileSync(join(folder, name), "utf8"),
    id = name.replace(".strip", "");

  test(`${id}: clean in every build`, () => {
    const checked = checkProject(worldOf({ "stage.strip": text }), ["stage.strip"]);
    expect(checked.findings.filter((f) => !beside.has(f.code)).map((f) => `${f.code}: ${f.says} ${f.builds}`)).toEqual(
      [],
    );
    for (const { problems } of checked.performances) expect(problems).toEqual([]);
  });

  test(`${id}: the formatter leaves its meaning and its own form`, () => {
    const once = expectFormatted(text),
      words = (of: string): string[] => {
        const list: string[] = [];
        eachItem(parse(of).items, (item) => {
          list.push(item.entry?.word ?? "");
        });
        return list;
      };
    expect(words(once)).toEqual(words(text));
    expect(told(once, id)).toBe(told(text, id));
  });

  test(`${id}: bench, refit and print`, async () => {
    await expect(told(text, id)).toMatchFileSnapshot(join(folder, `${id}.txt`));
  });
}

/** Everything that is told of a case: its procedures in the plain build, and in those named above. */
function told(text: string, id: string): string {
  const checked = checkProject(worldOf({ "stage.strip": text }), ["stage.strip"]),
    out: string[] = [];
  for (const procedure of new Set(checked.performances.map((p) => p.procedure.id)))
    for (const build of [undefined, ...(builds[id] ?? [])]) {
      const s = stand(text, procedure, build),
        { document } = manualOf(s),
        chapter = document.chapters[0]!;
      out.push(
        `${procedure}${build === undefined ? "" : ` [${build}]`}`,
        ...chapter.needs.map(({ words, then }) => `  before: ${words}${then ? `, then: ${then}` : ""}`),
      );
      for (const [half, lines] of [
        ["strip", s.strip],
        ["refit", s.refit],
        ["finish", s.finish],
      ] as const)
        out.push(...lines.map((line) => `  ${half}: ${line}`));
      out.push(
        ...s.bill.map(
          (line) =>
            `  bill: ${line.name}, ${
              line.perUnit.pieces > 0
                ? `${line.perUnit.pieces} off`
                : line.perUnit.amounts.map((a) => `${a.value} ${a.unit}`).join(" + ") || "amount not given"
            }, ${line.grade}${line.reasons.length > 0 ? ` (${line.reasons.join(", ")})` : ""}`,
        ),
        "",
      );
    }
  return `${out.join("\n").trimEnd()}\n`;
}

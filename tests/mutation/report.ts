// The report of a run: what was made, what was found, and every mutant that was not found as one finding at the right line, with its
// reason. The same run gives the same text.

import { classes } from "./mutant.ts";
import type { Judged, Verdict } from "./judge.ts";

const verdicts: readonly Verdict[] = ["equivalent", "only statement", "found", "found otherwise", "survivor"];
const count = (list: readonly Judged[], verdict: Verdict): number =>
  list.filter((one) => one.verdict === verdict).length;

export interface Score {
  readonly found: number;
  /** Those that are neither equivalent nor the only statement of their fact. */
  readonly of: number;
}

export function scoreOf(list: readonly Judged[]): Score {
  const found = count(list, "found");
  return { found, of: found + count(list, "found otherwise") + count(list, "survivor") };
}
export const percent = ({ found, of }: Score): string => (of === 0 ? "none" : `${((100 * found) / of).toFixed(1)} %`);

export function reportOf(judged: readonly Judged[]): string {
  const files = [...new Set(judged.map((one) => one.mutant.file))].sort(),
    lines: string[] = [];
  const heading =
    "made | equivalent | only statement | found as one at the right line | found otherwise | survived | found of those that count";
  const row = (name: string, list: readonly Judged[]): string =>
    `| ${name} | ${list.length} | ${verdicts.map((v) => count(list, v)).join(" | ")} | ${percent(scoreOf(list))} |`;
  const table = (name: string, rows: readonly string[]): void => {
    lines.push(`| ${name} | ${heading} |`, `| --- |${" ---: |".repeat(7)}`, ...rows, "");
  };
  lines.push(
    "# Mutation of procedures",
    "",
    "Made by `node tests/mutation/write-report.ts`; a test holds it to the run. Every single-step mutant of every example machine and of the",
    "published procedures, one edit each, checked as a whole project. What the columns mean:",
    "",
    "- **equivalent**: two neighbours swapped, with the same findings, the same states at the end of strip and refit, and the same partial order.",
    "- **only statement**: nothing found, and nothing in the text to hold it against (the rules stand in `survivors.ts`); listed below, counted apart.",
    "- **found**: one new finding, hints counted, at the changed line, at one that asked for what it did or names the same things, or, for what",
    "  is missing at the end, at the first act of the step that took it off (the rules stand in `blame.ts`).",
    "- **found otherwise**: more than one finding, or another line. **Survived**: nothing found, though another line asks for it.",
    "",
  );
  table("class", [
    ...classes.map((name) =>
      row(
        name,
        judged.filter((one) => one.mutant.class === name),
      ),
    ),
    row("**all**", judged),
  ]);
  for (const file of files) {
    const of = judged.filter((one) => one.mutant.file === file);
    lines.push(`## ${file}`, "");
    table("class", [
      ...classes.flatMap((name) => {
        const list = of.filter((one) => one.mutant.class === name);
        return list.length === 0 ? [] : [row(name, list)];
      }),
      row("**all**", of),
    ]);
  }
  for (const [verdict, title] of [
    ["survivor", "Survivors"],
    ["found otherwise", "Found otherwise"],
    ["only statement", "Only statements of their fact"],
  ] as const) {
    lines.push(`## ${title}`, "");
    for (const { mutant, findings, why } of judged.filter((one) => one.verdict === verdict)) {
      lines.push(`- \`${mutant.file}:${mutant.line}\` ${mutant.class}: \`${short(mutant.says)}\`. ${why}`);
      for (const finding of findings) lines.push(`  - ${finding}`);
    }
    lines.push("");
  }
  return `${lines.join("\n").trimEnd()}\n`;
}

const short = (text: string): string =>
  (text.length > 150 ? `${text.slice(0, 100)} … ${text.slice(-45)}` : text).replaceAll("`", "'");

// The pages speak of what is there: examples compile, links lead somewhere, every word and every check is on its page.

import { existsSync, globSync } from "node:fs";
import { dirname, join } from "node:path";
import { expect, test } from "vitest";
import { commandNames } from "../../language/cli/main.ts";
import { checks } from "../../language/checks/registry.ts";
import { eachItem, parse } from "../../language/syntax/index.ts";
import { benchTextOf } from "../../language/vocabulary/at-the-bench.ts";
import { allWords, vocabulary } from "../../language/vocabulary/index.ts";
import { checkProject } from "../../language/workspace/check-project.ts";
import { readSettings } from "../../language/workspace/settings-schema.ts";
import { stripdown } from "../support/command-line.ts";
import { memoryWorld } from "../support/memory-world.ts";
import { reportOf } from "../../language/outputs/findings/report.ts";
import { findingsAsText } from "../../language/outputs/findings/text.ts";
import { marked, unmarked } from "../support/marked.ts";
import { fencesOf, pages, project, read, whole } from "./fences.ts";

const findingsOf = (text: string): string[] =>
  checkProject(memoryWorld(new Map([["/p/pump.strip", text]])), ["/p/pump.strip"]).findings.map(
    (f) => `${f.severity} ${f.code}: ${f.says}`,
  );

test("the first look of the README gives the finding that it prints, and none with all nuts undone", () => {
  const text = /```strip\n([\s\S]*?)```/.exec(read("README.md"))![1]!;
  expect(findingsOf(text)).toEqual([
    "error sequence/still-held: Casing cannot come off: still held by 2 of 8 Casing nuts",
  ]);
  const told = findingsAsText(
    reportOf(checkProject(memoryWorld(new Map([["/p/pump.strip", text]])), ["/p/pump.strip"]), (path) =>
      path.replace("/p/", ""),
    ),
    { colour: false, quiet: true },
  );
  expect(read("README.md")).toContain(told.trimEnd().replace(/^/gm, "    "));
  expect(findingsOf(text.replace("undo 6 of casing-nuts", "undo casing-nuts"))).toEqual([]);
});

test("the way back and the bill that the README shows are those of the dairy pump", async () => {
  const page = read("README.md");
  const shown = [
    [["refit", "examples/dairy-pump"], "R2.1   Fit the pump casing."],
    [["bill", "examples/dairy-pump", "--units", "12"], "Casing ring, 183.82"],
  ] as const;
  for (const [argv, first] of shown) {
    const { out } = await stripdown(project, argv),
      lines = out.split("\n").map((line) => line.trim());
    const block = page
      .slice(page.indexOf(first))
      .split("\n\n")[0]!
      .split("\n")
      .map((line) => line.trim());
    expect(block.length).toBeGreaterThan(1);
    const from = lines.indexOf(block[0]!);
    expect(lines.slice(from, from + block.length)).toEqual(block);
  }
});

test("the README names every command, and no other", () => {
  const named = [...read("README.md").matchAll(/^\| `(\w+)` \|/gm)].map(([, name]) => name!);
  expect(named.sort()).toEqual([...commandNames].sort());
});

test("the settings that the README shows are taken without a remark", () => {
  const json = /```json\n([\s\S]*?)```/.exec(read("README.md"))![1]!,
    settings = readSettings(json, "/p/stripdown.json");
  expect("findings" in settings ? settings.findings : settings.problem).toEqual([]);
});

test("links between pages lead somewhere", () => {
  const broken: string[] = [];
  for (const page of pages)
    for (const [, target] of read(page).matchAll(/\]\(([^)#\s]+)\)/g)) {
      if (!/^[a-z]+:/.test(target!) && !existsSync(join(project, dirname(page), target!)))
        broken.push(`${page}: ${target}`);
    }
  expect(broken).toEqual([]);
});

test("files and folders that the pages name are there", () => {
  const missing = ["README.md", "DEVELOPERS.md"].flatMap((page) =>
    [...read(page).matchAll(/`((?:tests|language|examples|client|server|shared|syntaxes|\.build|\.ci)\/[\w./-]+)`/g)]
      .filter(([, path]) => !existsSync(join(project, path!)))
      .map(([, path]) => `${page}: ${path}`),
  );
  expect(missing).toEqual([]);
});

test("scripts that the pages name are there", () => {
  const { scripts } = JSON.parse(read("package.json")) as { scripts: Record<string, string> };
  const named = ["README.md", "DEVELOPERS.md"].flatMap((page) =>
    [...read(page).matchAll(/npm run ([\w:]+)/g)].map(([, name]) => name!),
  );
  expect(named.filter((name) => scripts[name] === undefined)).toEqual([]);
});

test("every word in every place and every check is on its page", () => {
  const words = read("language/reference/words.md"),
    page = read("language/reference/checks.md");
  expect(vocabulary.filter((entry) => !words.includes(`### \`${entry.word}\``)).map((entry) => entry.word)).toEqual([]);
  expect(checks.filter((check) => !page.includes(`## ${check.code}\n`)).map((check) => check.code)).toEqual([]);
});

test("of every word in every place is said what it does at the bench, how it comes back and how it prints", () => {
  for (const entry of vocabulary)
    for (const text of Object.values(benchTextOf(entry)))
      expect(text.length, `${entry.word} ${entry.place}`).toBeGreaterThan(2);
});

test("every word is used in each kind of block where it may stand, in an example, a test or a page", () => {
  // What stands in a step stands in a refit block and in `finish` by the same row of the table.
  const kindOf = (place: string): string => (place === "refit" || place === "finish" ? "step" : place),
    used = new Set<string>();
  const take = (text: string): void =>
    eachItem(parse(text).items, ({ entry, broken }) => {
      if (entry && !broken) used.add(`${entry.word} ${kindOf(entry.place)}`);
    });
  for (const file of globSync("{examples,tests}/**/*.strip", { cwd: project })) take(read(file));
  for (const page of pages) for (const fence of fencesOf(page, "strip")) take(unmarked(whole(fence)));
  expect(vocabulary.map((entry) => `${entry.word} ${kindOf(entry.place)}`).filter((one) => !used.has(one))).toEqual([]);
});

test("every word occurs in an example or a test text, not only in its own entry", () => {
  const used = new Set<string>();
  for (const file of globSync("{examples,tests}/**/*.strip", { cwd: project }))
    eachItem(parse(read(file)).items, (item) => {
      if (item.entry) used.add(item.entry.word);
    });
  expect(allWords.filter((word) => !used.has(word))).toEqual([]);
});

test("every check occurs in the mistakes or has a failing example with its marks", () => {
  const mistakes = globSync("examples/mistakes/*.strip", { cwd: project }).map(
    (file) => /^# finds: (\S+)/.exec(read(file))?.[1],
  );
  expect(mistakes.filter((code) => code === undefined)).toEqual([]);
  expect(
    checks
      .filter((check) => !mistakes.includes(check.code) && marked(check.fails).marks.length === 0)
      .map((check) => check.code),
  ).toEqual([]);
});

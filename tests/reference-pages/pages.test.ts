// The pages speak of what is there: examples compile, links lead somewhere, every word and every check is on its page.

import { existsSync, globSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { expect, test } from "vitest";
import { checks } from "../../language/checks/registry.ts";
import { parse } from "../../language/syntax/index.ts";
import { vocabulary } from "../../language/vocabulary/index.ts";
import { checkProject } from "../../language/workspace/check-project.ts";
import { memoryWorld } from "../support/memory-world.ts";

const project = fileURLToPath(new URL("../..", import.meta.url));
const read = (path: string): string => readFileSync(join(project, path), "utf8");
const pages = ["README.md", "DEVELOPERS.md", ...globSync("language/reference/*.md", { cwd: project })].sort();

const findingsOf = (text: string): string[] => checkProject(memoryWorld(new Map([["/p/pump.strip", text]])), ["/p/pump.strip"]).findings.map((f) => `${f.severity} ${f.code}: ${f.says}`);

test("the first look of the README gives the finding that it prints, and none with all nuts undone", () => {
  const text = /```strip\n([\s\S]*?)```/.exec(read("README.md"))![1]!;
  expect(findingsOf(text)).toEqual(["error sequence/still-held: Casing cannot come off: still held by 2 of 8 Casing nuts"]);
  expect(read("README.md")).toContain("pump.strip:14:5: error Casing cannot come off: still held by 2 of 8 Casing nuts  sequence/still-held");
  expect(findingsOf(text.replace("undo 6 of casing-nuts", "undo casing-nuts"))).toEqual([]);
});

test("links between pages lead somewhere", () => {
  const broken: string[] = [];
  for (const page of pages) for (const [, target] of read(page).matchAll(/\]\(([^)#\s]+)\)/g)) if (!/^[a-z]+:/.test(target!) && !existsSync(join(project, dirname(page), target!))) broken.push(`${page}: ${target}`);
  expect(broken).toEqual([]);
});

test("every word in every place and every check is on its page", () => {
  const words = read("language/reference/words.md"), page = read("language/reference/checks.md");
  expect(vocabulary.filter((entry) => !words.includes(`| \`${entry.word}\``)).map((entry) => entry.word)).toEqual([]);
  expect(checks.filter((check) => !page.includes(`## ${check.code}\n`)).map((check) => check.code)).toEqual([]);
});

test("every word of the language occurs in an example or in the text of all words", () => {
  const texts = globSync("{examples,tests}/**/*.strip", { cwd: project }).map((file) => read(file)).join("\n");
  const used = new Set(parse("").scan.tokens.map((t) => t.text));
  for (const token of texts.split(/[^\p{L}\p{N}-]+/u)) used.add(token);
  expect([...new Set(vocabulary.map((entry) => entry.word))].filter((word) => !used.has(word))).toEqual([]);
});

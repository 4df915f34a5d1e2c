// Every rule of the bench has a place and a test that is named after it, and every file of the bench a rule, or a reason why not.

import { globSync, readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { noRules, rulePath, rules } from "./rules.ts";

const all = Object.values(rules).flat(),
  read = (path: string): string => readFileSync(path, "utf8");

test("the chapters are those of the page", () => {
  const chapters = [...read("language/reference/bench.md").matchAll(/^## (.*)$/gm)].map(([, title]) => title!);
  expect(Object.keys(rules)).toEqual(
    chapters.filter((title) => !["What the bench knows", "What no rule can find"].includes(title)),
  );
});

test("each place is there", () => {
  const missing = all.filter(([place]) => {
    const name = place.split("#")[1],
      text = read(rulePath(place));
    return name !== undefined && !new RegExp(`^(?:export )?(?:function|const) ${name}\\b`, "m").test(text);
  });
  expect(missing).toEqual([]);
});

test("each test is there", () => {
  const missing = all.filter(
    ([, tests, name]) =>
      !["test(", "])("].some((before) => read(`tests/${tests}.test.ts`).includes(`${before}${JSON.stringify(name)}`)),
  );
  expect(missing).toEqual([]);
});

test("each file of the bench holds a rule, or it is said why not", () => {
  const held = new Set(all.map(([place]) => place.split("#")[0]!)),
    files = globSync("language/bench/**/*.ts")
      .map((path) => path.replaceAll("\\", "/").replace("language/bench/", ""))
      .sort();
  expect(files.filter((file) => held.has(file) === file in noRules)).toEqual([]);
  expect(Object.keys(noRules).filter((file) => !files.includes(file))).toEqual([]);
});

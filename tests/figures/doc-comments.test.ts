// Nobody can check a formula by reading it alone: every public function of the figures names its source, and every file says what it holds.

import { readdirSync, readFileSync } from "node:fs";
import { expect, test } from "vitest";
import { figures } from "../../language/figures/registry.ts";

const folder = new URL("../../language/figures/", import.meta.url);
/** What reads arguments and lays out results reckons nothing. */
const plumbing = ["figure.ts", "hazard-figure.ts", "assumptions.ts", "registry.ts"];
const files = readdirSync(folder).filter((name) => name.endsWith(".ts"));

test.each(files)("%s says what it holds", (name) => {
  expect(readFileSync(new URL(name, folder), "utf8")).toMatch(/^\/\/ \S/);
});

test.each(files.filter((name) => !plumbing.includes(name)))(
  "every function of %s has a source in its comment",
  (name) => {
    const text = readFileSync(new URL(name, folder), "utf8"),
      without: string[] = [];
    for (const match of text.matchAll(
      /(?<comment>\/\*\*(?:(?!\*\/)[\s\S])*\*\/\n)?export (?:function (?<named>\w+)|const (?<arrow>\w+) = (?:<[^>]*>)?\([^=]*(?:=>|$))/gm,
    )) {
      const { comment = "", named, arrow } = match.groups!;
      if (!/[Ss]ource/.test(comment)) without.push((named ?? arrow)!);
    }
    expect(without).toEqual([]);
  },
);

test("every figure says where it holds and what it comes from", () => {
  for (const { name, validity, source, arguments: taken } of figures) {
    expect(validity.length, name).toBeGreaterThan(5);
    expect(source.length, name).toBeGreaterThan(5);
    for (const argument of taken) expect(argument.about.length, `${name} ${argument.name}`).toBeGreaterThan(3);
  }
});

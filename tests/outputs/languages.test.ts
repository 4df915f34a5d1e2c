// What is printed comes from the catalogue or from the author: nothing else, in no language.

import { expect, test } from "vitest";
import type { OutputOptions } from "../../language/outputs/output.ts";
import { defaultWording } from "../../language/outputs/wording/languages.ts";
import { foreign, pseudo, unmarkedPart } from "../support/pseudo-language.ts";
import { everyText, machines } from "./languages.ts";
import { options } from "./outputs-of.ts";

/** Unit signs beside places to write: the same in every language. */
const signs: ReadonlySet<string> = new Set(["mm", "lbf", "ft", "in", "bar"]);

test.each(Object.keys(machines))("%s: every printed text is marked as the catalogue's, or the author's own", (name) => {
  const input = machines[name]!(),
    marking: OutputOptions = {
      ...options,
      wording: pseudo(defaultWording),
      date: "2026-01-02",
      picture: () => ({ problem: foreign("no picture") }),
    },
    found = new Set<string>();
  expect(input.performances.length).toBeGreaterThan(0);
  for (const { of, text } of everyText(name, input, marking)) {
    for (const [word] of unmarkedPart(text).matchAll(/[A-Za-z][A-Za-z-]+/g))
      if (!input.own.has(word) && !signs.has(word) && !word.split("-").every((part) => input.own.has(part)))
        found.add(`${of}: ${word}`);
  }
  expect([...found]).toEqual([]);
});

// No English is left in what another language prints. Words that both languages spell alike are listed, and nothing else is let pass.

import { expect, test } from "vitest";
import type { OutputOptions } from "../../language/outputs/output.ts";
import { defaultWording, wordings } from "../../language/outputs/wording/languages.ts";
import type { Wording } from "../../language/outputs/wording/wording.ts";
import { foreign } from "../support/pseudo-language.ts";
import { everyText, machines } from "./languages.ts";
import { options } from "./outputs-of.ts";

/** Spelled alike in English and in that language, with the same or another meaning there. */
const alike: Readonly<Record<string, string>> = {
  de: "explosion fall filter last median moment motor name person original quart ring stand tag vibration video was",
  fr: "action charge codes danger dangers date document explosion faces force implant jet joint litre machine messages moment newton note notice original passes place point points quart signal signature source surface table ventilation volume",
  es: "cable final general horizontal manual metal motor newton original",
};

/** Signs and names that no language translates, and the label of a mark. */
const everywhere = "bar iso sha stripdown mark";

const found = new Map<string, ReadonlySet<string>>();

/** All words that a language prints over all machines, authors' names left out, in small letters. */
function wordsOf(wording: Wording): ReadonlySet<string> {
  const had = found.get(wording.tag);
  if (had) return had;
  const words = new Set<string>(),
    with_: OutputOptions = {
      ...options,
      wording,
      date: "2026-01-02",
      picture: () => ({ problem: foreign("no picture") }),
    };
  for (const [name, make] of Object.entries(machines)) {
    const input = make();
    for (const { text } of everyText(name, input, with_))
      for (const [word] of text.matchAll(/(?<![\p{L}\d·])\p{Script=Latin}{3,}(?![\p{L}\d·])/gu))
        if (!input.own.has(word)) words.add(word.toLowerCase());
  }
  found.set(wording.tag, words);
  return words;
}

const others = Object.values(wordings).filter(({ tag }) => !tag.startsWith("en"));

test.each(others.map(({ tag }) => tag))("%s: no word of the English catalogue is printed", (tag) => {
  const english = wordsOf(defaultWording),
    same = new Set(`${everywhere} ${alike[tag] ?? ""}`.split(" "));
  expect(english.size).toBeGreaterThan(300);
  expect(wordsOf(wordings[tag]!).size).toBeGreaterThan(300);
  expect([...wordsOf(wordings[tag]!)].filter((word) => english.has(word) && !same.has(word)).sort()).toEqual([]);
});

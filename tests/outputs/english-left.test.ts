// No English is left in what another language prints, and no sentence of a catalogue stands there that no machine of these tests prints.
// Words that both languages spell alike are listed, and nothing else is let pass.

import { globSync } from "node:fs";
import { basename, join } from "node:path";
import { expect, test } from "vitest";
import type { OutputOptions } from "../../language/outputs/output.ts";
import { defaultWording, wordings } from "../../language/outputs/wording/languages.ts";
import type { Wording } from "../../language/outputs/wording/wording.ts";
import { fixedTexts } from "../support/fixed-texts.ts";
import { foreign } from "../support/pseudo-language.ts";
import { everyText, machines } from "./languages.ts";
import { options } from "./outputs-of.ts";

/** Spelled alike in English and in that language, with the same or another meaning there. */
const alike: Readonly<Record<string, string>> = {
  de: "browser code downloads explosion fall filter hand last median moment motor name person original quart rest ring stand tag vibration video was",
  fr: "action air charge circuit clip code codes danger dangers date document explosion faces figure force implant infection instruments jet joint litre machine messages moment newton note notice original page part passes place point points purge quart signal signature source standard surface table ventilation volume",
  es: "cable final general horizontal manual metal motor newton original vertical",
};

/** Signs and names that no language translates, and the label of a mark. */
const everywhere = "bar min iso sha stripdown mark";

interface Printed {
  readonly words: ReadonlySet<string>;
  /** All texts after one another, in small letters, one space between words. */
  readonly text: string;
}

const plain = (text: string): string => text.replaceAll("\u00ad", "").replace(/\s+/g, " ").trim().toLowerCase();

const found = new Map<string, Printed>();

/** All that a language prints over all machines; of the words authors' names are left out, in small letters. */
function printedIn(wording: Wording): Printed {
  const had = found.get(wording.tag);
  if (had) return had;
  const words = new Set<string>(),
    texts: string[] = [],
    with_: OutputOptions = {
      ...options,
      wording,
      units: 2,
      date: "2026-01-02",
      baseAddress: "https://example.test/",
      picture: () => ({ problem: foreign("no picture") }),
    };
  for (const [name, make] of Object.entries(machines)) {
    const input = make();
    for (const { text } of everyText(name, input, with_)) {
      texts.push(plain(text));
      for (const [word] of text
        .replace(/https:\S+/g, "")
        .matchAll(/(?<![\p{L}\d·])\p{Script=Latin}{3,}(?![\p{L}\d·])/gu))
        if (!input.own.has(word)) words.add(word.toLowerCase());
    }
  }
  const made = { words, text: texts.join("\n") };
  found.set(wording.tag, made);
  return made;
}

/** The first language takes as long as all that its machines print. */
const patience = 120_000;

const others = Object.values(wordings).filter(({ tag }) => !tag.startsWith("en"));

test.each(others.map(({ tag }) => tag))(
  "%s: no word of the English catalogue is printed",
  (tag) => {
    const english = printedIn(defaultWording).words,
      same = new Set(`${everywhere} ${alike[tag] ?? ""}`.split(" "));
    expect(english.size).toBeGreaterThan(300);
    const { words } = printedIn(wordings[tag]!);
    expect(words.size).toBeGreaterThan(300);
    expect([...words].filter((word) => english.has(word) && !same.has(word)).sort()).toEqual([]);
  },
  patience,
);

/** Texts of a catalogue that nobody reads: names in a program, what a figure is written with before it is put into the language. */
const unread = (text: string): boolean =>
  /^[a-z][a-zA-Z0-9.-]*$|^\.\.\/|^to-[\d.]+-[A-Z]$|^(?:V [ad]c|uF|[kM]?ohm|pinch clamp|cable tie|split pin|English \(United Kingdom\))$/.test(
    text,
  );

test.each([defaultWording, ...others].map(({ tag }) => tag))(
  "%s: each sentence of the catalogue is printed",
  (tag) => {
    const { text: printed } = printedIn(wordings[tag]!);
    // What holds for some of the things of a line goes on behind a sentence in place of its full stop.
    const unprinted = globSync(
      join(import.meta.dirname, "../../language/outputs/wording", tag.toLowerCase(), "*.ts"),
    ).flatMap((path) =>
      fixedTexts(path).flatMap(({ text, line }) =>
        unread(text) || printed.includes(plain(text.replace(/\.$/, ""))) ? [] : [`${basename(path)}:${line} ${text}`],
      ),
    );
    expect(unprinted.sort()).toEqual([]);
  },
  patience,
);

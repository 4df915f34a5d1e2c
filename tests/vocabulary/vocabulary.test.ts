// The vocabulary is sound: the next token alone decides, every word is described, and what other tables say of words is true.

import { expect, test } from "vitest";
import { dimensions, unitWords } from "../../language/quantities/index.ts";
import {
  allWords,
  kinds,
  kindTexts,
  places,
  placeNames,
  placesOf,
  reservedNames,
  vocabulary,
  wordsIn,
  type KindList,
} from "../../language/vocabulary/index.ts";
import { startOf } from "../../language/syntax/index.ts";
import { checkVocabulary, type Checked } from "./decisions.ts";

const { conflicts, remarks, states } = checkVocabulary(vocabulary);

test("the next token alone decides, everywhere in the vocabulary", () => {
  expect(conflicts).toEqual([]);
  expect(states, "every argument prefix of every word was looked at").toBeGreaterThan(7000);
});

// Each of these was once a word of the language, and was renamed, reordered or given a small word because of the clash.
const drafted: readonly (readonly [place: string, word: string, shape: string, found: string])[] = [
  ["fastener", "in", "<item>", "goes-on-or-begins: drive KIND(drive) NUMBER | in"],
  ["fastener", "in", "<item>", "goes-on-or-begins: size THREAD × NUMBER | in"],
  ["fastener", "torque", "<torque> [if <name>]", "goes-on-or-begins: torque NUMBER UNIT(torque) | if"],
  ["part", "lift", "by <count> [dry]", "goes-on-or-begins: lift by NUMBER | dry"],
  ["unit", "caution", "<string> on <names>", "goes-on-or-begins: hazard NAME KIND(hazard) | caution"],
  ["refit", "<name>", "(after <names> | last)", "starts-with-a-name: <name> | every misspelt word"],
  ["refit", "<name>", "(after <names> | last)", "goes-on-or-begins: fit ITEM | any name"],
  ["procedure", "by", "<name>", "goes-on-or-begins: refit | by"],
  ["step", "work", "[<items>] <manner>", "goes-on-or-begins: work | any word of the block"],
  ["step", "remove", "<name> [<label>]", "goes-on-or-begins: remove NAME | any word of the block"],
  ["step", "measure", "[<name>] [on <items>] [<string>]", "goes-on-or-begins: measure | any word of the block"],
  ["step", "inspect", "[<name>] <items> <string>", "two-ways: inspect | NAME / ITEM"],
  ["step", "control", "<name> <name> [wait <time>]", "goes-on-or-begins: control NAME NAME | wait"],
  ["step", "fit", "<items> [if removed]", "goes-on-or-begins: fit ITEM | if"],
  ["step", "slide", "<items> [by <length>] <manner>", "two-ways: slide ITEM | by / by"],
  ["step", "repeat", "for (<number> '..' <number> | <label>)", "two-ways: repeat for | NUMBER / LABEL"],
  ["consumable", "pack", "(<volume> | <count> pieces)", "two-ways: pack | NUMBER / NUMBER"],
];
test.each(drafted)("a clash is found: %s %s %s", (place, word, shape, found) => {
  const entry: Checked = { word, place, shape, block: "", blockNeeded: false };
  const rest = vocabulary.filter((other) => other.place !== place || other.word !== word);
  expect(checkVocabulary([...rest, entry]).conflicts.map((one) => `${one.kind}: ${one.after} | ${one.next}`)).toContain(
    found,
  );
});

test("the words that hide a name are those that cannot be declared", () => {
  const hiding = new Set(remarks.filter((one) => one.kind === "hides-a-name").map((one) => one.words));
  expect([...hiding].sort()).toEqual([...reservedNames].sort());
});

test("words one letter apart in one block are few and known", () => {
  expect([...new Set(remarks.filter((one) => one.kind === "near-words").map((one) => one.words))].sort()).toEqual([
    "if, is",
    "piece, pieces",
  ]);
});

test("each word stands once in a place, opens a block that exists, and has all its texts", () => {
  const seen = new Set<string>();
  for (const { word, place, block, meaning, prints, example, shape } of vocabulary) {
    expect(seen.has(`${place} ${word}`), `${place} ${word}`).toBe(false);
    seen.add(`${place} ${word}`);
    expect(placeNames[place], place).toBeDefined();
    if (block) expect(wordsIn(block).size, block).toBeGreaterThan(0);
    expect(meaning, word).toMatch(/^[A-Z].*\.$/);
    expect(prints, word).toMatch(/^[A-Z]/);
    expect(example.startsWith(word), `${word}: ${example}`).toBe(true);
    expect(() => startOf(shape)).not.toThrow();
  }
});

test("the lookups agree with the table", () => {
  expect(allWords.flatMap((word) => placesOf(word)).length).toBe(vocabulary.length);
  expect(places.reduce((sum, place) => sum + wordsIn(place).size, 0)).toBe(vocabulary.length);
  expect(wordsIn("nowhere").size).toBe(0);
});

test("the dimensions of a word are those its shape asks for", () => {
  expect(wordsIn("part").get("mass")!.dimensions).toEqual(["mass"]);
  expect(wordsIn("fastener").get("size")!.dimensions).toEqual(["length"]);
  expect(wordsIn("step").get("measure")!.dimensions[0]).toBe("any");
  expect(wordsIn("step").get("undo")!.dimensions).toEqual([]);
  for (const { dimensions: asked } of vocabulary)
    for (const one of asked) expect(Object.hasOwn(unitWords, one)).toBe(true);
  expect(dimensions.filter((one) => vocabulary.every((entry) => !entry.dimensions.includes(one)))).toEqual([
    "current",
    "energy",
    "power",
    "frequency",
    "flow",
    "vibration",
  ]);
});

test("the words of a first procedure fit on a page: each has its core place", () => {
  const core = new Set(vocabulary.filter((entry) => entry.core).map((entry) => entry.word));
  expect(core.size).toBeLessThan(160);
  for (const word of [
    "unit",
    "part",
    "fastener",
    "joins",
    "torque",
    "procedure",
    "step",
    "undo",
    "remove",
    "fit",
    "lock-out",
    "danger",
    "refit",
    "finish",
  ])
    expect(core.has(word), word).toBe(true);
});

test("no unit, no reserved name and no word with a sign is a kind; every kind is one word with a title and a meaning", () => {
  for (const list of Object.keys(kinds) as KindList[])
    for (const name of kinds[list]) {
      expect(name).toMatch(/^[a-z]+(-[a-z]+)*$/);
      expect(reservedNames.has(name) || unitWords.any.includes(name), name).toBe(false);
      expect(kindTexts[list][name]!.title, name).toMatch(/^[A-Z]/);
      expect(kindTexts[list][name]!.about, name).toMatch(/\.$/);
    }
});

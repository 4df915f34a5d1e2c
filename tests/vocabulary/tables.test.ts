// The tables of kinds: what they say of each other is true, and what the trade's rules ask of them holds.

import { expect, test } from "vitest";
import {
  actKind,
  actKinds,
  fastenerKinds,
  fluidKinds,
  hazardKinds,
  isKindOf,
  jointKinds,
  kindIn,
  partKinds,
  precautions,
  signals,
  sources,
  synonyms,
} from "../../language/tables/index.ts";
import { kinds, placesOf, vocabulary, type KindList } from "../../language/vocabulary/index.ts";
import { parse } from "../../language/syntax/index.ts";

test("no two kinds of a table bear the same name for the reader: nobody could choose between them", () => {
  for (const table of [partKinds, fastenerKinds, jointKinds, fluidKinds, precautions, hazardKinds, sources, signals]) {
    const titles = Object.values(table).map(({ title }) => title.toLowerCase());
    expect(titles).toEqual([...new Set(titles)]);
  }
});

test("the example of each joint kind parses and uses that kind", () => {
  for (const [name, { example }] of Object.entries(jointKinds)) {
    const { errors, items, scan } = parse(example, "unit"),
      kind = items[0]!.arguments.find((one) => one.slot === "kind:joint");
    expect([errors, kind && scan.tokens[kind.first]!.text], example).toEqual([[], name]);
  }
});

test("what a joint uses up is named if and only if it is made with something new", () => {
  for (const [name, kind] of Object.entries(jointKinds))
    expect(kind.uses.length > 0, name).toBe(kind.remade === "with new");
  expect(
    Object.entries(jointKinds)
      .filter(([, kind]) => kind.appliedBefore)
      .map(([name]) => name),
  ).toEqual(["sealant", "adhesive"]);
});

test("electrical, pressure, spring and rotating hazards ask for a proof, and a proof is a precaution that proves", () => {
  const asking = Object.entries(hazardKinds).filter(([, kind]) => kind.needsProof);
  expect(asking.map(([name]) => name)).toEqual(["electrical", "pressure", "spring", "rotating"]);
  for (const [name, { proofBy, standsWithoutProof }] of asking) {
    expect(proofBy.length, name).toBeGreaterThan(0);
    for (const proof of proofBy) expect(precautions[proof].isProof, proof).toBe(true);
    for (const other of standsWithoutProof) expect(precautions[other].isProof, other).toBe(false);
  }
});

// EN 50110-1, clause 6.2: disconnect completely, secure against re-connection, verify that it is dead, earth and short-circuit,
// protect against adjacent live parts (from memory).
test("precautions keep the order of the five steps", () => {
  const rank = (name: keyof typeof precautions): number => precautions[name].rank!;
  expect(rank("isolate")).toBeLessThan(rank("lock-out"));
  expect(rank("lock-out")).toBeLessThan(rank("prove-dead"));
  expect(rank("prove-dead")).toBeLessThan(rank("earth"));
  for (const [name, one] of Object.entries(precautions)) {
    if (one.isProof) expect(one.rank, name).toBe(rank("prove-dead"));
    expect(one.afterProof, name).toBe(one.rank !== undefined && one.rank > rank("prove-dead"));
  }
  expect(precautions.other.rank).toBeUndefined();
});

test("no text of a kind ever says that a hazard is gone", () => {
  for (const table of [hazardKinds, precautions, signals, sources, fluidKinds])
    for (const kind of Object.values(table)) {
      expect(JSON.stringify(kind)).not.toMatch(/\bsafe\b|\bOK\b|\bpassed\b|complies|is dead\b|discharged|no longer/i);
    }
});

test("one-time parts are those that the refit asks new", () => {
  expect(
    Object.entries(partKinds)
      .filter(([, kind]) => kind.oneTime)
      .map(([name]) => name),
  ).toEqual(["gasket", "o-ring", "seal", "tab-washer", "split-pin"]);
  expect(
    Object.entries(fastenerKinds)
      .filter(([, kind]) => kind.oneWay)
      .map(([name]) => name),
  ).toEqual(["rivet"]);
});

test("a synonym names a word that exists, is no such word itself, and is said once of each list", () => {
  const seen = new Set<string>();
  for (const { says, of, is } of synonyms) {
    expect(of === "word" ? placesOf(is).length > 0 : kinds[of as KindList].has(is), `${says} -> ${of} ${is}`).toBe(
      true,
    );
    expect(
      of === "word" ? placesOf(says).length > 0 : kinds[of as KindList].has(says),
      `${says} is itself a ${of}`,
    ).toBe(false);
    expect(seen.has(`${of} ${says}`), `${of} ${says} twice`).toBe(false);
    seen.add(`${of} ${says}`);
  }
  expect(vocabulary.find((entry) => entry.word === "undo")!.synonyms).toContain("unscrew");
});

test("a name is looked up without being trusted", () => {
  expect(kindIn(partKinds, "seal")?.oneTime).toBe(true);
  expect(kindIn(partKinds, "toString")).toBeUndefined();
  expect(kindIn(partKinds, undefined)).toBeUndefined();
  expect(isKindOf(jointKinds, "__proto__")).toBe(false);
});

test("every act says what the hands do in it, and why; what only tells may move and handle nothing", () => {
  const acts = vocabulary
    .filter(({ place, word }) => place === "step" && !isKindOf(precautions, word) && word !== "otherwise")
    .map(({ word }) => word);
  const verbs = Object.keys(actKinds);
  expect(verbs.filter((verb) => !acts.includes(verb))).toEqual([]);
  // What is no act: blocks, conditions, facts of the step.
  expect(acts.filter((word) => !verbs.includes(word)).sort()).toEqual([
    "either",
    "if",
    "optional",
    "or",
    "refit",
    "repeat",
    "unless",
  ]);
  for (const verb of verbs) {
    const { why, doing, isTold, handles } = actKinds[verb]!;
    expect(why, verb).not.toBe("");
    expect(doing, verb).not.toBe("");
    if (isTold) expect(handles, verb).toBe(false);
  }
  // What is not listed may move what it names.
  for (const name of ["lock-out", "no-such-verb", "constructor"])
    expect(actKind(name), name).toMatchObject({ moves: true, touches: false });
  // The language's page: to look and to run is no touch; measuring, marking and coating is.
  expect(["inspect", "test"].map((verb) => actKind(verb).touches)).toEqual([false, false]);
  expect(verbs.filter((verb) => actKind(verb).touches).sort()).toEqual([
    "align",
    "apply",
    "clean",
    "heat",
    "mark",
    "measure",
    "put",
    "rotate",
    "set",
    "tag",
    "work",
  ]);
});

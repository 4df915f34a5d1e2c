// Our own wording: no word that clears, complete catalogues, plain sentences.

import { expect, test } from "vitest";
import { manual } from "../../language/outputs/manual/manual.ts";
import { write } from "../../language/outputs/output.ts";
import { refit } from "../../language/outputs/refit/refit.ts";
import { outputs } from "../../language/outputs/registry.ts";
import { defaultWording, wordingFor, wordings } from "../../language/outputs/wording/languages.ts";
import { some } from "../../language/outputs/wording/en-gb/phrases.ts";
import { hazardKinds, precautions } from "../../language/tables/index.ts";
import { compiledText, options } from "./outputs-of.ts";

/** Never printed by us as a state of a machine. "Prove dead" is the name of an act and asks; it says of nothing that it is so. */
const clearing =
  /\bsafe\b|\bsafely\b|\bOK\b|\bokay\b|\bpassed\b|\ball clear\b|\bcompl(?:y|ies|iant)\b|\bcertified\b|(?<!prove )(?<!prove-)\bdead\b|\bdischarged\b|\bharmless\b|\bde-energi[sz]ed\b|\bno (?:danger|risk|hazard)\b(?! assessment)/i;

/** Every string of a catalogue, and every function with words in place of its arguments. */
function* sentences(value: unknown, path: string): Generator<[string, string]> {
  if (typeof value === "string") yield [path, value];
  else if (typeof value === "function") {
    for (const seed of ["Thing", "the thing"]) {
      const args = Array.from({ length: 7 }, () => seed),
        shapes: unknown[][] = [
          args,
          [[seed, seed]],
          [seed, { fresh: false }],
          [seed, seed, { fresh: true }],
          [2, seed],
          [2, 2],
          [seed, ["not-approved"]],
          [2, ["not-approved"]],
        ];
      for (const shape of shapes) {
        let said: unknown;
        try {
          said = (value as (...of: unknown[]) => unknown)(...shape);
        } catch {
          continue;
        }
        if (typeof said === "string") yield [path, said];
      }
    }
  } else if (Array.isArray(value)) for (const [i, each] of value.entries()) yield* sentences(each, `${path}.${i}`);
  else if (typeof value === "object" && value !== null)
    for (const [key, each] of Object.entries(value)) yield* sentences(each, path === "" ? key : `${path}.${key}`);
}

test.each(Object.entries(wordings))("%s: no sentence of ours clears anything", (_, wording) => {
  let count = 0;
  for (const [path, text] of sentences(wording, "")) {
    count++;
    expect(text, path).not.toMatch(clearing);
  }
  expect(count).toBeGreaterThan(200);
});

test("the printed words of every kind of hazard and precaution clear nothing", () => {
  const { kinds } = defaultWording;
  for (const kind of Object.keys(hazardKinds))
    expect(`${kinds.hazard(kind)} ${kinds.hazardHarm(kind)}`).not.toMatch(clearing);
  for (const kind of Object.keys(precautions))
    expect(`${kinds.precautionShort(kind)} ${kinds.precautionBack(kind) ?? ""}`).not.toMatch(clearing);
});

test("a manual of a machine whose author wrote nothing of the kind clears nothing", () => {
  const input = compiledText(`
unit u "Unit" { base a  part a "A"  part b "B"  fastener f screw "Screws" { count 2 joins b to a } }
procedure p "P" for u { aim b off  step "S" { undo f  remove b } }`);
  const words = write(manual, "html", input, options)
    .replace(/<style>[^]*?<\/style>|<script[^>]*>[^]*?<\/script>/g, "")
    .replace(/<[^>]*>/g, " ")
    .replace(/\s+/g, " ");
  expect(words).not.toMatch(clearing);
  expect(words).toContain(
    "The author has neither declared nor dismissed these. Find out for yourself whether they are there: Electricity, Pressure",
  );
  expect(words).toContain("Hazards that the author has declared: none. That says nothing about the machine.");
});

test("counts stand with the name, whatever its number", () => {
  expect(some("Casing nuts", false, 8, 8, false, false)).toBe("the 8 casing nuts");
  expect(some("Casing nuts", false, 2, 8, false, false)).toBe("2 of the 8 casing nuts");
  expect(some("Casing nuts", false, 6, 8, true, false)).toBe("the last 6 of the 8 casing nuts");
  expect(some("Guard screw", false, 4, 4, false, false)).toBe("the guard screw, 4 off");
  expect(some("Circlips of the pins", false, 3, 3, false, false)).toBe("the 3 circlips of the pins");
  expect(some("O-ring", false, 1, 1, false, false)).toBe("the O-ring");
  expect(some("MW-3 frame", false, 1, 1, false, false)).toBe("the MW-3 frame");
  expect(some("Bolts", false, undefined, 1, false, true)).toBe("all of the bolts (count not given: count them)");
});

test("a language is found by its tag or by its first part", () => {
  expect(wordingFor("EN-gb")).toBe(defaultWording);
  expect(wordingFor("en")).toBe(defaultWording);
  expect(wordingFor("xx")).toBeUndefined();
});

test("outputs stand in the registry once, by name", () => {
  const names = outputs.map(({ name }) => name);
  expect(names).toEqual([...new Set(names)].sort());
  expect(names).toEqual(
    expect.arrayContaining(["bill", "draw strip", "export", "labels", "manual", "refit", "sheet isolation"]),
  );
});

test("a spanner has the size that stands on it, in any system of units and with the decimal sign of any language", () => {
  const input = compiledText(
    `unit u "Unit" { base a  part a "A"  part b "B"  fastener f bolt "Bolts" { size M10x30  drive hex 16  joins b to a }  fastener g screw "Screws" { size M3x8  drive hex-socket 2.5  joins b to a }  fastener h bolt "Imperial" { size 3/8-16 UNC x 1 in  drive hex 9/16 in  joins b to a } }
procedure p "P" for u { aim b off  step "S" { undo f, g, h  remove b } }`,
  );
  for (const system of ["metric", "us"] as const)
    for (const tag of ["en-us", "de"]) {
      const made = write(manual, "html", input, { ...options, system, wording: wordingFor(tag)! }).replaceAll(
        "\u00a0",
        " ",
      );
      for (const size of ["16 mm", tag === "de" ? "2,5 mm" : "2.5 mm", "9/16 in"])
        expect(made, `${system} ${tag}`).toContain(size);
      expect(made).not.toMatch(/0[.,]\d+ in/);
    }
});

test.each(Object.entries(wordings))(
  "%s: what to do outside the limits never stands without its condition, in any format",
  (_, wording) => {
    const input = compiledText(
      `unit u "Unit" { base a  part a "A"  part b "B" { fits a } }
procedure p "P" for u { aim b off  step "S" { remove b  measure wear on a "Wear" at most 1 mm else "Renew it." } }`,
    );
    const said = { ...options, wording };
    for (const made of [
      write(refit, "text", input, said),
      write(refit, "csv", input, said),
      write(manual, "html", input, said),
    ]) {
      expect(made).toContain("Renew it.");
      expect(made.split("Renew it.").length).toBe(made.split(wording.acts.otherwise("Renew it.")).length);
    }
  },
);

test.each(Object.entries(wordings))(
  "%s: how a precaution is taken back, in our own words, is a sentence",
  (_, { kinds }) => {
    for (const kind of Object.keys(precautions))
      expect(kinds.precautionBack(kind) ?? "Nothing.").toMatch(/^\p{Lu}.*\.$/u);
  },
);

test("the unit of the place to write stands in the limit beside it, whatever system the reader has", () => {
  const input = compiledText(
    `tool gauge "Gauge" { kind gauge }
unit u "Unit" { base a  part a "A"  part b "B" { fits a } }
procedure p "P" for u { aim b off  step "S" { remove b  measure wear on a "Wear" at least 24.95 mm  measure gap on a "Gap" 0.05..0.15 mm  measure play on a "Play" at most 0.01 in } }`,
  );
  // No line ends between a figure and its unit.
  const made = (system: "metric" | "us"): string =>
    write(manual, "html", input, { ...options, system }).replaceAll("\u00a0", " ");
  expect(made("us")).toContain("at least 0.9823 in (24.95 mm)");
  expect(made("us")).toMatch(/0\.00\d+ to 0\.00\d+ in \(0\.05 to 0\.15 mm\)/);
  expect(made("us")).toContain("at most 0.01 in.");
  expect(made("metric")).toContain("at least 24.95 mm.");
  expect(made("metric")).toMatch(/at most 0\.25\d* mm \(0\.01 in\)/);
});

// Reading of questions as typed: order, names, units glued or apart, and errors that name what would fit.

import { expect, test } from "vitest";
import { answerWords, figureNamed } from "../../language/calc/answer.ts";
import { nearestWords } from "../../language/calc/nearest.ts";
import { readNamed, readQuestion } from "../../language/calc/read-question.ts";
import { argument, type Figure } from "../../language/figures/figure.ts";
import { figures } from "../../language/figures/registry.ts";

const figure = (name: string): Figure => {
  const found = figureNamed(name);
  if (!("run" in found)) throw new Error(found.says);
  return found;
};
const written = (name: string, words: string): object => {
  const read = readQuestion(figure(name), words.split(" "));
  return "says" in read ? read : read.written;
};

test("every example of every figure answers, in one string, word by word and by name", () => {
  for (const one of figures) {
    expect(one.examples.length, one.name).toBeGreaterThan(0);
    for (const example of one.examples) {
      for (const words of [[example], example.split(" ")]) {
        const answer = answerWords(one.name, words);
        expect("values" in answer ? answer.values.length : answer, `${one.name} ${example}`).toBeGreaterThan(0);
      }
      const typed = readQuestion(one, [example]);
      if ("says" in typed) throw new Error(typed.says);
      expect(readNamed(one, typed.written), `${one.name} ${example}`).toEqual(typed);
    }
  }
});

test("figures go to the arguments that take them, in any order", () => {
  const expected = { voltage: "560 V", capacitance: "1200 uF", bleeder: "22 kohm" };
  expect(written("wait", "560 V 1200 uF 22 kohm")).toEqual(expected);
  expect(written("wait", "22 kohm 560 V 1200 uF")).toEqual(expected);
  expect(written("wait", "560V 1200uF 22kohm")).toEqual({ voltage: "560V", capacitance: "1200uF", bleeder: "22kohm" });
});

test("a name takes what follows, with or without a sign", () => {
  expect(written("lift", "18 kg people 2 reach=63 cm grip=poor")).toEqual({
    mass: "18 kg",
    people: "2",
    reach: "63 cm",
    grip: "poor",
  });
  expect(written("lift", "18 kg 2 reach=63cm")).toEqual({ mass: "18 kg", people: "2", reach: "63cm" });
});

test("units of two words, ranges, tolerances and words of several words are kept whole", () => {
  expect(written("wait", "380..420 V ac 470 uF 47 kohm")).toEqual({
    voltage: "380..420 V ac",
    capacitance: "470 uF",
    bleeder: "47 kohm",
  });
  expect(written("fall", "1/2 lb 3 ± 0.5 ft")).toEqual({ mass: "1/2 lb", height: "3 ± 0.5 ft" });
  expect(written("lift-filter", "below mid lower leg close")).toEqual({ hands: "below mid lower leg", arms: "close" });
  expect(written("team", "3 20 kg, 18 kg, 23 kg")).toEqual({ people: "3", each: ["20 kg", "18 kg", "23 kg"] });
});

test("a bare number before a figure with a unit stays a bare number", () => {
  expect(written("sling", "61 kg 2 45 deg from horizontal")).toEqual({
    load: "61 kg",
    legs: "2",
    angle: "45 deg",
    measured: "from horizontal",
  });
});

test("a wrong unit is named, with the nearest that fit", () => {
  expect(written("wait", "560 V 1200 uX 22 kohm")).toMatchObject({
    says: expect.stringContaining("uX"),
    nearest: expect.arrayContaining(["µF"]),
  });
  expect(written("wait", "560 V 1200 UF 22 kohm")).toMatchObject({ nearest: ["µF"] });
});

test("a unit of another kind says what is taken", () => {
  const still =
    "capacitance (capacitance in µF, mF); bleeder (resistance in ohm, kohm, Mohm); maker-wait (time in s, min, h, day)";
  expect(written("wait", "560 V 3 kg")).toMatchObject({
    says: `wait: 3 kg fits nowhere: it takes no mass; it still takes ${still}`,
  });
  expect(written("wait", "560 V 300 V")).toMatchObject({
    says: expect.stringContaining("it has voltage 560 V already"),
  });
  expect(written("lift", "18 kg reach 63 s")).toMatchObject({
    says: expect.stringContaining("reach: s is a unit of time"),
    nearest: ["mm", "cm", "m"],
  });
});

test("a figure without unit, an unknown word, a name without value", () => {
  expect(written("wait", "560")).toMatchObject({
    says: expect.stringContaining("560 has no unit"),
    nearest: ["V", "µF", "ohm", "s"],
  });
  expect(written("lift", "18 kg grip fare")).toMatchObject({
    says: expect.stringContaining("fare"),
    nearest: ["good", "fair", "poor"],
  });
  expect(written("touch", "5 s bare meal")).toMatchObject({
    says: expect.stringContaining('"bare" fits nowhere'),
    nearest: ["bare metal"],
  });
  expect(written("lift", "18 kg reach")).toMatchObject({ says: "lift: a value is due behind reach" });
  expect(written("lift", "18 kg reach 4 cm reach 5 cm")).toMatchObject({
    says: expect.stringContaining("takes reach once"),
  });
});

test("a name may stand behind its value, as people say it", () => {
  expect(written("lift", "26 kg 2 people reach 63 cm")).toEqual({ mass: "26 kg", people: "2", reach: "63 cm" });
  expect(written("lift", "26 kg 2 people 63 cm")).toEqual({ mass: "26 kg", people: "2", reach: "63 cm" });
  expect(written("sling", "61 kg 2 legs 45 deg from horizontal")).toEqual({
    load: "61 kg",
    legs: "2",
    angle: "45 deg",
    measured: "from horizontal",
  });
});

test("a comma decimal is an error with its mending", () => {
  expect(written("fall", "9,5 kg 1 m")).toMatchObject({
    says: "fall: 9,5 has a comma: write the decimal with a point, 9.5",
    nearest: ["9.5"],
  });
  expect(written("fall", "mass 9,5 kg")).toMatchObject({ says: expect.stringContaining("9.5") });
});

/** A figure that takes a size, a class, a word, bare numbers and words of one's own: the shapes of the fastener figures. */
const shapes: Figure = {
  name: "shapes",
  title: "Shapes",
  validity: "",
  source: "",
  examples: [],
  arguments: [
    argument("size", "size", "thread"),
    argument("class", "class", "class"),
    argument("friction", "number", "friction", { optional: true }),
    argument("surface", "word", "surface", { words: ["dry", "oiled"], optional: true }),
    argument("grip", "length", "clamped length", { optional: true }),
    argument("turn", "angle", "angle", { optional: true, many: true }),
    argument("pattern", "word", "pattern", { words: ["turn", "rows"], optional: true }),
    argument("remark", "text", "words", { optional: true }),
  ],
  run: () => ({ says: "nothing" }),
};
const shaped = (words: string): object => {
  const read = readQuestion(shapes, words.split(" "));
  return "says" in read ? read : read.written;
};

test("sizes, classes, numbers and words of one's own find their places", () => {
  expect(shaped("M8 8.8")).toEqual({ size: "M8", class: "8.8" });
  expect(shaped("M8x1.25 A2-70 0.14 oiled 30 mm")).toEqual({
    size: "M8x1.25",
    class: "A2-70",
    friction: "0.14",
    surface: "oiled",
    grip: "30 mm",
  });
  expect(shaped("M8 x 1.25 8.8")).toEqual({ size: "M8 x 1.25", class: "8.8" });
  expect(shaped("M8x35-8.8 0.14")).toEqual({ size: "M8x35-8.8", class: "8.8", friction: "0.14" });
  expect(shaped("3/8-16 UNC grade 5 dry")).toEqual({ size: "3/8-16 UNC", class: "grade 5", surface: "dry" });
  expect(shaped("1/2-13 UNC x 2 in grade 8")).toEqual({ size: "1/2-13 UNC x 2 in", class: "grade 8" });
  expect(shaped("dry 10.9 M12 class 10.9")).toMatchObject({ says: expect.stringContaining("takes class once") });
  expect(shaped("M8 10 90 deg 45 deg")).toEqual({ size: "M8", class: "10", turn: ["90 deg", "45 deg"] });
  expect(shaped("M8 8.8 pattern turn turn 90 deg")).toEqual({
    size: "M8",
    class: "8.8",
    pattern: "turn",
    turn: ["90 deg"],
  });
  const remark = { size: "M8", class: "8.8", friction: "0.12", remark: "as found on the bench", grip: "30 mm" };
  expect(shaped("M8 8.8 0.12 as found on the bench grip 30 mm")).toEqual(remark);
});

test("a missing input, an unknown figure, a size outside the table", () => {
  expect(answerWords("wait", ["560 V 1200 uF"])).toMatchObject({
    error: { says: "wait needs bleeder: resistance in ohm, kohm, Mohm" },
    inputs: { voltage: "560 V", capacitance: "1200 uF" },
  });
  expect(answerWords("wiat", [])).toMatchObject({ error: { nearest: ["wait"] } });
  expect(answerWords("eyebolt", ["M18"])).toMatchObject({
    error: {
      says: "eyebolt: M18 is not in the table; the nearest are M16 and M20",
      nearest: ["M16", "M20"],
    },
  });
  expect(answerWords("sling-limit", ["chain 9 mm 2 30 deg from vertical"])).toMatchObject({
    error: { nearest: ["8 mm", "10 mm"] },
  });
});

test("unknown names of a sheet's inputs are answered with the nearest", () => {
  expect(readNamed(figure("wait"), { voltige: "560 V" })).toMatchObject({ nearest: ["voltage"] });
  expect(readNamed(figure("wait"), { voltage: ["560 V", "300 V"] })).toMatchObject({
    says: "wait takes voltage once, not 2 times",
  });
});

test("nearest words stand in a fixed order", () => {
  expect(nearestWords("lit", ["lift", "list", "lot", "tile"])).toEqual(["lift", "list", "lot"]);
  expect(nearestWords("energy", ["capacitor-energy", "gas"])).toEqual(["capacitor-energy"]);
  expect(nearestWords("zzzz", ["lift"])).toEqual([]);
});

test("a socket by what stands on its tool: T30 is an M6 by ISO 14579, ISO 14580, ISO 14581 and ISO 14583", () => {
  const answer = answerWords("thread-from-spanner", ["T30"]);
  if (!("values" in answer)) throw new Error("no answer");
  expect(answer.values[0]).toMatchObject({ name: "M6" });
  expect(JSON.stringify(answer.values[0])).toContain("ISO 14579");
  expect(written("thread-from-spanner", "t30")).toEqual({ drive: "hexalobular", number: "30" });
  expect(written("thread-from-spanner", "10 mm")).toEqual({ width: "10 mm" });
});

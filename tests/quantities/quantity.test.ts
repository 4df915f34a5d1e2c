// Numbers, quantities, pairs and their printing. The rules are those of the language reference; the pairs are of kinds that real manuals print.

import fc from "fast-check";
import { expect, test } from "vitest";
import {
  comparePair,
  convert,
  convertValue,
  dimensions,
  format,
  fromSi,
  isProblem,
  makeQuantity,
  parseNumber,
  parseQuantity,
  quantityOf,
  rounded,
  si,
  toSi,
  units,
  unitWords,
  type Quantity,
} from "../../language/quantities/index.ts";

const read = (text: string): Quantity => {
  const found = parseQuantity(text);
  if (isProblem(found)) throw new Error(found.problem);
  return found;
};
const problem = (text: string): string => {
  const found = parseQuantity(text);
  return isProblem(found) ? found.problem : `read as ${found.written}`;
};

test("numbers: decimals, fractions, signs; nothing else", () => {
  const value = (text: string): number | undefined => parseNumber(text)?.value;
  expect([
    value("24"),
    value("24.5"),
    value(".25"),
    value("-0.5"),
    value("3/32"),
    value("1-13/16"),
    value("-1-1/2"),
    value("1 13/16"),
    value("−3"),
  ]).toEqual([24, 24.5, 0.25, -0.5, 0.09375, 1.8125, -1.5, 1.8125, -3]);
  expect(["", "1,5", "1/0", "x", "1..2", "1e3", "--1", "1-2"].map(value)).toEqual(Array(8).fill(undefined));
  expect(parseNumber("24.50")).toMatchObject({ digits: 2, step: 0.01, significant: 4 });
  expect(parseNumber("0.0125")).toMatchObject({ digits: 4, significant: 3 });
  expect(parseNumber("1-13/16")).toMatchObject({ digits: 0, step: 1 / 16 });
});

test("the forms of a quantity", () => {
  expect(read("24 N·m")).toMatchObject({
    dimension: "torque",
    unit: "N·m",
    low: 24,
    high: 24,
    nominal: 24,
    form: "single",
    written: "24 N·m",
    digits: 0,
    pair: undefined,
  });
  expect(read("24 ± 2 Nm")).toMatchObject({ low: 22, high: 26, nominal: 24, form: "plus-minus", written: "24 ± 2 Nm" });
  expect(read("0.05..0.15 mm")).toMatchObject({ low: 0.05, high: 0.15, nominal: undefined, form: "range", digits: 2 });
  expect(read("20mm").written).toBe("20 mm");
  expect(read("0.3 +/- 0.1 mm")).toMatchObject({ low: 0.2, high: 0.4 });
  expect(read("-10..-5 °C")).toMatchObject({ low: -10, high: -5 });
  expect(read("52 N·m (38 lb-ft)").pair).toMatchObject({ unit: "lbf·ft", written: "38 lb-ft" });
  expect(read("400 V ac").unit).toBe("V ac");
});

test("problems say what to do", () => {
  expect(problem("24")).toContain("has no unit");
  expect(problem("1,5 mm")).toContain("1.5 mm");
  expect(problem("5 nm")).toContain("N·m");
  expect(problem("26..24 N·m")).toContain("smaller");
  expect(problem("24 ± -2 N·m")).toContain("negative");
  expect(problem("a few mm")).toContain("no figure");
  const wrong = parseQuantity("3 mm", "torque");
  expect(wrong).toMatchObject({ nearest: ["N·m", "cN·m", "lbf·ft"] });
  expect(isProblem(wrong) && wrong.problem).toContain("mm is a unit of length");
  expect(makeQuantity({ first: "1", form: "single", unit: "mm", dimension: "length" })).toMatchObject({ low: 1 });
});

test("no problem ends in a full stop", () => {
  for (const text of ["24", "1,5 mm", "5 nm", "26..24 N·m", "24 ± -2 N·m", "a few mm", "3 (4) mm"])
    expect(problem(text)).not.toMatch(/\.$/);
});

test("SI values", () => {
  expect(si(read("60 °F")).low).toBeCloseTo(288.7056, 4);
  expect(si(read("1200 uF")).nominal).toBeCloseTo(1.2e-3, 15);
  expect(si(read("80 %")).high).toBeCloseTo(0.8, 15);
  expect(si(read("1500 rpm")).nominal).toBeCloseTo(25, 12);
  expect(si(read("1/4 turn")).nominal).toBeCloseTo(Math.PI / 2, 12);
  for (const unit of units) expect(fromSi(toSi(12.5, unit.name), unit.name)).toBeCloseTo(12.5, 9);
});

// 1 lbf·ft is 1.355 817 9 N·m, 1 in is 25.4 mm exactly, 1 lb is 0.453 592 37 kg exactly: NIST SP 811 (2008), appendix B.8.
test("what is printed never lies outside what was written", () => {
  const us = (text: string, rounding?: "up" | "down"): string => format(read(text), "us", undefined, rounding);
  expect([us("20..24 N·m"), us("24 ± 2 N·m"), us("0.05..0.15 mm"), us("-20..-10 °C")]).toEqual([
    "14.8..17.7 lbf·ft",
    "17.7 ± 1.4 lbf·ft",
    "0.0020..0.0059 in",
    "-4..14 °F",
  ]);
  expect([
    us("0.05 mm", "down"),
    us("0.05 mm", "up"),
    us("500 kg", "down"),
    us("500 kg", "up"),
    us("100 °C", "down"),
  ]).toEqual(["0.0019 in", "0.0020 in", "1102 lb", "1103 lb", "212 °F"]);
  const widths = [0.4, 1, 3, 7, 40];
  for (const [unit, scale] of [
    ["N·m", 1],
    ["mm", 0.01],
    ["mm", 1],
    ["bar", 0.1],
    ["°C", 1],
    ["kg", 1],
  ] as const)
    for (let i = 1; i <= 200; i++)
      for (const width of widths) {
        const low = Number((i * 1.7 * scale).toPrecision(4)),
          high = Number((low + width * scale).toPrecision(6)),
          half = Number((low / 7).toPrecision(2));
        for (const text of [`${low}..${high} ${unit}`, `${low} ± ${half} ${unit}`]) {
          const quantity = read(text),
            shown = format(quantity, "us"),
            back = si(read(shown)),
            own = si(quantity),
            room = own.high - own.low,
            slack = 1e-9 * own.high;
          expect(
            back.low >= own.low - slack && back.high <= own.high + slack && back.high - back.low >= 0.85 * room,
            `${text} as ${shown}`,
          ).toBe(true);
        }
        const least = si(read(us(`${low} ${unit}`, "up"))).low,
          most = si(read(us(`${low} ${unit}`, "down"))).low,
          own = si(read(`${low} ${unit}`)).low;
        expect(least >= own * (1 - 1e-9) && most <= own * (1 + 1e-9), `${low} ${unit}`).toBe(true);
      }
});

test("printing converts to the other system and invents no precision", () => {
  const us = (text: string): string => format(read(text), "us"),
    metric = (text: string): string => format(read(text), "metric");
  expect([
    us("24 N·m"),
    us("52 N·m"),
    us("5 N·m"),
    us("150 mm"),
    us("2.5 bar"),
    us("100 °C"),
    us("1.5 L"),
    us("9.5 kg"),
  ]).toEqual(["18 lbf·ft", "38 lbf·ft", "44 lbf·in", "5.91 in", "36 psi", "212 °F", "1.6 US qt", "21 lb"]);
  expect([
    metric("38 lb-ft"),
    metric("22 lb-in"),
    metric("60..100 lb-ft"),
    metric("77 °F"),
    metric("1-13/16 in"),
    metric(".25 in"),
  ]).toEqual(["52 N·m", "2.5 N·m", "82..135 N·m", "25 °C", "46.0 mm", "6.4 mm"]);
  expect([us("24 ± 2 N·m"), us("38 lb-ft"), us("0.05 mm"), metric("24 N·m"), us("90 deg")]).toEqual([
    "17.7 ± 1.4 lbf·ft",
    "38 lb-ft",
    "0.0020 in",
    "24 N·m",
    "90 deg",
  ]);
  expect(format(read("0.05..0.15 mm"), "metric", "de")).toBe("0,05..0,15 mm");
  expect(format(read("2.5 bar"), "us", "de")).toBe("36 psi");
  expect([rounded(0.000123456), rounded(1234567), rounded(-0.0001, 1), rounded(2.675, 3)]).toEqual([
    "0.000123",
    "1234567",
    "-0.0001",
    "2.68",
  ]);
});

test("pairs: a correct rounding is silent, over 5 % a warning, over a unit of the last place a hint", () => {
  const level = (text: string): string | undefined => comparePair(read(text))?.level;
  expect(level("24 N·m")).toBeUndefined();
  for (const silent of [
    "52 N·m (38 lb-ft)",
    "3/32 in (2 mm)",
    "27 N·m (20 lbf·ft)",
    "77 °F (25 °C)",
    "60..100 lb-ft (81..136 N·m)",
    "2 mm (3/32 in)",
    "0.05..0.15 mm (0.002..0.006 in)",
    "24 ± 2 N·m (18 ± 1.5 lb-ft)",
    "20..25 N·m (17 lb-ft)",
    "1/4 turn (90 deg)",
    "52 N·m (39 lb-ft)",
  ]) {
    expect(level(silent), silent).toBe("silent");
  }
  expect(level("150 lb-ft (200 N·m)")).toBe("hint");
  expect(level("22 lb-in (3 N·m)")).toBe("warning");
  expect(level("24 N·m (24 lb-ft)")).toBe("warning");
  expect(level("60..100 lb-ft (81..126 N·m)")).toBe("warning");
  expect(level("400 V ac (400 V dc)")).toBe("mismatch");
  expect(level("52 N·m (38 ft)")).toBe("mismatch");
  expect(comparePair(read("22 lb-in (3 N·m)"))?.says).toBe("22 lb-in is 2.49 N·m, the bracket says 3 N·m");
  expect(comparePair(read("52 N·m (38 lb-ft)"))?.says).toBe("");
});

const anyUnit = fc.constantFrom(...unitWords.any),
  decimals = fc.integer({ min: 0, max: 3 });
test("what is written reads back as itself", () => {
  fc.assert(
    fc.property(
      anyUnit,
      fc.double({ min: 0.001, max: 5000, noNaN: true }),
      decimals,
      fc.constantFrom("", " ± 1", ".."),
      (unit, value, places, more) => {
        const number = value.toFixed(places),
          text = more === ".." ? `${number}..${(value + 1).toFixed(places)} ${unit}` : `${number}${more} ${unit}`,
          first = read(text),
          again = read(first.written);
        expect(first.written).toBe(text);
        expect(again).toEqual(first);
      },
    ),
    { seed: 20, numRuns: 500 },
  );
});

test("a value and its own rounding are silent whatever the units", () => {
  const pairs = dimensions
    .filter((dimension) => dimension !== "temperature" && dimension !== "voltage" && dimension !== "frequency")
    .map((dimension) => units.filter((unit) => unit.dimension === dimension));
  fc.assert(
    fc.property(
      fc.constantFrom(...pairs),
      fc.nat(),
      fc.nat(),
      fc.double({ min: 0.5, max: 900, noNaN: true }),
      decimals,
      (list, a, b, value, places) => {
        const from = list[a % list.length]!,
          to = list[b % list.length]!,
          written = value.toFixed(places),
          bracket = Number(convertValue(Number(written), from.name, to.name).toPrecision(4));
        if (Number(written) === 0 || bracket < 1e-6 || bracket >= 1e4) return;
        expect(comparePair(read(`${written} ${from.name} (${plain(bracket)} ${to.name})`))?.level).toBe("silent");
      },
    ),
    { seed: 20, numRuns: 500 },
  );
});
const plain = (value: number): string => (value >= 1 ? String(value) : value.toFixed(12).replace(/0+$/, ""));

test("conversion there and back, and never across kinds", () => {
  fc.assert(
    fc.property(
      fc.constantFrom(...units),
      fc.constantFrom(...units),
      fc.double({ min: 0.01, max: 1e4, noNaN: true }),
      (from, to, value) => {
        const made = quantityOf(value, from.name, 6),
          there = convert(made, to.name);
        const alike =
          from.dimension === to.dimension &&
          (from.dimension === "voltage"
            ? from.kind === undefined || to.kind === undefined || from.kind === to.kind
            : from.kind === to.kind);
        expect(there !== undefined).toBe(alike);
        if (there)
          expect(Math.abs(convert(there, from.name)!.high - made.high)).toBeLessThanOrEqual(
            1e-9 * Math.max(1, Math.abs(made.high)) + (from.dimension === "temperature" ? 1e-9 : 0),
          );
      },
    ),
    { seed: 20, numRuns: 1000 },
  );
});

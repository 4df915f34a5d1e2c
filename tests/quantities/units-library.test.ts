// The unit table against an independent units library from the registry (mathjs). Its psi and a few others are rounded at the eleventh figure.

import { evaluate, unit as libraryUnit, type Unit as MathUnit } from "mathjs";
import { expect, test } from "vitest";
import { convertValue, units } from "../../language/quantities/index.ts";

/** Names of the library for ours. A unit that it lacks is left out, and the count at the end says how many are there. */
const names: Readonly<Record<string, string>> = {
  "N·m": "N m",
  "cN·m": "cN m",
  "lbf·ft": "lbf ft",
  "lbf·in": "lbf in",
  "kN·m": "kN m",
  "dN·m": "dN m",
  mm: "mm",
  cm: "cm",
  m: "m",
  in: "in",
  ft: "ft",
  µm: "um",
  thou: "mil",
  yd: "yd",
  g: "g",
  kg: "kg",
  lb: "lb",
  oz: "oz",
  t: "tonne",
  ml: "ml",
  L: "L",
  cm3: "cm^3",
  "US qt": "qt",
  "US gal": "gal",
  "fl oz": "floz",
  "US pt": "pt",
  in3: "in^3",
  mm3: "mm^3",
  m3: "m^3",
  N: "N",
  kN: "kN",
  lbf: "lbf",
  daN: "daN",
  kip: "kip",
  Pa: "Pa",
  kPa: "kPa",
  MPa: "MPa",
  GPa: "GPa",
  bar: "bar",
  mbar: "mbar",
  psi: "psi",
  atm: "atm",
  mmHg: "mmHg",
  "N/mm2": "N/mm^2",
  deg: "deg",
  turn: "cycle",
  rad: "rad",
  s: "s",
  min: "minute",
  h: "hour",
  day: "day",
  ms: "ms",
  "°C": "degC",
  "°F": "degF",
  K: "K",
  V: "V",
  kV: "kV",
  mV: "mV",
  A: "A",
  mA: "mA",
  µF: "uF",
  mF: "mF",
  F: "F",
  nF: "nF",
  ohm: "ohm",
  kohm: "kohm",
  Mohm: "Mohm",
  Gohm: "Gohm",
  J: "J",
  mJ: "mJ",
  kJ: "kJ",
  W: "W",
  kW: "kW",
  hp: "hp",
  Hz: "Hz",
  "L/min": "L/minute",
  "mm/s": "mm/s",
  mT: "mT",
  T: "T",
};

/** The library measures a kip, a mmHg or a fluid ounce by rounded factors; all others to eleven figures. */
const coarse: Readonly<Record<string, number>> = {
  psi: 1e-9,
  kip: 1e-8,
  mmHg: 4e-6,
  "fl oz": 1e-6,
  "US qt": 1e-6,
  "US pt": 1e-6,
  "US gal": 1e-6,
  hp: 1e-9,
};

const pairs = units.flatMap((from) =>
  units
    .filter((to) => to.dimension === from.dimension && names[from.name] && names[to.name])
    .map((to) => [from.name, to.name] as const),
);

test.each(pairs)("%s to %s as the library has it", (from, to) => {
  for (const value of [1, 24.5, 1200]) {
    const ours = convertValue(value, from, to),
      theirs = libraryUnit(value, names[from]!).toNumber(names[to]!),
      share = Math.max(coarse[from] ?? 0, coarse[to] ?? 0, 1e-11);
    expect(Math.abs(ours - theirs), `${value} ${from}: ${ours}, library ${theirs} ${to}`).toBeLessThanOrEqual(
      share * Math.abs(theirs) + 1e-10 * (from.startsWith("°") || to.startsWith("°") ? 1 : 0),
    );
  }
});

/** Units that the library has no name for, each put together from units and constants that it has, by its definition. */
const definitions: readonly (readonly [unit: string, of: string, definition: string])[] = [
  ["kgf", "N", "1 kg * gravity"],
  ["kgf·m", "N m", "1 kg * gravity * 1 m"],
  ["kgf·cm", "N m", "1 kg * gravity * 1 cm"],
  ["gf·cm", "N m", "1 g * gravity * 1 cm"],
  ["ozf·in", "N m", "1 ounce * gravity * 1 inch"],
  ["kgf/cm2", "Pa", "1 kg * gravity / (1 cm)^2"],
  ["ksi", "Pa", "1000 poundmass * gravity / (1 inch)^2"],
  // Conventional inch of mercury: 13 595.1 kg/m³ at standard gravity (NIST SP 811).
  ["inHg", "Pa", "13595.1 kg/m^3 * gravity * 1 inch"],
  // UK gallon: 4.546 09 L exactly (NIST Handbook 44, Appendix C).
  ["imp gal", "m^3", "4.54609 litre"],
  ["imp pt", "m^3", "4.54609 litre / 8"],
  ["imp fl oz", "m^3", "4.54609 litre / 160"],
  // Mean year of the calendar, 365.2425 days, and its twelfth.
  ["year", "s", "365.2425 day"],
  ["month", "s", "365.2425 day / 12"],
  ["V dc", "V", "1 V"],
  ["V ac", "V", "1 V"],
  ["metric hp", "W", "75 kg * gravity * 1 m / (1 s)"],
  ["rpm", "Hz", "1 / (1 minute)"],
];

test.each(definitions)("%s from its definition, there and back", (name, base, definition) => {
  const unit = units.find((each) => each.name === name)!,
    theirs = (evaluate(definition) as MathUnit).toNumber(base);
  expect(unit.factor / theirs - 1).toBeCloseTo(0, 9);
  const other = units.find((each) => each.dimension === unit.dimension && each.factor === 1 && each.offset === 0)!;
  for (const value of [1, 24.5, 1200]) {
    expect(convertValue(value, name, other.name) / (value * theirs)).toBeCloseTo(1, 9);
    expect(convertValue(value * theirs, other.name, name) / value).toBeCloseTo(1, 9);
  }
});

test("a share is a hundredth, there and back", () => {
  const share = units.filter((each) => each.dimension === "share");
  expect(share.map((each) => [each.name, each.factor])).toEqual([["%", evaluate("1%") as number]]);
});

test("no unit of the table is without a check against the library", () => {
  const checked = new Set([...Object.keys(names), ...definitions.map(([name]) => name), "%"]);
  expect(units.map((unit) => unit.name).filter((name) => !checked.has(name))).toEqual([]);
});

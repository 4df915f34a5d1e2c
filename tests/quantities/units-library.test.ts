// The unit table against an independent units library from the registry (mathjs). Its psi and a few others are rounded at the eleventh figure.

import { unit as libraryUnit } from "mathjs";
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

test("the library knows nearly all units of the language", () => {
  const own = units.filter((unit) => unit.use === "language"),
    without = own.filter((unit) => !names[unit.name]).map((unit) => unit.name);
  expect(without).toEqual(["kgf·m", "kgf", "inHg", "month", "year", "V dc", "V ac", "rpm", "%"]);
});

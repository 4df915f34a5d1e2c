// The unit table against exact definitions and published conversion factors. Sources: units-torque.csv (BIPM, NIST SP 811 App. B, S37; GNU units output).

import { expect, test } from "vitest";
import {
  convertValue,
  dimensions,
  findUnit,
  nearestUnits,
  units,
  unitWords,
  usualUnits,
} from "../../language/quantities/index.ts";
import { referenceRows, tally, type Row } from "../figures/reference-rows.ts";

/** Names of the file that are not spellings of the table. */
const renamed: Readonly<Record<string, string>> = {
  "thou (mil, 0.001 in)": "thou",
  "t (tonne)": "t",
  "kip (1000 lbf)": "kip",
  "inHg (conventional)": "inHg",
  "mmHg (conventional)": "mmHg",
  degree: "deg",
  "hp (550 ft·lbf/s)": "hp",
  "metric horsepower": "metric hp",
};
const unitIn = (name: string): string => {
  const found = findUnit(renamed[name] ?? name);
  if (!found) throw new Error(`no unit ${name}`);
  return found.name;
};

const rows = referenceRows("units-torque.csv"),
  count = tally("units-torque.csv", rows.length);
for (const row of rows) {
  count.row(`${row["quantity"]}: ${row["from"]} to ${row["to"]}`, () => {
    const wanted = Number(row["factor_or_value"]),
      found = converted(row);
    // To the last bits of a quotient of two doubles; on the scales of temperature a difference of two such values.
    expect(Math.abs(found / wanted - 1), `${found}, published ${wanted}`).toBeLessThanOrEqual(
      row["quantity"]!.startsWith("temperature") ? 2e-14 : 7e-16,
    );
    const independent = Number(row["gnu_units_2_22_output"]);
    if (row["gnu_units_2_22_output"] !== "")
      expect(Math.abs(found / independent - 1), "second program").toBeLessThanOrEqual(6e-12);
    const printed = Number(row["nist_sp811_B8_printed"]!.replaceAll(" ", "").replace("1.0E+05", "1e5"));
    if (row["nist_sp811_B8_printed"] !== "")
      expect(Math.abs(found / printed - 1), `NIST (${row["nist_status"]})`).toBeLessThanOrEqual(1.2e-6);
  });
}

function converted(row: Row): number {
  if (row["quantity"] === "temperature (point)") {
    const [value, from] = row["from"]!.split(" ") as [string, string];
    return convertValue(Number(value), unitIn(from), unitIn(row["to"]!));
  }
  // A difference is the same at every point of the scale: 10 °F is taken from 0 °F.
  if (row["quantity"] === "temperature (difference)") return convertValue(10, "°F", "°C") - convertValue(0, "°F", "°C");
  return convertValue(1, unitIn(row["from"]!), unitIn(row["to"]!));
}

test("torr is not the conventional mmHg (note of the file)", () => {
  expect(convertValue(1, "mmHg", "Pa")).not.toBe(101325 / 760);
});

/** Over and under as whole numbers: "4.4482216152605/0.00064516" without a double in between. */
function rational(exact: string): readonly [bigint, bigint] {
  const whole = (text: string): readonly [bigint, bigint] => [
    BigInt(text.replace(".", "")),
    10n ** BigInt(text.includes(".") ? text.length - text.indexOf(".") - 1 : 0),
  ];
  const [over, under = "1"] = exact.split("/") as [string, string?],
    [a, b] = whole(over),
    [c, d] = whole(under);
  return [a * d, b * c];
}
const times = (a: readonly [bigint, bigint], b: readonly [bigint, bigint]): readonly [bigint, bigint] => [
  a[0] * b[0],
  a[1] * b[1],
];
const over = (a: readonly [bigint, bigint], b: readonly [bigint, bigint]): readonly [bigint, bigint] => [
  a[0] * b[1],
  a[1] * b[0],
];
const same = (a: readonly [bigint, bigint], b: readonly [bigint, bigint]): boolean => a[0] * b[1] === b[0] * a[1];

test("derived factors are exactly what the definitions of inch, pound and gravity make them", () => {
  const of = (name: string): readonly [bigint, bigint] => rational(findUnit(name)!.exact!),
    g = rational("9.80665"),
    inch = of("in"),
    lb = of("lb"),
    lbf = times(lb, g);
  expect(same(of("lbf"), lbf)).toBe(true);
  expect(same(of("lbf·in"), times(lbf, inch))).toBe(true);
  expect(same(of("lbf·ft"), times(lbf, of("ft")))).toBe(true);
  expect(same(of("psi"), over(lbf, times(inch, inch)))).toBe(true);
  expect(same(of("ozf·in"), over(times(lbf, inch), rational("16")))).toBe(true);
  expect(same(of("US gal"), times(rational("231"), times(inch, times(inch, inch))))).toBe(true);
  expect(same(of("fl oz"), over(of("US gal"), rational("128")))).toBe(true);
  expect(same(of("US qt"), over(of("US gal"), rational("4")))).toBe(true);
  expect(same(of("kgf·m"), g)).toBe(true);
  expect(same(of("inHg"), times(times(rational("13595.1"), g), inch))).toBe(true);
  expect(same(of("hp"), times(rational("550"), times(of("ft"), lbf)))).toBe(true);
  expect(same(of("oz"), over(lb, rational("16")))).toBe(true);
  expect(same(of("month"), over(of("year"), rational("12")))).toBe(true);
});

test("every number of the table is the nearest double to its exact factor", () => {
  for (const unit of units)
    if (unit.exact !== undefined) {
      const [a, b] = rational(unit.exact),
        scaled = Number((a * 10n ** 40n) / b) / 1e40;
      expect(Math.abs(unit.factor / scaled - 1), unit.name).toBeLessThan(3e-16);
    }
});

test("no spelling has two meanings, and each reads as its unit", () => {
  const seen = new Map<string, string>();
  for (const unit of units)
    for (const spelling of unit.spellings) {
      expect(seen.get(spelling), spelling).toBeUndefined();
      seen.set(spelling, unit.name);
      expect(findUnit(spelling)).toBe(unit);
      expect(spelling).toBe(spelling.normalize("NFC"));
    }
  expect(findUnit("US  qt")?.name).toBe("US qt");
  expect(findUnit("\u2126")?.name, "the ohm sign is the letter under NFC").toBe("ohm");
  expect(findUnit("MM")).toBeUndefined();
});

test("every unit of the language reference is a unit word of its dimension", () => {
  const listed: Readonly<Record<string, string>> = {
    torque: "N·m, N.m, Nm, cN·m, lbf·ft, lb-ft, ft-lb, lbf·in, lb-in, in-lb, kgf·m",
    length: "mm, cm, m, in, ft",
    mass: "g, kg, lb, oz",
    volume: "ml, L, cm3, US qt, US gal, fl oz",
    force: "N, kN, lbf, kgf",
    pressure: "Pa, kPa, MPa, bar, psi, inHg",
    angle: "deg, °, turn, turns",
    time: "s, min, h, day, days, month, months, year, years",
    temperature: "°C, °F",
    voltage: "V, V dc, V ac",
    current: "A, mA",
    capacitance: "uF, µF, μF, mF",
    resistance: "ohm, Ω, kohm, kΩ, Mohm, MΩ",
    energy: "J",
    power: "W, kW",
    frequency: "Hz, rpm",
    flow: "L/min",
    vibration: "mm/s",
    flux: "mT",
    share: "%",
  };
  expect(Object.keys(listed)).toEqual([...dimensions]);
  for (const dimension of dimensions)
    for (const word of listed[dimension]!.split(", ")) expect(unitWords[dimension], word).toContain(word);
  expect(unitWords.stage).toEqual([...unitWords.torque, ...unitWords.angle]);
  expect([...unitWords.any].sort()).toEqual(dimensions.flatMap((dimension) => unitWords[dimension]).sort());
  expect(unitWords.any).not.toContain("kip");
});

test("a wrong spelling finds what it may have meant", () => {
  expect(nearestUnits("nm")).toContain("N·m");
  expect(nearestUnits("MM")).toEqual(["mm"]);
  expect(nearestUnits("KG", "mass")).toEqual(["kg"]);
  expect(nearestUnits("lb-fr")).toContain("lbf·ft");
  expect(nearestUnits("parsec")).toEqual([]);
  expect(usualUnits("torque")[0]).toBe("N·m");
});

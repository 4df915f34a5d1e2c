// The one table of units: every spelling, its dimension and its exact factor to SI. It refuses to guess: a spelling that is not here is unknown.

import { dimensions, type Dimension } from "./dimensions.ts";

/** Sets apart units of one dimension that must not be mixed up. */
export type UnitKind = "ac" | "dc" | "speed";

export interface Unit {
  /** The spelling that outputs use. */
  readonly name: string;
  /** Every accepted spelling, `name` first. Compared after NFC, runs of blanks as one. */
  readonly spellings: readonly string[];
  readonly dimension: Dimension;
  /** Value in SI = value x factor + offset. */
  readonly factor: number;
  /** Kelvin at the zero of the scale; 0 for everything but temperatures. */
  readonly offset: number;
  /** The factor as an exact decimal or a quotient of two, `undefined` where it is irrational. */
  readonly exact: string | undefined;
  readonly kind: UnitKind | undefined;
  /** Where it may be written: in a `.strip` file and in figures, or in figures only. */
  readonly use: "language" | "figures";
  /** The unit a reader of the other system of units is shown; `undefined` where both use this one. */
  readonly counterpart: { readonly system: "metric" | "us"; readonly unit: string } | undefined;
}

// Exact definitions: 1 in = 0.0254 m and 1 lb = 0.45359237 kg (international yard and pound, 1959), standard gravity 9.80665 m/s²
// (3rd CGPM, 1901), so 1 lbf = 4.4482216152605 N. US liquid gallon 231 in³, imperial gallon 4.54609 L.
// Conventional mercury 13 595.1 kg/m³. A year is the mean Gregorian one, 365.2425 days, and a month its twelfth.

const rows: Unit[] = [];

function unit(
  dimension: Dimension,
  spellings: string,
  exact: string | number,
  more: {
    readonly offset?: number;
    readonly kind?: UnitKind;
    readonly figures?: true;
    readonly us?: string;
    readonly metric?: string;
  } = {},
): void {
  const names = spellings.split(", "),
    name = names[0] ?? "";
  const counterpart =
    more.us !== undefined
      ? { system: "us" as const, unit: more.us }
      : more.metric !== undefined
        ? { system: "metric" as const, unit: more.metric }
        : undefined;
  rows.push({
    name,
    spellings: names,
    dimension,
    factor: typeof exact === "number" ? exact : quotient(exact),
    offset: more.offset ?? 0,
    exact: typeof exact === "number" ? undefined : exact,
    kind: more.kind,
    use: more.figures ? "figures" : "language",
    counterpart,
  });
}

function quotient(text: string): number {
  const [over, under] = text.split("/");
  return under === undefined ? Number(over) : Number(over) / Number(under);
}

unit("torque", "N·m, N.m, Nm, N⋅m", "1", { us: "lbf·ft" });
unit("torque", "cN·m, cN.m, cNm, cN⋅m", "0.01", { us: "lbf·in" });
unit(
  "torque",
  "lbf·ft, lbf.ft, lbf⋅ft, lbf-ft, ft-lbf, ft·lbf, lb·ft, ft·lb, lb.ft, ft.lb, ft-lb, lb-ft",
  "1.3558179483314004",
  { metric: "N·m" },
);
unit(
  "torque",
  "lbf·in, lbf.in, lbf⋅in, lbf-in, in-lbf, in·lbf, lb·in, in·lb, lb.in, in.lb, in-lb, lb-in",
  "0.1129848290276167",
  { metric: "N·m" },
);
unit("torque", "kgf·m, kgf.m, kgf⋅m, kgfm, kgf-m", "9.80665", { us: "lbf·ft" });
unit("torque", "dN·m, dN.m, dNm", "0.1", { us: "lbf·in", figures: true });
unit("torque", "kN·m, kN.m, kNm", "1000", { us: "lbf·ft", figures: true });
unit("torque", "ozf·in, ozf.in, oz-in, in-oz", "0.00706155181422604375", { metric: "cN·m", figures: true });
unit("torque", "kgf·cm, kgf.cm, kgf-cm", "0.0980665", { us: "lbf·in", figures: true });
unit("torque", "gf·cm, gf.cm", "0.0000980665", { us: "ozf·in", figures: true });

unit("length", "mm", "0.001", { us: "in" });
unit("length", "cm", "0.01", { us: "in" });
unit("length", "m", "1", { us: "ft" });
unit("length", "in", "0.0254", { metric: "mm" });
unit("length", "ft", "0.3048", { metric: "m" });
unit("length", "µm, μm, um", "0.000001", { us: "thou", figures: true });
unit("length", "thou", "0.0000254", { metric: "mm", figures: true });
unit("length", "yd", "0.9144", { metric: "m", figures: true });

unit("mass", "g", "0.001", { us: "oz" });
unit("mass", "kg", "1", { us: "lb" });
unit("mass", "lb, lbs", "0.45359237", { metric: "kg" });
unit("mass", "oz", "0.028349523125", { metric: "g" });
unit("mass", "t", "1000", { us: "lb", figures: true });

unit("volume", "ml, mL", "0.000001", { us: "fl oz" });
unit("volume", "L, l", "0.001", { us: "US qt" });
unit("volume", "cm3, cm³", "0.000001", { us: "fl oz" });
unit("volume", "US qt", "0.000946352946", { metric: "L" });
unit("volume", "US gal", "0.003785411784", { metric: "L" });
unit("volume", "fl oz, US fl oz", "0.0000295735295625", { metric: "ml" });
unit("volume", "US pt", "0.000473176473", { metric: "L", figures: true });
unit("volume", "imp gal", "0.00454609", { metric: "L", figures: true });
unit("volume", "imp pt", "0.00056826125", { metric: "ml", figures: true });
unit("volume", "imp fl oz", "0.0000284130625", { metric: "ml", figures: true });
unit("volume", "in3, in³", "0.000016387064", { metric: "ml", figures: true });
unit("volume", "mm3, mm³", "0.000000001", { us: "in3", figures: true });
unit("volume", "m3, m³", "1", { us: "US gal", figures: true });

unit("force", "N", "1", { us: "lbf" });
unit("force", "kN", "1000", { us: "lbf" });
unit("force", "lbf", "4.4482216152605", { metric: "N" });
unit("force", "kgf", "9.80665", { us: "lbf" });
unit("force", "daN", "10", { us: "lbf", figures: true });
unit("force", "kip", "4448.2216152605", { metric: "kN", figures: true });

unit("pressure", "Pa", "1", { us: "psi" });
unit("pressure", "kPa", "1000", { us: "psi" });
unit("pressure", "MPa", "1000000", { us: "psi" });
unit("pressure", "bar", "100000", { us: "psi" });
unit("pressure", "psi", "4.4482216152605/0.00064516", { metric: "bar" });
unit("pressure", "inHg", "3386.388640341", { metric: "kPa" });
unit("pressure", "ksi", "4448.2216152605/0.00064516", { metric: "MPa", figures: true });
unit("pressure", "GPa", "1000000000", { us: "ksi", figures: true });
unit("pressure", "mbar", "100", { us: "psi" });
unit("pressure", "mmHg", "133.322387415", { us: "inHg", figures: true });
unit("pressure", "atm", "101325", { us: "psi", figures: true });
unit("pressure", "kgf/cm2, kgf/cm²", "98066.5", { us: "psi", figures: true });
unit("pressure", "N/mm2, N/mm²", "1000000", { us: "psi", figures: true });

unit("angle", "deg, °", Math.PI / 180);
unit("angle", "turn, turns", Math.PI * 2);
unit("angle", "rad", "1", { figures: true });

unit("time", "s", "1");
unit("time", "min", "60");
unit("time", "h", "3600");
unit("time", "day, days", "86400");
unit("time", "month, months", "2629746");
unit("time", "year, years", "31556952");
unit("time", "ms", "0.001", { figures: true });

unit("temperature", "°C", "1", { offset: 273.15, us: "°F" });
unit("temperature", "°F", "5/9", { offset: 273.15 - (32 * 5) / 9, metric: "°C" });
unit("temperature", "K", "1", { figures: true });

unit("voltage", "V", "1");
unit("voltage", "V dc, V DC", "1", { kind: "dc" });
unit("voltage", "V ac, V AC", "1", { kind: "ac" });
unit("voltage", "kV", "1000", { figures: true });
unit("voltage", "mV", "0.001", { figures: true });
unit("current", "A", "1");
unit("current", "mA", "0.001");
unit("capacitance", "µF, uF, μF", "0.000001");
unit("capacitance", "mF", "0.001");
unit("capacitance", "F", "1", { figures: true });
unit("capacitance", "nF", "0.000000001", { figures: true });
unit("resistance", "ohm, Ω", "1");
unit("resistance", "kohm, kΩ", "1000");
unit("resistance", "Mohm, MΩ", "1000000");
unit("resistance", "Gohm, GΩ", "1000000000", { figures: true });
unit("energy", "J", "1");
unit("energy", "mJ", "0.001", { figures: true });
unit("energy", "kJ", "1000", { figures: true });
unit("power", "W", "1");
unit("power", "kW", "1000");
unit("power", "hp", "745.69987158227022", { metric: "kW", figures: true });
unit("power", "metric hp", "735.49875", { us: "hp", figures: true });
unit("frequency", "Hz", "1");
unit("frequency", "rpm", "1/60", { kind: "speed" });
unit("flow", "L/min, l/min", "0.001/60");
unit("vibration", "mm/s", "0.001");
unit("flux", "mT", "0.001");
unit("flux", "T", "1", { figures: true });
unit("share", "%", "0.01");

/** Every unit, in the order of the dimensions. */
export const units: readonly Unit[] = rows;

const bySpelling = new Map<string, Unit>();
for (const row of rows) for (const spelling of row.spellings) bySpelling.set(spelling, row);

/** One spelling for comparison: NFC, blanks as one space. */
const folded = (text: string): string => text.normalize("NFC").replace(/\s+/g, " ").trim();

/** The unit written so, or `undefined`. Case counts: `mm` is not `MM`, and `mF` is not `MF`. */
export function findUnit(spelling: string): Unit | undefined {
  return bySpelling.get(spelling) ?? bySpelling.get(folded(spelling));
}

/** The unit of this canonical name; a name that is not in the table is a fault of the program. */
export function unitNamed(name: string): Unit {
  const found = bySpelling.get(name);
  if (!found) throw new Error(`no unit named ${name} in the table`);
  return found;
}

/** The canonical names of a dimension's units that a `.strip` file may hold, the usual one first. */
export function usualUnits(dimension: Dimension): readonly string[] {
  return rows.filter((row) => row.dimension === dimension && row.use === "language").map((row) => row.name);
}

/** A group of unit words that one argument of the vocabulary may take. */
export type UnitGroup = Dimension | "any" | "shelf" | "stage";

/**
 * The unit words of a `.strip` file by dimension, every spelling, with the unions that arguments take: `any` (all of them),
 * `shelf` (what a shop counts by: volume, mass, length) and `stage` (a tightening stage: torque or angle).
 */
export const unitWords: Readonly<Record<UnitGroup, readonly string[]>> = groups();

function groups(): Record<UnitGroup, readonly string[]> {
  const of = (wanted: readonly Dimension[]): string[] =>
    rows.filter((row) => row.use === "language" && wanted.includes(row.dimension)).flatMap((row) => row.spellings);
  const single = Object.fromEntries(dimensions.map((dimension) => [dimension, of([dimension])])) as Record<
    Dimension,
    string[]
  >;
  return { ...single, any: of(dimensions), shelf: of(["volume", "mass", "length"]), stage: of(["torque", "angle"]) };
}

/**
 * The units a wrong spelling may have meant, nearest first, at most three: the same letters in another case or with other signs,
 * then one slip of the hand. Asked for a dimension, only its units are offered.
 */
export function nearestUnits(spelling: string, dimension?: Dimension): readonly string[] {
  const bare = (text: string): string =>
    text
      .normalize("NFKC")
      .toLowerCase()
      .replace(/[^\p{L}\p{N}%°/]/gu, "");
  const wanted = bare(spelling),
    scored: { name: string; score: number }[] = [];
  for (const row of rows) {
    if (dimension !== undefined && row.dimension !== dimension) continue;
    const score = Math.min(...row.spellings.map((each) => slips(wanted, bare(each))));
    if (score === 0 || (wanted.length > 1 && score === 1)) scored.push({ name: row.name, score });
  }
  scored.sort((a, b) => a.score - b.score);
  return scored
    .filter((each) => each.score === scored[0]!.score)
    .slice(0, 3)
    .map((each) => each.name);
}

/** Letters changed, added, left out or swapped between two words (Damerau's count). */
function slips(a: string, b: string): number {
  const rowsOf: number[][] = [];
  for (let i = 0; i <= a.length; i++) {
    const row: number[] = [i];
    for (let j = 1; j <= b.length; j++) {
      if (i === 0) {
        row.push(j);
        continue;
      }
      const cost = a[i - 1] === b[j - 1] ? 0 : 1,
        above = rowsOf[i - 1]!;
      let best = Math.min(above[j]! + 1, row[j - 1]! + 1, above[j - 1]! + cost);
      if (i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1])
        best = Math.min(best, rowsOf[i - 2]![j - 2]! + 1);
      row.push(best);
    }
    rowsOf.push(row);
  }
  return rowsOf[a.length]![b.length]!;
}

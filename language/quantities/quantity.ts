// A figure with its unit as an author wrote it: single, range or plus-minus, perhaps with a second printed value in brackets.
// It never makes a mean of a range, and never prints more precision than was written.

import { dimensionNames, type Dimension } from "./dimensions.ts";
import { parseNumber } from "./number.ts";
import { findUnit, nearestUnits, unitNamed, usualUnits, type Unit } from "./units.ts";

export interface Quantity {
  readonly dimension: Dimension;
  /** Canonical spelling of the unit. */
  readonly unit: string;
  /** As written, in `unit`; equal to `high` for a single value. */
  readonly low: number;
  readonly high: number;
  /** Of a single value or a plus-minus one; a range has none. */
  readonly nominal: number | undefined;
  readonly form: "single" | "range" | "plus-minus";
  /** The second printed value, from the brackets. */
  readonly pair: Quantity | undefined;
  /** As the author wrote it, one space between number and unit, without the bracket. */
  readonly written: string;
  /** Decimals written (the most of its numbers). */
  readonly digits: number;
  /** The worth of the last written place, in `unit`: 0.1 for 24.5, 1/16 for 1-13/16; of the nominal value where there is a tolerance. */
  readonly step: number;
  /** Significant figures of the largest number written. */
  readonly significant: number;
}

/** Why a text is no quantity, in words for its author, with the nearest valid units where that helps. */
export interface QuantityProblem {
  readonly problem: string;
  readonly nearest?: readonly string[];
}

export interface QuantityParts {
  /** The first number, and the second of a range or the tolerance of a plus-minus, as written. */
  readonly first: string;
  readonly second?: string | undefined;
  readonly form: Quantity["form"];
  readonly unit: string;
  readonly pair?: Quantity | undefined;
  /** The dimension that is due; another one is a problem. */
  readonly dimension?: Dimension | undefined;
}

export const isProblem = (result: object): result is QuantityProblem => "problem" in result;

/**
 * Puts a quantity together from its written parts.
 * @returns a problem for an unreadable number, an unknown unit, a unit of another dimension, a range that falls, a negative tolerance.
 */
export function makeQuantity(parts: QuantityParts): Quantity | QuantityProblem {
  const unit = findUnit(parts.unit);
  if (!unit) return unknownUnit(parts.unit, parts.dimension);
  if (parts.dimension !== undefined && unit.dimension !== parts.dimension) {
    const due = usualUnits(parts.dimension);
    return {
      problem: `${parts.unit} is a unit of ${dimensionNames[unit.dimension].title}: here it takes ${oneOf(due)}`,
      nearest: due.slice(0, 3),
    };
  }
  const first = parseNumber(parts.first),
    second = parts.second === undefined ? undefined : parseNumber(parts.second);
  if (!first) return badNumber(parts.first);
  if (parts.second !== undefined && !second) return badNumber(parts.second);
  const shownUnit = parts.unit.replace(/\s+/g, " ").trim();
  const common = { dimension: unit.dimension, unit: unit.name, pair: parts.pair };
  if (parts.form === "single" || !second) {
    const { value, digits, step, significant } = first;
    return {
      ...common,
      low: value,
      high: value,
      nominal: value,
      form: "single",
      written: shown(parts.first, shownUnit),
      digits,
      step,
      significant,
    };
  }
  const digits = Math.max(first.digits, second.digits);
  if (parts.form === "range") {
    if (first.value > second.value)
      return { problem: `${parts.first}..${parts.second} falls: write the smaller figure first` };
    const significant = Math.abs(second.value) >= Math.abs(first.value) ? second.significant : first.significant;
    return {
      ...common,
      low: first.value,
      high: second.value,
      nominal: undefined,
      form: "range",
      written: shown(`${parts.first.trim()}..${parts.second?.trim()}`, shownUnit),
      digits,
      step: Math.min(first.step, second.step),
      significant,
    };
  }
  if (second.value < 0) return { problem: `± ${parts.second} is negative: a tolerance has no sign of its own` };
  return {
    ...common,
    low: exactSum(first.value, -second.value, digits),
    high: exactSum(first.value, second.value, digits),
    nominal: first.value,
    form: "plus-minus",
    written: shown(`${parts.first.trim()} ± ${parts.second?.trim()}`, shownUnit),
    digits,
    step: first.step,
    significant: first.significant,
  };
}

/** A quantity that the program itself makes, single, in a unit of the table. `digits` are its decimals (2 if left out). */
export function quantityOf(value: number, unitName: string, digits = 2): Quantity {
  const { name, dimension } = unitNamed(unitName),
    text = value.toFixed(digits),
    significant = parseNumber(text)?.significant ?? 1;
  return {
    dimension,
    unit: name,
    low: value,
    high: value,
    nominal: value,
    form: "single",
    pair: undefined,
    written: shown(text, name),
    digits,
    step: Number(`1e-${digits}`),
    significant,
  };
}

const quantityText =
  /^\s*([+\-\u2212]?[\d.]+(?:(?:[- ]\d+)?\/\d+)?|\.\d+)\s*(?:(\.\.|±|\+\/-)\s*([+\-\u2212]?[\d.]+(?:(?:[- ]\d+)?\/\d+)?))?\s*([^()]*?)\s*(?:\(([^()]*)\))?\s*$/;

/**
 * Reads a quantity from a command line: `24 N·m`, `24 ± 2 Nm`, `0.05..0.15 mm`, `1-13/16 in`, `52 N·m (38 lb-ft)`, `20mm`.
 * @param dimension what is due; `undefined` takes any unit.
 */
export function parseQuantity(text: string, dimension?: Dimension): Quantity | QuantityProblem {
  if (/\d,\d/.test(text))
    return {
      problem: `${text.trim()} has a comma: write the decimal with a point, ${text.trim().replace(/(\d),(\d)/g, "$1.$2")}`,
    };
  // The range sign must not be taken for decimal points of the numbers beside it.
  const match = quantityText.exec(text.replace(/(\d)\s*\.\.\s*/g, "$1 .. "));
  if (!match)
    return {
      problem: `"${text.trim()}" is no figure with a unit`,
      ...(dimension === undefined ? {} : { nearest: usualUnits(dimension).slice(0, 3) }),
    };
  const [, first = "", sign, second, unit = "", bracket] = match;
  if (unit === "") {
    const due = dimension === undefined ? [] : usualUnits(dimension);
    const help = due.length > 0 ? `: ${dimensionNames[dimension!].title} takes ${oneOf(due)}` : "";
    return { problem: `${text.trim()} has no unit${help}`, ...(due.length > 0 ? { nearest: due.slice(0, 3) } : {}) };
  }
  let pair: Quantity | undefined;
  if (bracket !== undefined) {
    const read = parseQuantity(bracket);
    if (isProblem(read)) return read;
    pair = read;
  }
  const form = sign === undefined ? "single" : sign === ".." ? "range" : "plus-minus";
  return makeQuantity({ first, second, form, unit, pair, dimension });
}

/** The values in SI (K for temperatures, rad for angles, m³ for volumes, 1 for shares). */
export function si(quantity: Quantity): {
  readonly low: number;
  readonly high: number;
  readonly nominal: number | undefined;
} {
  const { factor, offset } = unitNamed(quantity.unit),
    of = (value: number): number => value * factor + offset;
  return {
    low: of(quantity.low),
    high: of(quantity.high),
    nominal: quantity.nominal === undefined ? undefined : of(quantity.nominal),
  };
}

/** A plain value from SI into a unit of the table, and back. */
export const fromSi = (value: number, unitName: string): number => {
  const { factor, offset } = unitNamed(unitName);
  return (value - offset) / factor;
};
export const toSi = (value: number, unitName: string): number => {
  const { factor, offset } = unitNamed(unitName);
  return value * factor + offset;
};

/**
 * A value from one unit to another of the same dimension. Exact where the two factors are: 3 ft are 36 in, not 36.00000000000001.
 * Throws on units of two dimensions (a fault of the program: ask `makeQuantity` first).
 */
export function convertValue(value: number, from: string, to: string): number {
  const a = unitNamed(from),
    b = unitNamed(to);
  if (a.dimension !== b.dimension) throw new Error(`${from} and ${to} are not of one dimension`);
  if (a === b) return value;
  if (a.dimension === "temperature") return snapped((value * a.factor + a.offset - b.offset) / b.factor, 1e-13);
  return snapped(value * (a.factor / b.factor), 1e-15);
}

/**
 * The same quantity in another unit, at full precision (for sums; `format` is what prints).
 * @returns `undefined` when the unit is unknown, of another dimension, or of another kind (V ac is never V dc).
 */
export function convert(quantity: Quantity, unitSpelling: string): Quantity | undefined {
  const unit = findUnit(unitSpelling),
    own = unitNamed(quantity.unit);
  if (!unit || !comparable(own, unit)) return undefined;
  const of = (value: number): number => convertValue(value, quantity.unit, unit.name);
  const nominal = quantity.nominal === undefined ? undefined : of(quantity.nominal);
  const converted = {
    ...quantity,
    unit: unit.name,
    low: of(quantity.low),
    high: of(quantity.high),
    nominal,
    step: stepIn(quantity, unit),
  };
  const written = printed(converted, quantity.significant, ".");
  return { ...converted, written, digits: decimalsOf(written) };
}

/** To which side a figure is rounded: `up` for a lower limit and for a load, `down` for an upper limit and for what a tool can take. */
export type Rounding = "nearest" | "up" | "down";

/**
 * The quantity as a reader of that system of units is shown it: as written when its unit belongs to the system, else converted and
 * rounded to the significant figures that were written (two at least, for a single figure would shift the value). A range and a
 * tolerance are rounded inward, with a further place where they would lose much: what is printed never lies outside what was written.
 * @param locale a BCP 47 tag, for the decimal sign only; without it the point.
 * @param rounding of a single figure; it says nothing to a range or a tolerance.
 */
export function format(
  quantity: Quantity,
  system: "metric" | "us",
  locale?: string,
  rounding: Rounding = "nearest",
): string {
  const unit = unitNamed(quantity.unit),
    point = decimalSign(locale);
  if (unit.counterpart?.system !== system) return quantity.written.replace(/(\d)\.(?=\d)/g, `$1${point}`);
  const target = counterpartFor(quantity, unit);
  const of = (value: number): number => convertValue(value, quantity.unit, target.name);
  const nominal = quantity.nominal === undefined ? undefined : of(quantity.nominal);
  return printed(
    { ...quantity, unit: target.name, low: of(quantity.low), high: of(quantity.high), nominal },
    quantity.significant,
    point,
    rounding,
  );
}

/** Small torques read better in lbf·in: the trade leaves lbf·ft below about 10. */
function counterpartFor(quantity: Quantity, unit: Unit): Unit {
  const target = unitNamed(unit.counterpart!.unit);
  return target.name === "lbf·ft" && convertValue(quantity.high, unit.name, "lbf·ft") < 10
    ? unitNamed("lbf·in")
    : target;
}

export interface PairComparison {
  /** `mismatch`: the two values are not of one dimension or kind. */
  readonly level: "silent" | "hint" | "warning" | "mismatch";
  /** The first value in the bracket's unit, and the bracket's; of the end that differs most. */
  readonly converted: number;
  readonly printed: number;
  readonly unit: string;
  /** How far the bracket is from the first value, as a share of the first. */
  readonly difference: number;
  /** The numbers in one clause, empty when silent: "52 N·m is 38 lbf·ft, the bracket says 40". */
  readonly says: string;
}

/**
 * Compares a quantity with its bracket. Silent when the bracket is the correct rounding of the first value to its own last digit;
 * else a warning over 5 %; else a hint over one unit of that digit.
 * @returns `undefined` without a bracket.
 */
export function comparePair(quantity: Quantity): PairComparison | undefined {
  const { pair } = quantity;
  if (!pair) return undefined;
  const from = unitNamed(quantity.unit),
    to = unitNamed(pair.unit);
  if (!comparable(from, to)) {
    const says = `${quantity.written} and ${pair.written} are not the same kind of figure`;
    return {
      level: "mismatch",
      converted: Number.NaN,
      printed: pair.high,
      unit: pair.unit,
      difference: Number.NaN,
      says,
    };
  }
  const of = (value: number): number => convertValue(value, quantity.unit, pair.unit);
  let worst: PairComparison | undefined;
  for (const [ours, theirs] of matched(quantity, pair, of)) {
    const off = Math.abs(ours - theirs),
      difference = ours === 0 ? (off === 0 ? 0 : Infinity) : off / Math.abs(ours),
      slack = 1 + 1e-9;
    const level =
      off <= (pair.step / 2) * slack
        ? "silent"
        : difference > 0.05
          ? "warning"
          : off > pair.step * slack
            ? "hint"
            : "silent";
    const says =
      level === "silent"
        ? ""
        : `${quantity.written} is ${rounded(ours, Math.max(3, pair.significant))} ${pair.unit}, the bracket says ${pair.written}`;
    const found: PairComparison = { level, converted: ours, printed: theirs, unit: pair.unit, difference, says };
    if (!worst || severity[level] > severity[worst.level] || (level === worst.level && difference > worst.difference))
      worst = found;
  }
  return worst;
}

const severity = { silent: 0, hint: 1, warning: 2, mismatch: 3 };

/** Which figures of the two answer to each other. A bracket with one figure beside a range answers to the end it is nearest to, if outside. */
function matched(quantity: Quantity, pair: Quantity, of: (value: number) => number): [number, number][] {
  const low = of(quantity.low),
    high = of(quantity.high);
  if (quantity.nominal !== undefined && pair.form === "single") return [[of(quantity.nominal), pair.high]];
  if (quantity.form === "single" && pair.nominal !== undefined) return [[low, pair.nominal]];
  if (pair.form === "single") return [[Math.min(Math.max(pair.high, low), high), pair.high]];
  if (quantity.form === "single") return [[low, Math.min(Math.max(low, pair.low), pair.high)]];
  return [
    [low, pair.low],
    [high, pair.high],
  ];
}

/** One dimension, and never ac against dc, or Hz against a rotating speed. Plain V goes with either. */
function comparable(a: Unit, b: Unit): boolean {
  if (a.dimension !== b.dimension) return false;
  return a.dimension === "voltage"
    ? a.kind === undefined || b.kind === undefined || a.kind === b.kind
    : a.kind === b.kind;
}

const stepIn = (quantity: Quantity, unit: Unit): number =>
  (quantity.step * unitNamed(quantity.unit).factor) / unit.factor;

/** Prints numbers to so many significant figures of the largest, in its form. */
function printed(quantity: Quantity, significant: number, point: string, rounding: Rounding = "nearest"): string {
  const { low, high, nominal, form, unit } = quantity,
    figures = Math.max(2, significant),
    largest = Math.max(Math.abs(low), Math.abs(high));
  const decimals = decimalsFor(nominal ?? largest, figures),
    sign = (text: string): string => text.replace(".", point);
  if (form === "plus-minus" && nominal !== undefined) {
    return shown(
      inward(high - low, decimals, (places) => {
        const middle = roundTo(nominal, places),
          room = Math.min(high - Number(middle), Number(middle) - low);
        const tolerance = roundTo(Math.max(0, room), Math.max(places, decimalsFor(room, 2)), "down");
        return { width: 2 * Number(tolerance), text: `${sign(middle)} ± ${sign(tolerance)}` };
      }),
      unit,
    );
  }
  if (form === "range") {
    return shown(
      inward(high - low, decimals, (places) => {
        const from = roundTo(low, places, "up"),
          to = roundTo(high, places, "down");
        return { width: Number(to) - Number(from), text: `${sign(from)}..${sign(to)}` };
      }),
      unit,
    );
  }
  return shown(sign(roundTo(high, decimals, rounding)), unit);
}

/** The text with the fewest places that keeps nine tenths of the width: rounding inward must not leave the reader a sliver. */
function inward(
  width: number,
  decimals: number,
  at: (places: number) => { readonly width: number; readonly text: string },
): string {
  let places = decimals,
    found = at(places);
  while (found.width < 0.9 * width && places < Math.min(12, decimals + 6)) found = at(++places);
  return found.text;
}

/** Decimals that show so many significant figures; never negative, for a whole number is not rounded to tens. */
function decimalsFor(value: number, figures: number): number {
  if (value === 0 || !Number.isFinite(value)) return 0;
  return Math.min(12, Math.max(0, figures - 1 - Math.floor(Math.log10(Math.abs(value)) + 1e-12)));
}

/** A number to so many significant figures, without exponent and without zeros invented behind. */
export function rounded(value: number, figures = 3): string {
  return roundTo(value, decimalsFor(value, figures));
}

/** Rounds the decimal that the reader sees, half away from zero: 6.35 to one place is 6.4, though its nearest double lies below. */
function roundTo(value: number, decimals: number, rounding: Rounding = "nearest"): string {
  if (!Number.isFinite(value)) return String(value);
  const shift = (number: number, places: number): number => {
    const [figures = "0", exponent = "0"] = String(number).split("e");
    return Number(`${figures}e${Number(exponent) + places}`);
  };
  // Of what is below zero the size goes the other way.
  const whole = rounding === "nearest" ? Math.round : (rounding === "up") === value >= 0 ? Math.ceil : Math.floor;
  const size = shift(whole(shift(tidy(Math.abs(value)), decimals)), -decimals),
    text = size.toFixed(decimals);
  return value < 0 && size !== 0 ? `-${text}` : text;
}

/** A value that is a short decimal but for its last bits becomes that decimal: 3 ft are 36 in, 212 °F are 100 °C. */
function snapped(value: number, share: number): number {
  const short = Number(value.toPrecision(12));
  return Math.abs(short - value) <= share * Math.max(Math.abs(value), 1e-300) ? short : value;
}

/** Takes the last two bits of a product of decimals away, so that halves round as on paper. */
const tidy = (value: number): number => (Number.isFinite(value) ? Number(value.toPrecision(15)) : value);

const exactSum = (a: number, b: number, digits: number): number => Number((a + b).toFixed(Math.max(digits, 12)));

const shown = (number: string, unit: string): string => `${number.trim()} ${unit}`;

function decimalsOf(written: string): number {
  return Math.max(0, ...[...written.matchAll(/\d\.(\d+)/g)].map((match) => match[1]!.length));
}

function decimalSign(locale: string | undefined): string {
  if (locale === undefined) return ".";
  return new Intl.NumberFormat(locale).formatToParts(1.5).find((part) => part.type === "decimal")?.value ?? ".";
}

function unknownUnit(spelling: string, dimension: Dimension | undefined): QuantityProblem {
  const near = nearestUnits(spelling, dimension),
    nearest = near.length > 0 || dimension === undefined ? near : usualUnits(dimension).slice(0, 3);
  return {
    problem: `${spelling} is no unit that is known here${nearest.length > 0 ? `: did you mean ${oneOf(nearest)}` : ""}`,
    nearest,
  };
}

function badNumber(text: string): QuantityProblem {
  return /,/.test(text)
    ? { problem: `${text} has a comma: write the decimal with a point, ${text.replace(",", ".")}` }
    : { problem: `"${text}" is no number` };
}

const oneOf = (words: readonly string[]): string =>
  words.length < 2 ? words.join("") : `${words.slice(0, -1).join(", ")} or ${words[words.length - 1]}`;

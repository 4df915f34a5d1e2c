// The shape that every figure shares, so that the command line, hovers, checks and the manual print the same sum. It reads arguments and
// holds results; it computes nothing.

import { dimensionNames, type Dimension } from "../quantities/dimensions.ts";
import { parseNumber } from "../quantities/number.ts";
import { isProblem, parseQuantity, si, type Quantity } from "../quantities/quantity.ts";
import { isThreadSize, parseThreadSize, type ThreadSize } from "../quantities/thread-size.ts";
import { findUnit, units, usualUnits } from "../quantities/units.ts";
import type { Assumptions } from "./assumptions.ts";

/** What an argument takes: a figure with a unit, a thread size, a property class or grade, one of some words, free text, a bare number. */
export type Takes = Dimension | "size" | "class" | "word" | "text" | "number";

export interface FigureArgument {
  readonly name: string;
  /** Meaning in a clause, with the range where it has one. */
  readonly about: string;
  readonly takes: Takes;
  /** It may be left out; `default` says what then stands, in words or as it would be typed. */
  readonly optional?: true;
  readonly default?: string;
  /** It may be given several times; its value is then a list. */
  readonly many?: true;
  /** It counts things: a whole number from 1. */
  readonly whole?: true;
  /** The words that a `word` argument takes. */
  readonly words?: readonly string[];
  /** The units it takes, the usual one first; empty where it has none. */
  readonly units: readonly string[];
}

export type ArgumentValue = Quantity | ThreadSize | string | number;
/** The arguments by name; one that was left out is absent. */
export type FigureInputs = Readonly<Record<string, ArgumentValue | readonly ArgumentValue[] | undefined>>;

export interface ResultValue {
  readonly name: string;
  /** A list is an order or a series; words where the result is one ("M6", "loosen"). */
  readonly value: number | string | readonly (number | string)[];
  /** `undefined` for what has no unit. */
  readonly unit: string | undefined;
}

export interface ResultStep {
  readonly text: string;
  readonly value: number | string | undefined;
  readonly unit: string | undefined;
}

export interface FigureResult {
  /** The main one first. */
  readonly values: readonly ResultValue[];
  readonly formula: string;
  readonly steps: readonly ResultStep[];
  /** What was taken for granted because nobody said it: "friction 0.12 in thread and under head". */
  readonly assumptions: readonly string[];
  readonly source: string;
  readonly caution: string;
}

/** A question that has no answer: a size outside the tables, a unit of another kind, a missing argument. A value, never thrown. */
export interface FigureError {
  readonly says: string;
  readonly nearest?: readonly string[];
}

export interface Figure {
  /** As typed behind `calc`; letters, digits and hyphens. */
  readonly name: string;
  readonly title: string;
  readonly arguments: readonly FigureArgument[];
  /** Where the formula holds. */
  readonly validity: string;
  readonly source: string;
  /** Questions that answer, as they would be typed behind `calc NAME`. */
  readonly examples: readonly string[];
  /** What a word of the trade stands for, in the words of a question; undefined for any other word. */
  readonly spoken?: (word: string) => readonly string[] | undefined;
  run(inputs: FigureInputs, assumptions: Assumptions): FigureResult | FigureError;
}

export const isFigureError = (result: object): result is FigureError => "says" in result;

/** Stands under every figure that a person is shown. */
export const aidCaution = "An aid only: the maker's data, local codes and licensed or authorised persons come first";

/** Declares an argument; the units come from the table of units. */
export function argument(
  name: string,
  takes: Takes,
  about: string,
  more: Omit<FigureArgument, "name" | "takes" | "about" | "units"> = {},
): FigureArgument {
  return { name, about, takes, ...more, units: isDimension(takes) ? acceptedUnits(takes) : [] };
}

export const isDimension = (takes: Takes): takes is Dimension => takes in dimensionNames;

/** Canonical names of the units that a figure takes, those of the language first. */
function acceptedUnits(dimension: Dimension): readonly string[] {
  const usual = usualUnits(dimension);
  return [
    ...usual,
    ...units.filter((unit) => unit.dimension === dimension && !usual.includes(unit.name)).map((unit) => unit.name),
  ];
}

/**
 * Reads one argument from text, as the command line and a sheet of questions give it.
 * @returns an error that names the argument, what it takes and the nearest valid spellings.
 */
export function readArgument(wanted: FigureArgument, text: string): ArgumentValue | FigureError {
  const { takes, name } = wanted;
  if (takes === "size") {
    const size = parseThreadSize(text);
    return isThreadSize(size) ? size : { says: `${name}: ${size.problem}` };
  }
  if (takes === "number") {
    const number = parseNumber(text);
    if (!number) return { says: `${name}: "${text}" is no number; ${wanted.about}` };
    if (wanted.whole && !(Number.isInteger(number.value) && number.value >= 1))
      return { says: `${name}: "${text.trim()}" is no whole number from 1; ${wanted.about}` };
    return number.value < 0 ? belowNought(wanted, text) : number.value;
  }
  if (takes === "word") {
    const words = wanted.words ?? [],
      found = words.find((word) => word.toLowerCase() === text.trim().toLowerCase());
    return found ?? { says: `${name}: "${text}" is not among ${words.join(", ")}`, nearest: words };
  }
  if (takes === "class" && /^(?:#\d+|(?:\d+[- ])?\d+\/\d+)(?:\s|$)/.test(text.trim()))
    return { says: `${name}: ${text.trim()} is a diameter; the thread has its threads an inch behind it, as 3/8-16` };
  if (takes === "class" || takes === "text") return text.trim();
  const quantity = parseQuantity(text, takes);
  if (!isProblem(quantity))
    return takes !== "temperature" && si(quantity).low < 0 ? belowNought(wanted, text) : quantity;
  return { says: `${name}: ${quantity.problem}`, ...(quantity.nearest ? { nearest: quantity.nearest } : {}) };
}

/** Only a temperature goes below 0 in these figures: a load, a length, a torque, an angle or a count does not, nor the lower end of a range of them. */
const belowNought = ({ name, about }: FigureArgument, text: string): FigureError => ({
  says: `${name}: "${text.trim()}" goes below 0, which no figure here can take; ${about}`,
});

const isQuantity = (value: unknown): value is Quantity =>
  typeof value === "object" && value !== null && "dimension" in value;
const isSize = (value: unknown): value is ThreadSize =>
  typeof value === "object" && value !== null && "designation" in value;

/** The argument as a quantity, a size, a text or a number; `undefined` when it was left out or is of another shape. */
export function quantityIn(inputs: FigureInputs, name: string): Quantity | undefined {
  const value = inputs[name];
  return isQuantity(value) ? value : undefined;
}
export function sizeIn(inputs: FigureInputs, name: string): ThreadSize | undefined {
  const value = inputs[name];
  return isSize(value) ? value : undefined;
}
export function textIn(inputs: FigureInputs, name: string): string | undefined {
  const value = inputs[name];
  return typeof value === "string" ? value : undefined;
}
/** The argument as one of the words that it takes; `undefined` when it was left out or is none of them. */
export function wordIn<Word extends string>(
  inputs: FigureInputs,
  name: string,
  words: readonly Word[],
): Word | undefined {
  const text = textIn(inputs, name);
  return words.find((word) => word === text);
}
export function numberIn(inputs: FigureInputs, name: string): number | undefined {
  const value = inputs[name];
  return typeof value === "number" ? value : undefined;
}
/** The SI value of a quantity argument: its nominal value, or the end of a range that is asked for (the upper one if nothing is said). */
export function siIn(inputs: FigureInputs, name: string, end: "low" | "high" = "high"): number | undefined {
  const quantity = quantityIn(inputs, name);
  if (!quantity) return undefined;
  const values = si(quantity);
  return values.nominal ?? values[end];
}
/** Every value of an argument that may stand several times. */
export function listIn(inputs: FigureInputs, name: string): readonly ArgumentValue[] {
  const value = inputs[name];
  return value === undefined
    ? []
    : Array.isArray(value)
      ? (value as readonly ArgumentValue[])
      : [value as ArgumentValue];
}

/** The first argument that is due and was not given, as an error; `undefined` when all are there. */
export function missing(figure: Pick<Figure, "name" | "arguments">, inputs: FigureInputs): FigureError | undefined {
  const lacking = figure.arguments.find((wanted) => !wanted.optional && inputs[wanted.name] === undefined);
  if (!lacking) return undefined;
  const takes = isDimension(lacking.takes)
    ? `${dimensionNames[lacking.takes].title} in ${usualUnits(lacking.takes).join(", ")}`
    : lacking.about;
  return {
    says: `${figure.name} needs ${lacking.name}: ${takes}`,
    ...(lacking.words ? { nearest: lacking.words } : {}),
  };
}

/** A value of a result, from SI into a unit of the table. */
export function result(name: string, siValue: number, unitName: string): ResultValue {
  const unit = findUnit(unitName);
  if (!unit) throw new Error(`no unit ${unitName} in the table`);
  return { name, value: (siValue - unit.offset) / unit.factor, unit: unit.name };
}
/** A result without a unit of the table: a number, a word, an order; or with a compound unit such as mm² that no argument takes. */
export const plain = (name: string, value: ResultValue["value"], unit?: string): ResultValue => ({ name, value, unit });

export const step = (text: string, value?: number | string, unit?: string): ResultStep => ({ text, value, unit });

// Reads the words behind a figure's name into its arguments: by what each word can be, in the order in which the figure takes them, or by name.
// It guesses no unit and fills in nothing; what fits nowhere is an error that says what would.

import { dimensionNames } from "../quantities/dimensions.ts";
import { parseNumber } from "../quantities/number.ts";
import type { ThreadSize } from "../quantities/thread-size.ts";
import { findUnit, nearestUnits, usualUnits } from "../quantities/units.ts";
import {
  isDimension,
  readArgument,
  type ArgumentValue,
  type Figure,
  type FigureArgument,
  type FigureError,
  type FigureInputs,
} from "../figures/figure.ts";
import { nearestWords } from "./nearest.ts";

/** A question that was read: the arguments as values, and as they were written, in the order of the figure. */
export interface Question {
  readonly inputs: FigureInputs;
  readonly written: Record<string, string | string[]>;
}

/** Longest run of words that one argument is written in: "1-13/16 in ± 1/16 in (46 mm)" and the like. */
const LONGEST = 8;

const isSize = (value: ArgumentValue | FigureError): value is ThreadSize =>
  typeof value === "object" && "designation" in value;
const isError = (value: ArgumentValue | FigureError): value is FigureError =>
  typeof value === "object" && "says" in value;

/** What has been read so far. */
interface Filling {
  readonly figure: Figure;
  readonly values: Map<string, ArgumentValue[]>;
  readonly texts: Map<string, string[]>;
  /** The argument that was filled last, for a name that stands behind its value: "2 people". */
  last: string | undefined;
}

/**
 * Reads words such as `560 V 1200 uF 22 kohm maker-wait 5 min` for a figure.
 *
 * A word that is the name of an argument (`reach 45 cm`, `reach=45 cm`) takes what follows for it, and may also stand behind its value (`2 people`).
 * Else the longest run of words that an argument still to be filled can be read from is taken for the first such argument.
 * Returns an error for what fits nowhere, with the nearest valid words or units; a missing argument is the figure's to report.
 */
export function readQuestion(figure: Figure, words: readonly string[]): Question | FigureError {
  const filling: Filling = { figure, values: new Map(), texts: new Map(), last: undefined };
  const tokens = words
    .flatMap((word) => word.trim().split(/\s+/))
    .filter((word) => word !== "")
    .flatMap((word) => figure.spoken?.(word) ?? [word]);
  let at = 0;
  while (at < tokens.length) {
    const taken = named(filling, tokens, at) ?? positional(filling, tokens, at);
    if (typeof taken !== "number") return taken;
    at += taken;
  }
  return asQuestion(filling);
}

/**
 * Reads the inputs of a sheet of questions, by name. A bare number may stand for an argument that takes one; everything else is text with its unit.
 * Returns an error for an unknown name, an argument given too often, and a value that does not read.
 */
export function readNamed(
  figure: Figure,
  inputs: Readonly<Record<string, string | number | readonly (string | number)[]>>,
): Question | FigureError {
  const filling: Filling = { figure, values: new Map(), texts: new Map(), last: undefined };
  for (const [name, given] of Object.entries(inputs)) {
    const wanted = figure.arguments.find((one) => one.name === name);
    if (wanted === undefined) {
      const names = figure.arguments.map((one) => one.name);
      const near = nearestWords(name, names);
      return {
        says: `${figure.name} takes no ${name}: it takes ${names.join(", ")}`,
        nearest: near.length > 0 ? near : names,
      };
    }
    const list = Array.isArray(given) ? (given as readonly (string | number)[]) : [given as string | number];
    if (list.length > 1 && wanted.many !== true)
      return { says: `${figure.name} takes ${name} once, not ${list.length} times` };
    for (const one of list) {
      const value = readArgument(wanted, String(one));
      if (isError(value)) return value;
      put(filling, wanted, value, String(one));
    }
  }
  return asQuestion(filling);
}

function asQuestion(filling: Filling): Question {
  const { figure, values, texts } = filling;
  takeClassFromSize(filling);
  const inputs: Record<string, ArgumentValue | readonly ArgumentValue[]> = {};
  const written: Record<string, string | string[]> = {};
  for (const { name, many } of figure.arguments) {
    const list = values.get(name);
    if (list === undefined) continue;
    inputs[name] = many === true ? list : list[0]!;
    const text = texts.get(name)!;
    written[name] = many === true ? text : text[0]!;
  }
  return { inputs, written };
}

/** A size may carry its class (M8x35-8.8): it stands for the class where none was given by itself. */
function takeClassFromSize(filling: Filling): void {
  const wanted = filling.figure.arguments.find((one) => one.takes === "class");
  if (wanted === undefined || filling.values.has(wanted.name)) return;
  for (const value of [...filling.values.values()].flat()) {
    if (isSize(value) && value.propertyClass !== undefined)
      return put(filling, wanted, value.propertyClass, value.propertyClass);
  }
}

function put(filling: Filling, { name }: FigureArgument, value: ArgumentValue, text: string): void {
  const { values, texts } = filling;
  values.set(name, [...(values.get(name) ?? []), value]);
  texts.set(name, [...(texts.get(name) ?? []), text]);
}

const isOpen = ({ values }: Filling, wanted: FigureArgument): boolean =>
  wanted.many === true || !values.has(wanted.name);

/** Takes `name value`, `name=value`; undefined where the word is no name of an argument. The number of words taken, or why the value does not read. */
function named(filling: Filling, tokens: readonly string[], at: number): number | FigureError | undefined {
  const { figure } = filling;
  const [, before, behind] = /^([^=]+)(?:=(.*))?$/.exec(tokens[at]!) ?? [];
  const wanted = figure.arguments.find((one) => one.name === before);
  if (wanted === undefined) return undefined;
  if (behind === undefined && filling.last === wanted.name && !isOpen(filling, wanted)) {
    filling.last = undefined;
    return 1;
  }
  // The same word may be a value of another argument; it is a name only where a value can follow.
  const next = tokens[at + 1];
  if (behind === undefined && (next === undefined || (isName(figure, next) && !isWordOf(wanted, next)))) {
    return figure.arguments.some((one) => one.words?.includes(tokens[at]!))
      ? undefined
      : {
          says: `${figure.name}: a value is due behind ${before}`,
          ...(wanted.words ? { nearest: wanted.words } : {}),
        };
  }
  if (!isOpen(filling, wanted))
    return {
      says: `${figure.name} takes ${wanted.name} once: it was given as ${filling.texts.get(wanted.name)!.join(", ")}`,
    };
  const rest =
    behind === undefined ? tokens.slice(at + 1) : [...(behind === "" ? [] : [behind]), ...tokens.slice(at + 1)];
  const own = behind === undefined || behind === "" ? 1 : 0;
  const run =
    wanted.takes === "text" || wanted.takes === "class"
      ? freeRun(figure, wanted, rest, 0)
      : longestRun(figure, wanted, rest, 0);
  if (run !== undefined) {
    put(filling, wanted, run.value, run.text);
    filling.last = undefined;
    return run.length + own;
  }
  const text = rest.slice(0, isNumber(rest[0]) && rest[1] !== undefined && !isName(figure, rest[1]) ? 2 : 1).join(" ");
  const reason = readArgument(wanted, text);
  return isError(reason) ? reason : { says: `${figure.name}: "${text}" does not read as ${wanted.name}` };
}

/** Takes the longest run of words for the first argument that reads it: figures and words first, then bare numbers and classes, free text last. */
function positional(filling: Filling, tokens: readonly string[], at: number): number | FigureError {
  const { figure } = filling;
  const open = figure.arguments.filter((one) => isOpen(filling, one));
  const strict = open.filter((one) => one.takes !== "text" && one.takes !== "class" && one.takes !== "number");
  // Before its size is said a bare number is no coefficient: "3/8" is half of a size.
  const sizeDue = open.some((one) => one.takes === "size" && one.optional !== true);
  let best: { readonly wanted: FigureArgument; readonly run: Run } | undefined;
  for (const wanted of strict) {
    const run = longestRun(figure, wanted, tokens, at);
    if (run !== undefined && (best === undefined || run.length > best.run.length)) best = { wanted, run };
  }
  for (const wanted of best === undefined
    ? open.filter((one) => (one.takes === "number" && !(sizeDue && one.optional)) || one.takes === "class")
    : []) {
    const run =
      wanted.takes === "number" ? longestRun(figure, wanted, tokens, at) : freeRun(figure, wanted, tokens, at);
    // A number with a unit behind it is a figure for something else, not a bare number.
    if (run !== undefined && !isFigureWithUnit(figure, tokens, at)) {
      best = { wanted, run };
      break;
    }
  }
  if (best === undefined) {
    const wanted = open.find((one) => one.takes === "text");
    const run = wanted === undefined ? undefined : freeRun(figure, wanted, tokens, at);
    if (wanted !== undefined && run !== undefined) best = { wanted, run };
  }
  if (best === undefined) return fitsNowhere(filling, tokens, at, open);
  put(filling, best.wanted, best.run.value, best.run.text);
  takeClassFromSize(filling);
  filling.last = best.wanted.name;
  return best.run.length;
}

interface Run {
  readonly value: ArgumentValue;
  readonly length: number;
  readonly text: string;
}

/** The longest run of words from here that an argument reads; it never runs over the name of another argument unless its own words hold that. */
function longestRun(figure: Figure, wanted: FigureArgument, tokens: readonly string[], at: number): Run | undefined {
  for (let length = Math.min(LONGEST, tokens.length - at); length >= 1; length--) {
    const run = tokens.slice(at, at + length);
    if (wanted.takes !== "word" && run.slice(1).some((word) => isName(figure, word) && findUnit(word) === undefined))
      continue;
    const text = run.join(" ").replace(/,$/, "");
    const value = readArgument(wanted, text);
    // A class or a number behind a size, as a word of its own, is for another argument; "M8 x 1.25" is a size.
    const swallowed =
      isSize(value) &&
      run.some((word, place) => place > 0 && /^(\d+\.\d+|[AC]\d-\d+)$/.test(word) && !/^[x×]$/i.test(run[place - 1]!));
    if (!isError(value) && !swallowed) return { value, length, text };
  }
  return undefined;
}

/** Free text runs up to the next name; a property class is one word, or two where the first is "grade" or "class". */
function freeRun(figure: Figure, wanted: FigureArgument, tokens: readonly string[], at: number): Run | undefined {
  let length = 0;
  const most = wanted.takes === "class" ? (/^(grade|class)$/i.test(tokens[at] ?? "") ? 2 : 1) : tokens.length;
  while (length < most && at + length < tokens.length && (length === 0 || !isName(figure, tokens[at + length]!)))
    length++;
  if (length === 0) return undefined;
  const text = tokens
    .slice(at, at + length)
    .join(" ")
    .replace(/,$/, "");
  const value = readArgument(wanted, text);
  return isError(value) ? undefined : { value, length, text };
}

/** A word of this argument's own, such as the pattern "rows" where "rows" is an argument too. */
const isWordOf = (wanted: FigureArgument, word: string): boolean =>
  wanted.words?.some((one) => one === word || one.startsWith(`${word} `)) ?? false;
const isName = (figure: Figure, word: string): boolean =>
  figure.arguments.some((one) => one.name === word || word.startsWith(`${one.name}=`));
const isNumber = (word: string | undefined): boolean =>
  word !== undefined && parseNumber(word.replace(/,$/, "")) !== undefined;
/** Whether a number stands here with a unit behind it that is no value of its own. */
const isFigureWithUnit = (figure: Figure, tokens: readonly string[], at: number): boolean => {
  const unit = tokens[at + 1];
  return isNumber(tokens[at]) && unit !== undefined && findUnit(unit) !== undefined && !isValueStart(figure, unit);
};
/** A unit's spelling that is also a value by itself in this figure ("F" as a class of insulation). */
const isValueStart = (figure: Figure, word: string): boolean =>
  isName(figure, word) || figure.arguments.some((one) => one.words?.includes(word));

/** What one argument takes, in a clause: "voltage (V, V dc, V ac)", "a word: dc, ac, combined". */
export function takesClause(wanted: FigureArgument): string {
  const { takes, name } = wanted;
  if (isDimension(takes))
    return `${name} (${dimensionNames[takes].title} in ${usualUnits(takes).slice(0, 4).join(", ")})`;
  if (takes === "word") return `${name} (${wanted.words!.join(", ")})`;
  const clause: Readonly<Record<typeof takes, string>> = {
    size: "a thread size such as M8 or 3/8-16 UNC",
    class: "a property class or grade",
    text: "words",
    number: "a bare number",
  };
  return `${name} (${clause[takes]})`;
}

/** Why the words from here fit no argument: an unknown unit, a unit of another kind, a figure without unit, or a word that is none. */
function fitsNowhere(
  { figure, texts }: Filling,
  tokens: readonly string[],
  at: number,
  open: readonly FigureArgument[],
): FigureError {
  const word = tokens[at]!;
  const takes = open.length > 0 ? open.map(takesClause).join("; ") : "nothing more";
  const point = word.replace(",", ".");
  if (/^[+-]?\d+,\d/.test(word))
    return { says: `${figure.name}: ${word} has a comma: write the decimal with a point, ${point}`, nearest: [point] };
  const due = open.flatMap((one) => (isDimension(one.takes) ? [one.takes] : []));
  const [, number, glued] = /^([+-]?[\d./-]*\d)(\D.*)?$/.exec(word) ?? [];
  if (number !== undefined && parseNumber(number) !== undefined) {
    const unit =
      glued ??
      (tokens[at + 1] !== undefined && !isNumber(tokens[at + 1]) && !isName(figure, tokens[at + 1]!)
        ? tokens[at + 1]
        : undefined);
    if (unit === undefined) {
      const units = due.map((one) => usualUnits(one)[0]!);
      return {
        says: `${figure.name}: ${number} has no unit, or one number too many stands here; it still takes ${takes}`,
        ...(units.length > 0 ? { nearest: units } : {}),
      };
    }
    const found = findUnit(unit);
    if (found === undefined) {
      const near = due.flatMap((one) => nearestUnits(unit, one));
      const units = near.length > 0 ? near : due.flatMap((one) => usualUnits(one).slice(0, 2));
      return {
        says: `${figure.name}: ${unit} in "${number} ${unit}" is no unit that fits here; it still takes ${takes}`,
        ...(units.length > 0 ? { nearest: [...new Set(units)].slice(0, 6) } : {}),
      };
    }
    const same = figure.arguments.filter((one) => one.takes === found.dimension);
    const filled = same
      .filter((one) => texts.has(one.name))
      .map((one) => `${one.name} ${texts.get(one.name)!.join(", ")}`);
    const why =
      same.length === 0
        ? `it takes no ${dimensionNames[found.dimension].title}`
        : filled.length === 0
          ? "it stands where something else is due"
          : `it has ${filled.join(" and ")} already`;
    return {
      says: `${figure.name}: ${number} ${unit} fits nowhere: ${why}; it still takes ${takes}`,
      nearest: open.map((one) => one.name),
    };
  }
  const near = nearestWords(word, [...open.flatMap((one) => one.words ?? []), ...open.map((one) => one.name)]);
  const options = near.length > 0 ? near : open.flatMap((one) => one.words ?? [one.name]).slice(0, 6);
  return {
    says: `${figure.name}: "${word}" fits nowhere; it still takes ${takes}`,
    ...(options.length > 0 ? { nearest: options } : {}),
  };
}

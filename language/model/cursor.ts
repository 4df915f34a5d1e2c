// Reading the head of an item: its arguments one by one. Knows the forms of arguments, nothing of what they are about.

import { textOf } from "../names/strings.ts";
import type { Span } from "../findings/finding.ts";
import {
  isProblem,
  isThreadSize,
  makeQuantity,
  parseNumber,
  parseThreadSize,
  type Dimension,
  type Quantity,
  type ThreadSize,
} from "../quantities/index.ts";
import type { SourceFile } from "../names/project.ts";
import { Num, Piece, Size, SizeWord, Str, TimeCode, Unit, Word } from "../syntax/tokens.ts";
import type { Item, Token } from "../syntax/index.ts";
import type { Name } from "./act.ts";
import { bySpelling } from "./kept.ts";

/** An item with the file that it stands in: a type may come from another file than the thing that is like it. */
export interface Line {
  readonly item: Item;
  readonly source: SourceFile;
}

export interface Cursor {
  readonly tokens: readonly Token[];
  readonly stop: number;
  at: number;
}

const numberOf = bySpelling(parseNumber),
  threadOf = bySpelling(parseThreadSize);
/** A figure with a unit behind it, by the unit and then by the figure: put together the two would be a new string for each. */
const figuresIn = bySpelling((unit) => bySpelling((first) => makeQuantity({ first, form: "single", unit })));

export const wordOf = (line: Line): string => line.item.entry?.word ?? "";

export function cursorOf({ item, source }: Line): Cursor {
  const block = item.block,
    last = block === undefined ? item.last + 1 : block.first;
  return { tokens: source.tree.scan.tokens, at: item.first + 1, stop: last };
}

/** The items of a block that can be read: known words without an error in their head. */
export function linesIn(line: Line): Line[] {
  const lines: Line[] = [];
  for (const item of line.item.block?.items ?? [])
    if (item.entry && !item.broken) lines.push({ item, source: line.source });
  return lines;
}

export type LinesByWord = (word: string) => readonly Line[];

/** The lines by their word, those of one word in order: for who asks for many words, most of which no line has. */
export function linesByWord(lines: readonly Line[]): LinesByWord {
  const words = new Map<string, Line[]>();
  for (const line of lines) {
    const word = wordOf(line),
      list = words.get(word);
    if (list) list.push(line);
    else words.set(word, [line]);
  }
  return (word) => words.get(word) ?? noLines;
}
const noLines: readonly Line[] = [];

/** From the word to the last argument of the head. */
export function headSpan({ item, source }: Line): Span {
  const { tokens } = source.tree.scan,
    first = tokens[item.first]!,
    last = tokens[item.block ? Math.max(item.first, item.block.first - 1) : item.last]!;
  return { file: source.path, start: first.startOffset, end: last.endOffset! + 1 };
}
export function wholeSpan({ item, source }: Line): Span {
  const { tokens } = source.tree.scan;
  return { file: source.path, start: tokens[item.first]!.startOffset, end: tokens[item.last]!.endOffset! + 1 };
}
export const wordEnd = ({ item, source }: Line): number => source.tree.scan.tokens[item.first]!.endOffset! + 1;

export const peek = (c: Cursor): Token | undefined => (c.at < c.stop ? c.tokens[c.at] : undefined);
export const peekText = (c: Cursor, ahead = 0): string => (c.at + ahead < c.stop ? c.tokens[c.at + ahead]!.text : "");
export const isString = (token: Token | undefined): boolean => token?.tokenType === Str;
export const isNumber = (token: Token | undefined): boolean => token?.tokenType === Num;
export const isName = (token: Token | undefined): boolean =>
  token !== undefined && (token.tokenType === Word || token.tokenType === SizeWord || token.tokenType === Piece);

/** Takes this word or sign if it is next. */
export function accept(c: Cursor, text: string): boolean {
  const token = peek(c);
  if (token?.text !== text || token.tokenType === Str) return false;
  c.at++;
  return true;
}

export function nameOf(token: Token): Name {
  return { text: token.text, start: token.startOffset, end: token.endOffset! + 1 };
}
export function takeName(c: Cursor): Name | undefined {
  const token = peek(c);
  if (!isName(token)) return undefined;
  c.at++;
  return nameOf(token!);
}
/** Names with commas between. */
export function takeNames(c: Cursor): Name[] {
  const names: Name[] = [];
  for (let name = takeName(c); name; name = takeName(c)) {
    names.push(name);
    if (!accept(c, ",")) break;
  }
  return names;
}
export function takeString(c: Cursor): string | undefined {
  const token = peek(c);
  if (!isString(token)) return undefined;
  c.at++;
  return textOf(token!);
}
/** A name or a number, as its text. */
export function takeLabel(c: Cursor): string | undefined {
  const token = peek(c);
  if (!isName(token) && !isNumber(token)) return undefined;
  c.at++;
  return token!.text;
}
export function takeNumber(c: Cursor): number | undefined {
  const token = peek(c);
  if (!isNumber(token)) return undefined;
  c.at++;
  return numberOf(token!.image)?.value;
}

/** A quantity with its unit and, in brackets, its second printed value. Undefined, and nothing taken, where it cannot be read. */
export function takeQuantity(c: Cursor): Quantity | undefined {
  const from = c.at,
    first = peek(c);
  if (!isNumber(first)) return undefined;
  c.at++;
  let second: string | undefined,
    form: Quantity["form"] = "single";
  if (peekText(c) === ".." || peekText(c) === "±") {
    form = peekText(c) === ".." ? "range" : "plus-minus";
    c.at++;
    second = peek(c)?.image;
    c.at++;
  }
  const unit = peek(c);
  if (!unit || !(unit.tokenType === Unit || unit.tokenType === Word || unit.tokenType === SizeWord)) {
    c.at = from;
    return undefined;
  }
  c.at++;
  const pair = takePair(c),
    isPlain = second === undefined && pair === undefined;
  const made = isPlain
    ? figuresIn(unit.image)(first!.image)
    : makeQuantity({ first: first!.image, second, form, unit: unit.image, pair });
  return isProblem(made) ? undefined : made;
}

/** A quantity of one of these dimensions. One of another dimension gives undefined: the checks report it. */
export const takeOf =
  (...dimensions: readonly Dimension[]) =>
  (c: Cursor): Quantity | undefined => {
    const quantity = takeQuantity(c);
    return quantity && dimensions.includes(quantity.dimension) ? quantity : undefined;
  };

function takePair(c: Cursor): Quantity | undefined {
  if (peekText(c) !== "(") return undefined;
  c.at++;
  const inner = takeQuantity(c);
  while (c.at < c.stop && !accept(c, ")")) c.at++;
  return inner;
}

/** Figures with times signs between and one unit behind: `183.82 x 2.62 mm`. */
export function takePlane(c: Cursor): Quantity[] {
  const numbers: string[] = [];
  for (let token = peek(c); isNumber(token); token = peek(c)) {
    numbers.push(token!.image);
    c.at++;
    if (!accept(c, "×")) break;
  }
  const unit = peek(c);
  if (!unit || numbers.length === 0) return [];
  c.at++;
  const made = numbers.map((first) => makeQuantity({ first, form: "single", unit: unit.image }));
  return made.filter((q): q is Quantity => !isProblem(q));
}

/** A thread's designation, from its first token to its length. */
export function takeThread(c: Cursor): ThreadSize | undefined {
  const first = peek(c);
  if (first?.tokenType !== Size && first?.tokenType !== SizeWord) return undefined;
  let text = first.image;
  c.at++;
  while (peekText(c) === "×") {
    const figure = c.tokens[c.at + 1];
    c.at += 2;
    if (figure) text += ` x ${figure.image}`;
  }
  if (text.includes(" x ") && (peekText(c) === "in" || peekText(c) === "mm")) {
    text += ` ${peekText(c)}`;
    c.at++;
  }
  const size = threadOf(text.includes(" x ") && first.image.startsWith("M") ? text.replaceAll(" x ", "x") : text);
  return isThreadSize(size) ? size : undefined;
}

/** `12:04`, `1:02:30`, in seconds. */
export function takeTime(c: Cursor): number | undefined {
  const token = peek(c);
  if (token?.tokenType !== TimeCode) return undefined;
  c.at++;
  return token.image.split(":").reduce((seconds, part) => seconds * 60 + Number(part), 0);
}

/** What the first of the lines says, undefined where there is none. */
export function firstOf<T>(lines: readonly Line[], take: (c: Cursor) => T | undefined): T | undefined {
  const line = lines[0];
  return line && take(cursorOf(line));
}

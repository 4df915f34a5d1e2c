// Turns a shape of the vocabulary into a little automaton: each place in the shape knows what may follow it. If no two followers
// can start with the same token (a test holds the vocabulary to that), the next token alone decides.

import { unitWords, type UnitGroup } from "../quantities/units.ts";
import { kinds, type KindList } from "../vocabulary/kinds.ts";
import { macros } from "../vocabulary/macros.ts";
import { Num, Piece, Size, SizeWord, Str, TimeCode, Unit, Word } from "./tokens.ts";
import type { Token } from "./tree.ts";

export type Leaf = {
  readonly is:
    | "start"
    | "word"
    | "sign"
    | "name"
    | "label"
    | "number"
    | "unit"
    | "string"
    | "item"
    | "thread"
    | "timecode"
    | "kind";
  /** The word or sign itself, or the name of the class. */
  readonly text: string;
  /** What it may be, for units and kinds. */
  readonly set: ReadonlySet<string> | undefined;
  /** The argument that it is part of; "" for words and signs between arguments. */
  readonly slot: string;
  readonly declares: boolean;
  /** It begins that argument. */
  opens: boolean;
  /** The item may end after it. */
  ends: boolean;
  follow: Leaf[];
};
type Part = { readonly empty: boolean; readonly first: Leaf[]; readonly last: Leaf[] };

export const unitSets = Object.fromEntries(
  Object.entries(unitWords).map(([group, spellings]) => [group, new Set(spellings)]),
) as unknown as Readonly<Record<UnitGroup, ReadonlySet<string>>>;

const quantity = (dimension: string): string =>
  `<NUMBER> ['..' <NUMBER> | '±' <NUMBER>] <unit:${dimension}> ['(' <NUMBER> ['..' <NUMBER>] <unit:${dimension}> ')']`;

/** Arguments of more than one token; each is one argument in the tree. */
const slots: Readonly<Record<string, string>> = {
  passes: "<NUMBER> [<unit:share> (',' <NUMBER> <unit:share>)*]",
  thread: "<THREAD> ['×' <NUMBER> ['×' <NUMBER>] [<unit:length>]]",
  plane: "<NUMBER> ['×' <NUMBER> ['×' <NUMBER>]] <unit:length>",
  spanner: "<NUMBER> [<unit:length>]",
  pack: "<NUMBER> (<unit:shelf> | pieces)",
  ...Object.fromEntries(Object.keys(unitWords).map((dimension) => [dimension, quantity(dimension)])),
};
/** Arguments of one token: what it is, and the argument's name in the tree. */
const single: Readonly<Record<string, Leaf["is"]>> = {
  id: "name",
  name: "name",
  item: "item",
  label: "label",
  number: "number",
  figure: "number",
  count: "number",
  string: "string",
  timecode: "timecode",
  thread: "thread",
};

const compiled = new Map<string, Leaf>();

/** The start of the automaton of a shape. Compiled when first asked for, and kept. */
export function startOf(shape: string): Leaf {
  let start = compiled.get(shape);
  if (!start) {
    const part = compile(shape, "");
    start = leaf("start", "");
    start.follow = part.first;
    start.ends = part.empty;
    for (const last of part.last) last.ends = true;
    compiled.set(shape, start);
  }
  return start;
}

/** The place that this token leads to. A word of the shape goes before a name. */
export function step(state: Leaf, token: Token): Leaf | undefined {
  let found: Leaf | undefined;
  for (const leaf of state.follow) {
    if (!fits(leaf, token, state.ends)) continue;
    if (leaf.is === "word" || leaf.is === "sign" || leaf.is === "kind" || leaf.is === "unit") return leaf;
    found ??= leaf;
  }
  return found;
}

/** Where a unit must come, one of the wrong dimension is taken too and left to the checks; where it may come, only the right one. */
function fits(leaf: Leaf, token: Token, mayEnd: boolean): boolean {
  const type = token.tokenType,
    isWord = type === Word || type === SizeWord;
  switch (leaf.is) {
    case "word":
      return isWord && token.text === leaf.text;
    case "sign":
      return token.text === leaf.text && type !== Str;
    case "name":
      return isWord;
    case "item":
      return isWord || type === Piece;
    case "label":
      return isWord || type === Num;
    case "number":
      return type === Num;
    case "unit":
      return type === Unit || (isWord && (mayEnd ? leaf.set! : unitSets.any).has(token.text));
    case "kind":
      return isWord && leaf.set!.has(token.text);
    case "string":
      return type === Str;
    case "thread":
      return type === Size || type === SizeWord;
    case "timecode":
      return type === TimeCode;
    case "start":
      return false;
  }
}

function compile(shape: string, slot: string): Part {
  const tokens = shape.match(/'[^']+'|<[^>]+>|[[\]()*|]|[^\s[\]()*|<>']+/g) ?? [];
  let at = 0;
  const result = choice();
  if (at < tokens.length) throw new Error(`shape "${shape}": "${tokens[at]}" is out of place`);
  return result;

  function choice(): Part {
    let whole = row();
    while (tokens[at] === "|") {
      at++;
      const other = row();
      whole = {
        empty: whole.empty || other.empty,
        first: [...whole.first, ...other.first],
        last: [...whole.last, ...other.last],
      };
    }
    return whole;
  }
  function row(): Part {
    let whole: Part = { empty: true, first: [], last: [] };
    while (at < tokens.length && !"|])".includes(tokens[at]!)) whole = join(whole, term());
    return whole;
  }
  function term(): Part {
    const token = tokens[at++]!;
    if (token === "[" || token === "(") {
      const inner = choice();
      if (tokens[at++] !== (token === "[" ? "]" : ")")) throw new Error(`shape "${shape}": bracket left open`);
      if (token === "[") return { ...inner, empty: true };
      if (tokens[at] !== "*") return inner;
      at++;
      link(inner.last, inner.first);
      return { ...inner, empty: true };
    }
    if (token.startsWith("'")) return of(leaf("sign", token.slice(1, -1), slot));
    if (token.startsWith("<")) return argument(token.slice(1, -1));
    return of(leaf("word", token, slot));
  }
  function argument(name: string): Part {
    const [head, detail = ""] = name.split(":") as [string, string?];
    if (macros[name] !== undefined) return compile(macros[name], slot);
    if (head === "kind") return opening(of(leaf("kind", detail, slot || name, kinds[detail as KindList])));
    if (head === "unit") return of(leaf("unit", detail, slot || name, unitSets[detail as UnitGroup]));
    if (name === name.toUpperCase()) return of(leaf(single[name.toLowerCase()]!, name.toLowerCase(), slot));
    if (slots[name] !== undefined) return opening(compile(slots[name], name));
    if (name === "id") return opening(of(leaf("name", "name", "name", undefined, true)));
    if (single[name] !== undefined) return opening(of(leaf(single[name], name, name)));
    throw new Error(`shape "${shape}": no argument is called <${name}>`);
  }
}

function leaf(is: Leaf["is"], text: string, slot = "", set?: ReadonlySet<string>, declares = false): Leaf {
  return { is, text, slot, set, declares, opens: false, ends: false, follow: [] };
}
const of = (one: Leaf): Part => ({ empty: false, first: [one], last: [one] });

function opening(part: Part): Part {
  for (const one of part.first) one.opens = true;
  return part;
}
function link(from: readonly Leaf[], to: readonly Leaf[]): void {
  for (const one of from) for (const next of to) if (!one.follow.includes(next)) one.follow.push(next);
}
function join(a: Part, b: Part): Part {
  link(a.last, b.first);
  return {
    empty: a.empty && b.empty,
    first: a.empty ? [...a.first, ...b.first] : a.first,
    last: b.empty ? [...a.last, ...b.last] : b.last,
  };
}

/** A figure that has a unit to come: a comma in it without blanks is no list. */
export const isMeasured = (leaf: Leaf): boolean =>
  leaf.is === "number" && leaf.slot !== "number" && leaf.slot !== "count" && leaf.slot !== "passes";

/** May these tokens begin what stands behind a word of this shape? */
export function follows(shape: string, ...tokens: readonly Token[]): boolean {
  let leaf: Leaf | undefined = startOf(shape);
  for (const token of tokens) leaf = leaf && step(leaf, token);
  return leaf !== undefined;
}

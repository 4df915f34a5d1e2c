// Tokens to a tree, for any text: it never throws and judges nothing but form. Four rules of Chevrotain (file, item, arguments,
// block) carry the structure; which token an item may take next is asked of the vocabulary's automata, so a new word needs
// no new rule. A node holds the indexes of its first and last token; the text between is never copied.

import { EmbeddedActionsParser } from "chevrotain";
import { mendBraces } from "./mend-braces.ts";
import { scan } from "./scanner.ts";
import { allTokens, LBrace, Part, RBrace, SizeWord, Str, Word } from "./tokens.ts";
import type { Argument, Block, Item, SyntaxError, Token, Tree } from "./tree.ts";
import { startOf, step, type Leaf } from "./shapes.ts";
import { placesOf, wordsIn, allWords as words, type Entry } from "../vocabulary/index.ts";

const allWords: ReadonlyMap<string, Entry> = new Map(words.map((word) => [word, placesOf(word)[0]!]));
const unknownPlace = "";

type Frame = { place: string; words: ReadonlyMap<string, Entry>; outer: Frame | undefined };
type Head = { word: Token; item: Item; state: Leaf | undefined; silent: boolean; last: Token };

class StripParser extends EmbeddedActionsParser {
  found: SyntaxError[] = [];
  mute = 0;                                    // inside a block whose word is unknown
  frame!: Frame;                               // the block being read
  open: Item[] = [];                           // the items whose blocks are being read
  head!: Head;                                 // the item whose head is being read
  next: Leaf | undefined;                      // where the token looked at leads, set by the gate
  decimal = false;                             // it is a comma written as a decimal point

  constructor() {
    super(allTokens, { maxLookahead: 1, recoveryEnabled: false, skipValidations: true });
    this.performSelfAnalysis();
  }

  file = this.RULE("file", () => {
    const items: Item[] = [];
    this.MANY(() => { items.push(this.SUBRULE(this.item)); });
    return items;
  });

  item = this.RULE("item", (): Item => {
    let item!: Item;
    this.OR([
      { ALT: () => {
        const word = this.CONSUME(Part) as Token;
        this.ACTION(() => { this.begin(word); item = this.head.item; });
        this.SUBRULE(this.arguments);
        this.OPTION(() => { this.SUBRULE(this.block); });
        this.OPTION1({ GATE: () => !item.block && this.oneItemFollows(item), DEF: () => {
          const one = this.SUBRULE(this.item);
          this.ACTION(() => { item.block = { place: this.frame.place, items: [one], first: one.first, last: item.last = one.last }; });
        } });
      } },
      { ALT: () => {
        const brace = this.LA(1) as Token;
        this.ACTION(() => { this.begin(brace); item = this.head.item; this.closeHead(); });
        this.SUBRULE1(this.block);
      } },
    ]);
    return item;
  });

  arguments = this.RULE("arguments", () => {
    this.MANY({ GATE: this.goesOn, DEF: () => {
      const token = this.CONSUME(Part) as Token;
      this.ACTION(() => this.take(token));
    } });
    this.ACTION(() => this.closeHead());
  });

  block = this.RULE("block", () => {
    const open = this.CONSUME(LBrace) as Token;
    const block = this.ACTION(() => this.enter(open));
    this.MANY(() => { const item = this.SUBRULE(this.item); this.ACTION(() => block.items.push(item)); });
    const close = this.CONSUME(RBrace) as Token;
    this.ACTION(() => this.leave(block, close));
  });

  read(input: Token[], place: string): Item[] {
    this.input = input;
    this.found = [];
    this.mute = 0;
    this.frame = { place, words: wordsIn(place), outer: undefined };
    this.open = [];
    return this.file() ?? [];
  }

  // --- the head of an item: its word and its arguments -----------------------------------------------------------------

  begin(word: Token): void {
    const item: Item = { entry: undefined, arguments: [], block: undefined, first: word.index, last: word.index, broken: false };
    this.head = { word, item, state: undefined, silent: false, last: word };
    if (word.tokenType !== Word && word.tokenType !== SizeWord) return this.fail(word, "syntax/word-due", `A word is due here, not ${shown(word)}`);
    const here = this.frame.words.get(word.text);
    item.entry = here ?? this.elsewhere(word.text);
    if (item.entry) this.head.state = startOf(item.entry.shape);
    if (here) return;
    if (item.entry) this.fail(word, "syntax/word-misplaced", `"${word.text}" cannot stand in ${this.frame.place || "here"}`);
    else this.fail(word, "syntax/word-unknown", `"${word.text}" is no word of the language here`);
  }

  elsewhere(word: string): Entry | undefined {
    for (let frame = this.frame.outer; frame; frame = frame.outer) { const entry = frame.words.get(word); if (entry) return entry; }
    return allWords.get(word);
  }

  /** May the token ahead belong to this item? A gate: it only looks, and notes where the token leads. */
  goesOn(): boolean {
    const token = this.LA(1) as Token, { state, last } = this.head;
    const isWord = token.tokenType === Word || token.tokenType === SizeWord;
    this.next = undefined;
    this.decimal = state !== undefined && token.text === "," && measured(state) && token.glued && (this.LA(2) as Token).glued;
    if (this.decimal) return true;
    if (isWord && token.opensLine && last.text !== "," && this.isItemWord(token.text)) return false;      // strict line starts
    if (state) {
      this.next = step(state, token);
      if (this.next) return true;
    }
    if (isWord && (this.frame.words.has(token.text) || (token.opensLine && last.text !== "," && (!state || state.ends || this.head.silent)))) return false;
    return true;                                            // out of place: taken, and reported by `take`
  }

  take(token: Token): void {
    const head = this.head, { item } = head;
    let next = this.next;
    if (!next && head.state && (this.decimal || !head.silent)) next = this.mendArgument(token);
    head.last = token;
    item.last = token.index;
    if (!next) { head.state = undefined; return; }
    if (next.slot !== "") {
      const last = item.arguments[item.arguments.length - 1];
      if (last && !next.opens && last.slot === next.slot && last.last === token.index - 1) last.last = token.index;
      else item.arguments.push({ slot: next.slot, first: token.index, last: token.index, declares: next.declares });
    }
    head.state = next;
  }

  /** One error for a token that does not fit; the place to go on from, if one can be guessed. */
  mendArgument(token: Token): Leaf | undefined {
    const { state, last } = this.head;
    if (this.decimal) {
      this.fail(token, "syntax/decimal-comma", "A decimal point is due here, not a comma");
      const figure = { ...state!, opens: false };                      // the figure after the comma goes on with this one
      return { ...figure, ends: false, follow: [figure] };
    }
    const isWord = token.tokenType === Word;
    for (const due of state!.follow) {
      if (isWord && !token.opensLine && (due.is === "unit" || due.is === "kind")) {
        this.fail(token, due.is === "unit" ? "syntax/unit-unknown" : "syntax/kind-unknown", `${shown(token)} is no ${due.is === "unit" ? "unit" : `kind of ${due.text}`}`);
        return due;
      }
    }
    for (const due of likeliest(state!.follow)) {                      // one thing is missing before it
      const then = step(due, token);
      if (!then) continue;
      this.failAfter(last, "syntax/argument-missing", `${named(due)} is missing before ${shown(token)}`);
      return then;
    }
    this.fail(token, "syntax/unexpected", `${shown(token)} is out of place${state!.ends ? "" : `: ${expected(state!)} is due`}`);
    return undefined;
  }

  closeHead(): void {
    const { state, item, word, last, silent } = this.head, entry = item.entry;
    if (state && !state.ends && !silent) this.failAfter(last, "syntax/argument-missing", `"${word.text}" needs ${expected(state)}`);
    const hasBlock = this.LA(1).tokenType === LBrace;
    if (entry && entry.blockNeeded && !hasBlock && !this.oneItemFollows(item)) this.failAfter(last, "syntax/block-missing", `"${word.text}" needs ${entry.itemWillDo ? "an item on its line, or " : ""}a block { }`);
    if (hasBlock && entry && !entry.block) this.fail(this.LA(1) as Token, "syntax/block-unexpected", `"${word.text}" takes no block`);
  }

  /** `if late torque 9 N·m`: on the same line, so that a half-typed condition does not swallow the next one. */
  oneItemFollows(item: Item): boolean {
    const token = this.LA(1) as Token;
    return item.entry?.itemWillDo === true && token.tokenType === Word && !token.opensLine;
  }

  enter(open: Token): Block {
    const { item } = this.head, place = item.entry?.block || unknownPlace;
    if (place === unknownPlace) this.mute++;
    this.open.push(item);
    this.frame = { place, words: place === unknownPlace ? allWords : wordsIn(place), outer: this.frame };
    return item.block = { place, items: [], first: open.index, last: open.index };
  }
  leave(block: Block, close: Token): void {
    if (block.place === unknownPlace) this.mute--;
    this.frame = this.frame.outer!;
    block.last = this.open.pop()!.last = close.index;
  }

  isItemWord(word: string): boolean {
    for (let frame: Frame | undefined = this.frame; frame; frame = frame.outer) if (frame.words.has(word)) return true;
    return false;
  }

  // --- errors: at most one a head ------------------------------------------------------------------------------------------

  fail(token: Token, code: string, says: string): void { this.report(code, token.startOffset, token.endOffset! + 1, token.line, says); }
  failAfter(token: Token, code: string, says: string): void { this.report(code, token.endOffset! + 1, token.endOffset! + 1, token.endLine, says); }
  report(code: string, start: number, end: number, line: number, says: string): void {
    if (!this.head.silent && this.mute === 0) this.found.push({ code, start, end, line, says });
    this.head.silent = this.head.item.broken = true;
  }
}

/** What authors forget: a comma first of all, never a bracket. */
const likeliest = (leaves: Leaf[]) => leaves.filter((leaf) => leaf.text === ",").concat(leaves.filter((leaf) => !/^[,(±]|^\.\.$/.test(leaf.text)));

/** A figure that has a unit to come: a comma in it without blanks is no list. */
const measured = (leaf: Leaf) => leaf.is === "number" && leaf.slot !== "number" && leaf.slot !== "count" && leaf.slot !== "passes";

const shown = (token: Token) => (token.tokenType === Str ? "this text" : token.text === "" ? "the end" : `"${token.text}"`);
const named = (leaf: Leaf) =>
  leaf.is === "word" || leaf.is === "sign" ? `"${leaf.text}"`
  : leaf.is === "unit" ? `a unit${leaf.text === "any" ? "" : ` of ${leaf.text}`}`
  : leaf.is === "kind" ? `a kind of ${leaf.text}`
  : leaf.is === "string" ? "a text in quotes" : leaf.is === "timecode" ? "a time such as 12:04" : leaf.is === "thread" ? "a size such as M8x35"
  : leaf.is === "item" ? "a name" : `a ${leaf.is}`;
function expected(state: Leaf): string {
  const all = [...new Set(state.follow.map(named))];
  return all.length < 2 ? all.join("") : `${all.slice(0, -1).join(", ")} or ${all[all.length - 1]}`;
}

let parser: StripParser | undefined;           // built once, on first use: start-up time is felt

export function parse(text: string, place = "file"): Tree {
  const scanned = scan(text);
  const { input, errors } = mendBraces(scanned.tokens);
  parser ??= new StripParser();
  const items = parser.read(input, place);
  return { scan: scanned, place, items, errors: oneALine(scanned.errors.filter((e) => e.code !== "syntax/strange-sign"), errors, scanned.errors, parser.found) };
}

/** One error a line, the most certain first: what follows it on the line is mostly its echo. */
function oneALine(...byCertainty: SyntaxError[][]): SyntaxError[] {
  const lines = new Map<number, SyntaxError>();
  for (const error of byCertainty.flat()) if (!lines.has(error.line)) lines.set(error.line, error);
  return [...lines.values()].sort((a, b) => a.start - b.start);
}


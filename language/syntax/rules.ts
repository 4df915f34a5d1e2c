// Tokens to items, for any sequence whose braces pair. Four rules of Chevrotain (file, item, arguments, block) carry the structure;
// which token an item may take next is asked of the vocabulary's automata, so that a new word needs no new rule.

import { EmbeddedActionsParser } from "chevrotain";
import { allWords, placesOf, reservedNames, wordsIn, type Entry } from "../vocabulary/index.ts";
import { argumentError, isSpoken, unitMissing } from "./argument-errors.ts";
import type { Misfit } from "./misfit.ts";
import { headless } from "./headless.ts";
import { orphan } from "./orphans.ts";
import { follows, isMeasured, startOf, step, type Leaf } from "./shapes.ts";
import type { KindList } from "../vocabulary/kinds.ts";
import { phraseAmong, isMeantAmong, suggestKind, synonymAmong } from "./suggestions.ts";
import { allTokens, LBrace, Part, RBrace, SizeWord, Word } from "./tokens.ts";
import type { Argument, Block, Item, SyntaxError, SyntaxFix, Token } from "./tree.ts";
import { isKindOf, takes, wordElsewhere } from "./word-elsewhere.ts";
import { belongsBehind, saidBefore, unfinished } from "./word-errors.ts";
import { shown } from "./wording.ts";

/** The block being read, and those around it. `guessed`: the word that opens it was not written so; what does not fit in it is no second mistake. */
type Frame = {
  readonly place: string;
  readonly words: ReadonlyMap<string, Entry>;
  readonly outer: Frame | undefined;
  readonly guessed: boolean;
  /** The word of the item before, in this block. */
  said: string;
};
/** The item whose head is being read: where it stands in its shape, and whether its one error has been told. */
type Head = { readonly word: Token; readonly item: Item; state: Leaf | undefined; silent: boolean; last: Token };

const newFrame = (place: string, outer: Frame | undefined): Frame => ({
  place,
  words: wordsIn(place),
  outer,
  guessed: false,
  said: "",
});

/** The place of a block whose word is unknown: nothing in it is reported. */
const unknownPlace = "";
const everyWord: ReadonlyMap<string, Entry> = new Map(allWords.map((word) => [word, placesOf(word)[0]!]));
/** `if a if b …` on one line: more of it than this is no condition any more, and must not use up the stack. */
const longestChain = 8;

/** While Chevrotain records its grammar nothing is read. */
const unread: Item = { entry: undefined, arguments: [], block: undefined, first: 0, last: 0, broken: false },
  nowhere: Block = { place: unknownPlace, items: [], first: 0, last: 0 };

export class StripRules extends EmbeddedActionsParser {
  /** The errors of the last text, at most one a head. */
  found: SyntaxError[] = [];
  private mute = 0;
  private chain = 0;
  private frame: Frame = newFrame("file", undefined);
  private open: Item[] = [];
  private guessed = new Set<Item>();
  /** The word of the item before, in the same block. */
  private before: Token | undefined;
  /** Column of the first line of an item with an error, until the next right one: what is wrapped below it stands deeper. */
  private wrapped: number | undefined;
  private head!: Head;
  /** The second word of a phrase of speech, to be passed over. */
  private particle: Token | undefined;
  private tokens: readonly Token[] = [];
  /** Where the token looked at leads; set by the gate, used by the action that follows it. */
  private next: Leaf | undefined;
  /** The token looked at is a comma that stands for a decimal point. */
  private decimal = false;

  /** With `validate`, Chevrotain proves its own grammar sound first: for a test, since it takes time at every start. */
  constructor(validate = false) {
    super(allTokens, { maxLookahead: 1, recoveryEnabled: false, skipValidations: !validate });
    this.performSelfAnalysis();
  }

  file = this.RULE("file", () => {
    const items: Item[] = [];
    this.MANY(() => {
      items.push(this.SUBRULE(this.item));
    });
    return items;
  });

  item = this.RULE("item", (): Item => this.OR(this.kindsOfItem));

  arguments = this.RULE("arguments", () => {
    this.MANY(this.argument);
    if (!this.RECORDING_PHASE) this.closeHead();
  });

  block = this.RULE("block", () => {
    const open = this.CONSUME(LBrace) as Token,
      block = this.RECORDING_PHASE ? nowhere : this.enter(open);
    this.MANY(() => {
      const item = this.SUBRULE(this.item);
      if (!this.RECORDING_PHASE) block.items.push(item);
    });
    const close = this.CONSUME(RBrace) as Token;
    if (!this.RECORDING_PHASE) this.leave(block, close);
  });

  // The insides of the two rules above are made once, and what is done is asked for without `ACTION`, which takes a function made for
  // the call: made anew for each token and item they would be a tenth of all that a check allocates.

  private kindsOfItem = [
    {
      ALT: (): Item => {
        const word = this.CONSUME(Part) as Token,
          item = this.RECORDING_PHASE ? unread : this.begin(word);
        this.SUBRULE(this.arguments);
        this.OPTION(this.ownBlock);
        if (this.RECORDING_PHASE || item.entry?.itemWillDo) this.oneItem(item);
        return item;
      },
    },
    {
      ALT: (): Item => {
        // a block without a word
        const brace = this.LA(1) as Token,
          item = this.RECORDING_PHASE ? unread : this.begin(brace);
        if (!this.RECORDING_PHASE) this.closeHead();
        this.SUBRULE1(this.block);
        return item;
      },
    },
  ];
  private ownBlock = (): void => {
    this.SUBRULE(this.block);
  };
  private oneItem(item: Item): void {
    this.OPTION1({
      GATE: () => !item.block && this.oneItemFollows(item),
      DEF: () => {
        this.ACTION(() => {
          this.chain++;
        });
        const one = this.SUBRULE(this.item);
        this.ACTION(() => {
          this.chain--;
          item.block = { place: this.frame.place, items: [one], first: one.first, last: (item.last = one.last) };
        });
      },
    });
  }
  private argument = {
    GATE: this.goesOn,
    DEF: (): void => {
      const token = this.CONSUME(Part) as Token;
      if (!this.RECORDING_PHASE) this.take(token);
    },
  };

  /** The items of these tokens (`input` is `tokens` with its braces mended), read as the inside of a block of that kind; their errors are in `found`. */
  read(input: Token[], tokens: readonly Token[], place: string): Item[] {
    this.beginText(input, tokens);
    this.frame = newFrame(place, undefined);
    return this.file() ?? [];
  }

  /**
   * The block of an item, by itself: `input` is its tokens with both braces, `around` the kinds of the blocks that the item stands in,
   * outermost first. The item gets the block and its end. False where the rules stop, which pairs of braces never make them do.
   */
  readBlock(input: Token[], tokens: readonly Token[], item: Item, around: readonly string[]): boolean {
    this.beginText(input, tokens);
    for (const [i, place] of around.entries()) this.frame = newFrame(place, i === 0 ? undefined : this.frame);
    const word = tokens[item.first]!;
    this.head = { word, item, state: undefined, silent: false, last: word };
    this.block();
    return this.errors.length === 0;
  }

  private beginText(input: Token[], tokens: readonly Token[]): void {
    this.input = input;
    this.tokens = tokens;
    this.found = [];
    this.mute = this.chain = 0;
    this.open = [];
    this.guessed = new Set();
    this.before = this.wrapped = undefined;
  }

  // --- the head of an item: its word and its arguments -------------------------------------------------------------------------

  private begin(word: Token): Item {
    const item: Item = {
      entry: undefined,
      arguments: [],
      block: undefined,
      first: word.index,
      last: word.index,
      broken: false,
    };
    this.head = { word, item, state: undefined, silent: false, last: word };
    if (word.invented) return this.headless(item);
    if (word.tokenType !== Word && word.tokenType !== SizeWord) {
      this.fail(
        word,
        "syntax/word-due",
        `A word of the language is due here, not ${shown(word)}${belongsBehind(word)}`,
      );
      return item;
    }
    const here = this.frame.words.get(word.text);
    this.particle = undefined;
    if (this.readPhrase(word)) return item;
    if (here) {
      item.entry = here;
      this.frame.said = word.text;
      this.wrapped = undefined;
    } else {
      if (this.frame.guessed || this.isEcho(word)) this.head.silent = item.broken = true;
      if (!synonymAmong(word.text, this.frame.words)) this.guessed.add(item);
      item.entry = this.wordElsewhere(word);
    }
    if (item.entry) this.head.state ??= startOf(item.entry.shape);
    return item;
  }

  /** A block whose first line is missing: read as what its lines belong to, so that they are told once. */
  private headless(item: Item): Item {
    const { entry, error, first } = headless((k) => this.LA(k) as Token, this.frame, this.tokens);
    this.report(error);
    this.guessed.add(item);
    return Object.assign(item, { entry, first, broken: !(entry && startOf(entry.shape).ends) });
  }

  /** `take off guard`: two words of speech for one of ours. The second is passed over, and what follows is read as ours takes it. */
  private readPhrase(word: Token): boolean {
    const second = this.LA(1) as Token,
      third = this.LA(2) as Token;
    if (second.opensLine || second.tokenType !== Word || (!third.opensLine && third.tokenType !== Word)) return false;
    const meant = phraseAmong(word.text, second.text, this.frame.words),
      entry = meant === undefined ? undefined : this.frame.words.get(meant);
    if (!entry || (!third.opensLine && this.frame.words.has(third.text))) return false;
    const own = this.frame.words.get(word.text);
    if (own && !third.opensLine && follows(own.shape, second, third)) return false; // `tag out as L1`: a thing called out
    this.head.item.entry = entry;
    this.head.state = startOf(entry.shape);
    this.particle = second;
    const start = word.startOffset,
      end = second.endOffset! + 1;
    this.report({
      code: "syntax/word-unknown",
      start,
      end,
      line: word.line,
      says: `Unknown word ${word.text} ${second.text}: here it is called ${entry.word}`,
      fix: { title: `Write ${entry.word}`, edits: [{ start, end, text: entry.word }], certain: false },
    });
    return true;
  }

  /** Lines of a wrapped item whose error is told already: they open with small words, and stand deeper than its first line. */
  private isEcho(word: Token): boolean {
    return word.opensLine && this.wrapped !== undefined && word.column > this.wrapped;
  }
  /** Where the line of this word begins; or, if it goes on with the item before, where that one's does. */
  private marginOf(word: Token): number {
    let first = word.index;
    while (first > 0 && this.tokens[first - 1]!.line === word.line) first--;
    const { column } = this.tokens[first]!,
      before = this.before && this.before.line < word.line ? this.marginOf(this.before) : column;
    return Math.min(column, before);
  }

  /** A word that cannot stand here: read as the one that is meant, if that is plain, so that what it declares is not lost. */
  private wordElsewhere(word: Token): Entry | undefined {
    if (this.mute > 0) return everyWord.get(word.text);
    const lost = orphan(word, (k) => this.LA(k) as Token, this.frame.words, this.before);
    if (lost) {
      this.report(lost.error);
      this.head.state = lost.state;
      return lost.entry;
    }
    const { entry, code, says, fix } = wordElsewhere(word, this.LA(1) as Token, this.frame);
    this.fail(word, code, says, fix);
    return entry;
  }
  /** A word of another block, or the trade's for one, with what belongs to it: `joins pipe to pump  torque 90 N·m`. */
  private belongsElsewhere(word: Token, state: Leaf): boolean {
    const next = this.LA(2) as Token;
    if (next.opensLine || isSpoken(this.misfit(word, state, next))) return false;
    if (placesOf(word.text).some((entry) => takes(entry, next))) return true;
    if (state.follow.some((leaf) => leaf.text === ",")) return false;
    if (isKindOf(this.frame.place, word.text)) return true;
    for (let frame = this.frame.outer; frame; frame = frame.outer)
      if (synonymAmong(word.text, frame.words)) return true;
    return false;
  }

  /** May the token ahead belong to this item? A gate: it only looks, and notes where the token leads. */
  private goesOn(): boolean {
    const token = this.LA(1) as Token,
      { state, last, silent } = this.head;
    const isWord = token.tokenType === Word || token.tokenType === SizeWord,
      startsLine = token.opensLine && last.text !== ",";
    this.next = undefined;
    if (token === this.particle) return true;
    if (token.invented) return false;
    this.decimal =
      state !== undefined && token.text === "," && token.glued && isMeasured(state) && (this.LA(2) as Token).glued;
    if (this.decimal) return true;
    if (isWord && startsLine && this.isItemWord(token.text)) return false; // strict line starts
    if (state) {
      this.next = step(state, token);
      if (this.next) return true;
    }
    if (isWord && startsLine && (!state || state.ends || silent)) return false;
    if (isWord && this.frame.words.has(token.text)) {
      // On a line that begins with an unknown word, `bend the tab open` has no act `open`, unless what follows is its own.
      const unread = state === undefined && this.head.item.entry === undefined && !startsLine;
      return unread && !this.opensItem(this.frame.words.get(token.text)!);
    }
    // `mass 2 kg  under lid`, `size M8  torqe 22 N·m`: the trade's other word, or a slip, begins the next item as ours would.
    // Not of acts, since what stands behind them may be any name: `drain the oil`.
    if (
      isWord &&
      state?.ends &&
      !silent &&
      !this.frame.words.has("undo") &&
      !state.follow.some((leaf) => leaf.is === "kind" && suggestKind(token.text, leaf.text as KindList)) &&
      (isMeantAmong(token.text, this.frame.words) || this.belongsElsewhere(token, state))
    )
      return false;
    return true; // out of place: taken, and reported by `take`
  }

  /** Does what stands behind the word ahead belong to it? */
  private opensItem(entry: Entry): boolean {
    const next = this.LA(2) as Token;
    return next.opensLine || next.tokenType === RBrace ? startOf(entry.shape).ends : takes(entry, next);
  }

  private take(token: Token): void {
    const head = this.head,
      { item, last: before } = head;
    if (token === this.particle) {
      head.last = token;
      item.last = token.index;
      return;
    }
    let next = this.next;
    if (!next && head.state && (this.decimal || !head.silent)) next = this.mend(token, head.state);
    head.last = token;
    item.last = token.index;
    head.state = next;
    if (!next || next.slot === "") return;
    // At -1 an array is asked for a property of that name, which takes as long as all the rest here.
    const had = item.arguments.length,
      argument = had > 0 ? item.arguments[had - 1] : undefined;
    if (argument && !next.opens && argument.slot === next.slot && argument.last === before.index)
      argument.last = token.index;
    else {
      const begun: Argument = { slot: next.slot, first: token.index, last: token.index, declares: next.declares };
      // Most heads have one or two: an array that begins empty makes room for seventeen.
      if (had === 0) item.arguments = [begun];
      else item.arguments.push(begun);
    }
    if (next.declares && reservedNames.has(token.text)) this.refuseName(token);
  }

  /** One error for a token that does not fit, and the place to go on from, if one can be guessed. */
  private mend(token: Token, state: Leaf): Leaf | undefined {
    const { error, next } = argumentError(this.misfit(token, state, this.LA(1) as Token));
    this.report(error);
    return next;
  }
  private misfit(token: Token, state: Leaf, after: Token): Misfit {
    const { word, last } = this.head;
    return {
      word,
      state,
      last,
      token,
      decimal: this.decimal,
      after,
      figure: this.figure(),
      lead: last.index > word.index ? this.tokens[last.index - 1] : undefined,
      place: this.frame.place,
    };
  }

  /** The first token of the argument that was read last. */
  private figure(): Token | undefined {
    const { item, last } = this.head,
      argument = item.arguments[item.arguments.length - 1];
    return argument && argument.last === last.index ? this.tokens[argument.first] : undefined;
  }

  /** Not an error of the head: what the item declares stays known. */
  private refuseName(token: Token): void {
    if (this.mute > 0 || this.head.silent) return;
    const start = token.startOffset,
      end = token.endOffset! + 1,
      says = `${token.text} cannot be a name, since it is a word of the language`;
    this.found.push({ code: "syntax/name-reserved", start, end, line: token.line, says });
  }

  private closeHead(): void {
    this.judgeEnd();
    this.before = this.head.word;
  }
  /** What must still come, and whether a block may. */
  private judgeEnd(): void {
    const { state, item, word, last, silent } = this.head,
      { entry } = item,
      follower = this.LA(1) as Token;
    if (state && !state.ends && !silent)
      this.report(unitMissing(word, state, last, this.figure()) ?? unfinished(word, state, last, item));
    const hasBlock = follower.tokenType === LBrace;
    if (hasBlock && entry && entry.block === "")
      this.fail(
        follower,
        "syntax/block-unexpected",
        `${word.text} takes no block: what belongs to it stands behind it on its line, as in ${entry.example}`,
      );
    if (!entry?.blockNeeded || hasBlock || this.oneItemFollows(item)) return;
    this.failAfter(
      last,
      "syntax/block-missing",
      `${word.text} needs ${entry.itemWillDo ? "an item on its line, or " : ""}a block { }${saidBefore(this.before, word, entry)}`,
    );
  }

  /** `if late torque 9 N·m`: on the same line, so that a half-typed condition does not swallow the next one. */
  private oneItemFollows(item: Item): boolean {
    const token = this.LA(1) as Token;
    return item.entry?.itemWillDo === true && token.tokenType === Word && !token.opensLine && this.chain < longestChain;
  }

  // --- blocks -------------------------------------------------------------------------------------------------------------------

  private enter(open: Token): Block {
    const { item } = this.head,
      place = item.entry?.block || unknownPlace;
    if (place === unknownPlace) this.mute++;
    this.open.push(item);
    this.before = this.wrapped = undefined;
    this.frame = {
      place,
      words: place === unknownPlace ? everyWord : wordsIn(place),
      outer: this.frame,
      guessed: this.guessed.has(item) || this.frame.guessed,
      said: "",
    };
    return (item.block = { place, items: [], first: open.index, last: open.index });
  }
  private leave(block: Block, close: Token): void {
    if (block.place === unknownPlace) this.mute--;
    this.frame = this.frame.outer!;
    this.before = this.wrapped = undefined;
    block.last = this.open.pop()!.last = close.index;
  }
  private isItemWord(word: string): boolean {
    for (let frame: Frame | undefined = this.frame; frame; frame = frame.outer) if (frame.words.has(word)) return true;
    return false;
  }

  // --- errors: at most one a head -----------------------------------------------------------------------------------------------

  private fail(token: Token, code: string, says: string, fix?: SyntaxFix): void {
    const place = { code, start: token.startOffset, end: token.endOffset! + 1, line: token.line, says };
    this.report(fix ? { ...place, fix } : place);
  }
  private failAfter(token: Token, code: string, says: string): void {
    this.report({ code, start: token.endOffset! + 1, end: token.endOffset! + 1, line: token.endLine, says });
  }
  private report(error: SyntaxError): void {
    this.wrapped ??= this.marginOf(this.head.word);
    if (!this.head.silent && this.mute === 0) this.found.push(error);
    this.head.silent = this.head.item.broken = true;
  }
}

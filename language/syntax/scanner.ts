// Text to tokens. Never fails: what it cannot read becomes a token of its own and an error. It knows units by their spelling,
// because a unit may hold signs that a name may not, and knows nothing of words.

import type { TokenType } from "chevrotain";
import { unitWords } from "../quantities/units.ts";
import { listMarkAt, mayBeMark, type ListMark } from "./list-marks.ts";
import { withLatinLetters } from "./look-alikes.ts";
import { signsOfSpeech } from "../tables/signs-of-speech.ts";
import { Junk, LBrace, Num, Part, Piece, RBrace, Sign, Size, SizeWord, Str, TimeCode, Unit, Word } from "./tokens.ts";
import type { Scan, ScanFrom, SyntaxError, SyntaxFix, Token } from "./tree.ts";
import { refusal } from "./unreadable.ts";

const anyWord = /\p{L}[\p{L}\p{M}\p{N}]*(?:-[\p{L}\p{M}\p{N}]+)*/uy;
const metric =
  /M\d+(?:\.\d+)?(?:[x×]\d+(?:\.\d+)?){0,2}(?:-(?:\d\dH|\d+(?:\.\d+)?|[AC]\d-\d+|LH))?(?![\p{L}\p{N}]|-\p{L})/uy;
const pipe = /(?:G|Rp?|Rc)(?:\d+(?:\/\d+)?| \d+\/\d+)(?![\p{L}\p{N}]|-\p{L})|\d+(?:-\d+\/\d+|\/\d+)? +NP[TS]F?/uy;
const piece = /(?:\.(?!\.)[\p{L}\p{M}\p{N}]+(?:-[\p{L}\p{M}\p{N}]+)*)+/uy;
const unified = /#?\d+(?:-\d+\/\d+|\/\d+)?-\d+ +UN[A-Z]*(?:-\d[AB])?/y;
const number = /[+\u2212-]?(?:\d+(?:\.\d+)?(?:(?:-\d+)?\/\d+)?|\.\d+)/y;
const timecode = /\d+:\d\d(?::\d\d)?/y;
const sign = /\.\.|\+\/-|[,()±×]/y;
const singleQuoted = /'[^'"\r\n]+'(?![\p{L}\p{N}])/uy;
const conflict = /(?:<{7}|>{7}|\|{7})(?: [^\r\n]*)?(?=[\r\n]|$)|={7}(?=[\r\n]|$)/y;
/** `80 ° C`, `80 deg C`. */
const degreesApart = /(?:°[ \t]+[CFcf]|deg(?:rees?|s)?[ \t]+[CF])(?![\p{L}\p{N}-])/uy;
/** Units with a blank in them, from the table; and letters around a sign, known or not: an unknown one is best reported whole. */
/** Digits and signs as wide as a Chinese one. */
const fullWidth = /[\uff01-\uff0b\uff0d-\uff5e]+/y;
const signedUnit = new RegExp(
  `(?:${unitWords.any
    .filter((unit) => unit.includes(" "))
    .sort((a, b) => b.length - a.length)
    .map((unit) => unit.replace(" ", " +"))
    .join("|")}|\\p{L}+[·⋅./]\\p{L}+[\\p{N}]*)(?![\\p{L}\\p{N}])`,
  "uy",
);

/** First words of the units with a blank in them. */
const beforeBlank: ReadonlySet<string> = new Set(
  unitWords.any.filter((unit) => unit.includes(" ")).map((unit) => unit.split(" ")[0]!),
);

const LETTER = 1,
  DIGIT = 2;
/** ASCII letters and digits, by code. */
const signs = Uint8Array.from({ length: 128 }, (_, code) => {
  const one = String.fromCharCode(code);
  return /[A-Za-z]/.test(one) ? LETTER : /[0-9]/.test(one) ? DIGIT : 0;
});
const isLetter = (code: number): boolean => code < 128 && signs[code] === LETTER;
const isDigit = (code: number): boolean => code >= 48 && code <= 57;
const isAlphanumeric = (code: number): boolean => code < 128 && signs[code] !== 0;

/**
 * Words and names stand again and again: a short one is the same string wherever it stands, which tables need not hash again and which is
 * equal to itself without a look at its letters. A place for each hash; what comes later takes it over. Longer ones would hold the whole
 * text that they were cut from.
 */
const spellings = new Array<string | undefined>(4096).fill(undefined),
  longestKept = 12;
function spelling(text: string, from: number, end: number, hash: number): string {
  const length = end - from;
  if (length > longestKept) return text.slice(from, end);
  const place = (hash ^ (hash >>> 12)) & 4095,
    had = spellings[place];
  if (had !== undefined && had.length === length) {
    let i = 0;
    while (i < length && had.charCodeAt(i) === text.charCodeAt(from + i)) i++;
    if (i === length) return had;
  }
  return (spellings[place] = text.slice(from, end));
}

/** The tokens and comments of a text of any content. */
export function scan(text: string, from?: ScanFrom): Scan {
  const refused = refusal(text);
  if (refused?.nothing) return { text, tokens: [], comments: [], errors: [refused.error] };

  const tokens = from?.tokens ?? [],
    comments = from?.comments ?? [],
    errors: SyntaxError[] = [];
  let at = from?.at ?? (text.charCodeAt(0) === 0xfeff ? 1 : 0),
    line = from?.line ?? 0,
    lineStart = at,
    opensLine = true,
    lastEnd = -1,
    conflictLine = -1,
    afterNumber = tokens.length > 0 && tokens[tokens.length - 1]!.tokenType === Num,
    stop = text.length,
    odd: boolean | undefined,
    mark: ListMark | undefined;

  while (at < stop) {
    const c = text.charCodeAt(at);
    let end = 0;
    if (c === 32 || c === 9) at++;
    else if (c === 10 || c === 13) lineEnd(c);
    else if (
      opensLine &&
      at === lineStart &&
      (c === 60 || c === 61 || c === 62 || c === 124) &&
      (end = match(conflict))
    )
      mergeConflict(c, end);
    else if (opensLine && mayBeMark(text, at, c) && (mark = listMarkAt(text, at))) passOver(mark);
    else if (c === 35 && !(end = match(unified))) comment();
    else if (c === 35) add(Size, end);
    else if (c === 123) add(LBrace, at + 1);
    else if (c === 125) add(RBrace, at + 1);
    else if (c === 34) quoted();
    else if (c === 0x201c || c === 0x201d || c === 0x201e) curlyQuoted();
    else if (c === 215 || (c === 120 && timesHere())) add(Sign, at + 1, "×");
    else if (afterNumber && (c === 176 || c === 100) && (end = match(degreesApart))) degrees(end);
    else if (afterNumber && mayBeSignedUnit(c) && (end = match(signedUnit)))
      add(Unit, end, c > 127 ? lookAlike(end) : undefined);
    else if (c === 77 && (end = match(metric))) add(/[.×]/.test(text.slice(at, end)) ? Size : SizeWord, end);
    else if ((c >= 65 && c <= 90) || (c >= 97 && c <= 122)) {
      if ((c === 71 || c === 82) && (end = match(pipe))) add(/[ /]/.test(text.slice(at, end)) ? Size : SizeWord, end);
      else word();
    } else if (c === 44 || c === 40 || c === 41) add(Sign, at + 1);
    else if (isDigit(c) && isHardness()) add(Word, at + 3);
    else if (isDigit(c) && (end = plainNumber())) add(Num, end);
    else if ((end = match(sign)) && !(c === 43 && text[at + 1] !== "/")) add(Sign, end, c === 43 ? "±" : undefined);
    else if (c >= 48 && c <= 57 && (end = match(timecode))) add(TimeCode, end);
    else if (c >= 48 && c <= 57 && ((end = match(unified)) || (end = match(pipe)))) add(Size, end);
    else if ((end = match(number))) add(Num, end);
    else if (c === 37) add(Unit, at + 1);
    else if (c === 176) add(Unit, at + (/[CF]/.test(text[at + 1] ?? "") ? 2 : 1));
    else if (match(anyWord)) word();
    else if (c === 0xa0 || c === 0xfeff || c === 0x202f || c === 0x2009) at++;
    else if (c === 39 && (end = match(singleQuoted))) inSingleQuotes(end);
    else if (c === 47 && text.charCodeAt(at + 1) === 47) slashedComment();
    else strange();
  }
  return { text, tokens, comments, errors: refused ? [refused.error] : errors };

  function match(pattern: RegExp): number {
    pattern.lastIndex = at;
    return pattern.test(text) ? pattern.lastIndex : 0;
  }
  function fail(code: string, start: number, end: number, says: string, fix?: SyntaxFix): void {
    errors.push(fix ? { code, start, end, line, says, fix } : { code, start, end, line, says });
  }
  function add(type: TokenType, end: number, as?: string, image = text.slice(at, end)): void {
    tokens.push({
      image,
      startOffset: at,
      endOffset: end - 1,
      tokenType: type,
      // To the rules all but braces is one: what a token is besides is asked of the vocabulary.
      tokenTypeIdx: (type === LBrace || type === RBrace ? type : Part).tokenTypeIdx!,
      index: tokens.length,
      text: as ?? image,
      line,
      column: at - lineStart,
      endLine: line,
      opensLine,
      glued: at === lastEnd,
      invented: false,
    } as Token);
    opensLine = false;
    afterNumber = type === Num;
    at = lastEnd = end;
  }
  function lineEnd(c: number): void {
    at += c === 13 && text.charCodeAt(at + 1) === 10 ? 2 : 1;
    line++;
    lineStart = at;
    opensLine = true;
    if (from?.isKnown(at, line) === true) stop = at;
  }
  function endOfLine(from: number): number {
    let end = from;
    while (end < text.length && text.charCodeAt(end) !== 10 && text.charCodeAt(end) !== 13) end++;
    return end;
  }
  function comment(): void {
    const end = endOfLine(at);
    comments.push({ start: at, end, line, before: tokens.length, ownLine: opensLine });
    at = end;
  }
  /** One error a conflict, at its first marker; the marked lines themselves are no part of the tree. */
  function mergeConflict(c: number, end: number): void {
    if (c === 60 || conflictLine < 0)
      fail(
        "syntax/merge-conflict",
        at,
        end,
        "A merge conflict was left here: keep the lines that are right and delete the marker lines",
      );
    conflictLine = c === 62 ? -1 : line;
    at = end;
  }
  function word(): void {
    const from = at;
    let end = at,
      hash = 0;
    for (
      let c = text.charCodeAt(end);
      isAlphanumeric(c) || (c === 45 && end > from && isAlphanumeric(text.charCodeAt(end + 1)));
    ) {
      hash = (Math.imul(hash, 31) + c) | 0;
      c = text.charCodeAt(++end);
    }
    const beyond = text.charCodeAt(end);
    if (end > from && !(beyond > 127) && beyond !== 46) {
      const image = spelling(text, from, end, hash);
      return add(Word, end, image, image);
    }
    const ascii = end > from && !(beyond > 127);
    if (!ascii) end = match(anyWord);
    at = end;
    const withPiece = text.charCodeAt(end) === 46 ? match(piece) : 0;
    at = from;
    const latin = ascii || withPiece ? undefined : lookAlike(end);
    if (latin !== undefined) return add(/^M\d+(?:\.\d+)?(?:x[\d.]+)*$/.test(latin) ? SizeWord : Word, end, latin);
    add(
      withPiece ? Piece : Word,
      withPiece || end,
      ascii && !withPiece ? undefined : text.slice(from, withPiece || end).normalize("NFC"),
    );
  }
  /** The sign or word of degrees and the letter of their scale, which belong together: read as that unit. */
  function degrees(end: number): void {
    const unit = `°${text[end - 1]!.toUpperCase()}`;
    fail("syntax/strange-sign", at, end, `A temperature is written in one piece, as in 80 ${unit}`, {
      title: `Write ${unit}`,
      edits: [{ start: at, end, text: unit }],
      certain: true,
    });
    add(Unit, end, unit);
  }
  /** What numbers a line is no part of it: the next word opens the line, and stands where that stood. */
  function passOver({ end, word: stands, says, fix }: ListMark): void {
    fail("syntax/strange-sign", at, end, says, fix);
    const from = at;
    if (stands !== undefined) add(Word, at + stands.length, stands);
    add(Junk, end);
    if (stands !== undefined) return;
    opensLine = true;
    lineStart += end - from;
  }
  /** Can a unit begin here that is no plain word: two words, or letters around a sign? */
  function mayBeSignedUnit(c: number): boolean {
    if (c > 127) return true;
    if (!isLetter(c)) return false;
    let end = at + 1;
    while (isLetter(text.charCodeAt(end))) end++;
    const next = text.charCodeAt(end);
    return next > 127 || next === 46 || next === 47 || (next === 32 && beforeBlank.has(text.slice(at, end)));
  }
  /** `45H`, the hardness that a set screw is classed by (ISO 898-5): a name, and no figure with a unit. */
  function isHardness(): boolean {
    const next = text.charCodeAt(at + 3);
    return (
      text.charCodeAt(at + 2) === 72 &&
      isDigit(text.charCodeAt(at + 1)) &&
      !isAlphanumeric(next) &&
      next !== 45 &&
      !(next > 127)
    );
  }
  /** The end of a plain figure, 12 or 2.5; 0 where it may go on as a fraction, a time or a thread. */
  function plainNumber(): number {
    let end = at + 1;
    while (isDigit(text.charCodeAt(end))) end++;
    if (text.charCodeAt(end) === 46 && isDigit(text.charCodeAt(end + 1))) {
      end += 2;
      while (isDigit(text.charCodeAt(end))) end++;
    }
    const next = text.charCodeAt(end);
    if (next === 45 || next === 47 || next === 58) return 0;
    let follows = end;
    while (text.charCodeAt(follows) === 32) follows++;
    return follows > end && text.charCodeAt(follows) === 78 ? 0 : end;
  }
  function quoted(): void {
    if (text.startsWith('"""', at)) return textBlock();
    let end = at + 1;
    for (; end < text.length; end++) {
      const c = text.charCodeAt(end);
      if (c === 34) return add(Str, end + 1);
      if (c === 10 || c === 13) break;
      if (c === 92 && end + 1 < text.length && text.charCodeAt(end + 1) !== 10 && text.charCodeAt(end + 1) !== 13)
        end++;
    }
    const goesOn = endInNextLine(end);
    if (goesOn > 0) {
      fail(
        "syntax/unclosed-string",
        at,
        end,
        'This text has no closing quote in its line: write it in one line, or over several between """ and """',
        {
          title: "Draw it into one line",
          edits: [{ start: end, end: end + text.slice(end).search(/[^\s]/), text: " " }],
          certain: false,
        },
      );
      return overLines(at, goesOn);
    }
    const rest = text.slice(at, end),
      brace = rest.search(/\s*[{}]/); // braces after it stay braces
    end = at + (brace > 0 ? brace : rest.trimEnd().length);
    fail("syntax/unclosed-string", at, end, "This text has no closing quote", {
      title: "Close the text here",
      edits: [{ start: end, end, text: '"' }],
      certain: false,
    });
    add(Str, end);
  }
  function textBlock(): void {
    if (opensLine && isOdd() && endsLostText()) return;
    const close = text.indexOf('"""', at + 3),
      from = at,
      open = close < 0 || isOdd() ? endOfOpenBlock() : 0,
      isOpen = close < 0 || (isOdd() && open < text.lastIndexOf("\n", close) - 1);
    if (isOpen) fail("syntax/unclosed-text", at, at + 3, 'This text block has no closing """');
    overLines(from, isOpen ? open : close + 3);
  }
  /** One of the marks of text blocks has no partner: only then is the layout asked which. */
  function isOdd(): boolean {
    odd ??= text.split('"""').length % 2 === 0;
    return odd;
  }
  /** A mark in a line of its own, below lines that stand no less deep than it: they are a text, and what began it is missing. */
  function endsLostText(): boolean {
    const own = at - lineStart,
      first = (before: number): number => {
        while (before > 0 && !tokens[before]!.opensLine) before--;
        return before;
      };
    let begin = first(tokens.length - 1);
    const { column } = tokens[begin] ?? { column: -1 };
    if (column < own) return false;
    for (let i = begin; i > 0; begin = i) {
      i = first(begin - 1);
      if (column > own ? tokens[i]!.column <= own : tokens[i]!.column !== own) break;
    }
    const [token] = tokens.splice(begin),
      { startOffset: start, endOffset, line: of } = token!;
    errors.splice(0, errors.length, ...errors.filter((error) => error.start < start));
    const says = `No """ begins the text that stands here and ends in line ${line + 1}`;
    errors.push({ code: "syntax/unclosed-text", start, end: endOffset! + 1, line: of, says });
    at += 3;
    return true;
  }
  function overLines(from: number, end: number): void {
    const token = tokens.length;
    add(Str, end);
    for (let i = from; i < end; i++) {
      const c = text.charCodeAt(i);
      if (c !== 10 && (c !== 13 || text.charCodeAt(i + 1) === 10)) continue;
      line++;
      lineStart = i + 1;
    }
    tokens[token]!.endLine = line;
  }
  /** Behind the one quote of the next line, where that closes a text rather than opens one; 0 where it does not. */
  function endInNextLine(lineBreak: number): number {
    const from = lineBreak + (text.startsWith("\r\n", lineBreak) ? 2 : 1),
      below = text.slice(from, endOfLine(from)),
      closing = /^[^"#{}]*[^\s"#{}]"(?=[\s{}]|$)[^"]*$/.exec(below);
    return closing && lineBreak < text.length ? from + below.indexOf('"') + 1 : 0;
  }
  /** Without its end a text block goes as far as lines stand deeper than the one that it opens in: the rest of the file stays known. */
  function endOfOpenBlock(): number {
    // Behind its word it stands deeper than that; in a line of its own no less deep than its marks.
    const margin = /^[ \t]*/.exec(text.slice(lineStart, at))![0].length - (opensLine ? 1 : 0);
    let end = text.indexOf("\n", at);
    while (end >= 0) {
      const next = text.indexOf("\n", end + 1),
        below = text.slice(end + 1, next < 0 ? text.length : next),
        indent = below.search(/[^ \t\r]/);
      if (indent >= 0 && indent <= margin) return text[end - 1] === "\r" ? end - 1 : end;
      end = next;
    }
    return text.length;
  }
  /** Quotes that a word processor made curly: read as a text, and reported. */
  function curlyQuoted(): void {
    const stop = endOfLine(at),
      close = text.slice(at + 1, stop).search(/[\u201c\u201d"]/),
      end = close < 0 ? at + 1 : at + close + 2;
    fail(
      "syntax/curly-quote",
      at,
      end,
      'Texts stand in straight quotes: "…"',
      close < 0
        ? undefined
        : {
            title: "Make the quotes straight",
            edits: [
              { start: at, end: at + 1, text: '"' },
              { start: end - 1, end, text: '"' },
            ],
            certain: true,
          },
    );
    add(close < 0 ? Junk : Str, end);
  }
  /** Read as the text that is meant, and reported. */
  function inSingleQuotes(end: number): void {
    fail("syntax/curly-quote", at, end, 'Texts stand in double quotes: "…"', {
      title: "Make the quotes double",
      edits: [
        { start: at, end: at + 1, text: '"' },
        { start: end - 1, end, text: '"' },
      ],
      certain: true,
    });
    add(Str, end);
  }
  /** `// …` as other notations have it. */
  function slashedComment(): void {
    fail("syntax/strange-sign", at, at + 2, "A comment begins with #, not with //", {
      title: "Write #",
      edits: [{ start: at, end: at + 2, text: "#" }],
      certain: true,
    });
    comment();
  }
  /** A word in which letters of two scripts are mixed is read with those that it looks like, and told. */
  function lookAlike(end: number): string | undefined {
    const meant = withLatinLetters(text.slice(at, end));
    if (!meant) return undefined;
    const code = meant.letter.codePointAt(0)!.toString(16).toUpperCase().padStart(4, "0");
    fail(
      "syntax/strange-sign",
      at,
      end,
      `${meant.word} is written here with a letter of another script that only looks like it (${meant.letter}, U+${code})`,
      { title: `Write ${meant.word}`, edits: [{ start: at, end, text: meant.word }], certain: true },
    );
    return meant.word;
  }
  function strange(): void {
    const spoken = signsOfSpeech.find(({ says }) => text.startsWith(says, at));
    if (spoken) {
      const { says, instead, write } = spoken,
        stop = at + says.length;
      fail(
        "syntax/strange-sign",
        at,
        stop,
        instead,
        write === undefined
          ? undefined
          : {
              title: write === "" ? "Take it out" : `Write ${write}`,
              edits: [{ start: at, end: stop, text: write }],
              certain: false,
            },
      );
      return add(Junk, stop);
    }
    const wide = match(fullWidth);
    if (wide) {
      const plain = text.slice(at, wide).normalize("NFKC"),
        says = `${plain} is written here in wide signs of another script`;
      fail("syntax/strange-sign", at, wide, says, {
        title: `Write ${plain}`,
        edits: [{ start: at, end: wide, text: plain }],
        certain: true,
      });
      return add(Junk, wide);
    }
    const end = at + (text.codePointAt(at)! > 0xffff ? 2 : 1),
      shown = text.slice(at, end);
    const says =
      shown === "\ufffd"
        ? "A letter here could not be read: save the file as UTF-8"
        : /[\p{C}\p{Z}]/u.test(shown)
          ? `A sign that cannot be seen stands here (U+${text.codePointAt(at)!.toString(16).toUpperCase().padStart(4, "0")})`
          : `"${shown}" has no meaning here`;
    fail("syntax/strange-sign", at, end, says, {
      title: "Take it out",
      edits: [{ start: at, end, text: "" }],
      certain: false,
    });
    add(Junk, end);
  }
  /** "x" is the times sign between a figure (or a size, or a figure with its unit) and another figure; else it is a letter. */
  function timesHere(): boolean {
    const a = tokens[tokens.length - 1],
      b = tokens[tokens.length - 2];
    if (!a || !/^x\s*[.\d]/.test(text.slice(at, at + 12))) return false;
    return a.tokenType === Num || a.tokenType === Size || a.tokenType === SizeWord || b?.tokenType === Num;
  }
}

// The token types of the language, as Chevrotain's. One type for all words: which word is a keyword is asked of the vocabulary,
// so that every word stays free as a name where it is not expected.

import { createToken, type TokenType } from "chevrotain";

/** Everything but braces: what an item can be made of. */
export const Part = createToken({ name: "Part" });
export const LBrace = createToken({ name: "LBrace" });
export const RBrace = createToken({ name: "RBrace" });

const part = (name: string, ...more: TokenType[]): TokenType => createToken({ name, categories: [Part, ...more] });

export const Word = part("Word");
/** `M8x1.25x35`: a size and nothing else. */
export const Size = part("Size");
/** `M8x35`, `G1`: a size that may also be a name, as tags on leads are. */
export const SizeWord = part("SizeWord", Word);
/** `cap.3`, `lever.left`: a name with its piece; `gearbox.lid`, `gearbox.left.lid`: a thing inside a part that is a unit. */
export const Piece = part("Piece");
export const Num = part("Num");
/** A unit whose spelling is no word (`N·m`, `V dc`, `%`); other units are words, and units only where a dimension is due. */
export const Unit = part("Unit");
export const Str = part("Str");
/** `12:04`, `1:02:30`. */
export const TimeCode = part("TimeCode");
/** `,` `(` `)` `..` `±` `×` */
export const Sign = part("Sign");
/** A sign that has no meaning; the scanner reports it and the parser never sees it. */
export const Junk = part("Junk");

export const allTokens: TokenType[] = [
  Part,
  LBrace,
  RBrace,
  Word,
  Piece,
  Size,
  SizeWord,
  Num,
  Unit,
  Str,
  TimeCode,
  Sign,
  Junk,
];

// What a hand puts before a line to number it, as in a list: `1)`, `a)`, `-`, `Step 3:`. The tool numbers in print.

import type { SyntaxFix } from "./tree.ts";

export interface ListMark {
  readonly end: number;
  /** `Step 3:` before a title or a block stands for `step`; elsewhere nothing stands for it. */
  readonly word: "step" | undefined;
  readonly says: string;
  readonly fix: SyntaxFix;
}

const enumerator = /(?:\(?(?:\d{1,3}|[a-z])\)|\d{1,3}\.|[-*\u2022\u2013\u2014])[ \t]+(?=\p{L})/uy;
const counted = /step[ \t]+\d{1,3}(?:[ \t]*[:)]|\.|[ \t]+[-\u2013\u2014](?=[ \t]))[ \t]*(?=(["{])|\p{L})/iuy;

const isDigit = (code: number): boolean => code >= 48 && code <= 57;
/** Bracket, star, hyphen, bullet, dashes. */
const opening: ReadonlySet<number> = new Set([40, 42, 45, 0x2022, 0x2013, 0x2014]);

/** Asked of each line that begins: cheap where it begins as most do. */
export const mayBeMark = (text: string, at: number, code: number): boolean =>
  isDigit(code) ||
  opening.has(code) ||
  text.charCodeAt(at + 1) === 41 ||
  ((code === 83 || code === 115) && isDigit(text.charCodeAt(at + 5)));

/** The mark that a line begins with here, the blanks behind it included. */
export function listMarkAt(text: string, at: number): ListMark | undefined {
  enumerator.lastIndex = counted.lastIndex = at;
  if (enumerator.test(text)) {
    const end = enumerator.lastIndex,
      mark = text.slice(at, end).trimEnd();
    return {
      end,
      word: undefined,
      says: `Nothing stands before the word that opens a line${/[\p{L}\p{N}]/u.test(mark) ? ", steps and acts are numbered in print" : ""}: take ${mark} out`,
      fix: { title: `Take ${mark} out`, edits: [{ start: at, end, text: "" }], certain: true },
    };
  }
  const found = counted.exec(text);
  if (!found) return undefined;
  const end = counted.lastIndex,
    mark = text.slice(at, end).trimEnd();
  return found[1] === undefined
    ? {
        end,
        word: undefined,
        says: `Steps and acts are numbered in print: the act stands alone, without ${mark}, or in a step with a title, step "…" { }`,
        fix: { title: `Take ${mark} out`, edits: [{ start: at, end, text: "" }], certain: false },
      }
    : {
        end,
        word: "step",
        says: `Steps are numbered in print: write step in the place of ${mark}`,
        fix: { title: "Write step", edits: [{ start: at, end, text: "step " }], certain: true },
      };
}

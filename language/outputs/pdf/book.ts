// What a record adds to a book of the way back, as blocks for paper.

import type { ManualDocument } from "../manual/document.ts";
import type { Wording } from "../wording/wording.ts";
import type { Layout } from "./lines.ts";
import { heading, list, par, when } from "./pieces.ts";
import type { Block } from "./print.ts";
import { sheetTableBlocks } from "./sheets-print.ts";
import { words } from "./words.ts";

export const recorded = ({ book }: ManualDocument, { refitBook }: Wording): readonly Block[] =>
  book
    ? [
        list(book.lead),
        { is: "facts", rows: book.facts.map(({ label, value }) => [words(label), words(value)] as const) },
        ...when(
          book.whole.length > 0,
          heading(2, refitBook.whole),
          book.whole.map((says) => par(words(says), "bar")),
        ),
      ]
    : [];

export function closing({ book, chapters }: ManualDocument, { options: { wording }, room }: Layout): readonly Block[] {
  if (!book) return [];
  const { refitBook, document } = wording;
  if (book.closing.length === 0) return [par(words(refitBook.nothing))];
  return [
    par(words(refitBook.closingNote)),
    ...book.closing.flatMap(({ of, title, ...table }, i) =>
      sheetTableBlocks(
        { ...table, title: chapters.length > 1 ? document.titles([of, title]) : title },
        true,
        room,
        i > 0,
      ),
    ),
  ];
}

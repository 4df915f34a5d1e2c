// The refit book as text, as a table and as data for programs: the same document that is printed.

import type { Line, LineGroup } from "../lines/line.ts";
import type { ManualDocument } from "../manual/document.ts";
import type { OutputOptions } from "../output.ts";
import { headLines } from "../page.ts";
import { hazardFacts, hazardHead, mustStand } from "../lines/hazard-facts.ts";
import { draftMark, rowsOf } from "../refit/csv.ts";
import { csv } from "../text/csv.ts";
import { asJson } from "../text/json.ts";
import { linesText } from "../text/lines-text.ts";
import { shownOnOneLine } from "../text/shown.ts";
import { wrap } from "../text/wrap.ts";
import type { Wording } from "../wording/wording.ts";

type Document = ManualDocument;

export function bookAsText({ title, subtitle, provenance, chapters, book }: Document, options: OutputOptions): string {
  const { wording } = options,
    { document, refit, refitBook: words } = wording,
    whole = shownOnOneLine(document.titles([title, subtitle])),
    out = [whole, "=".repeat(Math.min(whole.length, 100)), ...headLines(provenance, options)];
  const para = (says: string, first = "", next = "  "): void => {
    out.push(...wrap(shownOnOneLine(says), first, next));
  };
  for (const line of book?.lead ?? []) para(line, "- ");
  for (const { label, value } of book?.facts ?? []) para(document.titled(label, value));
  if (book && book.whole.length > 0) {
    out.push("", words.whole);
    for (const says of book.whole) para(says, "  - ", "    ");
  }
  for (const chapter of chapters) {
    if (chapters.length > 1) out.push("", shownOnOneLine(chapter.title));
    for (const half of ["refit", "finish"] as const)
      if (chapter[half].length > 0)
        out.push("", refit.halves[half].toUpperCase(), ...linesText(chapter[half], wording));
  }
  out.push("", words.sections.closing.toUpperCase());
  para(book && book.closing.length > 0 ? words.closingNote : words.nothing);
  for (const { of, title: table, rows } of book?.closing ?? []) {
    out.push("");
    para(chapters.length > 1 ? document.titles([of, table]) : table, "  ", "    ");
    for (const row of rows) para(row.filter(Boolean).join(" "), "    [ ] ", "        ");
  }
  return `${out.join("\n")}\n`;
}

/** The columns of the refit; what the closing list holds stands in the last rows, by its table and line. */
export function bookAsCsv({ chapters, provenance, book }: Document, { wording }: OutputOptions): string {
  const mark = draftMark(provenance.draft, wording);
  return csv(
    [...wording.refit.columns],
    [
      ...chapters.flatMap(({ title, refit, finish }) => rowsOf(title, { refit, finish }, provenance, wording)),
      ...(book?.closing ?? []).flatMap(({ of, title, rows }) =>
        rows.map(([line, left]) => [
          mark,
          of,
          wording.refitBook.sections.closing,
          title,
          line,
          left,
          "",
          "",
          "",
          "",
          "",
        ]),
      ),
    ],
  );
}

export function bookAsJson(
  { title, subtitle, provenance, chapters, book }: Document,
  { wording }: OutputOptions,
): string {
  const groups = (list: readonly LineGroup[]): unknown =>
    list.map((group) => ({
      number: group.number,
      title: group.title,
      lines: group.lines.map((line) => lineOf(line, wording)),
    }));
  const data = {
    format: "stripdown-refit-book",
    version: 1,
    provenance,
    title,
    subtitle,
    recorded: (book?.facts ?? []).map(({ label, value }) => ({ label, value })),
    whole: book?.whole ?? [],
    procedures: chapters.map((chapter) => ({
      title: chapter.title,
      refitIs: chapter.refitIs,
      refit: groups(chapter.refit),
      finish: groups(chapter.finish),
    })),
    closing: (book?.closing ?? []).map(({ of, title: table, columns, blank, rows }) => ({
      procedure: of,
      title: table,
      columns,
      blank,
      rows,
    })),
  };
  return asJson(data);
}

/** As it reads: what kind of line it is, its number where it is an action, its sentence, and what stands under it. */
function lineOf(line: Line, wording: Wording): unknown {
  const of = (id: string, says: string, text = "", under: readonly string[] = []): unknown => ({
    is: line.is,
    ...(id === "" ? {} : { line: id }),
    given: line.given,
    says,
    text,
    under,
  });
  switch (line.is) {
    case "action":
      return of(
        line.id,
        line.says,
        line.text,
        line.details.map(({ says }) => says),
      );
    case "hazard":
      return of("", hazardHead(line.hazard, wording), "", [
        ...hazardFacts(line.hazard, wording),
        ...mustStand(line.hazard, wording),
      ]);
    case "message":
      return of("", wording.kinds.signal(line.signal), line.text, line.on === "" ? [] : [wording.document.on(line.on)]);
    case "photo":
      return of("", wording.document.picture(line.alt || line.file));
    default:
      return of("", line.says);
  }
}

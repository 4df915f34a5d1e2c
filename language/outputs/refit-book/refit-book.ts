// The output "sheet refit-book": the way back of one unit for a pen, fed by the record of its strip. It is the manual's document with
// other sections, so that a line reads here as it reads there.

import { manualDocument } from "../manual/build.ts";
import type { Chapter, ManualDocument } from "../manual/document.ts";
import { manualAsHtml } from "../manual/html.ts";
import { refitBookSections } from "../manual/sections.ts";
import { CannotMake, output, type Output } from "../output.ts";
import { manualPrint } from "../pdf/manual-print.ts";
import { madeOf, type ReadRecord } from "../record/check-output.ts";
import type { SheetTable } from "../sheet/sheet-data.ts";
import { closingTables, ownLines } from "./closing.ts";
import { bookAsCsv, bookAsJson, bookAsText } from "./formats.ts";
import { wayBackWith } from "./found.ts";

/** @throws CannotMake where the record belongs to other files, another revision or another procedure. */
export function refitBook({ file, record }: ReadRecord): Output<ManualDocument> {
  return output<ManualDocument>({
    name: "sheet refit-book",
    title: "Refit book",
    data: (input, options) => {
      const { refitBook: words, manual } = options.wording,
        document = manualDocument(input, options),
        { hash } = document.provenance,
        made = madeOf(input, options);
      if (record.content !== hash)
        throw new CannotMake(
          `${file} was made from another revision of these files: its content is ${record.content.slice(0, 16)}, here it is ${hash.slice(0, 16)}. Its lines may ask for something else, so no book is made of it. Take the files of that revision, or record the strip again`,
        );
      if (!made.some((each) => ownLines(record, each)))
        throw new CannotMake(
          `${file} holds nothing of ${made.map(({ id, unit, build }) => `${id} on ${unit}${build === "" ? "" : `, build ${build}`}`).join("; ")}: it is about ${record.procedures.map(({ procedure, unit }) => `${procedure} on ${unit}`).join("; ") || "nothing"}`,
        );
      const whole: string[] = [],
        closing: (SheetTable & { readonly of: string })[] = [];
      const chapters = document.chapters.map((chapter, i) => {
        const own = ownLines(record, made[i]!),
          back = wayBackWith(own?.lines ?? [], made[i]!.lines, options),
          named = (groups: typeof back.refit) => groups.map((group) => ({ ...group, id: chapter.prefix + group.id }));
        whole.push(...back.whole);
        closing.push(
          ...closingTables(record, made[i]!, input.performances[i]!, hash, options).map((table) => ({
            ...table,
            of: chapter.title,
          })),
        );
        return { ...chapter, refit: named(back.refit), finish: named(back.finish), sheets: withoutStrip(chapter) };
      });
      const fields = [record.serial, record.begun, record.ended, record.doneBy, record.checkedBy];
      return {
        ...document,
        tools: toolsOfWayBack(document),
        subtitle: words.title(document.subtitle, record.serial ?? ""),
        chapters,
        sections: refitBookSections,
        forPen: true,
        // Links to lines that stand in no book lead nowhere.
        index: [],
        book: {
          facts: [
            { label: words.file, value: file, own: true },
            ...fields.map((value, i) => ({
              label: manual.recordLines[i] ?? "",
              value: value ?? manual.notGiven,
              own: value !== undefined,
            })),
          ],
          lead: words.lead,
          whole,
          closing: closing.filter(({ rows }) => rows.length > 0),
        },
      };
    },
    formats: {
      html: { extension: "html", title: "Book to print", write: manualAsHtml },
      csv: { extension: "csv", title: "A row a line, and for each entry that is left open", write: bookAsCsv },
      text: { extension: "txt", title: "Text", write: bookAsText },
      json: { extension: "json", title: "Lines and what is left open, for programs", write: bookAsJson },
    },
    print: manualPrint,
  });
}

/** Numbers of the lines that a book prints. */
const linesOf = (chapters: readonly Chapter[]): ReadonlySet<string> =>
  new Set(
    chapters.flatMap(({ refit, finish }) =>
      [...refit, ...finish].flatMap(({ lines }) => lines.flatMap((line) => (line.is === "action" ? [line.id] : []))),
    ),
  );

/** What the strip alone asks for is put away by then, and its lines stand in no book. */
function toolsOfWayBack({ tools, chapters }: ManualDocument): ManualDocument["tools"] {
  const printed = linesOf(chapters);
  return {
    ...tools,
    lifts: tools.lifts.filter(({ line }) => printed.has(line)),
    others: tools.others.flatMap((row) => {
      const lines = row.for.filter((line) => printed.has(line));
      return lines.length > 0 ? [{ ...row, for: lines }] : [];
    }),
  };
}

function withoutStrip(chapter: Chapter): Chapter["sheets"] {
  const printed = linesOf([chapter]),
    { tables } = chapter.sheets;
  return {
    ...chapter.sheets,
    tables: {
      ...tables,
      lifting: {
        ...tables.lifting,
        tables: tables.lifting.tables.map((table) => ({
          ...table,
          rows: table.rows.filter(([line = ""]) => printed.has(line)),
        })),
      },
    },
  };
}

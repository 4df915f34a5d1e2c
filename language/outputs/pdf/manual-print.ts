// The whole manual for paper, from the document that the browser's manual is made from.

import type { Chapter, ManualDocument } from "../manual/document.ts";
import { recordFields } from "../manual/tablet/entries.ts";
import type { OutputOptions } from "../output.ts";
import { tableSheetHead } from "../manual/sheets.ts";
import { appendices, sheetSection, wasteBlocks } from "./appendices.ts";
import { closing } from "./book.ts";
import { groupBlocks, messagePanel, photoBlocks, type Layout } from "./lines.ts";
import { frontSections, type Section } from "./manual-front.ts";
import { dateOf, pageOf } from "./paper.ts";
import { blank, heading, list, par, when } from "./pieces.ts";
import { roomOf, type Block, type PrintDocument } from "./print.ts";
import { table } from "./table.ts";
import { bold, words } from "./words.ts";
import { paragraphs, shownOnOneLine } from "../text/shown.ts";

export function manualPrint(document: ManualDocument, options: OutputOptions): PrintDocument {
  const { manual, document: shared } = options.wording,
    page = pageOf(options, "book");
  const layout: Layout = {
    options,
    plan: new Map(document.plan.lines.map((line) => [line.id, line])),
    room: roomOf(page),
    files: [],
  };
  const sections = [
      ...frontSections(document, layout),
      ...chapters(document, layout),
      ...endSections(document, layout),
    ],
    blocks = sections
      .filter(({ name, blocks: own }) => own.length > 0 && document.sections.includes(name))
      .flatMap(({ title, page: begins, lies, blocks: own }): Block[] =>
        lies === true
          ? [{ is: "lying", blocks: [heading(1, title), ...own] }]
          : [heading(1, title, begins === true), ...own],
      );
  const isDraft = document.draft !== "";
  return {
    title: shownOnOneLine(document.title),
    subtitle: shownOnOneLine(document.subtitle),
    lang: document.lang,
    ...dateOf(options),
    page,
    colon: shared.colon,
    draftMark: isDraft ? shared.draftMark : "",
    foot: shared.contentHash(document.provenance.hash),
    contents: manual.contents,
    front: [
      ...when(isDraft, par(bold(document.draft), "frame")),
      par(words(manual.cautions), "bar"),
      ...document.review.map((line) => par(words(line))),
      par(words(manual.madeWith)),
    ],
    blocks,
    files: layout.files,
  };
}

function chapters(document: ManualDocument, layout: Layout): Section[] {
  const { manual } = layout.options.wording,
    { sections: titles } = manual,
    several = document.chapters.length > 1;
  return document.chapters.flatMap((chapter): Section[] => {
    const title = (section: string): string => (several ? manual.of(section, chapter.title) : section),
      sheet = (name: "preparation" | "isolation"): Section =>
        sheetSection(name, title(tableSheetHead(name, layout.options).title), chapter, layout),
      groups = (of: Chapter["strip"]): Block[] => of.flatMap((group) => groupBlocks(group, chapter, layout));
    return [
      sheet("preparation"),
      sheet("isolation"),
      {
        name: "strip",
        title: title(titles.strip),
        page: true,
        blocks: [
          ...before(chapter, layout),
          ...(chapter.strip.length > 0 ? groups(chapter.strip) : [par(words(manual.noStrip))]),
        ],
      },
      {
        name: "refit",
        title: title(titles.refit),
        page: true,
        blocks: [
          ...when(chapter.refitIs === "none" && chapter.strip.length > 0, par(bold(manual.noRefit), "frame")),
          ...when(chapter.refitIs === "written", par(words(manual.writtenRefit))),
          ...groups(chapter.refit),
        ],
      },
      { name: "finish", title: title(titles.finish), blocks: groups(chapter.finish) },
    ];
  });
}

function before(chapter: Chapter, layout: Layout): Block[] {
  const { options } = layout,
    { manual } = options.wording;
  return [
    ...paragraphs(chapter.about).map((each) => par(words(each))),
    ...when(
      chapter.needs.length > 0,
      heading(2, manual.before),
      list(chapter.needs.map((need) => [need.words, need.alone].filter(Boolean).join(" "))),
    ),
    ...chapter.messages.map(({ signal, text }) => messagePanel(signal, "", text, options)),
    ...chapter.pictures.flatMap((shot) => photoBlocks(shot, "", layout)),
  ];
}

function endSections(document: ManualDocument, layout: Layout): Section[] {
  const { mishaps, index } = document;
  const { options, room } = layout,
    { manual, instructions: said } = options.wording,
    { sections: more } = said;
  return [
    {
      name: "closing",
      title: layout.options.wording.refitBook.sections.closing,
      page: true,
      blocks: closing(document, layout),
    },
    {
      name: "mishaps",
      title: more.mishaps,
      page: true,
      blocks: [
        list(said.mishapAlways),
        mishaps.length > 0
          ? table(
              "",
              [
                { head: said.mishap, cell: (row) => row.what, isHead: true },
                { head: said.mishapThen, cell: (row) => row.then },
              ],
              mishaps,
              room.width,
            )
          : par(words(said.mishapsNotGiven)),
      ],
    },
    { name: "waste", title: more.waste, blocks: wasteBlocks(document, layout) },
    { name: "record", title: manual.sections.record, page: true, blocks: record(layout) },
    ...appendices(document, layout),
    {
      name: "glossary",
      title: more.glossary,
      page: true,
      blocks: [
        table(
          "",
          [
            { head: said.term, cell: ([term]) => term, isHead: true },
            { head: said.means, cell: ([, means]) => means },
          ],
          said.terms,
          room.width,
        ),
      ],
    },
    {
      name: "index",
      title: more.index,
      blocks: when(index.length > 0, {
        is: "index",
        rows: index.map(({ name, lines }) => ({ name: words(name), lines })),
      }),
    },
  ];
}

function record({ options, room }: Layout): Block[] {
  const { manual, tablet } = options.wording,
    [instruments = tablet.instruments, notAsWritten = tablet.notAsWritten] = manual.recordLines.slice(
      recordFields.length,
    );
  const rows = (count: number): readonly undefined[] => Array.from({ length: count }, () => undefined),
    empty = (head: string) => ({ head, cell: () => "", blank: 25 });
  return [
    par(words(manual.recordNote)),
    { is: "blanks", rows: recordFields.map((_, i) => blank(manual.recordLines[i] ?? "", 95)) },
    table(
      instruments,
      [empty(tablet.instrument), empty(tablet.instrumentNumber), empty(tablet.due)],
      rows(4),
      room.width,
    ),
    table(
      notAsWritten,
      [
        { ...empty(manual.line), blank: 14 },
        ...[tablet.whatThing, tablet.what, tablet.whatDone, tablet.agreedBy, tablet.wanted].map(empty),
      ],
      rows(8),
      room.width,
    ),
  ];
}

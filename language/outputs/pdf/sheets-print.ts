// The sheets for paper: torques to sign, a place for each part, labels for bags and trays.

import type { Provenance } from "../draft.ts";
import type { LabelData } from "../labels/data.ts";
import { labelsOf, usualGrid } from "../labels/html.ts";
import type { LayoutData, LayoutRow } from "../layout-sheet/data.ts";
import { factsOf } from "../layout-sheet/facts.ts";
import type { OutputOptions } from "../output.ts";
import type { SheetData, SheetOf, SheetTable } from "../sheet/sheet-data.ts";
import { titleOf } from "../sheet/of-procedures.ts";
import type { TorqueRow, TorqueSheetData } from "../torque-sheet/data.ts";
import { dateOf, pageOf } from "./paper.ts";
import { heading, par, when } from "./pieces.ts";
import { roomOf, type Block, type PrintDocument } from "./print.ts";
import { table, type Column } from "./table.ts";
import { bold, words } from "./words.ts";
import { reviewLines } from "../wording/review.ts";

/** What all sheets share: title, the mark of a draft, whose words come first. */
function sheet(
  title: string,
  note: string,
  { draft, openFindings, hash }: Provenance,
  options: OutputOptions,
  page: PrintDocument["page"],
  blocks: readonly Block[],
): PrintDocument {
  const { manual, document } = options.wording,
    isDraft = draft.length > 0;
  return {
    title,
    subtitle: "",
    lang: manual.htmlLang,
    ...dateOf(options),
    page,
    colon: document.colon,
    draftMark: isDraft ? document.draftMark : "",
    foot: document.contentHash(hash),
    contents: "",
    front: [
      ...when(isDraft, par(bold(document.draftLine(openFindings, draft)), "frame")),
      par(words(document.cautionLine), "bar"),
      ...reviewLines(options.wording).map((line) => par(words(line))),
      par(words(note)),
    ],
    blocks,
    files: [],
  };
}

/** The table of what is tightened. @param width mm. */
export function torqueBlocks(rows: readonly TorqueRow[], options: OutputOptions, width: number): readonly Block[] {
  const {
      torqueSheet: said,
      document: { parts },
    } = options.wording,
    { columns: heads } = said,
    blank = (head: string, width: number): Column<TorqueRow> => ({ head, cell: () => "", blank: width });
  const columns: readonly Column<TorqueRow>[] = [
    { head: heads.line, cell: (row) => row.line },
    { head: heads.fastener, cell: (row) => row.name, isHead: true },
    { head: heads.count, cell: (row) => row.count ?? said.notGiven, is: "n" },
    { head: heads.thread, cell: (row) => parts([row.thread, row.class].filter(Boolean)) },
    ...(options.system === "us" ? (["us", "metric"] as const) : (["metric", "us"] as const)).map(
      (system): Column<TorqueRow> => ({ head: heads[system], cell: (row) => parts(row[system]), is: "n" }),
    ),
    {
      head: heads.passes,
      cell: (row) =>
        parts([
          ...row.passes,
          ...(row.sequence === "" ? [] : [row.sequence]),
          ...(row.order.length > 0 ? [said.order(row.order.join(" "))] : []),
        ]),
    },
    { head: heads.tool, cell: (row) => parts([row.tool, ...row.wrenches].filter(Boolean)) },
    { head: heads.note, cell: (row) => parts(row.notes) },
    blank(heads.set, 16),
    blank(heads.wrenchNo, 16),
    blank(heads.initials, 14),
  ];
  return [rows.length === 0 ? par(words(said.nothing)) : table("", columns, rows, width, 8)];
}

export function torqueSheetPrint({ procedures, provenance }: TorqueSheetData, options: OutputOptions): PrintDocument {
  const { torqueSheet: said } = options.wording,
    page = pageOf(options, "narrow", true);
  return sheet(
    said.title,
    said.note,
    provenance,
    options,
    page,
    procedures.flatMap((procedure, i): Block[] => [
      heading(1, titleOf(procedure, options), i > 0),
      ...torqueBlocks(procedure.rows, options, roomOf(page).width),
    ]),
  );
}

/** What of a page is left for the text, mm. */
type Room = ReturnType<typeof roomOf>;

/** By how much heights are told too large at most, where cells are full of text. */
const reserve = 1.4;

/**
 * @param titled a heading says its title above it.
 * @param follows there is another table before it.
 */
export function sheetTableBlocks(
  { title, columns, rows, blank, empty }: SheetTable,
  titled: boolean,
  { width, height }: Room,
  follows = false,
): readonly Block[] {
  if (rows.length === 0) return [...when(titled, heading(2, title)), par(words(empty))];
  // What is written by hand needs room, but the words need theirs first.
  const pen = Math.max(11, Math.min(24, (0.25 * width) / Math.max(1, blank.length)));
  const all: readonly Column<readonly string[]>[] = [
    ...columns.map((head, at): Column<readonly string[]> => ({
      head,
      cell: (row) => row[at] ?? "",
      ...(at === 0 ? { isHead: true as const } : {}),
    })),
    ...blank.map((head): Column<readonly string[]> => ({ head, cell: () => "", blank: pen })),
  ];
  // Many columns are set smaller, as on the torque sheet: the words need the room. One of several tables is read, and signed, by itself:
  // it goes over a page's end only where it fits no page with its heading.
  const page = titled ? (height / 25.4) * 72 - 60 : 0,
    upTo = (most: number): ReturnType<typeof table> => table("", all, rows, width, all.length > 8 ? 8 : 9, most),
    made = upTo(page);
  // It may fit a page after all: then it does from the top of one.
  const isAboutAPage = !made.whole && upTo(page * reserve).whole;
  return [...when(titled, heading(2, title, follows && isAboutAPage)), made];
}

/** All tables of a sheet, with what is said before them. */
export const sheetBlocks = ({ notes, tables }: Pick<SheetOf, "notes" | "tables">, room: Room): readonly Block[] => [
  ...notes.map((note) => par(words(note), ...(tables.length > 0 ? (["lead"] as const) : []))),
  ...tables.flatMap((each, i) => sheetTableBlocks(each, tables.length > 1, room, i > 0)),
];

/** The sheets that are tables with places to write. */
export function tableSheetPrint(data: SheetData, options: OutputOptions, lies: boolean): PrintDocument {
  const page = pageOf(options, "narrow", lies);
  const blocks = data.procedures.flatMap((procedure, i): Block[] => [
    heading(1, titleOf(procedure, options), i > 0),
    ...sheetBlocks(procedure, roomOf(page)),
  ]);
  return sheet(data.title, data.note, data.provenance, options, page, blocks);
}

/** A place for each part. */
export const layoutBlock = (rows: readonly LayoutRow[], options: OutputOptions): Block =>
  rows.length === 0
    ? par(words(options.wording.layoutSheet.nothing))
    : {
        is: "places",
        boxes: rows.map((row) => ({
          number: String(row.place),
          name: words(row.name, 14),
          facts: factsOf(row, options).map((fact) => words(fact, 18)),
        })),
      };

export function layoutSheetPrint({ procedures, provenance }: LayoutData, options: OutputOptions): PrintDocument {
  const { layoutSheet: said } = options.wording;
  return sheet(
    said.title,
    said.note,
    provenance,
    options,
    pageOf(options, "narrow"),
    procedures.flatMap((procedure, i): Block[] => [
      heading(1, titleOf(procedure, options), i > 0),
      layoutBlock(procedure.rows, options),
    ]),
  );
}

/** Labels lie at their places on the sheet, so that nothing else stands on the page. */
export function labelsPrint({ places, provenance }: LabelData, options: OutputOptions): PrintDocument {
  const { labels: said, document } = options.wording,
    grid = options.labelGrid ?? usualGrid,
    labels = places.flatMap((place) => labelsOf(place, grid, options));
  const isDraft = provenance.draft.length > 0,
    { columns, rows, width, height, pageWidth, pageHeight, gapX, gapY } = grid;
  const print = sheet(
    said.title,
    said.nothing,
    provenance,
    options,
    labels.length === 0 ? pageOf(options, "narrow") : { width: pageWidth, height: pageHeight, margin: "none" },
    labels.length === 0
      ? []
      : [
          {
            is: "labels",
            columns,
            rows,
            width,
            height,
            gapX,
            gapY,
            left: Math.max(0, (pageWidth - columns * width - (columns - 1) * gapX) / 2),
            top: Math.max(0, (pageHeight - rows * height - (rows - 1) * gapY) / 2),
            labels: labels.map(({ place, number, of, lines }) => ({
              head: words(said.place(place.kind, place.label)),
              mark: [of > 1 ? `${number} / ${of}` : "", isDraft ? document.draftMark : ""].filter(Boolean).join(" "),
              lines: lines.map((line) => words(line)),
            })),
          },
        ],
  );
  return labels.length === 0 ? print : { ...print, front: [] };
}

// The sheets for the bench within the manual for paper: the tables of the sheets alone, a chapter's own. Wide ones lie on their side.

import type { Chapter, ManualDocument } from "../manual/document.ts";
import type { SectionName } from "../manual/sections.ts";
import {
  layoutSheetHead,
  tableSheetHead,
  torqueSheetHead,
  type SheetHead,
  type TableSheetName,
} from "../manual/sheets.ts";
import type { Layout } from "./lines.ts";
import type { Section } from "./manual-front.ts";
import { heading, par } from "./pieces.ts";
import { roomOf, type Block } from "./print.ts";
import { layoutBlock, sheetBlocks, torqueBlocks } from "./sheets-print.ts";
import { pageOf } from "./paper.ts";
import { words } from "./words.ts";

function laidOut(
  name: SectionName,
  title: string,
  { note, lies }: SheetHead,
  { options, room }: Layout,
  blocks: (room: Layout["room"]) => readonly Block[],
): Section {
  const own = lies ? roomOf(pageOf(options, "book", true)) : room;
  // Loads are few: they go on where the record ends.
  return {
    name,
    title,
    ...(lies ? { lies: true } : name === "lifting" ? {} : { page: true }),
    blocks: [par(words(note)), ...blocks(own)],
  };
}

export const sheetSection = (
  name: Exclude<TableSheetName, "waste">,
  title: string,
  { sheets }: Chapter,
  layout: Layout,
): Section =>
  laidOut(name, title, tableSheetHead(name, layout.options), layout, (room) => sheetBlocks(sheets.tables[name], room));

export function appendices({ chapters }: ManualDocument, layout: Layout): Section[] {
  const { options } = layout,
    { manual } = options.wording;
  return chapters.flatMap((chapter): Section[] => {
    const { torque, layout: places } = chapter.sheets,
      title = ({ title: own }: SheetHead): string => (chapters.length > 1 ? manual.of(own, chapter.title) : own),
      table = (name: "lifting" | "handover"): Section =>
        sheetSection(name, title(tableSheetHead(name, options)), chapter, layout),
      torques = torqueSheetHead(options),
      parts = layoutSheetHead(options);
    return [
      table("lifting"),
      ...(chapter.strip.length > 0 ? [table("handover")] : []),
      ...(torque.rows.length > 0
        ? [laidOut("torque", title(torques), torques, layout, ({ width }) => torqueBlocks(torque.rows, options, width))]
        : []),
      ...(places.rows.length > 0
        ? [laidOut("layout", title(parts), parts, layout, () => [layoutBlock(places.rows, options)])]
        : []),
    ];
  });
}

/** What is left over, by procedure where there are several. */
export function wasteBlocks({ chapters }: ManualDocument, { options, room }: Layout): readonly Block[] {
  const all = chapters.filter(({ sheets: { tables } }) => tables.waste.tables.some(({ rows }) => rows.length > 0));
  return all.length === 0
    ? []
    : [
        par(words(tableSheetHead("waste", options).note)),
        ...all.flatMap(({ title, sheets: { tables } }): readonly Block[] => [
          ...(chapters.length > 1 ? [heading(2, title)] : []),
          ...sheetBlocks(tables.waste, room),
        ]),
      ];
}

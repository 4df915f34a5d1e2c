// The sheets for the bench as they stand in the manual: the same tables as alone, a chapter's own.

import { layoutOf, type LayoutData } from "../layout-sheet/data.ts";
import type { OutputOptions } from "../output.ts";
import { handoverKind } from "../sheet/handover.ts";
import { isolationKind } from "../sheet/isolation.ts";
import { liftingKind } from "../sheet/lifting.ts";
import { preparationKind } from "../sheet/preparation.ts";
import { sheetOf, type Made, type SheetKind, type SheetOf } from "../sheet/sheet-data.ts";
import { wasteKind } from "../sheet/waste.ts";
import { torqueSheetOf, type TorqueSheetData } from "../torque-sheet/data.ts";

const kinds = {
  preparation: preparationKind,
  isolation: isolationKind,
  lifting: liftingKind,
  handover: handoverKind,
  waste: wasteKind,
} as const satisfies Readonly<Record<string, SheetKind>>;

export type TableSheetName = keyof typeof kinds;

export interface ChapterSheets {
  readonly tables: Readonly<Record<TableSheetName, SheetOf>>;
  readonly torque: TorqueSheetData["procedures"][number];
  readonly layout: LayoutData["procedures"][number];
}

export const sheetsOf = (made: Made): ChapterSheets => ({
  tables: Object.fromEntries(
    Object.entries(kinds).map(([name, kind]) => [name, sheetOf(kind, made)]),
  ) as ChapterSheets["tables"],
  torque: torqueSheetOf(made.performance, made.lines, made.options),
  layout: layoutOf(made.performance, made.lines, made.options),
});

/** What stands over a sheet, and in the list of contents. */
export interface SheetHead {
  readonly title: string;
  readonly note: string;
  /** It is too wide for a page that stands. */
  readonly lies: boolean;
}

export const tableSheetHead = (name: TableSheetName, options: OutputOptions): SheetHead => {
  const kind: SheetKind = kinds[name];
  return { title: kind.title(options), note: kind.note(options), lies: kind.landscape === true };
};

export const torqueSheetHead = ({ wording: { torqueSheet: words } }: OutputOptions): SheetHead => ({
  title: words.title,
  note: words.note,
  lies: true,
});

export const layoutSheetHead = ({ wording: { layoutSheet: words } }: OutputOptions): SheetHead => ({
  title: words.title,
  note: words.note,
  lies: false,
});

// Lifting: each load with the mass that hangs at that moment, its gear and its people.

import { liftsOf } from "../manual/lifts.ts";
import type { SheetKind } from "./sheet-data.ts";
import { tableSheet } from "./table-sheet.ts";

export const liftingKind: SheetKind = {
  name: "lifting",
  title: ({ wording }) => wording.benchSheets.lifting.title,
  note: ({ wording }) => wording.benchSheets.lifting.note,
  make: ({ lines, options }) => {
    const { benchSheets: words, manual } = options.wording,
      { lifting } = words;
    return {
      notes: [manual.liftingNote],
      tables: [
        {
          title: lifting.title,
          columns: [words.line, lifting.load, lifting.mass, lifting.gear, lifting.capacity, lifting.people],
          blank: [lifting.points],
          empty: lifting.nothing,
          rows: liftsOf(lines).map((row) => [row.line, row.load, row.mass, row.gear, row.capacity, row.people]),
        },
      ],
    };
  },
};

export const liftingSheet = tableSheet(liftingKind);

// Batch: a matrix of steps and readings for several units of one kind, a column for each.

import { actionsIn } from "./actions.ts";
import { tableSheet } from "./table-sheet.ts";

/** More columns do not fit on a page that lies on its side: the sheet is printed again for the next units. */
const mostUnits = 12;

export const batchSheet = tableSheet({
  name: "batch",
  title: ({ wording, units = 1 }) => wording.benchSheets.batch.title(units),
  note: ({ wording }) => wording.benchSheets.batch.note,
  landscape: true,
  make: ({ lines, options }) => {
    const { batch } = options.wording.benchSheets,
      count = options.units ?? 1;
    const rows = [...lines.strip, ...lines.refit, ...lines.finish].flatMap((group) => [
      [`${group.number} ${group.title}`, ""],
      ...actionsIn([group]).flatMap((line) => [
        ...line.readings.map(({ what, limits }) => [`${line.id} ${what}`, limits]),
        ...(line.sign ? [[`${line.id} ${line.says}`, options.wording.benchSheets.signature]] : []),
      ]),
    ]);
    return {
      tables: Array.from({ length: Math.ceil(count / mostUnits) }, (_, page) => {
        const first = page * mostUnits + 1,
          last = Math.min(count, first + mostUnits - 1);
        return {
          title: first === last ? batch.unit(first) : `${batch.unit(first)} – ${last}`,
          columns: [batch.step, batch.due],
          blank: Array.from({ length: last - first + 1 }, (__, i) => batch.unit(first + i)),
          empty: batch.nothing,
          rows: rows.length === 0 ? [] : [[batch.serial, ""], ...rows],
        };
      }),
    };
  },
});

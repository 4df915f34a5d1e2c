// Waste: fluids that are let out, old parts that are not kept, and what the authors name.

import { volumeText } from "../lines/say-plain.ts";
import { actionsIn } from "./actions.ts";
import type { SheetKind } from "./sheet-data.ts";
import { tableSheet } from "./table-sheet.ts";

export const wasteKind: SheetKind = {
  name: "waste",
  title: ({ wording }) => wording.benchSheets.waste.title,
  note: ({ wording }) => wording.benchSheets.waste.note,
  make: ({ performance, lines, options }) => {
    const { benchSheets: words, kinds } = options.wording,
      { waste } = words,
      { model, procedure, strip } = performance,
      actions = actionsIn(lines.strip);
    const drained = model.fluids.filter(({ id }) =>
      actions.some((line) => ["drain", "recover"].includes(line.verb) && line.items.some((item) => item.id === id)),
    );
    const old = new Map(
      [...actions, ...actionsIn(lines.refit)].flatMap((line) =>
        line.items.filter((item) => item.fresh === "certain").map((item) => [item.id, item] as const),
      ),
    );
    const said = [
      ...model.plate.waste,
      ...new Set([procedure, ...strip.map(({ around }) => around.procedure)].flatMap(({ issue }) => issue.waste)),
    ];
    return {
      // Each unit leaves so much, however many are asked for.
      notes: options.units !== undefined && options.units > 1 ? [options.wording.bill.forUnits(1)] : [],
      tables: [
        {
          title: waste.title,
          columns: [waste.what, waste.amount, waste.where],
          blank: [waste.place, words.who],
          empty: waste.nothing,
          rows: [
            ...drained.map((fluid) => [
              fluid.name,
              volumeText(lines.context, fluid),
              kinds.fluidWaste(fluid.kind) ?? waste.find,
            ]),
            ...[...old.values()].map((item) => [
              item.name,
              [item.of === undefined ? "" : String(item.of), waste.old].filter(Boolean).join(", "),
              waste.find,
            ]),
            ...said.map(({ what, then }) => [what, "", then]),
          ],
        },
      ],
    };
  },
};

export const wasteSheet = tableSheet(wasteKind);

// Waste: fluids that are let out, old parts that are not kept, and what the authors name.

import { usesOf } from "../../bill/uses.ts";
import type { Performance } from "../../bench/trace.ts";
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
    const washers = [...oldWashers(performance)].filter(([id]) => !old.has(id));
    const said = [
      ...model.plate.waste,
      ...new Set([procedure, ...strip.map(({ around }) => around.procedure)].flatMap(({ issue }) => issue.waste)),
    ];
    // What the authors say of a fluid or an old part by its name stands beside it, and not in a row of its own.
    const goes = (name: string): string | undefined => said.find(({ what }) => what === name)?.then,
      named = new Set([...drained, ...old.values(), ...washers.map(([, washer]) => washer)].map(({ name }) => name));
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
              goes(fluid.name) ?? kinds.fluidWaste(fluid.kind) ?? waste.find,
            ]),
            ...[...old.values()].map((item) => [
              item.name,
              [item.of === undefined ? "" : String(item.of), waste.old].filter(Boolean).join(", "),
              goes(item.name) ?? waste.find,
            ]),
            ...washers.map(([, { name, count }]) => [name, `${count}, ${waste.old}`, goes(name) ?? waste.find]),
            ...said.filter(({ what }) => !named.has(what)).map(({ what, then }) => [what, "", then]),
          ],
        },
      ],
    };
  },
};

/** No line of its own takes a washer out: it comes with what it lies under, and where a new one goes in an old one is left over. */
function oldWashers(performance: Performance): ReadonlyMap<string, { readonly name: string; readonly count: number }> {
  const { model } = performance,
    under = new Set(model.ties.flatMap((tie) => tie.washers.map(({ part }) => model.things[part]!.id))),
    found = new Map<string, { name: string; count: number }>();
  if (under.size === 0) return found;
  for (const { id, name, grade, pieces } of usesOf(performance, 0))
    if (under.has(id) && grade === "certain" && pieces !== undefined)
      found.set(id, { name, count: (found.get(id)?.count ?? 0) + pieces });
  return found;
}

export const wasteSheet = tableSheet(wasteKind);

// Preparation: people, what was done before, tools, supplies, and what everybody has to know.

import { peopleFor } from "../../bench/crew.ts";
import { hazardKinds } from "../../tables/index.ts";
import { billName, supplyRows } from "../bill/data.ts";
import { toolName } from "../lines/context.ts";
import { neededBefore } from "../lines/ends.ts";
import { storesHazards } from "../manual/stores-hazards.ts";
import { toolsOf } from "../manual/tools.ts";
import { lowerFirst } from "../wording/phrases.ts";
import type { SheetKind } from "./sheet-data.ts";
import { tableSheet } from "./table-sheet.ts";

export const preparationKind: SheetKind = {
  name: "preparation",
  title: ({ wording }) => wording.benchSheets.preparation.title,
  note: ({ wording }) => wording.benchSheets.preparation.note,
  make: ({ performance, lines, options, uses, inManual }) => {
    const { benchSheets: words, manual, kinds, instructions, document } = options.wording,
      { preparation } = words,
      { model, procedure } = performance,
      { context } = lines,
      tools = toolsOf([{ performance, lines }], options),
      supplies = supplyRows(performance, options, uses),
      // What the procedure does not meet is on the unit all the same.
      met = model.hazards.filter(({ index }) => lines.met.has(index)),
      others = model.hazards.filter(({ index }) => !lines.met.has(index)),
      ofStores = storesHazards([model], supplies, () => context).map(({ hazard }) => hazard),
      wear = new Set([...tools.wear, ...ofStores.flatMap((hazard) => hazard.wear)]),
      names = (hazards: readonly { readonly name: string }[]): string =>
        [...new Set(hazards.map(({ name }) => name))].join(", ");
    const roles = new Set(
      [procedure.role, ...met.map(({ role }) => role)].flatMap((role) => (role ? [toolName(context, role.text)] : [])),
    );
    const open = Object.keys(hazardKinds)
      .filter((kind) => !model.hazards.some((hazard) => hazard.kind === kind) && !model.dismissed.has(kind))
      .map((kind) => kinds.hazard(kind));
    // What each tool is for stands in the manual's own tables already.
    const fors = (what: readonly string[], told = document.parts): string => (inManual === true ? "" : told(what)),
      numbers = (what: readonly string[]): string => what.join(", ");
    const list = (title: string, rows: readonly (readonly string[])[]) => ({
      title,
      columns: [preparation.what, preparation.amount],
      blank: [words.done, words.who],
      empty: words.none,
      rows,
    });
    return {
      // The supplies are those of all of them.
      notes: options.units !== undefined && options.units > 1 ? [options.wording.bill.forUnits(options.units)] : [],
      tables: [
        list(preparation.people, [
          [preparation.crew(peopleFor(performance)), ""],
          ...[...roles].map((role) => [role, ""]),
          ...[...wear].map((thing) => [thing, manual.wear]),
        ]),
        list(
          preparation.before,
          neededBefore(lines.context).map(({ words, alone }) => [words, alone]),
        ),
        list(preparation.know, [
          ...(met.length + ofStores.length > 0 ? [[preparation.hazards(names([...met, ...ofStores])), ""]] : []),
          ...(others.length > 0 ? [[preparation.otherHazards(names(others)), ""]] : []),
          ...(open.length > 0 ? [[preparation.notConsidered(open.join(", ")), ""]] : []),
          [preparation.help, ""],
          ...[...model.plate.mishaps, ...procedure.issue.mishaps].map(({ what, then }) => [
            document.titled(instructions.sections.mishaps, what),
            then,
          ]),
        ]),
        list(preparation.tools, [
          ...tools.spanners.map((row) => [row.name, fors(row.for)]),
          ...tools.wrenches.map((row) => [[row.name, row.range].filter(Boolean).join(", "), fors(row.for)]),
          ...tools.uncovered.map((row) => [manual.wrenchNone, document.titled(row.torque, row.for)]),
          ...tools.others.map((row) => [[row.name, row.note].filter(Boolean).join(", "), fors(row.for, numbers)]),
        ]),
        list(
          preparation.supplies,
          supplies.map((row) => [
            [billName(row, options.wording), row.size, row.partNo, row.standard].filter(Boolean).join(", "),
            document.parts(
              [row.total.text, row.grade === "worn" ? lowerFirst(options.wording.bill.grades.worn) : ""].filter(
                Boolean,
              ),
            ),
          ]),
        ),
      ],
    };
  },
};

export const preparationSheet = tableSheet(preparationKind);

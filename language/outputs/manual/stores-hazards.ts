// The hazards that consumables bring: each once, with all that are used here and bring it.

import type { Model } from "../../model/model.ts";
import type { BillRow } from "../bill/data.ts";
import { wearName, type LineContext } from "../lines/context.ts";
import type { HazardText } from "../lines/line.ts";
import { byGravity } from "../lines/warnings.ts";

/** What consumables bring with them, and which of them. */
export type Stores = readonly { readonly hazard: HazardText; readonly from: readonly string[] }[];

export function storesHazards(
  models: readonly Model[],
  bill: readonly Pick<BillRow, "id" | "name">[],
  contextOf: (model: Model) => LineContext,
): Stores {
  const used = new Set(bill.flatMap(({ id, name }) => [id, name])),
    found = new Map<string, { hazard: Stores[number]["hazard"]; from: string[] }>();
  for (const model of models) {
    const context = contextOf(model),
      { kinds } = context.wording;
    for (const { id, name, hazard } of model.library.consumables.values()) {
      const type = hazard && model.library.hazards.get(hazard.text);
      // One part number may stand for two consumables, so that either name on the bill counts.
      if (!type || !(used.has(id) || used.has(name))) continue;
      const key = `${type.at.file} ${type.at.start}`,
        had = found.get(key),
        from = name || id.replaceAll("-", " ");
      if (had) {
        if (!had.from.includes(from)) had.from.push(from);
        continue;
      }
      found.set(key, {
        from: [from],
        hazard: {
          id: type.id,
          signal: type.signal,
          kind: type.kind,
          kindTitle: kinds.hazard(type.kind),
          name: type.name,
          about: type.about,
          harm: type.signal === "notice" ? "" : kinds.hazardHarm(type.kind),
          figures: [],
          source: "",
          keepOut: "",
          wear: type.wear.map((one) => wearName(context, one.text)),
          who: "",
          pushes: "",
          precautions: type.precautions.map(({ kind, text }) => ({
            kind,
            title: kinds.precautionShort(kind),
            text,
            details: [],
          })),
        },
      });
    }
  }
  return [...found.values()].sort((a, b) => byGravity(a.hazard, b.hazard));
}

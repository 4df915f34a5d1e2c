// What lies in each bag and tray: gathered from the acts that put things into them.

import { sizeText } from "../../bill/uses.ts";
import type { Tie } from "../../model/model.ts";
import { provenanceOf, type Provenance } from "../draft.ts";
import { stepText, thingOf, type LineContext } from "../lines/context.ts";
import { sizeIn } from "../lines/figures.ts";
import { linesOf } from "../lines/groups.ts";
import type { OutputInput, OutputOptions } from "../output.ts";

export interface LabelItem {
  readonly id: string;
  readonly name: string;
  /** Undefined where the author gives no number: count them. */
  readonly count: number | undefined;
  readonly of: number | undefined;
  readonly size: string;
  /** It does not go back: a new one is fitted. */
  readonly discard: boolean;
  readonly line: string;
  readonly step: { readonly number: number; readonly title: string } | undefined;
}

export interface LabelPlace {
  readonly kind: "tray" | "bag";
  readonly label: string;
  readonly unit: string;
  readonly procedure: string;
  readonly items: readonly LabelItem[];
}

export interface LabelData {
  readonly format: "stripdown-labels";
  readonly version: 1;
  readonly provenance: Provenance;
  readonly places: readonly LabelPlace[];
}

export function labelData(input: OutputInput, options: OutputOptions): LabelData {
  return {
    format: "stripdown-labels",
    version: 1,
    provenance: provenanceOf(input),
    places: input.performances.flatMap((performance) => {
      const { context, strip } = linesOf(performance, options),
        places = new Map<string, { kind: "tray" | "bag"; label: string; items: LabelItem[] }>();
      for (const line of strip.flatMap((group) => group.lines)) {
        if (line.is !== "action") continue;
        const performed = performance.strip[line.of[0] ?? -1],
          into = performed?.act.into;
        if (!performed || !into || into.kind === "container") continue;
        const key = `${into.kind}\n${into.label}`,
          place = places.get(key) ?? { kind: into.kind, label: into.label, items: [] };
        places.set(key, place);
        const { step } = performed.around,
          common = {
            line: line.id,
            step: step && { number: step.number, title: stepText(context, step, "") },
          };
        for (const item of line.items) {
          if (item.is === "fluid" || item.is === "hazard") continue;
          place.items.push({
            id: item.id,
            name: item.name,
            count: item.count,
            of: item.of,
            size: sizeOf(context, item.id),
            discard: item.fresh === "certain",
            ...common,
          });
        }
        // Washers come away with their fastener and lie in the same bag.
        for (const { part, count } of performed.act.verb === "undo"
          ? washersOf(context, new Set(line.items.map(({ id }) => id)))
          : []) {
          const thing = thingOf(context, part);
          place.items.push({
            id: thing.id,
            name: thing.name,
            count,
            of: count,
            size: sizeOf(context, thing.id),
            discard: context.fresh.get(part)?.grade === "certain",
            ...common,
          });
        }
      }
      return [...places.values()].map((place): LabelPlace => ({
        ...place,
        unit: performance.model.title || performance.model.unit,
        procedure: performance.procedure.title || performance.procedure.id,
      }));
    }),
  };
}

/** Those that the text removes in a line of their own are not with their fastener. */
const washersOf = (context: LineContext, ids: ReadonlySet<string>): Tie["washers"] =>
  context.model.ties
    .filter(({ id }) => ids.has(id))
    .flatMap(({ washers }) => washers.filter(({ part }) => !context.fitted.has(part)));

function sizeOf({ model, wording }: LineContext, id: string): string {
  const thing = model.things.find((each) => each.id === id);
  return thing?.is === "part" || thing?.is === "tie" ? sizeIn(sizeText(thing) ?? "", wording) : "";
}

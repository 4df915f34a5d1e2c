// The parts in the order in which they come off, each with a place of its own on the bench.

import type { Performance } from "../../bench/trace.ts";
import { massOf } from "../../bench/load.ts";
import { provenanceOf, type Provenance } from "../draft.ts";
import { stepText, toolName } from "../lines/context.ts";
import { massText } from "../lines/figures.ts";
import { linesOf, type Lines } from "../lines/groups.ts";
import type { ActionLine } from "../lines/line.ts";
import type { OutputInput, OutputOptions } from "../output.ts";
import { actionsIn } from "../sheet/actions.ts";
import { procedureHead, type ProcedureHead } from "../sheet/of-procedures.ts";

export interface LayoutRow {
  /** From 1, in the order of coming off. */
  readonly place: number;
  readonly line: string;
  readonly step: string;
  readonly id: string;
  readonly name: string;
  /** Undefined where the author gives no number. */
  readonly count: number | undefined;
  /** What comes away with it, as the line says it. */
  readonly along: readonly string[];
  /** As it comes off, what comes along in it. */
  readonly mass: string;
  readonly goesTo: string;
  readonly discard: boolean;
}

export interface LayoutData {
  readonly format: "stripdown-layout-sheet";
  readonly version: 1;
  readonly provenance: Provenance;
  readonly procedures: readonly (ProcedureHead & { readonly id: string; readonly rows: readonly LayoutRow[] })[];
}

export function layoutData(input: OutputInput, options: OutputOptions): LayoutData {
  return {
    format: "stripdown-layout-sheet",
    version: 1,
    provenance: provenanceOf(input),
    procedures: input.performances.map((performance) => layoutOf(performance, linesOf(performance, options), options)),
  };
}

/** Of one procedure. */
export function layoutOf(
  performance: Performance,
  lines: Lines,
  options: OutputOptions,
): LayoutData["procedures"][number] {
  const { layoutSheet: words } = options.wording;
  const { context, strip } = lines,
    { model, procedure } = performance,
    linesOfAct = new Map<number, ActionLine[]>();
  for (const line of actionsIn(strip))
    for (const of of line.of) {
      const had = linesOfAct.get(of);
      if (had) had.push(line);
      else linesOfAct.set(of, [line]);
    }
  const rows: LayoutRow[] = [];
  performance.strip.forEach(({ act, around, from, to }, i) => {
    for (const event of performance.events.slice(from, to)) {
      if (event.kind !== "off") continue;
      const { things } = event,
        along = event.moved.filter((part) => !things.includes(part)),
        ids = new Set(things.map((thing) => model.things[thing]?.id));
      const parts = things.flatMap((thing) => model.parts[thing] ?? []),
        mass = massOf(model, [...new Set([...things, ...along])]);
      const said = linesOfAct.get(i) ?? [],
        line = said.find((each) => each.items.some(({ id }) => ids.has(id))) ?? said[0];
      const step = around.step ? stepText(context, around.step, "") : "";
      const into = act.into,
        goesTo =
          into === undefined
            ? ""
            : into.kind === "tray"
              ? words.tray(into.label)
              : into.kind === "bag"
                ? words.bag(into.label)
                : toolName(context, into.label);
      rows.push({
        place: rows.length + 1,
        line: line?.id ?? "",
        step,
        id: parts.map(({ id }) => id).join(", "),
        name: parts.map(({ name }) => name).join(", "),
        count: parts.some(({ countUnknown }) => countUnknown)
          ? undefined
          : parts.reduce((sum, { count }) => sum + count, 0),
        along: line?.details.filter(({ sort }) => sort === "comes-away").map(({ says }) => says) ?? [],
        mass: words.massOf(mass.kg > 0 ? massText(mass.kg, context) : "", mass.unknown),
        goesTo,
        discard: things.length > 0 && things.every((thing) => context.fresh.get(thing)?.grade === "certain"),
      });
    }
  });
  return {
    id: procedure.id,
    ...procedureHead(performance, options),
    rows,
  };
}

// The tools that the procedures ask: spanners from the fasteners that they turn, torque wrenches whose range covers the torques, and
// what the acts name. What is lifted with them stands in lifts.ts.

import { gearOf } from "../../bench/load.ts";
import type { Performance } from "../../bench/trace.ts";
import type { Tie, Tool } from "../../model/model.ts";
import { si } from "../../quantities/index.ts";
import { toolName, wearName, type LineContext } from "../lines/context.ts";
import { bothSystems, figureText } from "../lines/figures.ts";
import type { Lines } from "../lines/groups.ts";
import type { ActionLine } from "../lines/line.ts";
import { spannerOf, type Spanner } from "../lines/spanner.ts";
import type { OutputOptions } from "../output.ts";
import { wrenchFor } from "../torque-sheet/wrench.ts";
import type { ToolRow, ToolTables, WrenchRow } from "./tool-tables.ts";
import { linesByAct } from "./lifts.ts";

interface Done {
  readonly performance: Performance;
  readonly lines: Lines;
}

/** Without the loads: a sheet that lists tools needs none. */
export function toolsOf(all: readonly Done[], options: OutputOptions): Omit<ToolTables, "lifts"> {
  const turned = all.flatMap(({ performance, lines }) =>
    turnedTies(performance).map((tie) => ({ tie, context: lines.context })),
  );
  return {
    spanners: spanners(turned, options),
    ...wrenches(turned, options),
    others: others(all, options),
    wear: wear(all),
  };
}

interface Turned {
  readonly tie: Tie;
  readonly context: LineContext;
}

/** Fasteners that the strip or the refit turns, in the order of the model. */
function turnedTies({ model, events, strip, refit, written, finish }: Performance): Tie[] {
  const touched = new Set([
    ...events.map((event) => event.thing),
    ...[...strip, ...written, ...finish].flatMap(({ things }) => things),
    ...refit.flatMap(({ op }) => op.things),
  ]);
  for (const fluid of model.fluids)
    if (touched.has(fluid.index))
      for (const at of [...fluid.drainsAt, ...fluid.fillsAt, ...fluid.bleedsAt]) touched.add(at);
  return model.ties.filter((tie) => tie.fastener && touched.has(tie.index));
}

function spanners(turned: readonly Turned[], { wording }: OutputOptions): ToolRow[] {
  const found = new Map<string, { spanner: Spanner; for: string[] }>();
  for (const { tie, context } of turned) {
    const spanner = spannerOf(tie, context);
    if (!spanner) continue;
    const key = `${spanner.says} ${spanner.computed}`,
      had = found.get(key);
    if (!had) found.set(key, { spanner, for: [tie.name] });
    else if (!had.for.includes(tie.name)) had.for.push(tie.name);
  }
  return [...found.values()]
    .sort((a, b) =>
      a.spanner.kind < b.spanner.kind ? -1 : a.spanner.kind > b.spanner.kind ? 1 : a.spanner.value - b.spanner.value,
    )
    .map((each) => ({
      name: each.spanner.says,
      note: each.spanner.computed ? wording.manual.computed : "",
      for: each.for,
    }));
}

function wrenches(turned: readonly Turned[], options: OutputOptions): Pick<ToolTables, "wrenches" | "uncovered"> {
  const used = new Map<string, { tool: Tool; for: string[] }>(),
    uncovered: { torque: string; for: string }[] = [];
  for (const { tie, context } of turned) {
    const { library } = context.model,
      hasWrench = [...library.tools.values()].some((tool) => tool.kind === "torque-wrench" && tool.range);
    const torques = [
      ...tie.torques.flatMap((torque) => (torque.value ? [torque.value] : [])),
      ...tie.stages.filter((stage) => stage.dimension === "torque"),
    ];
    for (const torque of torques) {
      const best = wrenchFor(library, torque);
      const label = `${tie.name} (${bothSystems(torque, options)})`;
      if (!best) {
        if (hasWrench) uncovered.push({ torque: bothSystems(torque, options), for: tie.name });
        continue;
      }
      const had = used.get(best.id);
      if (!had) used.set(best.id, { tool: best, for: [label] });
      else if (!had.for.includes(label)) had.for.push(label);
    }
  }
  const rows = [...used.values()]
    .sort((a, b) => si(a.tool.range!).high - si(b.tool.range!).high)
    .map(({ tool, for: all }): WrenchRow => ({
      name: tool.name || tool.id,
      range: figureText(tool.range!, options),
      accuracy:
        tool.accuracy === undefined
          ? ""
          : options.wording.figures.plusMinus(options.wording.figures.number(String(tool.accuracy))),
      calibration: tool.calibration ?? "",
      for: all,
    }));
  return { wrenches: rows, uncovered };
}

/** Acts in which a part is carried, by the gear that it asks for where the line names none. */
const carries: ReadonlySet<string> = new Set(["remove", "lift", "fit"]);

/** What acts and precautions name, spanners and wrenches apart; consumables stand in the bill. */
function others(all: readonly Done[], options: OutputOptions): ToolRow[] {
  const found = new Map<string, { name: string; note: string; for: string[] }>();
  const add = (context: LineContext, id: string, what: string): void => {
    const tool = context.model.library.tools.get(id);
    if (context.model.library.consumables.has(id)) return;
    const name = toolName(context, id),
      note = tool
        ? [
            tool.range && figureText(tool.range, options),
            tool.capacity && figureText(tool.capacity, options, "down"),
            tool.calibration,
            tool.about,
          ]
            .filter(Boolean)
            .join(", ")
        : "",
      had = found.get(name);
    if (!had) found.set(name, { name, note, for: [what] });
    else if (!had.for.includes(what)) had.for.push(what);
  };
  for (const { performance, lines } of all) {
    const { context } = lines;
    const [inStrip, inRefit, inFinish] = [lines.strip, lines.refit, lines.finish].map(linesByAct) as [
      ReadonlyMap<number, ActionLine>,
      ReadonlyMap<number, ActionLine>,
      ReadonlyMap<number, ActionLine>,
    ];
    const label = (of: number, labels: ReadonlyMap<number, ActionLine>): string => labels.get(of)?.id ?? "";
    performance.strip.forEach(({ act, things }, i) => {
      for (const tool of carries.has(act.verb) ? gearOf(context.model, act, things) : act.tools)
        add(context, tool.text, label(i, inStrip));
      if (act.into?.kind === "container") add(context, act.into.label, label(i, inStrip));
      for (const thing of things) {
        const hazard = context.model.things[thing],
          precaution = hazard?.is === "hazard" ? hazard.precautions.find((each) => each.kind === act.verb) : undefined;
        for (const tool of precaution?.tools ?? []) add(context, tool.text, label(i, inStrip));
      }
    });
    for (const { op } of performance.refit)
      for (const tool of op.act?.tools ?? []) add(context, tool.text, label(op.number, inRefit));
    performance.written.forEach(({ act, things }, i) => {
      for (const tool of carries.has(act.verb) ? gearOf(context.model, act, things) : act.tools)
        add(context, tool.text, label(i, inRefit));
    });
    performance.finish.forEach(({ act }, i) => {
      for (const tool of act.tools) add(context, tool.text, label(i, inFinish));
    });
  }
  return [...found.values()].map((row) => ({ ...row, for: row.for.filter(Boolean) }));
}

function wear(all: readonly Done[]): string[] {
  const found = new Set<string>();
  for (const { lines } of all)
    for (const hazard of lines.context.model.hazards)
      for (const name of hazard.wear) found.add(wearName(lines.context, name.text));
  return [...found];
}

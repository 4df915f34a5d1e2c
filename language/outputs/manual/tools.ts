// The tools that the procedures ask: spanners from the fasteners that they turn, torque wrenches whose range covers the torques, and
// what the acts name. What is lifted with them stands in lifts.ts.

import { gearOf } from "../../bench/load.ts";
import { kept } from "../../model/kept.ts";
import type { Performance } from "../../bench/trace.ts";
import type { Tie, Tool } from "../../model/model.ts";
import { si } from "../../quantities/index.ts";
import { toolName, wearName, type LineContext } from "../lines/context.ts";
import { bothSystems, figureText } from "../lines/figures.ts";
import type { Lines } from "../lines/groups.ts";
import type { ActionLine } from "../lines/line.ts";
import { spannerOf, type Spanner } from "../lines/spanner.ts";
import type { OutputOptions } from "../output.ts";
import { wrenchesIn, wrenchFor } from "../torque-sheet/wrench.ts";
import type { ToolRow, ToolTables, WrenchRow } from "./tool-tables.ts";
import { linesByAct } from "./lifts.ts";

interface Done {
  readonly performance: Performance;
  readonly lines: Lines;
}

/** Without the loads: a sheet that lists tools needs none. */
export function toolsOf(all: readonly Done[], options: OutputOptions): Omit<ToolTables, "lifts"> {
  const each = all.map((done) => askedBy(done, options)),
    turned = each.flatMap((asked) => asked.turned);
  return {
    spanners: spanners(turned, options),
    ...wrenches(turned, options),
    others: others(each.flatMap((asked) => asked.others)),
    wear: wear(all),
  };
}

/** What one procedure asks, each time that it does. */
interface Asked {
  readonly turned: readonly Turned[];
  readonly others: readonly Other[];
}

/** A manual asks for the tools of all of its procedures, and for those of each on the sheet of its preparation; lines are made for one set of options. */
const asked = kept<Lines, Asked>();

const askedBy = ({ performance, lines }: Done, options: OutputOptions): Asked =>
  asked(lines, () => ({
    turned: turnedOf(performance, lines.context, options),
    others: othersOf(performance, lines, options),
  }));

interface Turned {
  readonly tie: Tie;
  readonly spanner: Spanner | undefined;
  readonly torques: readonly { readonly says: string; readonly wrench: Tool | undefined }[];
  /** The workshop's list has a torque wrench. */
  readonly hasWrench: boolean;
}

function turnedOf(performance: Performance, context: LineContext, options: OutputOptions): Turned[] {
  const list = wrenchesIn(context.model.library);
  return turnedTies(performance).map((tie) => ({
    tie,
    spanner: spannerOf(tie, context),
    torques: [
      ...tie.torques.flatMap((torque) => (torque.value ? [torque.value] : [])),
      ...tie.stages.filter((stage) => stage.dimension === "torque"),
    ].map((torque) => ({ says: bothSystems(torque, options), wrench: wrenchFor(list, torque) })),
    hasWrench: list.length > 0,
  }));
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
  for (const { tie, spanner } of turned) {
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
  for (const { tie, torques, hasWrench } of turned)
    for (const { says, wrench } of torques) {
      if (!wrench) {
        if (hasWrench) uncovered.push({ torque: says, for: tie.name });
        continue;
      }
      const label = `${tie.name} (${says})`,
        had = used.get(wrench.id);
      if (!had) used.set(wrench.id, { tool: wrench, for: [label] });
      else if (!had.for.includes(label)) had.for.push(label);
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

interface Other {
  readonly name: string;
  readonly note: string;
  /** The line that asks for it; "" where none prints the act. */
  readonly line: string;
}

/** What acts and precautions name, spanners and wrenches apart; consumables stand in the bill. */
function othersOf(performance: Performance, lines: Lines, options: OutputOptions): Other[] {
  const { context } = lines,
    { model } = context,
    { tools, consumables } = model.library,
    found: Other[] = [],
    notes = new Map<string, string>();
  const add = (id: string, line: string): void => {
    if (consumables.has(id)) return;
    const note = notes.get(id) ?? noteOf(tools.get(id), options);
    notes.set(id, note);
    found.push({ name: toolName(context, id), note, line });
  };
  const [inStrip, inRefit, inFinish] = [lines.strip, lines.refit, lines.finish].map(linesByAct) as [
    ReadonlyMap<number, ActionLine>,
    ReadonlyMap<number, ActionLine>,
    ReadonlyMap<number, ActionLine>,
  ];
  const label = (of: number, labels: ReadonlyMap<number, ActionLine>): string => labels.get(of)?.id ?? "";
  performance.strip.forEach(({ act, things }, i) => {
    for (const tool of carries.has(act.verb) ? gearOf(model, act, things) : act.tools)
      add(tool.text, label(i, inStrip));
    if (act.into?.kind === "container") add(act.into.label, label(i, inStrip));
    for (const thing of things) {
      const hazard = model.things[thing],
        precaution = hazard?.is === "hazard" ? hazard.precautions.find((each) => each.kind === act.verb) : undefined;
      for (const tool of precaution?.tools ?? []) add(tool.text, label(i, inStrip));
    }
  });
  for (const { op } of performance.refit)
    for (const tool of op.act?.tools ?? []) add(tool.text, label(op.number, inRefit));
  performance.written.forEach(({ act, things }, i) => {
    for (const tool of carries.has(act.verb) ? gearOf(model, act, things) : act.tools)
      add(tool.text, label(i, inRefit));
  });
  performance.finish.forEach(({ act }, i) => {
    for (const tool of act.tools) add(tool.text, label(i, inFinish));
  });
  return found;
}

const noteOf = (tool: Tool | undefined, options: OutputOptions): string =>
  tool
    ? [
        tool.range && figureText(tool.range, options),
        tool.capacity && figureText(tool.capacity, options, "down"),
        tool.calibration && options.wording.document.titled(options.wording.manual.calibration, tool.calibration),
        tool.about,
      ]
        .filter(Boolean)
        .join(", ")
    : "";

/** By its name, with the lines that ask for it. */
function others(all: readonly Other[]): ToolRow[] {
  const found = new Map<string, { name: string; note: string; for: string[] }>();
  for (const { name, note, line } of all) {
    const had = found.get(name);
    if (!had) found.set(name, { name, note, for: [line] });
    else if (!had.for.includes(line)) had.for.push(line);
  }
  return [...found.values()].map((row) => ({ ...row, for: row.for.filter(Boolean) }));
}

/** Against what the procedures meet. */
function wear(all: readonly Done[]): string[] {
  const found = new Set<string>();
  for (const { lines } of all)
    for (const hazard of lines.context.model.hazards)
      if (lines.met.has(hazard.index)) for (const name of hazard.wear) found.add(wearName(lines.context, name.text));
  return [...found];
}

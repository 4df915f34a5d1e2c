// What must come off before what, as a graph: the events of a strip with the needs between them, those that follow from others left
// out. It reads what the bench performed and decides nothing.

import type { Event, EventKind, Performance } from "../../bench/trace.ts";
import { stepText, type LineContext } from "../lines/context.ts";
import type { Lines } from "../lines/groups.ts";
import type { ActionLine } from "../lines/line.ts";

export type StripBox = "fastener" | "joint" | "part" | "fluid" | "precaution" | "hold" | "aside";

export interface StripNode {
  /** By its place in the strip, from 1. */
  readonly number: number;
  readonly is: StripBox;
  /** Ids of the things; of a precaution the hazard's. */
  readonly things: readonly string[];
  readonly label: string;
  /** The printed line that does it; "" where none prints it. */
  readonly line: string;
  readonly step: string;
  /** Numbers of those that must come before, without what follows from the rest. */
  readonly after: readonly number[];
  /** The bench refused it, and it is taken as done. */
  readonly assumed: boolean;
}

/** Events that put something on the bench or make it ready; the others only pass their needs on. */
const boxes: Readonly<Partial<Record<EventKind, StripBox>>> = {
  out: "fastener",
  slack: "fastener",
  off: "part",
  aside: "aside",
  drained: "fluid",
  stands: "precaution",
  held: "hold",
};

export function stripNodes(performance: Performance, { context, strip }: Lines): readonly StripNode[] {
  const { events } = performance,
    stripped = performance.strip.reduce((to, each) => Math.max(to, each.to), 0);
  const linesOf = new Map<number, ActionLine[]>(),
    actOf = new Map<number, number>(),
    numberOf = new Map<number, number>();
  for (const line of strip.flatMap((group) => group.lines))
    if (line.is === "action")
      for (const act of line.of)
        if (linesOf.has(act)) linesOf.get(act)!.push(line);
        else linesOf.set(act, [line]);
  performance.strip.forEach(({ from, to }, act) => {
    for (let event = from; event < to; event++) actOf.set(event, act);
  });
  const mine = events.filter(
    (event) => event.index < stripped && boxes[event.kind] !== undefined && !isSilent(event, context),
  );
  for (const event of mine) numberOf.set(event.index, numberOf.size + 1);

  /** Kept events that an event rests on, by their numbers, also by way of those that are not kept. */
  const near: ReadonlySet<number>[] = [],
    far: Set<number>[] = [new Set()];
  events.forEach((event, i) => {
    const found = new Set<number>();
    for (const need of event.needs) {
      const number = numberOf.get(need);
      if (number !== undefined) found.add(number);
      else for (const each of near[need] ?? []) found.add(each);
    }
    near[i] = found;
  });
  return mine.map((event): StripNode => {
    const number = numberOf.get(event.index)!,
      needs = near[event.index]!,
      all = new Set<number>();
    for (const need of needs) {
      all.add(need);
      for (const each of far[need]!) all.add(each);
    }
    far[number] = all;
    const after = [...needs]
      .filter((need) => ![...needs].some((other) => other !== need && far[other]!.has(need)))
      .sort((a, b) => a - b);
    const { step } = event.around,
      { thing } = labelled(event, context),
      act = actOf.get(event.index);
    return {
      number,
      is: thing?.is === "tie" && !thing.fastener ? "joint" : boxes[event.kind]!,
      things: idsOf(event, context),
      label: labelled(event, context).says,
      line: act === undefined ? "" : lineFor(event, linesOf.get(act) ?? [], context),
      step: step ? stepText(context, step, "") : "",
      after,
      assumed: event.assumed || (act !== undefined && performance.strip[act]!.refused),
    };
  });
}

/** An act may print several lines: the one that names the thing is its own. */
function lineFor(event: Event, lines: readonly ActionLine[], { model }: LineContext): string {
  const ids = new Set(event.things.map((thing) => model.things[thing]?.id));
  return (lines.find(({ items }) => items.some((item) => ids.has(item.id))) ?? lines[0])?.id ?? "";
}

/** What stood before the strip began, or was undone in passing with a part, is no work of its own. */
const isSilent = (event: Event, { model }: LineContext): boolean => {
  const thing = model.things[event.thing];
  return event.kind === "out" && thing?.is === "tie" && thing.passing && event.act.verb !== "undo";
};

function idsOf(event: Event, { model }: LineContext): string[] {
  const things =
    event.kind === "stands" ? event.precautions.map((number) => model.precautions[number]!.hazard) : event.things;
  return [...new Set(things)].map((thing) => model.things[thing]?.id ?? "").filter(Boolean);
}

function labelled(
  event: Event,
  context: LineContext,
): { readonly says: string; readonly thing: LineContext["model"]["things"][number] | undefined } {
  const { draw, kinds } = context.wording,
    { model } = context,
    thing = model.things[event.thing],
    name = thing?.name ?? "";
  const all = [...new Set(event.things)].map((each) => model.things[each]?.name ?? "").join(", ");
  switch (event.kind) {
    case "stands": {
      const precaution = model.precautions[event.precautions[0] ?? -1];
      return {
        says: precaution
          ? draw.precaution(kinds.precautionShort(precaution.kind), model.things[precaution.hazard]!.name)
          : name,
        thing: undefined,
      };
    }
    case "out":
    case "slack": {
      const count = thing?.is === "tie" && !thing.countUnknown ? draw.pieces(name, event.count, thing.count) : name;
      return { says: event.kind === "slack" ? draw.loosen(count) : count, thing };
    }
    case "drained":
      return { says: draw.drain(all), thing };
    case "held":
      return { says: draw.support(all), thing: undefined };
    case "aside":
      return { says: draw.aside(all), thing: undefined };
    default: {
      const count =
        thing?.is === "part" && event.things.length === 1 && !thing.countUnknown
          ? draw.pieces(all, thing.count, thing.count)
          : all;
      return { says: count, thing: undefined };
    }
  }
}

/** No sheet of paper holds more. */
export const mostOnASheet = 60;

export interface Sheet<Laid> {
  readonly nodes: readonly StripNode[];
  readonly laid: Laid;
}

/** Nodes that are tried on one sheet. */
export interface Trial<Laid> {
  /** By what is known before all is laid out, which costs most of the time. */
  readonly mayFit: boolean;
  /** @param must whatever its size; else undefined where a sheet does not hold it. */
  readonly laid: (must: boolean) => Laid | undefined;
}

/** Numbers of the nodes that lie on sheets already, and the number of the sheet, from 1. */
export type SheetOf = ReadonlyMap<number, number>;

/** Runs of nodes for one sheet each, as many as fit: steps stay together, and only one that fits no sheet is broken. */
export function sheetsOf<Laid>(
  nodes: readonly StripNode[],
  trial: (nodes: readonly StripNode[], sheetOf: SheetOf) => Trial<Laid>,
): readonly Sheet<Laid>[] {
  const sheets: Sheet<Laid>[] = [],
    sheetOf = new Map<number, number>();
  /** Upwards as far as it may fit, then downwards to what does. */
  const put = (from: number, ends: readonly number[]): number | undefined => {
    const tried: (Trial<Laid> & { readonly end: number })[] = [];
    for (const end of ends) {
      const next = trial(nodes.slice(from, end), sheetOf);
      if (!next.mayFit && end > from + 1) break;
      tried.push({ ...next, end });
    }
    for (const { laid, end } of tried.reverse()) {
      const fits = laid(end === from + 1);
      if (fits === undefined) continue;
      sheets.push({ nodes: nodes.slice(from, end), laid: fits });
      for (let i = from; i < end; i++) sheetOf.set(nodes[i]!.number, sheets.length);
      return end;
    }
    return undefined;
  };
  for (let from = 0; from < nodes.length;) {
    const ends = Array.from({ length: Math.min(mostOnASheet, nodes.length - from) }, (_, i) => from + 1 + i);
    const isWhole = (end: number): boolean => nodes[end]?.step !== nodes[end - 1]!.step,
      first = ends.find(isWhole) ?? Infinity;
    from =
      put(from, ends.filter(isWhole)) ??
      put(
        from,
        ends.filter((end) => end < first),
      )!;
  }
  return sheets;
}

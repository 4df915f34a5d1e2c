// The needs of the strip read backwards, and what the rules of meeting add to them. `after` in the strip is `before` in the refit.

import type { Fluid, ThingIndex, Tie } from "../../model/model.ts";
import { partsOf } from "../access.ts";
import { holdersOf } from "../filler.ts";
import { cannotReachPast, handledBy, openedBy } from "../handling.ts";
import { actsUnderPower, isPart, isTie, machineOf, partOf, tieOf, type Machine } from "../machine.ts";
import { BACKED_OUT } from "../state.ts";
import type { Event, RefitOp } from "../trace.ts";
import { at } from "../vector.ts";
import { ask, edge, type Graph } from "./graph.ts";
import { undoes } from "./inverse.ts";
import type { Stripped } from "./stripped.ts";
import { subAssemblies, type SubAssemblies } from "./sub-assemblies.ts";

export function addRules(strip: Stripped, graph: Graph, opOf: readonly (RefitOp | undefined)[]): void {
  const { model, events } = strip,
    machine = machineOf(model),
    assemblies = subAssemblies(model, events, strip.stripEnd);
  const needs = needsPastGaps(events, opOf),
    last = new Map<ThingIndex, number>(),
    undone = new Map<ThingIndex, number[]>();
  /** What the strip did later the refit does earlier. */
  const mirrored = (later: number, earlier: number, why: string): void => {
    if (later > earlier) edge(graph, opOf[later], opOf[earlier], why);
  };
  for (const event of events)
    if (event.kind === "out" || event.kind === "slack") {
      const list = undone.get(event.thing);
      if (list) list.push(event.index);
      else undone.set(event.thing, [event.index]);
    }

  /** Thing -> events that asked for it as it has been since its last change. */
  const asked = new Map<ThingIndex, number[]>();
  const asks = (event: Event, thing: ThingIndex): void => {
    const list = asked.get(thing);
    if (list) list.push(event.index);
    else asked.set(thing, [event.index]);
  };

  for (const event of events) {
    if (event.kind === "gripped") {
      gripBefore(strip, graph, opOf, event);
      for (const need of event.needs) mirrored(event.index, need, "it is handled while the precaution stands");
      continue;
    }
    for (const need of needs[event.index]!) {
      // What was opened to let a fluid out is closed before it is filled again, not after.
      if (event.kind === "drained" && (events[need]!.kind === "out" || events[need]!.kind === "off")) continue;
      mirrored(event.index, need, "the strip needed it the other way round");
    }
    // All acts that change one thing keep their order; the nearest with a line of its own is enough, of its caps and of itself. The cap
    // that closed a joint as it was opened is off before it is made.
    for (const thing of event.things) {
      for (let i = last.get(thing) ?? -1; i >= 0; i = previous(events, i, thing)) {
        const before = events[i]!;
        if (before.kind === "capped" && event.kind === "out")
          edge(graph, opOf[i], opOf[event.index], "its cap is off before it is made");
        else mirrored(event.index, i, "it is the same thing");
        if (opOf[i] && isCapping(before) === isCapping(event)) break;
      }
      last.set(thing, event.index);
    }
    // What asked for a thing as it was stays between the same two changes of it. A change without a line of its own parts nothing.
    if (opOf[event.index])
      for (const thing of event.things) {
        const others = asked.get(thing);
        if (!others) continue;
        // Backed out it was as good as out: what was done then is done again before it is in, since it goes in finger-tight at once.
        const still =
          event.kind === "out" || event.kind === "slack"
            ? others.filter((other) => wasBackedOut(events[other]!, thing))
            : [];
        for (const other of others)
          if (still.includes(other)) edge(graph, opOf[other], opOf[event.index], "it is in its place before this is");
          else mirrored(event.index, other, "it was done before this changed");
        if (still.length > 0) asked.set(thing, still);
        else asked.delete(thing);
      }
    for (const need of event.needs)
      for (const thing of events[need]!.things) if (!event.things.includes(thing)) asks(event, thing);
    for (const hazard of event.hazards) if (!event.things.includes(hazard)) asks(event, hazard);
    if (event.kind === "out" || event.kind === "slack")
      afterMeetings(graph, opOf, assemblies, event, tieOf(model, event.thing));
    if (event.kind === "off")
      for (const thing of event.things) {
        const part = partOf(model, thing);
        if (part.between)
          betweenBefore(
            graph,
            opOf,
            assemblies,
            event,
            part.between,
            machine.clamps[thing]!.flatMap((tie) => undone.get(tie.index) ?? []),
          );
        for (const tie of machine.tiesOf[thing]!)
          if (tie.passing && tie.behind.length > 0 && tie.lowers.includes(thing))
            inPlaceBefore(graph, opOf, assemblies, events, event, thing, tie.behind);
      }
    if (event.kind === "off")
      for (const thing of event.moved) {
        const { behind } = partOf(model, thing);
        if (behind.length > 0) inPlaceBefore(graph, opOf, assemblies, events, event, thing, behind);
      }
    if (event.kind === "drained") {
      const fluid = model.things[event.thing] as Fluid;
      fillAfter(strip, graph, opOf, event, fluid);
      fillWhileOpen(strip, graph, opOf, assemblies, opOf[event.index], fluid);
    }
    if (event.kind === "met")
      for (const other of events) {
        if (other.index >= event.index) break;
        const thing = model.things[other.thing]!;
        if ((thing.is === "part" || thing.is === "tie") && thing.behind.some((hider) => event.moved.includes(hider)))
          mirrored(event.index, other.index, "it is in place before what hides it");
      }
  }

  if (machine.guards.length > 0) guardsBeforePower(strip, graph, opOf, machine);
  for (const op of graph.ops) {
    touchedBefore(strip, graph, opOf, op);
    workWhileOpen(strip, graph, opOf, op);
    if (op.event || op.act?.verb !== "fill") continue;
    for (const thing of op.things) {
      const fluid = model.things[thing];
      if (fluid?.is === "fluid") fillWhileOpen(strip, graph, opOf, assemblies, op, fluid);
    }
  }

  function previous(list: readonly Event[], index: number, thing: ThingIndex): number {
    for (let i = index - 1; i >= 0; i--) if (list[i]!.kind !== "gripped" && list[i]!.things.includes(thing)) return i;
    return -1;
  }
}

const isCapping = ({ kind }: Event): boolean => kind === "capped" || kind === "uncapped";
const wasBackedOut = ({ before }: Event, tie: ThingIndex): boolean => at(before.slack, tie) === BACKED_OUT;

/** Guards that came off under a precaution are on again, and held, before it is taken away: under power every guard is on. */
function guardsBeforePower(
  { model, events }: Stripped,
  graph: Graph,
  opOf: readonly (RefitOp | undefined)[],
  { guards, tiesOf }: Machine,
): void {
  const guarding = new Set(
    guards.flatMap(({ index }) => [
      index,
      ...tiesOf[index]!.filter(({ lowers }) => lowers.includes(index)).map((tie) => tie.index),
    ]),
  );
  const powers: number[] = [];
  for (const { kind, thing, things, index } of events) {
    const of = model.things[thing];
    if (kind === "stands" && of?.is === "hazard" && actsUnderPower(of)) powers.push(index);
    else if (things.some((one) => guarding.has(one)))
      for (const power of powers) edge(graph, opOf[index], opOf[power], "a guard is on before there is power");
  }
}

/**
 * What the author has handled on the way back, and what a fluid is filled at, is handled while the precautions stand: before each is taken
 * away, and after those that lapsed since are taken again.
 */
function touchedBefore(strip: Stripped, graph: Graph, opOf: readonly (RefitOp | undefined)[], op: RefitOp): void {
  const { hazardsOn } = machineOf(strip.model),
    verb = op.event || !op.act ? op.verb : op.act.verb;
  const opened = openedBy(strip.model, verb, op.things);
  if (opened.length === 0 && (op.event || !op.act)) return;
  const handled = op.event || !op.act ? [] : handledBy(op.act, op.things, (names) => strip.resolve(names, op.around));
  for (const thing of [...opened, ...handled]) {
    // What it is filled at may have been opened by an act of its own, before the drain.
    const own = strip.events.find(({ kind, things }) => (kind === "out" || kind === "off") && things.includes(thing)),
      when = Math.min(op.event?.index ?? op.rank, own?.index ?? Infinity);
    for (const hazard of hazardsOn[thing] ?? []) {
      const [from, to] = whileItStood(strip.events, hazard.index, when),
        why = "it is handled while the precaution stands";
      for (const event of strip.events)
        if (event.kind === "stands" && event.thing === hazard.index && event.index > from && event.index < to)
          ask(graph, op, opOf[event.index], why, op.at, false);
      ask(graph, opOf[to], op, why, op.at, false);
    }
  }
}

/**
 * From which lapse of the precautions to which they stood, next to this moment: around it, else before it, else after it. A range of events
 * without ends of its own where they never lapsed.
 */
function whileItStood(events: readonly Event[], hazard: ThingIndex, when: number): readonly [number, number] {
  const ofIt = (kind: Event["kind"]): number[] =>
      events.filter((event) => event.kind === kind && event.thing === hazard).map(({ index }) => index),
    lapses = [-1, ...ofIt("lapses"), events.length],
    stood = ofIt("stands"),
    ranges = lapses
      .slice(1)
      .map((to, i) => [lapses[i]!, to] as const)
      .filter(([from, to]) => stood.some((index) => index > from && index < to));
  return (
    ranges.find(([from, to]) => when > from && when < to) ??
    ranges.findLast(([, to]) => to < when) ??
    ranges[0] ?? [-1, events.length]
  );
}

/**
 * The needs of each event, past those that have no line of their own. What only undid a trial again stands for what had undone the same
 * thing before it.
 */
function needsPastGaps(events: readonly Event[], opOf: readonly (RefitOp | undefined)[]): (readonly number[])[] {
  const past: (readonly number[])[] = [],
    atOrPast = (event: number): readonly number[] => (opOf[event] ? [event] : past[event]!);
  for (const event of events) {
    if (opOf[event.index] && event.needs.every((need) => opOf[need])) {
      past.push(event.needs);
      continue;
    }
    const before = opOf[event.index] ? [] : undoneBefore(events, event);
    past.push([...new Set([...event.needs, ...before].flatMap(atOrPast))]);
  }
  return past;
}

/** The last events of that kind before this one, of each of its things. */
const undoneBefore = (events: readonly Event[], { kind, index, things }: Event): number[] =>
  undoes.has(kind)
    ? things
        .map((thing) => events.findLastIndex((e) => e.index < index && e.kind === kind && e.things.includes(thing)))
        .filter((earlier) => earlier >= 0)
    : [];

/** A tie after every meeting on the way between its sides, whenever they parted. */
function afterMeetings(
  graph: Graph,
  opOf: readonly (RefitOp | undefined)[],
  assemblies: SubAssemblies,
  event: Event,
  tie: Tie,
): void {
  const first = tie.lowers[0] ?? tie.uppers[0];
  if (first === undefined) return;
  for (const sides of [tie.lowers, tie.uppers])
    for (const side of sides) {
      for (const meeting of assemblies.between(first, side))
        if (meeting !== event.index) edge(graph, opOf[meeting], opOf[event.index], "its two sides meet first");
    }
}

/** What lies in a joint is in before the first tie between its sides; where they are held in passing only, before they meet. */
function betweenBefore(
  graph: Graph,
  opOf: readonly (RefitOp | undefined)[],
  assemblies: SubAssemblies,
  event: Event,
  [a, b]: readonly [readonly ThingIndex[], readonly ThingIndex[]],
  closing: readonly number[],
): void {
  for (const out of closing) ask(graph, opOf[event.index], opOf[out], "it lies in this joint", event.act.at, false);
  if (closing.length > 0) return;
  for (const x of a)
    for (const y of b)
      for (const meeting of assemblies.between(x, y))
        if (event.index > meeting) edge(graph, opOf[event.index], opOf[meeting], "it lies between them");
}

/** In its place, by all meetings on its way, before what hides it. */
function inPlaceBefore(
  graph: Graph,
  opOf: readonly (RefitOp | undefined)[],
  assemblies: SubAssemblies,
  events: readonly Event[],
  event: Event,
  thing: ThingIndex,
  behind: readonly ThingIndex[],
): void {
  const { model } = graph;
  for (const need of event.needs) {
    const cleared = events[need]!;
    for (const hider of behind) {
      // It left by this, is aside or undone by it: what the thing has to be beside before that is so again.
      const parts = isPart(model, hider) ? [hider] : isTie(model, hider) ? partsOf(tieOf(model, hider)) : [],
        beside =
          cleared.kind === "off"
            ? parts.filter((part) => assemblies.moved(cleared, part) !== assemblies.moved(cleared, thing))
            : cleared.things.includes(hider)
              ? parts
              : [];
      for (const part of beside)
        for (const meeting of assemblies.between(thing, part))
          for (const again of madeAgainBy(events, cleared))
            if (meeting !== again && meeting !== event.index)
              ask(graph, opOf[meeting], opOf[again], "it is in its place before what hides it", event.act.at, false);
    }
  }
}

/** What was only backed out there and taken out after that goes in finger-tight first. */
const madeAgainBy = (events: readonly Event[], { index, kind, thing }: Event): number[] =>
  kind === "slack"
    ? [index, ...events.filter((e) => e.kind === "out" && e.thing === thing && e.index > index).map((e) => e.index)]
    : [index];

/** What is marked, worked on or set in a refit block is in reach: before what covers it goes on, unless the author puts it behind that. */
function workWhileOpen(
  { model, events }: Stripped,
  graph: Graph,
  opOf: readonly (RefitOp | undefined)[],
  op: RefitOp,
): void {
  if (op.event || !op.act || !cannotReachPast(op.act)) return;
  for (const thing of op.things) {
    const item = model.things[thing];
    if (item?.is !== "part" && item?.is !== "tie") continue;
    for (const event of events)
      if (item.behind.some((hider) => event.things.includes(hider)))
        ask(graph, op, opOf[event.index], "it is worked on before what covers it goes on", op.at, false);
  }
}

/** A fill after all joints of its fluid, those undone before the drain too. */
function fillAfter(
  strip: Stripped,
  graph: Graph,
  opOf: readonly (RefitOp | undefined)[],
  event: Event,
  fluid: Fluid,
): void {
  const { model, events } = strip,
    written = (verb: string): RefitOp[] =>
      graph.ops.filter((op) => !op.event && op.act?.verb === verb && op.things.includes(fluid.index));
  for (const other of events) {
    if (!opOf[other.index] || other === event) continue;
    const tie = isTie(model, other.thing) ? tieOf(model, other.thing) : undefined;
    const concerns = tie
      ? tie.opens.includes(fluid.index) ||
        fluid.drainsAt.includes(tie.index) ||
        tie.lowers.some((part) => fluid.path.includes(part))
      : other.things.some((thing) => fluid.path.includes(thing));
    if (!concerns || other.kind === "aside" || fluid.fillsAt.includes(other.thing)) continue;
    ask(graph, opOf[other.index], opOf[event.index], "it is filled when all is closed", event.act.at, false);
    for (const op of written("evacuate"))
      ask(graph, opOf[other.index], op, "it is pumped out when all is closed", op.at, false);
  }
  for (const op of written("evacuate"))
    ask(graph, op, opOf[event.index], "it is pumped out before it is filled", op.at, false);
  for (const op of written("bleed"))
    ask(graph, opOf[event.index], op, "air is let out of what is filled", op.at, false);
}

/** It is filled while what it is filled at is on, in reach, and, where an act of its own opened that, open. */
function fillWhileOpen(
  strip: Stripped,
  graph: Graph,
  opOf: readonly (RefitOp | undefined)[],
  assemblies: SubAssemblies,
  fill: RefitOp | undefined,
  fluid: Fluid,
): void {
  if (!fill) return;
  const { model, events } = strip,
    holders = holdersOf(model, fluid);
  const before = (event: number | undefined, why: string): void => {
    if (event !== undefined) ask(graph, fill, opOf[event], why, fill.at, false);
  };
  for (const filler of fluid.fillsAt) {
    const item = model.things[filler];
    if (item?.is !== "part" && item?.is !== "tie") continue;
    const seat = item.is === "part" ? filler : (item.seat ?? model.base[0]);
    if (seat === undefined) continue;
    for (const holder of item.is === "part" ? [] : holders)
      for (const meeting of assemblies.between(seat, holder))
        ask(graph, opOf[meeting], fill, "what it is filled at is on", fill.at, false);
    for (const event of events) {
      if ((event.kind === "out" || event.kind === "off") && event.things.includes(filler))
        before(event.index, "what it is filled at is still open");
      if ((event.kind === "out" || event.kind === "aside") && item.behind.includes(event.thing))
        before(event.index, "what it is filled at is still in reach");
    }
    for (const hider of item.behind)
      if (isPart(model, hider))
        before(assemblies.between(seat, hider).toSorted((a, b) => a - b)[0], "what it is filled at is still in reach");
  }
}

/** What was kept from turning while it was undone is kept from turning while it is made. */
function gripBefore(strip: Stripped, graph: Graph, opOf: readonly (RefitOp | undefined)[], event: Event): void {
  for (const other of strip.events) {
    if (
      other.index <= event.index ||
      other.around.step !== event.around.step ||
      (other.kind !== "out" && other.kind !== "slack" && other.kind !== "off")
    )
      continue;
    const concerned =
      other.things.includes(event.thing) ||
      (isTie(strip.model, other.thing) &&
        [...tieOf(strip.model, other.thing).lowers, ...tieOf(strip.model, other.thing).uppers].includes(event.thing));
    // Only its ties: the part itself has to be on before it can be held.
    if (!concerned) continue;
    if (other.kind === "off") edge(graph, opOf[other.index], opOf[event.index], "it is on before it is held");
    else edge(graph, opOf[event.index], opOf[other.index], "it is kept from turning for this");
  }
}

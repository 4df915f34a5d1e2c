// Which lines may be blamed for a mutant: its own, those that asked for what the changed line did, those that speak of the same things,
// and, for what is missing at the end, the first act of the step that took it off. Read from the text as it was, not from what was found.

import { handledBy } from "../../language/bench/handling.ts";
import { isPart, isTie, machineOf, partOf, tieOf } from "../../language/bench/machine.ts";
import type { Event, Performance, Performed } from "../../language/bench/trace.ts";
import type { Name } from "../../language/model/act.ts";
import type { Span } from "../../language/findings/finding.ts";
import type { Model, ThingIndex } from "../../language/model/model.ts";
import { lineAt, type Mutant } from "./mutant.ts";

export interface Concerned {
  /** `file:line`. */
  readonly lines: ReadonlySet<string>;
  /** Some other line asked for what the changed one does: a need, the aim, the end, a later position, a mark lined up. */
  readonly isAskedFor: boolean;
}

/** What is gathered on the way. */
interface Gathered {
  readonly mutant: Mutant;
  readonly texts: ReadonlyMap<string, string>;
  readonly lines: Set<string>;
  /** Ids of things, with their unit, and labels of marks: the same in every performance. */
  readonly ids: Set<string>;
  readonly labels: Set<string>;
  isAskedFor: boolean;
}

/** The changed line in one performance. */
interface Changed {
  readonly performance: Performance;
  readonly acts: readonly Performed[];
  /** Numbers of its events, those of a called procedure too. */
  readonly events: ReadonlySet<number>;
  readonly things: ReadonlySet<ThingIndex>;
}

export function concernedBy(
  mutant: Mutant,
  performances: readonly Performance[],
  texts: ReadonlyMap<string, string>,
): Concerned {
  const all: Gathered = {
    mutant,
    texts,
    lines: new Set([`${mutant.file}:${mutant.line}`]),
    ids: new Set(),
    labels: new Set(),
    isAskedFor: false,
  };
  for (const start of mutant.starts) all.lines.add(`${mutant.file}:${lineAt(texts.get(mutant.file)!, start)}`);
  for (const performance of performances) {
    const changed = changedIn(performance, all);
    if (!changed) continue;
    needsAndThings(changed, all);
    handled(changed, all);
    marks(changed, all);
    positions(changed, all);
    if (mutant.class === "swap two neighbours") betweenTheTwo(changed, all);
    else aims(changed, all);
    readings(changed, all);
    for (const aim of performance.procedure.aims) add(all, aim.at);
    add(all, performance.procedure.at);
  }
  for (const performance of performances) besideIt(performance, all);
  notOfTheUnit(all);
  return { lines: all.lines, isAskedFor: all.isAskedFor };
}

function add({ texts, lines }: Gathered, at: Span): void {
  const text = texts.get(at.file);
  if (text !== undefined) lines.add(`${at.file}:${lineAt(text, at.start)}`);
}
const idOf = (model: Model, thing: ThingIndex): string => `${model.unit} ${model.things[thing]!.id}`;
const thingsNamed = (model: Model, name: string, prefix = ""): readonly ThingIndex[] =>
  model.scopes.get(prefix)?.get(name) ?? [];

function changedIn(performance: Performance, all: Gathered): Changed | undefined {
  const { model, events, strip, written, finish, refit } = performance,
    { mutant } = all;
  const isIt = (at: Span): boolean => at.file === mutant.file && mutant.starts.includes(at.start);
  const acts = [...strip, ...written, ...finish].filter(({ act }) => isIt(act.at)),
    ops = refit.filter(({ op }) => op.act && isIt(op.act.at));
  // Of a renamed one the other name too: the line that it stands in already contradicts it.
  for (const thing of mutant.other === undefined ? [] : thingsNamed(model, mutant.other))
    all.ids.add(idOf(model, thing));
  const declared = mutant.declared ? thingsDeclaredAround(model, mutant) : [];
  if (acts.length + ops.length + declared.length === 0) return undefined;
  for (const thing of declared) add(all, model.things[thing]!.at);
  const own = new Set(
    acts.flatMap((one) => events.slice(one.from, endOfCall(performance, one)).map((event) => event.index)),
  );
  const named = [...declared, ...acts.flatMap((one) => one.things), ...ops.flatMap(({ op }) => op.things)];
  const things = new Set([...named, ...[...own].flatMap((event) => events[event]!.things)]);
  for (const thing of things) all.ids.add(idOf(model, thing));
  for (const { act } of acts) for (const label of act.labels) all.labels.add(label);
  return { performance, acts, events: own, things };
}

/** Lines that needed what it did, that do something to the same things, or that stand right beside these. */
function needsAndThings({ performance, acts, events: own, things }: Changed, all: Gathered): void {
  const { model, events, strip, written } = performance;
  for (const event of events) {
    if (own.has(event.index)) {
      add(all, firstOfStep(events, event).act.at);
      continue;
    }
    const needs = event.needs.filter((need) => own.has(need));
    if (needs.length > 0) add(all, event.act.at);
    // Who lifts with a holder of its own does not ask for the support before it.
    const asks = needs.some((need) => !(event.kind === "off" && events[need]!.kind === "held"));
    if (asks && all.mutant.class !== "swap two neighbours") all.isAskedFor = true;
    if (![...event.things, ...event.hazards].some((thing) => things.has(thing))) continue;
    add(all, event.act.at);
    add(all, firstOfStep(events, event).act.at);
  }
  for (const one of [...strip, ...written]) {
    if (!acts.includes(one) && one.things.some((thing) => things.has(thing) || isBeside(model, thing, things)))
      add(all, one.act.at);
    // A procedure that is done on a part speaks of it.
    if (one.act.on.some((name) => thingsNamed(model, name.text, one.around.prefix).some((thing) => things.has(thing))))
      add(all, one.act.at);
  }
}

/** A precaution is asked for by every line that handles what its hazard is on. */
function handled({ performance, acts }: Changed, all: Gathered): void {
  const named = new Set(acts.flatMap((one) => one.things)),
    { model, strip, written, finish, refit } = performance,
    { hazardsOn } = machineOf(model);
  const performed = [
    ...strip,
    ...written,
    ...finish,
    ...refit.flatMap(({ op }) => (op.act ? [{ act: op.act, around: op.around, things: op.things }] : [])),
  ];
  for (const one of performed) {
    if (acts.some((own) => own.act === one.act)) continue;
    const resolve = (names: readonly Name[]): ThingIndex[] =>
      names.flatMap((name) => [...thingsNamed(model, name.text, one.around.prefix)]);
    if (
      !handledBy(one.act, one.things, resolve).some((thing) =>
        hazardsOn[thing]?.some((hazard) => named.has(hazard.index)),
      )
    )
      continue;
    add(all, one.act.at);
    if (all.mutant.class !== "swap two neighbours") all.isAskedFor = true;
  }
}

/** Marks are due at the first tie that is made after, and asked for where they are lined up. */
function marks({ performance, acts }: Changed, all: Gathered): void {
  const { model, strip, written, refit } = performance,
    aligning = [
      ...strip.map(({ act }) => act),
      ...written.map(({ act }) => act),
      ...refit.flatMap(({ op }) => op.act ?? []),
    ];
  for (const one of acts) {
    if (one.act.verb === "align") {
      const next = written
        .slice(written.indexOf(one) + 1)
        .find((later) => later.things.some((thing) => isTie(model, thing)));
      if (next) add(all, next.act.at);
    }
    for (const label of one.act.labels)
      for (const act of aligning) {
        if (act.verb !== "align" || !act.names.some((name) => name.text === label)) continue;
        add(all, act.at);
        all.isAskedFor = true;
      }
  }
}

/** A turn is asked for by what stands up to the next one; and a turn asks that nothing lies loose. */
function positions({ performance, acts, events: own, things }: Changed, all: Gathered): void {
  const { model, strip, events } = performance;
  for (const one of acts) {
    if (one.act.verb !== "turn") continue;
    for (const later of upToNextTurn(strip, one))
      if (needsPosition(model, later)) {
        add(all, later.act.at);
        all.isAskedFor = true;
      }
  }
  const last = strip.findLastIndex((one) => acts.includes(one)),
    turn = last < 0 ? undefined : strip.slice(last + 1).find((one) => one.act.verb === "turn");
  const rests = [...things].some((thing) => isPart(model, thing) && partOf(model, thing).rests.length > 0);
  if (turn && rests && [...own].some((event) => events[event]!.kind === "off")) {
    add(all, turn.act.at);
    all.isAskedFor = true;
  }
}

/** Of two neighbours: does the second need the first? */
function betweenTheTwo({ performance, acts }: Changed, all: Gathered): void {
  const eventsOf = (start: number | undefined): Event[] =>
    acts.filter(({ act }) => act.at.start === start).flatMap((one) => performance.events.slice(one.from, one.to));
  const first = eventsOf(all.mutant.starts[0]);
  if (
    eventsOf(all.mutant.starts[1]).some((event) => event.needs.some((need) => first.some((one) => one.index === need)))
  )
    all.isAskedFor = true;
}

/** Acts whose result the end of a refit asks for. */
const puts: ReadonlySet<string> = new Set(["fit", "tighten", "press", "fill", "slide", "swing", "open", "uncap"]);

function aims({ performance, acts, events: own, things }: Changed, all: Gathered): void {
  const { model, events, procedure } = performance,
    takesApart = [...own].some((event) => events[event]!.kind === "off" || events[event]!.kind === "out");
  for (const aim of procedure.aims) {
    if (aim.is === "all-apart" && takesApart) all.isAskedFor = true;
    if (aim.is === "all-in" && acts.some((one) => puts.has(one.act.verb) && one.before !== one.after))
      all.isAskedFor = true;
    if (own.size > 0 && aim.names.some((name) => thingsNamed(model, name.text).some((thing) => things.has(thing))))
      all.isAskedFor = true;
  }
}

/** A reading is spoken of where something depends on it. */
function readings({ acts }: Changed, all: Gathered): void {
  for (const { act } of acts)
    if (act.id)
      for (const [file, text] of all.texts) {
        for (const { index } of text.matchAll(new RegExp(`^ *(?:if|unless)\\b.*\\b${act.id.text}\\b`, "gm")))
          all.lines.add(`${file}:${lineAt(text, index + 1)}`);
      }
}

/** The same things in the procedures beside it: what one takes off the other puts on. */
function besideIt({ model, strip, written, finish, events, refit }: Performance, all: Gathered): void {
  const isSame = (things: readonly ThingIndex[]): boolean => things.some((thing) => all.ids.has(idOf(model, thing)));
  for (const { op } of refit) if (op.act && isSame(op.things)) add(all, op.act.at);
  for (const { act, things } of [...strip, ...written, ...finish]) if (isSame(things)) add(all, act.at);
  for (const { act } of written)
    if (act.verb === "align" && act.names.some((name) => all.labels.has(name.text))) add(all, act.at);
  for (const event of events) if (isSame(event.things)) add(all, firstOfStep(events, event).act.at);
}

/** Tools, consumables and temporary things that the line named are no things of the model: where they are declared, put on and taken off. */
function notOfTheUnit({ mutant, texts, lines }: Gathered): void {
  const line = texts
      .get(mutant.file)!
      .split("\n")
      [mutant.line - 1]!.replaceAll(/"[^"]*"/g, ""),
    named = new Set(line.match(/[\p{L}\d-]+/gu));
  for (const [file, text] of texts)
    for (const { index, groups } of text.matchAll(/^ *(?:tool|consumable|temporary|put|take) +(?<id>[\p{L}\d-]+)/gmu))
      if (named.has(groups!.id!)) lines.add(`${file}:${lineAt(text, index + 1)}`);
}

/** The acts of a called procedure are its call's. */
function endOfCall({ strip, events }: Performance, call: Performed): number {
  if (call.act.verb !== "do") return call.to;
  return (
    strip.slice(strip.indexOf(call) + 1).find((one) => one.around.procedure === call.around.procedure)?.from ??
    events.length
  );
}

const firstOfStep = (events: readonly Event[], event: Event): Event =>
  (event.around.step && events.find((one) => one.around.step === event.around.step)) ?? event;

function upToNextTurn(strip: readonly Performed[], turn: Performed): readonly Performed[] {
  const rest = strip.slice(strip.indexOf(turn) + 1),
    next = rest.findIndex((one) => one.act.verb === "turn");
  return next < 0 ? rest : rest.slice(0, next + 1);
}

function needsPosition(model: Model, one: Performed): boolean {
  return (
    one.act.verb === "turn" ||
    one.things.some((thing) => {
      const of = model.things[thing]!;
      return (of.is === "part" || of.is === "tie") && of.positions.length > 0;
    })
  );
}

/** Tied to it, in front of it, holding it, or a side of the joint that it lies in: what is refused when the other is not as it should be. */
function isBeside(model: Model, thing: ThingIndex, things: ReadonlySet<ThingIndex>): boolean {
  const isOne = (one: ThingIndex): boolean => things.has(one);
  if (isTie(model, thing)) {
    const { lowers, uppers, behind } = tieOf(model, thing);
    return [...lowers, ...uppers, ...behind].some(isOne);
  }
  if (!isPart(model, thing)) return false;
  if ([...things].some((one) => isPart(model, one) && partOf(model, one).between?.flat().includes(thing))) return true;
  const machine = machineOf(model);
  return (
    partOf(model, thing).behind.some(isOne) ||
    machine.tiesOf[thing]!.some((tie) => isOne(tie.index)) ||
    machine.hosts[thing]!.some(isOne)
  );
}

/** The things whose declaration the edit stands in. */
function thingsDeclaredAround(model: Model, { file, starts }: Mutant): ThingIndex[] {
  return model.things
    .filter(({ whole }) => whole.file === file && whole.start <= starts[0]! && whole.end >= starts[0]!)
    .map((thing) => thing.index);
}

// Which lines may be blamed for a mutant: its own, those that asked for what the changed line did, those that speak of the same things,
// and, for what is missing at the end, the first act of the step that took it off. Read from the text as it was, not from what was found.

import { isPart, isTie, machineOf, partOf, tieOf } from "../../language/bench/machine.ts";
import type { Event, Performance, Performed } from "../../language/bench/trace.ts";
import type { Span } from "../../language/findings/finding.ts";
import type { Model, ThingIndex } from "../../language/model/model.ts";
import { lineAt, type Mutant } from "./mutant.ts";

export interface Concerned {
  /** `file:line`. */
  readonly lines: ReadonlySet<string>;
  /** Some other line asked for what the changed one does: a need, the aim, the end, another act on the same thing. */
  readonly isAskedFor: boolean;
}

/** The acts of a called procedure are its call's. */
function endOfCall(performance: Performance, call: Performed): number {
  if (call.act.verb !== "do") return call.to;
  const { strip } = performance, i = strip.indexOf(call);
  return strip.slice(i + 1).find((one) => one.around.procedure === call.around.procedure)?.from ?? performance.events.length;
}

export function concernedBy(mutant: Mutant, performances: readonly Performance[], texts: ReadonlyMap<string, string>): Concerned {
  const lines = new Set<string>([`${mutant.file}:${mutant.line}`]);
  for (const start of mutant.starts) lines.add(`${mutant.file}:${lineAt(texts.get(mutant.file)!, start)}`);
  const add = (at: Span): void => { const text = texts.get(at.file); if (text !== undefined) lines.add(`${at.file}:${lineAt(text, at.start)}`); };
  const isIt = (at: Span): boolean => at.file === mutant.file && mutant.starts.includes(at.start);
  const ids = new Set<string>(), labels = new Set<string>();
  let isAskedFor = false;
  for (const performance of performances) {
    const { model, events, procedure } = performance, done = [...performance.strip, ...performance.written, ...performance.finish];
    const mine = done.filter(({ act }) => isIt(act.at)), written = performance.refit.filter(({ op }) => op.act && isIt(op.act.at));
    const other = mutant.other === undefined ? [] : (model.scopes.get("")?.get(mutant.other) ?? []);
    for (const thing of other) ids.add(`${model.unit} ${model.things[thing]!.id}`);
    const declared = mutant.declared ? thingsDeclaredAround(model, mutant) : [];
    if (mine.length === 0 && written.length === 0 && declared.length === 0) continue;
    for (const thing of declared) add(model.things[thing]!.at);
    const things = new Set<ThingIndex>([...declared, ...mine.flatMap((one) => one.things), ...written.flatMap(({ op }) => op.things)]);
    const own = new Set(mine.flatMap((one) => events.slice(one.from, endOfCall(performance, one)).map((event) => event.index)));
    for (const event of own) for (const thing of events[event]!.things) things.add(thing);
    const stripActs = performance.strip;
    for (const event of events) {
      if (own.has(event.index)) continue;
      // Who lifts with a holder of its own does not ask for the support before it.
      const asks = event.needs.filter((need) => own.has(need) && !(event.kind === "off" && events[need]!.kind === "held"));
      if (event.needs.some((need) => own.has(need))) add(event.act.at);
      if (asks.length > 0 && mutant.class !== "swap two neighbours") isAskedFor = true;
      if (event.things.some((thing) => things.has(thing)) || event.hazards.some((hazard) => things.has(hazard))) { add(event.act.at); add(firstOfStep(events, event).act.at); }
    }
    for (const event of own) add(firstOfStep(events, events[event]!).act.at);
    for (const one of [...stripActs, ...performance.written]) {
      if (mine.includes(one)) continue;
      if (one.things.some((thing) => things.has(thing) || isBeside(model, thing, things))) add(one.act.at);
    }
    // Marks are due at the first tie that is made after.
    for (const one of mine) if (one.act.verb === "align") {
      const next = performance.written.slice(performance.written.indexOf(one) + 1).find((later) => later.things.some((thing) => isTie(model, thing)));
      if (next) add(next.act.at);
    }
    // Positions and marks have no thing of their own: what stands up to the next turn, what lines the mark up.
    for (const one of mine) {
      if (one.act.verb === "turn") for (const later of upToNextTurn(performance.strip, one)) if (needsPosition(model, later)) { add(later.act.at); isAskedFor = true; }
      for (const label of one.act.labels) for (const other of [...performance.strip, ...performance.written]) if (other.act.verb === "align" && other.act.names.some((name) => name.text === label)) { add(other.act.at); isAskedFor = true; }
      for (const label of one.act.labels) for (const { op } of performance.refit) if (op.act?.verb === "align" && op.act.names.some((name) => name.text === label)) { add(op.act.at); isAskedFor = true; }
    }
    // A procedure that is done on a part speaks of it.
    for (const one of performance.strip) if (one.act.on.some((name) => (model.scopes.get(one.around.prefix)?.get(name.text) ?? []).some((thing) => things.has(thing)))) add(one.act.at);
    if (mutant.class === "swap two neighbours") {
      const eventsOf = (start: number | undefined): Event[] => mine.filter(({ act }) => act.at.start === start).flatMap((one) => events.slice(one.from, one.to)), first = eventsOf(mutant.starts[0]);
      if (eventsOf(mutant.starts[1]).some((event) => event.needs.some((need) => first.some((one) => one.index === need)))) isAskedFor = true;
    } else for (const aim of procedure.aims) {
      add(aim.at);
      if (aim.is === "all-apart" && [...own].some((event) => events[event]!.kind === "off" || events[event]!.kind === "out") && [...things].some((thing) => isPart(model, thing) || isTie(model, thing))) isAskedFor = true;
      if (aim.is === "all-in" && mine.some((one) => puts.has(one.act.verb) && one.before !== one.after)) isAskedFor = true;
      for (const name of aim.names) for (const thing of model.scopes.get("")?.get(name.text) ?? []) if (things.has(thing) && own.size > 0) isAskedFor = true;
    }
    add(procedure.at);
    for (const aim of procedure.aims) add(aim.at);
    for (const { act } of mine) for (const label of act.labels) labels.add(label);
    // A reading is spoken of where something depends on it.
    for (const { act } of mine) if (act.id) for (const [file, text] of texts) for (const { index } of text.matchAll(new RegExp(`^ *(?:if|unless|otherwise)\\b.*\\b${act.id.text}\\b`, "gm"))) lines.add(`${file}:${lineAt(text, index + 1)}`);
    for (const thing of things) ids.add(`${model.unit} ${model.things[thing]!.id}`);
    // Turning asks that nothing lies loose.
    const last = stripActs.findLastIndex((one) => mine.includes(one)), turn = last < 0 ? undefined : stripActs.slice(last + 1).find((one) => one.act.verb === "turn");
    if (turn && [...own].some((event) => events[event]!.kind === "off") && [...things].some((thing) => isPart(model, thing) && partOf(model, thing).rests.length > 0)) { add(turn.act.at); isAskedFor = true; }
  }
  // The same things in the procedures beside it: what one takes off the other puts on.
  for (const { model, strip, written, events, refit } of performances) {
    for (const { op } of refit) if (op.act && op.things.some((thing) => ids.has(`${model.unit} ${model.things[thing]!.id}`))) add(op.act.at);
    for (const { act } of written) if (act.verb === "align" && act.names.some((name) => labels.has(name.text))) add(act.at);
    for (const one of [...strip, ...written]) if (one.things.some((thing) => ids.has(`${model.unit} ${model.things[thing]!.id}`))) add(one.act.at);
    for (const event of events) if (event.things.some((thing) => ids.has(`${model.unit} ${model.things[thing]!.id}`))) add(firstOfStep(events, event).act.at);
  }
  return { lines, isAskedFor };
}

/** Acts whose result the end of a refit asks for. */
const puts: ReadonlySet<string> = new Set(["fit", "tighten", "press", "fill", "slide", "swing", "open", "uncap"]);
const firstOfStep = (events: readonly Event[], event: Event): Event => (event.around.step ? (events.find((one) => one.around.step === event.around.step) ?? event) : event);

function upToNextTurn(done: readonly Performed[], turn: Performed): Performed[] {
  const rest = done.slice(done.indexOf(turn) + 1), next = rest.findIndex((one) => one.act.verb === "turn");
  return next < 0 ? rest : rest.slice(0, next + 1);
}
const needsPosition = (model: Model, one: Performed): boolean => one.act.verb === "turn" || one.things.some((thing) => { const of = model.things[thing]!; return (of.is === "part" || of.is === "tie") && of.positions.length > 0; });

/** Tied to it, in front of it, or holding it: what is refused when the other is not as it should be. */
function isBeside(model: Model, thing: ThingIndex, things: ReadonlySet<ThingIndex>): boolean {
  const machine = machineOf(model);
  if (isTie(model, thing)) return [...tieOf(model, thing).lowers, ...tieOf(model, thing).uppers, ...tieOf(model, thing).behind].some((one) => things.has(one));
  if (!isPart(model, thing)) return false;
  // What opens the joint that a changed part lies in.
  if ([...things].some((one) => isPart(model, one) && partOf(model, one).between?.flat().includes(thing))) return true;
  return partOf(model, thing).behind.some((one) => things.has(one)) || machine.tiesOf[thing]!.some((tie) => things.has(tie.index)) || machine.hosts[thing]!.some((one) => things.has(one));
}

/** The things whose declaration the edit stands in, and for a hazard what it is on. */
function thingsDeclaredAround(model: Model, mutant: Mutant): ThingIndex[] {
  const start = mutant.starts[0]!;
  return model.things.filter(({ whole }) => whole.file === mutant.file && whole.start <= start && whole.end >= start).map((thing) => thing.index);
}

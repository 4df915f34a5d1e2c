// The computed refit: the inverse of each event under the needs read backwards, what the rules of meeting add, and what the author
// says. A partial order; printed is the line of it that is nearest to last off, first on.

import type { Act } from "../../model/act.ts";
import { prefixInside, reasonOf } from "../bench.ts";
import type { BlockEntry, Entry, ThingIndex } from "../../model/model.ts";
import type { Leaves } from "../leaves.ts";
import type { Around, Event, RefitNote, RefitOp, RefitOrder, StepRun } from "../trace.ts";
import { claimed as claimedBy } from "./claim.ts";
import { addRules } from "./rules.ts";
import { addStatements, type Group, type OrderStatement } from "./statements.ts";
import { addOp, ask, edge, graphOf, type Graph } from "./graph.ts";
import { inverseOf, remaining, withoutTrials, writtenInverseOf } from "./inverse.ts";
import { lineOf } from "./line.ts";
import type { Stripped } from "./stripped.ts";
import { withoutPutBack } from "./put-back.ts";

export function orderOf(stripped: Stripped, leaves: Leaves): RefitOrder {
  const { model } = stripped,
    left = withoutTrials(model, stripped.events);
  if (stripped.events.some(({ kind }) => kind === "met" || kind === "in"))
    withoutPutBack(model, stripped.events, stripped.stripEnd, left);
  const events = stripped.events.map((event) =>
      left.get(event.index) ? { ...event, count: left.get(event.index)! } : event,
    ),
    strip = { ...stripped, events },
    graph = graphOf(model);
  const opOf = new Array<RefitOp | undefined>(events.length),
    dropped = new Set<number>(),
    gone = new Set([...left].flatMap(([index, pieces]) => (pieces === 0 ? [index] : [])));
  const shares = new Map<number, Share>(),
    groups = writeNotes(strip, leaves, graph, opOf, dropped, gone, shares);
  const slack = events.filter((e) => e.kind === "slack" && !gone.has(e.index));
  for (const event of events) {
    if (opOf[event.index] || dropped.has(event.index) || gone.has(event.index)) continue;
    const verb = inverseOf(model, event, leaves);
    if (!verb) continue;
    const finger = event.kind === "out" && slack.some((e) => e.thing === event.thing && e.index < event.index);
    opOf[event.index] = addOp(graph, {
      verb: finger ? "finger-tighten" : verb,
      act: undefined,
      event,
      things: goingBack(event, leaves),
      count: shares.get(event.index)?.left ?? remaining(strip.model, event, leaves),
      around: event.around,
      rank: event.index,
      at: event.act.at,
      placed: false,
    });
  }
  // Where the rest is left to nobody (`instead`), the last of those lines is the one for the event.
  for (const [index, { ops }] of shares) opOf[index] ??= ops.at(-1);
  addRules(strip, graph, opOf);
  for (const [index, { ops }] of shares) for (const op of ops) likewise(graph, op, opOf[index]!);
  addStatements(strip, graph, groups);
  return {
    ops: graph.ops,
    later: graph.later,
    why: graph.why,
    problems: graph.problems,
    line: lineOf(graph.ops, graph.later),
  };
}

/** What came off together without those that left it since and are left off. */
const goingBack = ({ kind, things }: Event, { off }: Leaves): readonly ThingIndex[] =>
  kind === "off" && things.length > 1 && off.size > 0 ? things.filter((thing) => !off.has(thing)) : things;

/** Of an event that a count took some of: the lines that did, and how many are left for the computed reverse. */
interface Share {
  readonly ops: RefitOp[];
  left: number;
}

/** A line for some of the pieces is bound as the line for the last of them is, and comes before it. */
function likewise(graph: Graph, op: RefitOp, last: RefitOp): void {
  if (op === last) return;
  graph.later.forEach((list, from) => {
    if (from !== op.number && list.includes(last.number)) edge(graph, graph.ops[from], op, "it is the same thing");
  });
  for (const next of [...graph.later[last.number]!]) edge(graph, op, graph.ops[next], "it is the same thing");
  edge(graph, op, last, "the rest follows");
}

/** 1. What the author wrote, block by block; acts of the reverse among it claim their events. */
function writeNotes(
  strip: Stripped,
  leaves: Leaves,
  graph: Graph,
  opOf: (RefitOp | undefined)[],
  dropped: Set<number>,
  gone: ReadonlySet<number>,
  shares: Map<number, Share>,
): Group[] {
  const { events, notes, procedures } = strip,
    groups: Group[] = [];
  if (notes.length === 0) return groups;
  const ofStep = new Map<StepRun, Event[]>(),
    about = new Map<ThingIndex, Event[]>();
  const into = <K>(map: Map<K, Event[]>, key: K, event: Event): void => {
    const list = map.get(key);
    if (list) list.push(event);
    else map.set(key, [event]);
  };
  for (const event of events) {
    if (event.around.step) into(ofStep, event.around.step, event);
    for (const thing of event.things) into(about, thing, event);
  }
  const claims = {
    model: strip.model,
    events,
    about,
    isTaken: (e: Event) => opOf[e.index] !== undefined || gone.has(e.index),
    isDropped: (e: Event) => dropped.has(e.index),
    leaves,
  };
  for (const note of notes) {
    const own = note.step ? (ofStep.get(note.step) ?? []) : events.slice(note.from, note.to);
    const top = own.length > 0 ? own[own.length - 1]!.index : lastBefore(events, note),
      low = own.length > 0 ? own[0]!.index : top + 0.75;
    const group: Group = { note, before: [], after: [], chain: [], orders: [] },
      marked =
        hasReverse(note.entries) ||
        note.by !== undefined ||
        note.entries.some((e) => e.is === "block" && e.kind === "instead");
    groups.push(group);
    if (note.by !== undefined || note.entries.some((e) => e.is === "block" && e.kind === "instead"))
      for (const event of own) dropped.add(event.index);
    // Who writes only a reading or a second check into a refit block means it after the work, not before.
    const checking = marked ? new Set<Entry>() : trailingChecks(note.entries);
    // What a line of this block put back already: what else is written of it comes after that.
    const answered = new Map<ThingIndex, RefitOp>(),
      calling = new Set<string>();
    let past = false,
      written = 0;
    const place = (...ops: readonly RefitOp[]): void => {
      const standing = ops.filter((op) => !op.placed && (marked || !op.event));
      if (standing.length === 0) return;
      (past ? group.after : group.before).push(...standing);
      group.chain.push(standing);
    };
    const write = (entries: readonly Entry[], around: Around): void => {
      for (const entry of entries) {
        if (entry.is === "block") {
          block(entry, around);
          continue;
        }
        const { act } = entry;
        if (checking.has(entry)) past = true;
        if (act.verb === "reverse") {
          past = true;
          continue;
        }
        if (act.verb === "base") continue; // which side moves is a matter of wording and of lifting
        if (act.verb === "order") {
          group.orders.push({ ...statementOf(act), at: act.at });
          continue;
        }
        const called = act.verb === "do" ? procedures.get(act.names[0]?.text ?? "") : undefined;
        // One that does itself would never end: that is found where it is declared.
        if (called && !calling.has(called.id)) {
          calling.add(called.id);
          write(called.body, { ...around, procedure: called, ...doneOn(strip, act, around) });
          calling.delete(called.id);
          continue;
        }
        one(act, around);
      }
    };
    const block = (entry: BlockEntry, around: Around): void => {
      switch (entry.kind) {
        case "if":
        case "optional":
        case "choice":
          if (strip.conditionHolds(entry, around)) write(entry.body, around);
          return;
        case "repeat":
          for (const piece of entry.over) write(entry.body, { ...around, pieces: [...around.pieces, piece] });
          return;
        case "refit":
        case "otherwise":
          return;
        case "step":
          write(entry.body, { ...around, step: stepIn(entry, around) });
          return;
        case "instead":
        case "either":
          write(entry.body, around);
      }
    };
    /** How many pieces of an event a line puts back: a count takes that many, and leaves the rest to another line or the reverse. */
    const takes = (event: Event, act: Act): number => {
      const item = strip.model.things[event.thing];
      if ((item?.is !== "tie" && item?.is !== "part") || (event.kind !== "out" && event.kind !== "off"))
        return act.count ?? event.count;
      const all = shares.get(event.index)?.left ?? remaining(strip.model, event, leaves),
        count = Math.min(act.count ?? all, all);
      if (act.count !== undefined && act.count > all && !item.countUnknown) {
        const { at, count: pieces } = item;
        const reason = reasonOf("sequence/over-count", {
          thing: event.thing,
          numbers: [act.count, all, pieces],
          words: ["fit"],
          at,
        });
        graph.problems.push({
          rule: reason.rule,
          phase: "refit",
          act,
          around: event.around,
          at: act.at,
          about: [event.thing],
          reasons: [reason],
        });
      }
      if (count < all || shares.has(event.index))
        shares.set(event.index, { ops: shares.get(event.index)?.ops ?? [], left: all - count });
      return count;
    };
    /** Names of which some are in finger-tight by a line of their own, and others still out. */
    const halfIn = (act: Act, around: Around): Act["names"] =>
      act.verb !== "tighten" || act.count !== undefined || shares.size === 0
        ? []
        : act.names.filter((name) =>
            strip.resolve([name], around).some((thing) =>
              about.get(thing)?.some((event) => {
                const share = event.kind === "out" ? shares.get(event.index) : undefined;
                return share && share.left > 0 && share.ops.some((op) => op.verb === "finger-tighten");
              }),
            ),
          );
    const one = (act: Act, around: Around): void => {
      // The others go in beside them first, and the line tightens all.
      const half = halfIn(act, around);
      if (half.length > 0) one({ ...act, verb: "fit", fingerTight: true, names: half, text: "" }, around);
      const things = strip.resolve(act.names, around),
        // What ends one step's block comes before what begins that of the step before it: both lie between the same two events.
        rank = (past ? low - 0.25 : top + 0.5) - ++written * 1e-5,
        placed = act.after.length + act.before.length > 0 || act.first || act.last;
      const found = claimedBy(claims, act, things, note.step),
        ops: RefitOp[] = [];
      for (const event of found) {
        const inverse = writtenInverseOf(strip.model, event, leaves)!;
        const verb = event.kind === "out" && act.fingerTight ? "finger-tighten" : inverse;
        const op = addOp(graph, {
          verb,
          act,
          event,
          things: event.things,
          count: takes(event, act),
          around,
          rank: note.step !== undefined && note.step === event.around.step ? event.index : rank,
          at: act.at,
          placed,
        });
        for (const thing of event.things) answered.set(thing, op);
        const share = shares.get(event.index);
        share?.ops.push(op);
        if (!share || share.left === 0) opOf[event.index] = op;
        ops.push(op);
      }
      for (const name of act.names) {
        const of = strip.resolve([name], around);
        place(...ops.filter((op) => op.things.some((thing) => of.includes(thing))));
      }
      const rest = things.filter((thing) => !found.some((e) => e.things.includes(thing) || e.moved.includes(thing)));
      if (found.length > 0 && (rest.length === 0 || act.verb === "restore")) return;
      const op = addOp(graph, {
        verb: "written",
        act,
        event: undefined,
        things: found.length > 0 ? rest : things,
        count: act.count ?? 1,
        around,
        rank,
        at: act.at,
        placed,
      });
      const follow = apart.has(act.verb) ? rest.flatMap((thing) => answered.get(thing) ?? []) : [];
      if (follow.length > 0 && !marked && !placed) {
        for (const earlier of follow) ask(graph, earlier, op, "it is written so", act.at, true);
        return;
      }
      // A further stage of what the reverse fits follows its fitting, and air leaves a fluid around its fill, wherever that comes.
      const follows =
        act.verb === "tighten" ? "out" : act.verb === "evacuate" || act.verb === "bleed" ? "drained" : undefined;
      if (
        marked ||
        follows === undefined ||
        !things.some((thing) => about.get(thing)?.some((event) => event.kind === follows))
      )
        place(op);
    };
    const by = note.by === undefined ? undefined : procedures.get(note.by);
    write(by ? by.body : note.entries, by ? { ...note.around, procedure: by } : note.around);
  }
  return groups;
}

/** A step that stands in the refit block of another one has a title of its own, and its place. */
function stepIn(entry: BlockEntry, { step, procedure, pieces, on }: Around): StepRun | undefined {
  return (
    step && {
      number: step.number,
      procedure,
      name: entry.name,
      title: entry.title,
      pieces,
      on,
      at: entry.at,
      within: step.within ?? step,
    }
  );
}

/** `do P on X` speaks of the things inside X, where X is a unit. */
function doneOn(strip: Stripped, act: Act, around: Around): Pick<Around, "prefix" | "on"> {
  const on = act.on.length > 0 ? strip.resolve(act.on, around)[0] : undefined;
  return { prefix: prefixInside(strip.model, on, around), on: on ?? around.on };
}

/** Written of what this block put back already, these are a try, or a slip: either way they come after it. */
const apart = new Set(["fit", "press", "undo", "remove"]);

const checkingVerbs = new Set(["measure", "inspect", "test", "set", "second-check", "hold-point"]);

/** The readings and checks that a block ends with. */
function trailingChecks(entries: readonly Entry[]): Set<Entry> {
  const trailing = new Set<Entry>();
  for (let i = entries.length - 1; i >= 0; i--) {
    const entry = entries[i]!;
    if (entry.is !== "act" || !checkingVerbs.has(entry.act.verb)) break;
    trailing.add(entry);
  }
  return trailing;
}

function hasReverse(entries: readonly Entry[]): boolean {
  return entries.some((entry) => (entry.is === "act" ? entry.act.verb === "reverse" : hasReverse(entry.body)));
}

/** The last event of a line before the block; where a block has no events of its own, it stands there. */
function lastBefore(events: readonly Event[], note: RefitNote): number {
  let last = -1;
  for (const event of events)
    if (event.act.at.file === note.at.file && event.act.at.start <= note.at.start) last = Math.max(last, event.index);
  return last;
}

const statementOf = (act: Act): Omit<OrderStatement, "at"> => ({
  names: act.names,
  after: act.after,
  before: act.before,
  first: act.first,
  last: act.last,
});

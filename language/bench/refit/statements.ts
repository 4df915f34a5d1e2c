// What the author says about order: places in a refit block, `after`, `before`, `first`, `last`, `order`. Each must not close a ring.

import type { Span } from "../../findings/finding.ts";
import type { Name } from "../../model/act.ts";
import type { ThingIndex } from "../../model/model.ts";
import { isKindOf, precautions } from "../../tables/index.ts";
import type { Around, RefitNote, RefitOp } from "../trace.ts";
import { ask, type Graph } from "./graph.ts";
import type { Stripped } from "./stripped.ts";

export interface OrderStatement {
  readonly names: readonly Name[];
  readonly after: readonly Name[];
  readonly before: readonly Name[];
  readonly first: boolean;
  readonly last: boolean;
  readonly at: Span;
}

/** The lines that one refit block gave, by where they stand to its `reverse`. */
export interface Group {
  readonly note: RefitNote;
  readonly before: RefitOp[];
  readonly after: RefitOp[];
  /** As they are written, one after the other; the lines of one name (its pieces, the precautions of a hazard) beside each other. */
  readonly chain: RefitOp[][];
  readonly orders: OrderStatement[];
}

/** Verbs whose written lines change a thing, so that two on one thing keep their order; so do the precautions of a hazard. */
const changing = new Set(["fit", "undo", "remove", "tighten", "press", "put", "take", "loosen", "restore"]);
const changes = ({ act }: RefitOp): boolean =>
  act !== undefined && (changing.has(act.verb) || isKindOf(precautions, act.verb));
/** What is put on for a while is a thing by its name alone. */
const temporary = ({ act }: RefitOp): string | undefined =>
  act?.verb === "put" || act?.verb === "take" ? act.names[0]?.text : undefined;

export function addStatements(strip: Stripped, graph: Graph, groups: readonly Group[]): void {
  for (const { chain } of groups)
    for (let i = 1; i < chain.length; i++)
      for (const earlier of chain[i - 1]!)
        for (const op of chain[i]!) ask(graph, earlier, op, "it is written so", op.at, true);
  for (const group of groups) besideReverse(graph, group);
  tightenedWhenIn(graph);
  sameThing(graph);
  const unitAround: Around | undefined = groups[0]?.note.around ?? graph.ops[0]?.around;
  if (unitAround)
    for (const order of strip.model.orders) {
      const where = { ...unitAround, prefix: "", pieces: [] };
      const ops = opsOf(strip, graph, order.names, where).filter((op) => op.event?.kind === "off");
      apply(strip, graph, ops, order, where, graph.ops);
      withItsTies(strip, graph, ops, order, where);
    }
  for (const group of groups) {
    const { note } = group;
    for (const op of graph.ops) {
      if (!op.placed || !op.act || !inside(note, op)) continue;
      const scope = note.step ? graph.ops.filter((o) => stepOf(o) === note.step) : graph.ops;
      apply(
        strip,
        graph,
        [op],
        {
          names: [],
          after: op.act.after,
          before: op.act.before,
          first: op.act.first,
          last: op.act.last,
          at: op.act.at,
        },
        op.around,
        scope,
      );
    }
    for (const order of group.orders) {
      const ops = opsOf(strip, graph, order.names, note.around);
      apply(strip, graph, ops, order, note.around, graph.ops);
      withItsTies(strip, graph, ops, order, note.around);
    }
  }
}

const stepOf = (op: RefitOp): Around["step"] => op.event?.around.step ?? rootOf(op.around.step);
const rootOf = (step: Around["step"]): Around["step"] => step?.within ?? step;
const inside = (note: RefitNote, op: RefitOp): boolean =>
  op.act!.at.file === note.at.file &&
  op.act!.at.start >= note.at.start &&
  rootOf(op.around.step) === note.around.step &&
  op.around.procedure === note.around.procedure;

/** What stands before or after `reverse` comes before or after every reversed event of that step. */
function besideReverse(graph: Graph, { note, before, after, chain }: Group): void {
  const own = new Set(chain.flat());
  const reversed = note.step
    ? graph.ops.filter((op) => op.event && op.event.around.step === note.step && !own.has(op) && !op.act)
    : [];
  for (const op of before)
    for (const other of reversed) ask(graph, op, other, "it is written before the reverse", op.at, true, note.at);
  for (const op of after)
    for (const other of reversed)
      if (!standsFor(graph, other, op)) ask(graph, other, op, "it is written after the reverse", op.at, true, note.at);
  if (note.by === undefined || chain.length === 0) return;
  const inChain = new Set([...own].map((op) => op.number));
  graph.later.forEach((list, from) => {
    if (!inChain.has(from) && list.some((to) => inChain.has(to)))
      for (const first of chain[0]!) ask(graph, graph.ops[from], first, "the whole stands there", first.at, false);
  });
}

/** A precaution that the written act is done under is taken away after it, though it belongs to the reverse. */
const standsFor = (graph: Graph, lift: RefitOp, op: RefitOp): boolean =>
  lift.verb === "lift" && graph.later[op.number]!.includes(lift.number);

/** A stage of tightening that is written stands after the fitting of its fastener, wherever that is. */
function tightenedWhenIn(graph: Graph): void {
  for (const op of graph.ops) {
    if (op.event || op.act?.verb !== "tighten") continue;
    for (const other of graph.ops)
      if (other.event?.kind === "out" && op.things.includes(other.event.thing))
        ask(graph, other, op, "it is in before it is tightened", op.at, false);
  }
}

/** `order` speaks of all of a part: what it hangs by goes with it, as far as the rest allows. */
function withItsTies(
  strip: Stripped,
  graph: Graph,
  ops: readonly RefitOp[],
  { names, after, before, at }: OrderStatement,
  around: Around,
): void {
  const along = (list: readonly RefitOp[], of: readonly Name[]): RefitOp[] => {
    const parts = strip.resolve(of, around);
    return [
      ...list,
      ...graph.ops.filter((op) => {
        const thing =
          op.event?.kind === "out" || op.event?.kind === "slack" ? strip.model.things[op.event.thing] : undefined;
        return thing?.is === "tie" && thing.lowers.some((part) => parts.includes(part)) && !list.includes(op);
      }),
    ];
  };
  const own = along(ops, names),
    earlier = along(opsOf(strip, graph, after, around), after),
    later = along(opsOf(strip, graph, before, around), before);
  for (const op of own) {
    for (const other of earlier) if (!own.includes(other)) ask(graph, other, op, "it is stated", at, false);
    for (const other of later) if (!own.includes(other)) ask(graph, op, other, "it is stated", at, false);
  }
}

function sameThing(graph: Graph): void {
  for (const op of graph.ops) {
    if (op.event || !changes(op)) continue;
    const name = temporary(op);
    for (const other of graph.ops) {
      if (other === op || !(other.event || changes(other))) continue;
      if (name === undefined ? !other.things.some((thing) => op.things.includes(thing)) : temporary(other) !== name)
        continue;
      if (other.rank > op.rank) ask(graph, other, op, "it is the same thing", op.at, false);
      else ask(graph, op, other, "it is the same thing", op.at, false);
    }
  }
}

/** The lines that a name speaks of: those on a thing, or all of a step. */
function opsOf(strip: Stripped, graph: Graph, names: readonly Name[], around: Around): RefitOp[] {
  const found: RefitOp[] = [];
  for (const name of names) {
    const things: readonly ThingIndex[] = strip.resolve([name], around);
    for (const op of graph.ops) {
      const is =
        things.length > 0
          ? (op.event ? op.event.things : op.things).some((thing) => things.includes(thing)) && op.verb !== "hold"
          : stepOf(op)?.name === name.text;
      if (is && !found.includes(op)) found.push(op);
    }
  }
  return found;
}

function apply(
  strip: Stripped,
  graph: Graph,
  ops: readonly RefitOp[],
  statement: OrderStatement,
  around: Around,
  scope: readonly RefitOp[],
): void {
  const after = opsOf(strip, graph, statement.after, around),
    before = opsOf(strip, graph, statement.before, around);
  for (const op of ops) {
    for (const other of after) if (!ops.includes(other)) ask(graph, other, op, "it is stated", statement.at, true);
    for (const other of before) if (!ops.includes(other)) ask(graph, op, other, "it is stated", statement.at, true);
    // As far as the rest allows.
    if (statement.first) for (const other of scope) ask(graph, op, other, "it is stated first", statement.at, false);
    if (statement.last) for (const other of scope) ask(graph, other, op, "it is stated last", statement.at, false);
  }
}

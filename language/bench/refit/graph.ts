// The order under construction: lines of the refit and which must come after which. An edge is never added twice; one that the
// author asks for is added only if it closes no ring.

import type { Problem, RefitOp } from "../trace.ts";
import type { Span } from "../../findings/finding.ts";
import type { Model } from "../../model/model.ts";
import { actKind, isKindOf, precautions } from "../../tables/index.ts";
import { reasonOf } from "../bench.ts";

export interface Graph {
  readonly model: Model;
  readonly ops: RefitOp[];
  readonly later: number[][];
  readonly why: string[][];
  readonly seen: Set<number>;
  /** Where the author said so, by edge; edges that follow from the bench have none. */
  readonly saidAt: Map<number, Span>;
  readonly problems: Problem[];
  /** Places already complained of. */
  readonly said: Set<string>;
  /** The lines that were said to stand the wrong way round, and where among the problems. */
  readonly wrongWay: { readonly a: RefitOp; readonly b: RefitOp; readonly problem: number }[];
}

export function graphOf(model: Model): Graph {
  return {
    model,
    ops: [],
    later: [],
    why: [],
    seen: new Set(),
    saidAt: new Map(),
    problems: [],
    said: new Set(),
    wrongWay: [],
  };
}

export function addOp(graph: Graph, op: Omit<RefitOp, "number">): RefitOp {
  const added: RefitOp = { ...op, number: graph.ops.length };
  graph.ops.push(added);
  graph.later.push([]);
  graph.why.push([]);
  return added;
}

const MOST = 1 << 22;

/** `a` comes before `b`. */
export function edge(graph: Graph, a: RefitOp | undefined, b: RefitOp | undefined, why: string, at?: Span): void {
  if (!a || !b || a === b) return;
  const key = a.number * MOST + b.number;
  if (graph.seen.has(key)) return;
  graph.seen.add(key);
  if (at) graph.saidAt.set(key, at);
  graph.later[a.number]!.push(b.number);
  graph.why[a.number]!.push(why);
}

/** The same, if it closes no ring. A ring against a hard statement is a problem, said once a place, before anything is performed. */
export function ask(
  graph: Graph,
  a: RefitOp | undefined,
  b: RefitOp | undefined,
  why: string,
  at: Span,
  hard: boolean,
  place: Span = at,
): void {
  if (!a || !b || a === b) return;
  const ring = wayFrom(graph, b.number, a.number);
  if (!ring) {
    edge(graph, a, b, why, hard ? at : undefined);
    return;
  }
  const key = `${place.file} ${place.start}`;
  if (!hard || graph.said.has(key)) return;
  graph.said.add(key);
  if (ring.some((n) => graph.ops[n]!.event?.assumed)) return;
  const first = reasonOf("refit/contradiction", {
    words: ["order", `${named(graph, a)} cannot come before ${named(graph, b)}`],
    at,
  });
  const links = ring.slice(1).map((n, i) => {
    const from = ring[i]!,
      k = graph.later[from]!.indexOf(n);
    return reasonOf("refit/contradiction", {
      words: [
        "order",
        `${named(graph, graph.ops[from]!)} comes before ${named(graph, graph.ops[n]!)}: ${graph.why[from]![k]}`,
      ],
      at: graph.saidAt.get(from * MOST + n) ?? graph.ops[n]!.at,
    });
  });
  // A line that stands too early stands before several that it comes after, and one too late after several: it is wrong once.
  const ofLines = at.start === a.at.start || at.start === b.at.start,
    before = ofLines && graph.wrongWay.find((one) => one.a === a || one.b === b);
  if (before) {
    const had = graph.problems[before.problem]!;
    graph.problems[before.problem] = {
      ...had,
      at: (before.a === a ? a : b).at,
      reasons: [...had.reasons, first, ...links],
    };
    return;
  }
  if (ofLines) graph.wrongWay.push({ a, b, problem: graph.problems.length });
  graph.problems.push({
    rule: "refit/contradiction",
    phase: "refit",
    act: a.act,
    around: a.around,
    at,
    about: [...a.things, ...b.things],
    reasons: [first, ...links],
  });
}

/** Ops from one to another along `later`, both included; undefined where there is no way. */
export function wayFrom(graph: Pick<Graph, "later">, from: number, to: number): number[] | undefined {
  const before = new Map<number, number>([[from, -1]]),
    queue = [from];
  for (let i = 0; i < queue.length; i++) {
    const here = queue[i]!;
    if (here === to) {
      const way: number[] = [];
      for (let n = to; n >= 0; n = before.get(n)!) way.unshift(n);
      return way;
    }
    for (const next of graph.later[here]!)
      if (!before.has(next)) {
        before.set(next, here);
        queue.push(next);
      }
  }
  return undefined;
}

/** What a computed line does, where no act of an author is called so, or another thing is meant by it. */
const computed: Readonly<Record<string, string>> = {
  "finger-tighten": "fitting finger-tight",
  back: "putting back",
  aside: "moving aside",
  lift: "taking the precaution away for",
  stand: "the precaution for",
};

/** "fitting Casing", "setting Gap". */
export function named(graph: Pick<Graph, "model">, op: RefitOp): string {
  const things = op.things.map((thing) => graph.model.things[thing]!.name).join(", ");
  if (op.verb !== "written") return `${computed[op.verb] ?? actKind(op.verb).doing} ${things}`;
  const verb = op.act?.verb ?? "";
  if (things === "") return `"${op.act?.text || verb}"`;
  return `${isKindOf(precautions, verb) ? `the precaution ${verb} for` : actKind(verb).doing || verb} ${things}`;
}

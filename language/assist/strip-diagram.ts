// What must come off before what: the acts of a strip with the facts that each waited for, in rows from what can be done at once
// to what comes last. Drawn by whoever shows it.

import type { Performance } from "../bench/trace.ts";
import type { Span } from "../findings/finding.ts";
import { precautionTitle } from "./bench-at.ts";

export interface DiagramNode {
  readonly number: number;
  readonly name: string;
  readonly is: "off" | "out" | "drained" | "stands" | "other";
  readonly step: string;
  readonly at: Span;
  /** 0: nothing of this strip has to come before it. */
  readonly row: number;
  /** Numbers of the nodes that come right before it; what follows from others is left out. */
  readonly after: readonly number[];
}

export interface StripDiagram {
  readonly title: string;
  readonly nodes: readonly DiagramNode[];
  readonly rows: number;
}

const kinds: Readonly<Record<string, DiagramNode["is"]>> = {
  off: "off",
  out: "out",
  drained: "drained",
  stands: "stands",
};

export function stripDiagram({ model, procedure, events }: Performance): StripDiagram {
  // Events of one act on one thing are one node; each stands for its last event.
  const nodes: { event: number; needs: Set<number>; name: string; is: DiagramNode["is"]; step: string; at: Span }[] =
      [],
    nodeOf = new Map<number, number>(),
    byKey = new Map<string, number>();
  for (const event of events) {
    if (event.assumed || event.kind === "let-go" || event.kind === "lapses" || event.kind === "gripped") continue;
    const key = `${event.kind} ${event.thing} ${event.act.at.file} ${event.act.at.start} ${event.around.pieces.join()}`,
      had = byKey.get(key),
      number = had ?? nodes.length;
    const thing = model.things[event.thing]!,
      precaution = event.kind === "stands" ? model.precautions[event.precautions[0] ?? -1] : undefined;
    if (had === undefined) {
      byKey.set(key, number);
      nodes.push({
        event: event.index,
        needs: new Set(),
        name: precaution ? `${precautionTitle(precaution.kind)}: ${thing.name}` : thing.name,
        is: kinds[event.kind] ?? "other",
        step: event.around.step?.title || event.around.step?.name || "",
        at: event.act.at,
      });
    }
    nodeOf.set(event.index, number);
    for (const need of event.needs) {
      const before = nodeOf.get(need);
      if (before !== undefined && before !== number) nodes[number]!.needs.add(before);
    }
  }
  const rows: number[] = [],
    reached: Set<number>[] = [];
  const out = nodes.map((node, number): DiagramNode => {
    const all = new Set<number>();
    let row = 0;
    for (const need of node.needs) {
      all.add(need);
      for (const far of reached[need] ?? []) all.add(far);
      row = Math.max(row, (rows[need] ?? 0) + 1);
    }
    rows.push(row);
    reached.push(all);
    const after = [...node.needs].filter(
      (need) => ![...node.needs].some((other) => other !== need && reached[other]!.has(need)),
    );
    return { number, name: node.name, is: node.is, step: node.step, at: node.at, row, after };
  });
  return {
    title: procedure.title || procedure.id,
    nodes: out,
    rows: rows.reduce((most, row) => Math.max(most, row + 1), 0),
  };
}

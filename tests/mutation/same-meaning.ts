// When two texts mean the same at the bench: the same findings, the same states at the end of strip and refit, and the same partial
// order of the refit. A written refit has no order of its own: it is judged by performing it, so its findings and its end are all.

import { mustFollow } from "../../language/bench/refit/freedom.ts";
import type { State } from "../../language/bench/state.ts";
import type { Performance, RefitOp } from "../../language/bench/trace.ts";
import { at } from "../../language/bench/vector.ts";
import type { Model } from "../../language/model/model.ts";

/** One text for each procedure in each build; equal texts mean the same. */
export function meaningOf(performances: readonly Performance[]): string {
  return performances
    .map((p) =>
      [
        `${p.procedure.at.file} ${p.procedure.id} ${p.model.build}`,
        stateOf(p.model, p.stripEnd),
        stateOf(p.model, p.end),
        p.endTurn ?? "",
        p.order ? orderOf(p) : "",
        p.problems.map((one) => one.rule).join(" "),
      ].join("\n"),
    )
    .join("\n\n");
}

function stateOf(model: Model, s: State): string {
  const carrier = (part: number): string => {
    const lump = at(s.lump, part);
    return lump === 0 ? "" : (model.things[s.carriers.get(lump)?.carrier ?? part]?.id ?? "");
  };
  return JSON.stringify({
    parts: model.parts.map((part) => [carrier(part.index), at(s.flags, part.index), at(s.out, part.index)]),
    ties: model.ties.map((tie) => [at(s.out, tie.index), at(s.slack, tie.index)]),
    rest: model.things.slice(model.parts.length + model.ties.length).map((thing) => at(s.flags, thing.index)),
    standing: model.precautions.map((p) => at(s.standing, p.number) !== 0),
    position: s.position,
    temporaries: [...s.temporaries.keys()].sort(),
    marks: [...s.marks].map(([label, { things }]) => [label, ...things]).sort(),
  });
}

/** Lines of the refit by what they do, and which must come before which. */
function orderOf({ model, order }: Performance): string {
  const seen = new Map<string, number>();
  const key = (op: RefitOp): string => {
    const text = `${op.verb} ${op.things.map((thing) => model.things[thing]!.id).join()} ${op.count} ${op.event?.precautions.join() ?? ""} ${op.verb === "written" || op.placed ? `${op.act!.verb} ${op.act!.text}` : ""} ${op.act?.tools.map((tool) => tool.text).join() ?? ""}`;
    const had = seen.get(text) ?? 0;
    seen.set(text, had + 1);
    return `${text} #${had}`;
  };
  // The same lines in the order of the line that is printed, so that equal ones are numbered alike.
  const keys: string[] = [];
  for (const n of order!.line) keys[n] = key(order!.ops[n]!);
  const pairs: string[] = [];
  mustFollow(order!).forEach((after, from) => {
    for (const to of after) pairs.push(`${keys[from]} < ${keys[to]}`);
  });
  return [...keys.sort(), ...pairs.sort()].join("\n");
}

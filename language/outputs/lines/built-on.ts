// The other side that moves, where a part stays on the stand while the unit is built up on it.

import { machineOf } from "../../bench/machine.ts";
import type { Performance, RefitPerformed } from "../../bench/trace.ts";
import { at } from "../../bench/vector.ts";
import { aroundOf } from "../../bench/walk.ts";
import { namedThings } from "../../bill/named-things.ts";
import type { Part, ThingIndex } from "../../model/model.ts";
import { thingOf, type LineContext } from "./context.ts";

/**
 * `base X` in the refit: X stays on the stand, so where its side and the rest of the unit meet it is the rest that moves. The same
 * meeting at the bench; other hands, and another mass to lift.
 */
export function builtOn(
  context: LineContext,
  run: readonly RefitPerformed[],
):
  | { readonly parts: readonly Part[]; readonly moved: readonly ThingIndex[]; readonly onto: readonly ThingIndex[] }
  | undefined {
  const { model, performance } = context,
    { event } = run[0]!.op,
    machine = machineOf(model),
    bases = refitBases(performance);
  if (!event || !bases.some((base) => event.moved.includes(base))) return undefined;
  const { before } = run[0]!,
    lumpOf = (part: ThingIndex): number => at(before.lump, part);
  const met = [...new Set(event.things.flatMap((thing) => machine.hosts[thing] ?? []))].filter(
    (host) => !event.moved.includes(host),
  );
  const parts = met.map((host) => thingOf(context, host)).filter((thing): thing is Part => thing.is === "part");
  if (parts.length === 0) return undefined;
  return {
    parts,
    moved: model.parts.filter((part) => lumpOf(part.index) === lumpOf(parts[0]!.index)).map((part) => part.index),
    onto: event.things,
  };
}

function refitBases({ model, procedure }: Performance): readonly ThingIndex[] {
  const names = procedure.refit.flatMap((entry) =>
    entry.is === "act" && entry.act.verb === "base" ? entry.act.names : [],
  );
  return namedThings(model, names, aroundOf(procedure));
}

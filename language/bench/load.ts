// What hangs on the hook: masses of parts and of what comes along with them.

import { ONE_PERSON_BEST } from "../figures/lift-limit.ts";
import { si } from "../quantities/index.ts";
import type { Act, Name } from "../model/act.ts";
import type { Model, Part, ThingIndex } from "../model/model.ts";
import { partOf } from "./machine.ts";

/** Over this a part must be held before its last ties are touched: the most that one person is asked to lift under the best conditions. Kilograms. */
export const bareHandsKg = ONE_PERSON_BEST;

/** Mass of one piece, the higher end where a range is given; undefined where the author has none. Kilograms. */
export function massKg(part: Part): number | undefined {
  return part.mass === undefined ? undefined : si(part.mass).high;
}

/** Mass of these parts together and how many of them give none. A part that is a unit counts by its own mass where it gives one, without its inner parts. */
export function massOf(model: Model, parts: Iterable<ThingIndex>): { readonly kg: number; readonly unknown: number } {
  const all = [...parts].map((index) => partOf(model, index));
  const weighed = all
    .filter((part) => part.unit !== undefined && part.mass !== undefined && part.massFrom !== "base")
    .map((part) => `${part.id}/`);
  let kg = 0,
    unknown = 0;
  for (const part of all) {
    if (weighed.some((prefix) => part.prefix.startsWith(prefix))) continue;
    const one = massKg(part);
    if (one === undefined) unknown++;
    else kg += one * part.count;
  }
  return { kg, unknown };
}

/**
 * The gear that parts are carried with, off or on: what the line names, else what one of them asks for. Nothing where the line says how
 * many people carry them.
 */
export function gearOf(
  { things: all }: Model,
  { tools, people }: Pick<Act, "tools" | "people">,
  parts: readonly ThingIndex[],
): readonly Name[] {
  if (tools.length > 0 || people !== undefined) return tools;
  for (const index of parts) {
    const part = all[index];
    if (part?.is === "part" && part.liftWith.length > 0) return part.liftWith;
  }
  return tools;
}

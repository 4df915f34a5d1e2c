// The inverse of an event: which refit line answers it, and which events have none.

import { kindIn, precautions as kinds } from "../../tables/index.ts";
import type { Fluid, Model, ThingIndex } from "../../model/model.ts";
import type { Event, EventKind, RefitVerb } from "../trace.ts";
import type { Leaves } from "../end-state.ts";
import { at } from "../vector.ts";

const inverses: Readonly<Record<EventKind, RefitVerb>> = {
  out: "fit",
  slack: "tighten",
  off: "fit",
  aside: "back",
  back: "aside",
  drained: "fill",
  capped: "uncap",
  uncapped: "cap",
  stands: "lift",
  lapses: "stand",
  held: "release",
  "let-go": "support",
  gripped: "hold",
  met: "remove",
  in: "undo",
};

/** What answers this event; undefined for what is not mirrored. */
export function inverseOf(model: Model, event: Event, leaves: Leaves): RefitVerb | undefined {
  switch (event.kind) {
    case "off":
      return event.things.some((thing) => leaves.off.has(thing)) ? undefined : "fit";
    case "out":
      if (remaining(model, event, leaves) === 0 || staysOff(model, event.thing, leaves)) return undefined;
      return leaves.fingerTight.has(event.thing) ? "finger-tighten" : "fit";
    case "slack":
      return leaves.fingerTight.has(event.thing) || staysOff(model, event.thing, leaves) ? undefined : "tighten";
    case "held":
      return leaves.off.has(event.thing) ? undefined : "release";
    case "drained":
      return (model.things[event.thing] as Fluid).filled && !leaves.drained.has(event.thing) ? "fill" : undefined;
    // A proof is no state that lasts, and what stood already is taken away where it was taken first: there is nothing to take away.
    case "stands":
      return event.precautions.some((n) => !isProof(model, n) && at(event.before.standing, n) === 0) &&
        !staysOpen(model, event.thing, leaves)
        ? "lift"
        : undefined;
    case "lapses":
      return event.precautions.some((n) => !isProof(model, n)) ? "stand" : undefined;
    default:
      return inverses[event.kind];
  }
}

/** It holds a part that is left off: with nothing to hold it stays out as well. */
export function staysOff(model: Model, tie: ThingIndex, leaves: Leaves): boolean {
  const of = model.things[tie];
  return (
    of?.is === "tie" &&
    leaves.off.size > 0 &&
    (of.lowers.some((part) => leaves.off.has(part)) ||
      (of.uppers.length > 0 && of.uppers.every((part) => leaves.off.has(part))))
  );
}

/** Something that this hazard is on is left off, out or finger-tight: what stands against it is not taken back. */
export function staysOpen(model: Model, hazard: ThingIndex, leaves: Leaves): boolean {
  const of = model.things[hazard];
  return (
    of?.is === "hazard" &&
    [...of.on, ...of.pushes].some(
      (thing) =>
        leaves.off.has(thing) ||
        leaves.out.has(thing) ||
        leaves.fingerTight.has(thing) ||
        staysOff(model, thing, leaves),
    )
  );
}

/** How many pieces go back: all of a part, and of a tie those that `leaves out` does not name. */
export function remaining(model: Model, event: Event, leaves: Leaves): number {
  const part = event.kind === "off" && event.things.length === 1 ? model.parts[event.thing] : undefined;
  if (part) return part.count;
  if (event.kind !== "out" || !leaves.out.has(event.thing)) return event.count;
  const stays = leaves.out.get(event.thing);
  // Those that were out before this act are among them.
  return stays === undefined ? 0 : Math.max(0, event.count - Math.max(0, stays - at(event.before.out, event.thing)));
}

const isProof = (model: Model, precaution: number): boolean =>
  kindIn(kinds, model.precautions[precaution]!.kind)?.isProof === true;

/**
 * Events that cancel: made and undone again in the strip with nothing between that needed it (a trial assembly, safe keeping). Neither
 * is mirrored.
 */
export function cancelled(events: readonly Event[]): Set<number> {
  const gone = new Set<number>(),
    open = new Map<string, Event>();
  for (const event of events) {
    if (event.kind === "in" || event.kind === "met") {
      open.set(`${event.kind} ${event.thing}`, event);
      continue;
    }
    if (open.size === 0 || (event.kind !== "out" && event.kind !== "off")) continue;
    for (const thing of event.things) {
      const made = open.get(`${event.kind === "out" ? "in" : "met"} ${thing}`);
      if (!made || made.count !== event.count) continue;
      open.delete(`${event.kind === "out" ? "in" : "met"} ${thing}`);
      const needed = events
        .slice(made.index + 1, event.index)
        .some((between) => between.needs.includes(made.index) && !gone.has(between.index));
      if (!needed) {
        gone.add(made.index);
        gone.add(event.index);
      }
    }
  }
  return gone;
}

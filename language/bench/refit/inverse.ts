// The inverse of an event: which refit line answers it, and which events have none.

import { kindIn, precautions as kinds } from "../../tables/index.ts";
import type { Fluid, Model } from "../../model/model.ts";
import type { Event, EventKind, RefitVerb } from "../trace.ts";
import type { Leaves } from "../end-state.ts";

const inverses: Readonly<Record<EventKind, RefitVerb>> = {
  out: "fit", slack: "tighten", off: "fit", aside: "back", back: "aside", drained: "fill", capped: "uncap", uncapped: "cap", stands: "lift", lapses: "stand",
  held: "release", "let-go": "support", gripped: "hold", met: "remove", in: "undo",
};

/** What answers this event; undefined for what is not mirrored. */
export function inverseOf(model: Model, event: Event, leaves: Leaves): RefitVerb | undefined {
  switch (event.kind) {
    case "off": return event.things.some((thing) => leaves.off.has(thing)) ? undefined : "fit";
    case "out": return remaining(event, leaves) === 0 ? undefined : "fit";
    case "drained": return (model.things[event.thing] as Fluid).filled && !leaves.drained.has(event.thing) ? "fill" : undefined;
    // A proof is no state that lasts: there is nothing to take away.
    case "stands": return event.precautions.some((n) => !isProof(model, n)) ? "lift" : undefined;
    case "lapses": return event.precautions.some((n) => !isProof(model, n)) ? "stand" : undefined;
    default: return inverses[event.kind];
  }
}

/** How many of a tie go back in: those that `leaves out` names stay out. */
export function remaining(event: Event, leaves: Leaves): number {
  if (!leaves.out.has(event.thing)) return event.count;
  const stays = leaves.out.get(event.thing);
  return stays === undefined ? 0 : Math.max(0, event.count - stays);
}

const isProof = (model: Model, precaution: number): boolean => kindIn(kinds, model.precautions[precaution]!.kind)?.isProof === true;

/**
 * Events that cancel: made and undone again in the strip with nothing between that needed it (a trial assembly, safe keeping). Neither
 * is mirrored.
 */
export function cancelled(events: readonly Event[]): Set<number> {
  const gone = new Set<number>(), open = new Map<string, Event>();
  for (const event of events) {
    if (event.kind === "in" || event.kind === "met") { open.set(`${event.kind} ${event.thing}`, event); continue; }
    if (event.kind !== "out" && event.kind !== "off") continue;
    for (const thing of event.things) {
      const made = open.get(`${event.kind === "out" ? "in" : "met"} ${thing}`);
      if (!made || made.count !== event.count) continue;
      open.delete(`${event.kind === "out" ? "in" : "met"} ${thing}`);
      const needed = events.slice(made.index + 1, event.index).some((between) => between.needs.includes(made.index) && !gone.has(between.index));
      if (!needed) { gone.add(made.index); gone.add(event.index); }
    }
  }
  return gone;
}

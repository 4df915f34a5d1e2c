// The inverse of an event: which refit line answers it, and which events have none.

import { kindIn, precautions as kinds } from "../../tables/index.ts";
import type { Fluid, Model, ThingIndex } from "../../model/model.ts";
import type { Event, EventKind, RefitVerb } from "../trace.ts";
import type { Leaves } from "../leaves.ts";
import { actsUnderPower, hangsBy, machineOf, type Machine } from "../machine.ts";
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
      return leaves.partings.has(event.index) ? undefined : "fit";
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

/** What answers it where its author writes that it is answered, whatever is left; undefined for a proof, of which nothing is taken back. */
export function writtenInverseOf(model: Model, event: Event, leaves: Leaves): RefitVerb | undefined {
  const isPrecaution = event.kind === "stands" || event.kind === "lapses";
  return inverseOf(model, event, leaves) ?? (isPrecaution ? undefined : inverses[event.kind]);
}

/** It holds a part that is left off to one that is not: with nothing to hold it stays out as well. */
export function staysOff(model: Model, tie: ThingIndex, leaves: Leaves): boolean {
  const of = model.things[tie];
  if (of?.is !== "tie" || leaves.off.size === 0) return false;
  const [first, ...sides] = [...of.lowers, ...of.uppers];
  return first !== undefined && sides.some((side) => !leaves.together(first, side));
}

/**
 * Something that this hazard is on is left off, out or finger-tight, or it acts under power and a guard is left off, or with all that
 * holds it out: what stands against it is not taken back.
 */
export function staysOpen(model: Model, hazard: ThingIndex, leaves: Leaves): boolean {
  const of = model.things[hazard];
  if (of?.is !== "hazard") return false;
  const machine = machineOf(model);
  return (
    (actsUnderPower(of) &&
      machine.guards.some(({ index }) => leaves.off.has(index) || isLoose(machine, index, leaves))) ||
    [...of.on, ...of.pushes].some(
      (thing) =>
        leaves.off.has(thing) ||
        leaves.out.has(thing) ||
        leaves.fingerTight.has(thing) ||
        staysOff(model, thing, leaves),
    )
  );
}

function isLoose(machine: Machine, part: ThingIndex, { out }: Leaves): boolean {
  const ties = hangsBy(machine, part);
  return ties.length > 0 && ties.every(({ index, count }) => out.has(index) && (out.get(index) ?? count) >= count);
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

/** What brings a thing back to how it was, by what takes it from there again. */
const undoneBy: Partial<Readonly<Record<EventKind, EventKind>>> = {
  out: "in",
  off: "met",
  aside: "back",
  held: "let-go",
};
const makes: ReadonlySet<EventKind> = new Set(Object.values(undoneBy));
export const undoes: ReadonlySet<EventKind> = new Set(Object.keys(undoneBy) as EventKind[]);

/**
 * Make, then undo, in the strip with nothing between that needed it (a trial assembly, safe keeping): neither is mirrored. How many
 * pieces are left of the events that this takes some from, 0 where nothing is; the pieces that went in last come out first.
 */
export function withoutTrials(model: Model, events: readonly Event[]): Map<number, number> {
  const left = new Map<number, number>(),
    made: Event[] = [],
    /** Tie -> how often it was loosened while only pieces of a trial held it. */
    loosened = new Map<ThingIndex, number[]>();
  const leftOf = (event: Event): number => left.get(event.index) ?? event.count;
  const isNeeded = (one: Event, until: Event): boolean =>
    events
      .slice(one.index + 1, until.index)
      .some((between) => between.needs.includes(one.index) && leftOf(between) > 0);
  const openFor = (event: Event, kind: EventKind): Event[] =>
    made.filter((one) => one.kind === kind && leftOf(one) > 0 && !isNeeded(one, event)).reverse();
  for (const event of events) {
    if (makes.has(event.kind)) made.push(event);
    const kind = undoneBy[event.kind === "slack" ? "out" : event.kind];
    if (made.length === 0 || kind === undefined) continue;
    if (event.kind === "off") {
      // All that moves now came on by these, and nothing else came on with them.
      const moved = new Set(event.moved),
        mets: Event[] = [];
      for (const one of openFor(event, kind)) {
        if (!one.moved.every((part) => moved.has(part))) continue;
        mets.push(one);
        for (const part of one.moved) moved.delete(part);
      }
      if (moved.size === 0) for (const one of [event, ...mets]) left.set(one.index, 0);
      continue;
    }
    const open = openFor(event, kind).filter(({ thing }) => thing === event.thing);
    if (event.kind === "slack") {
      const pieces = open.reduce((sum, one) => sum + leftOf(one), 0),
        tie = model.things[event.thing];
      if (tie?.is === "tie" && pieces > 0 && pieces === tie.count - at(event.before.out, tie.index))
        loosened.set(event.thing, [...(loosened.get(event.thing) ?? []), event.index]);
      continue;
    }
    for (const one of open) {
      const pieces = Math.min(leftOf(one), leftOf(event));
      left.set(one.index, leftOf(one) - pieces);
      left.set(event.index, leftOf(event) - pieces);
    }
    if (open.some((one) => leftOf(one) > 0)) continue;
    for (const index of loosened.get(event.thing) ?? []) left.set(index, 0);
    loosened.delete(event.thing);
  }
  return left;
}

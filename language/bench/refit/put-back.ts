// What the strip takes off and puts back itself (a look inside, a way to something that was not needed after all) is no part of the way
// back, where nothing that is still apart at the end was done between.

import type { Model, ThingIndex } from "../../model/model.ts";
import { isAlwaysNew, isOneTimeKind } from "../new-parts.ts";
import type { Event } from "../trace.ts";
import { TIGHT, type State } from "../state.ts";
import { at } from "../vector.ts";

/**
 * Off and on again, out and in again. `left`: of an event how many pieces still count, 0 for none; changed here. What is used up by coming
 * apart stays: it is asked for, and counted, where it goes back.
 */
export function withoutPutBack(
  model: Model,
  events: readonly Event[],
  stripEnd: State,
  left: Map<number, number>,
): void {
  /** Finger-tight, or not yet at its last stage, it is not as it was: not before it is tightened, as it stays or as the next act finds it. */
  const isTightAfter = ({ act, index, thing }: Event): boolean =>
    (!act.fingerTight && act.stage === undefined) ||
    at((events.slice(index + 1).find((one) => one.things.includes(thing))?.before ?? stripEnd).slack, thing) === TIGHT;
  const leftOf = (event: Event): number => left.get(event.index) ?? event.count,
    isNeeded = (one: Event, until: number): boolean =>
      events.slice(one.index + 1, until).some((event) => event.needs.includes(one.index) && leftOf(event) > 0),
    before = (event: Event, kind: Event["kind"]): Event[] =>
      events
        .slice(0, event.index)
        .filter((one) => one.kind === kind && one.thing === event.thing && leftOf(one) > 0 && !one.assumed)
        .reverse();
  for (const event of events) {
    if ((event.kind !== "met" && event.kind !== "in") || event.assumed || leftOf(event) === 0) continue;
    if (event.kind === "met") {
      const [off] = before(event, "off");
      if (
        !off ||
        off.from !== event.from ||
        off.things.some((thing) => isUsedUp(model, thing)) ||
        !isSame(off.moved, event.moved) ||
        isNeeded(off, event.index)
      )
        continue;
      left.set(off.index, 0);
      left.set(event.index, 0);
      continue;
    }
    if (isUsedUp(model, event.thing) || !isTightAfter(event)) continue;
    for (const out of before(event, "out")) {
      const pieces = Math.min(leftOf(out), leftOf(event));
      if (pieces === 0 || isNeeded(out, event.index)) break;
      left.set(out.index, leftOf(out) - pieces);
      left.set(event.index, leftOf(event) - pieces);
    }
    const tie = model.things[event.thing],
      isIn = tie?.is === "tie" && at(event.before.out, tie.index) === event.count;
    // All in and tight: what was loosened before it came out is tight as well.
    if (isIn && leftOf(event) === 0)
      for (const slack of before(event, "slack")) {
        if (isNeeded(slack, event.index)) break;
        left.set(slack.index, 0);
      }
  }
}

const isSame = (a: readonly ThingIndex[], b: readonly ThingIndex[]): boolean =>
  a.length === b.length && a.every((one) => b.includes(one));

function isUsedUp(model: Model, thing: ThingIndex): boolean {
  const item = model.things[thing];
  if (item?.is !== "part" && item?.is !== "tie") return true;
  if (isOneTimeKind(item) || isAlwaysNew(item) || item.renew !== undefined) return true;
  return item.is === "tie" && (item.washers.length > 0 || item.uses.length > 0);
}

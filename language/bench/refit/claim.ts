// What the author wrote in refit blocks. An act there that the computed reverse also holds is that act: it claims the event.

import type { Act } from "../../model/act.ts";
import { isKindOf, precautions } from "../../tables/index.ts";
import type { Model, ThingIndex } from "../../model/model.ts";
import type { Leaves } from "../leaves.ts";
import type { Event, EventKind, StepRun } from "../trace.ts";
import { writtenInverseOf } from "./inverse.ts";

const kindsOf: Readonly<Record<string, readonly EventKind[]>> = {
  fit: ["off", "out"],
  press: ["off", "out"],
  tighten: ["slack", "out"],
  slide: ["aside"],
  swing: ["aside"],
  open: ["aside"],
  fill: ["drained"],
  restore: ["stands"],
  undo: ["in"],
  remove: ["met"],
  cap: ["uncapped"],
  uncap: ["capped"],
  release: ["held"],
  support: ["let-go"],
  hold: ["gripped"],
};

export interface Claims {
  readonly model: Model;
  readonly events: readonly Event[];
  /** By thing. */
  readonly about: ReadonlyMap<ThingIndex, readonly Event[]>;
  readonly isTaken: (event: Event) => boolean;
  /** Its step is written otherwise (`instead`). */
  readonly isDropped: (event: Event) => boolean;
  readonly leaves: Leaves;
}

/** The events that this act answers, none where it stands for itself. */
export function claimed(claims: Claims, act: Act, things: readonly ThingIndex[], step: StepRun | undefined): Event[] {
  const lapses = isKindOf(precautions, act.verb),
    kinds = kindsOf[act.verb] ?? (lapses ? (["lapses"] as const) : []);
  if (kinds.length === 0) return [];
  const open: Event[] = [];
  for (const thing of things)
    for (const event of claims.about.get(thing) ?? []) {
      if (
        !kinds.includes(event.kind) ||
        open.includes(event) ||
        claims.isTaken(event) ||
        (event.kind === "out" && claims.leaves.out.has(event.thing)) ||
        // Nothing answers it (a proof, a fluid that is not filled again): what is written of it stands for itself.
        writtenInverseOf(claims.model, event, claims.leaves) === undefined
      )
        continue;
      if (claims.isDropped(event) && event.around.step !== step) continue;
      open.push(event);
    }
  open.sort((a, b) => a.index - b.index);
  const slack = act.verb === "tighten" ? open.filter((e) => e.kind === "slack") : [];
  const list = slack.length > 0 ? slack : open;
  // One of several of the same hazard: that of its own step.
  if (act.verb === "restore" || lapses) {
    const own = list.filter((e) => e.around.step === step);
    return own.length > 0 ? own : list;
  }
  if (act.count === undefined) return list;
  const latest = new Map<ThingIndex, Event>();
  for (const event of list) {
    const had = latest.get(event.thing);
    latest.set(event.thing, had && had.around.step === step && event.around.step !== step ? had : event);
  }
  return [...latest.values()];
}

// Holders: what is supported from here on, what is gripped for the acts of its step.

import type { Act } from "../model/act.ts";
import type { ThingIndex } from "../model/model.ts";
import { happen, reasonOf, report, type Bench } from "./bench.ts";
import { handsOn } from "./hazards.ts";
import { isPart } from "./machine.ts";
import { HELD, NEVER } from "./state.ts";
import type { Around } from "./trace.ts";
import { at, set } from "./vector.ts";

/** `support X with T`: held until `release X`, or until it is taken off. */
export function support(bench: Bench, act: Act, thing: ThingIndex, around: Around): void {
  if (!isPart(bench.model, thing)) return;
  const { needs, hazards } = handsOn(bench, act, [thing], around);
  const event = bench.phase === "strip" ? happen(bench, "held", thing, act, around, needs, { hazards }) : NEVER,
    s = bench.state;
  bench.state = { ...s, flags: set(s.flags, thing, at(s.flags, thing) | HELD), heldBy: set(s.heldBy, thing, event) };
}

/** `hold X with T`: kept from turning; the mirrored act needs it just the same. It carries no weight. */
export function grip(bench: Bench, act: Act, thing: ThingIndex, around: Around): void {
  const { needs, hazards } = handsOn(bench, act, [thing], around);
  if (bench.phase === "strip") happen(bench, "gripped", thing, act, around, needs, { hazards });
}

export function release(bench: Bench, act: Act, thing: ThingIndex, around: Around): void {
  if (!isPart(bench.model, thing)) return;
  const s = bench.state,
    by = at(s.heldBy, thing);
  if ((at(s.flags, thing) & HELD) === 0 && bench.phase === "strip") {
    report(bench, act.at, [thing], [reasonOf("sequence/already-undone", { thing, words: ["not held"] })], act, around);
    return;
  }
  const { needs, hazards } = handsOn(bench, act, [thing], around);
  if (bench.phase === "strip")
    happen(bench, "let-go", thing, act, around, by === NEVER ? needs : [by, ...needs], { hazards });
  bench.state = {
    ...bench.state,
    flags: set(bench.state.flags, thing, at(bench.state.flags, thing) & ~HELD),
    heldBy: set(bench.state.heldBy, thing, NEVER),
  };
}

// What must be new at the refit: the rule of the thing itself, of its unit, of its kind.

import type { Act } from "../model/act.ts";
import type { Part, ThingIndex, Tie } from "../model/model.ts";
import { fastenerKinds, jointKinds, kindIn, partKinds } from "../tables/index.ts";
import { isUnknown } from "./access.ts";
import { isAssumed, reasonOf, report, type Bench } from "./bench.ts";
import { isPart } from "./machine.ts";
import { A_DOUBT, NEVER, RENEWED, SCRAP } from "./state.ts";
import { openedInPassing } from "./filler.ts";
import { partingOf, together } from "./ties.ts";
import type { Around, RefitPerformed } from "./trace.ts";
import { at, set } from "./vector.ts";

/** Kinds that by their nature should be new: alone they only raise a question. */
export const isOneTimeKind = (item: Part | Tie): boolean =>
  item.is === "part"
    ? kindIn(partKinds, item.kind)?.oneTime === true
    : !item.fastener && item.uses.length === 0 && kindIn(jointKinds, item.kind)?.oneTime === true;
/** It keeps a fastener from coming undone. */
const secures = (item: Part | Tie): boolean =>
  item.is === "part"
    ? kindIn(partKinds, item.kind)?.secures === true
    : !item.fastener && kindIn(jointKinds, item.kind)?.secures === true;
/** Undoing destroys it. */
export const isDestroyed = (item: Part | Tie): boolean =>
  item.is === "tie" && item.fastener && kindIn(fastenerKinds, item.kind)?.oneWay === true;
export const isAlwaysNew = (item: Part | Tie): boolean => item.renew?.when === "always" || isDestroyed(item);

const itemOf = (bench: Bench, thing: ThingIndex): Part | Tie | undefined => {
  const item = bench.model.things[thing];
  return item?.is === "part" || item?.is === "tie" ? item : undefined;
};

/** `renew X` as a line of its own: on the way back the new one is there before anything is fitted to it. */
export function renewHere(bench: Bench, act: Act, things: readonly ThingIndex[], around: Around): void {
  for (const thing of bench.phase === "refit" ? things : []) {
    if (!isPart(bench.model, thing) || bench.metIn.has(thing)) continue;
    const on = bench.model.parts.find(
      ({ index }) => bench.metIn.has(index) && bench.machine.hosts[index]!.includes(thing),
    );
    if (on)
      report(
        bench,
        act.at,
        [thing, on.index],
        [reasonOf("refit/contradiction", { thing, by: [on.index], words: ["renewed late"], at: on.at })],
        act,
        around,
      );
  }
  renew(bench, things);
}

export function renew(bench: Bench, things: readonly ThingIndex[], scrap = false): void {
  for (const thing of things)
    bench.state = {
      ...bench.state,
      flags: set(bench.state.flags, thing, at(bench.state.flags, thing) | (scrap ? SCRAP : RENEWED)),
    };
}

/**
 * `reuse X "reason"`: the old one goes back, and the reason is printed. Without a reason it stays a question; so does, whatever the
 * reason, what keeps a fastener from coming undone, and what a hazard is on.
 */
export function reuse(bench: Bench, act: Act, things: readonly ThingIndex[], around: Around): void {
  for (const thing of things) {
    const item = itemOf(bench, thing);
    if (!item) continue;
    if ((at(bench.state.flags, thing) & SCRAP) !== 0)
      report(
        bench,
        act.at,
        [thing],
        [reasonOf("fastener/one-time-reused", { thing, words: [item.kind, "scrap"], at: item.at })],
        act,
        around,
      );
    else if (isAlwaysNew(item))
      report(
        bench,
        act.at,
        [thing],
        [reasonOf("fastener/one-time-reused", { thing, words: [item.kind], at: item.renew?.at ?? item.at })],
        act,
        around,
      );
    else if (isOneTimeKind(item)) {
      const hazards = (bench.machine.hazardsOn[thing] ?? []).map((hazard) => hazard.index);
      const why = secures(item) ? "secures" : hazards.length > 0 ? "hazard" : act.text === "" ? "no reason" : undefined;
      if (why === undefined) continue;
      report(
        bench,
        act.at,
        [thing],
        [reasonOf("refit/seal-reused", { thing, by: hazards, words: [item.kind, why], at: item.at })],
        act,
        around,
      );
    }
  }
}

/**
 * What must be new every time and lies between two parts that the strip parted, and that nothing took out or renewed: said at the act
 * that opened its joint.
 */
export function judgeOldStays(bench: Bench): void {
  const { model, state: s } = bench;
  for (const part of model.parts) {
    if (
      !part.between ||
      !isAlwaysNew(part) ||
      at(s.offBy, part.index) !== NEVER ||
      (at(s.flags, part.index) & RENEWED) !== 0
    )
      continue;
    const [ones, others] = part.between,
      sides = [part.index, ...ones, ...others];
    // Off already when this procedure began: it lies with neither side.
    if (![...ones, ...others].some((side) => together(s, part.index, side))) continue;
    if (sides.some((side) => isUnknown(bench, side) || isAssumed(bench, side, A_DOUBT))) continue;
    const opened = Math.max(NEVER, ...ones.flatMap((one) => others.map((other) => partingOf(s, one, other))));
    const event = bench.events[opened];
    if (!event || event.assumed) continue;
    report(
      bench,
      event.act.at,
      [part.index],
      [reasonOf("removal/old-stays", { thing: part.index, at: part.renew?.at ?? part.at })],
      event.act,
      event.around,
    );
  }
}

/** Things of a one-time kind that go back in, and nothing says that they are new: a question each. */
export function questionSeals(bench: Bench, refit: readonly RefitPerformed[]): void {
  const { model } = bench,
    reused = reusedIn([
      ...bench.performed,
      ...refit.flatMap(({ op }) => (op.act ? [{ act: op.act, things: op.things }] : [])),
    ]);
  for (const { op, before } of refit) {
    const { event } = op;
    if (!event || event.assumed) continue;
    const fluid = op.verb === "fill" ? model.things[event.thing] : undefined;
    const things =
      fluid?.is === "fluid"
        ? openedInPassing(model, before, fluid).map((tie) => tie.index)
        : event.kind === "off"
          ? event.things
          : event.kind === "out"
            ? [event.thing]
            : [];
    askFor(bench, things, reused, event.act, event.around);
  }
}

/** The same for the written refit of a strip: said where it goes back in. One that only `needs` a strip is asked for there. */
export function questionWrittenSeals(bench: Bench): void {
  const { model } = bench,
    reused = reusedIn(bench.performed);
  for (const { act, around, things, before, refused } of bench.performed) {
    if (refused || (act.verb !== "fit" && act.verb !== "press" && act.verb !== "fill")) continue;
    const closed = things.flatMap((thing) => {
      const of = model.things[thing];
      return of?.is === "fluid" ? openedInPassing(model, before, of).map((tie) => tie.index) : [thing];
    });
    askFor(bench, closed, reused, act, around);
  }
}

const reusedIn = (acts: readonly { readonly act: Act; readonly things: readonly ThingIndex[] }[]): Set<ThingIndex> =>
  new Set(acts.filter(({ act }) => act.verb === "reuse").flatMap(({ things }) => things));

function askFor(
  bench: Bench,
  things: readonly ThingIndex[],
  reused: ReadonlySet<ThingIndex>,
  act: Act,
  around: Around,
): void {
  for (const thing of things) {
    const item = itemOf(bench, thing),
      asked = item ? [item] : [];
    if (item?.is === "tie") for (const washer of item.washers) asked.push(bench.model.parts[washer.part]!);
    for (const one of asked) {
      const isNew = one.renew?.when !== undefined || (at(bench.state.flags, one.index) & RENEWED) !== 0;
      if (!isOneTimeKind(one) || isNew || reused.has(one.index)) continue;
      report(
        bench,
        act.at,
        [one.index],
        [reasonOf("refit/seal-reused", { thing: one.index, words: [one.kind], at: one.at })],
        act,
        around,
      );
    }
  }
}

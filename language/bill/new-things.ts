// Which things go back in new, and how certain that is: from the rule of the thing, its unit's standing rule, its kind, and what
// the acts of one performance say. The refit, the manual and the bill all ask here. It buys nothing and prints nothing.

import { isAlwaysNew, isDestroyed, isOneTimeKind } from "../bench/new-parts.ts";
import type { Act } from "../model/act.ts";
import { renewedTogether } from "../bench/renewed-sets.ts";
import type { Model, Part, ThingIndex, Tie } from "../model/model.ts";
import type { Around, Performance } from "../bench/trace.ts";
import { jointKinds, kindIn } from "../tables/index.ts";
import { namedThings } from "./named-things.ts";

/** certain: it is fitted new whatever is found. worn: new only if found so, or where a reading asks for it. */
export type Grade = "certain" | "worn";

/** Why a thing is new. `kind-not-said` is no rule of the author's: the kind is used once by nature, and nobody said new or old. */
export type NewReason =
  | "rule"
  | "standing-rule"
  | "destroyed"
  | "act"
  | "worn"
  | "damaged"
  | "as-a-set"
  | "by-pairs"
  | "every"
  | "reading"
  | "chosen"
  | "scrap"
  | "kind-not-said";

export interface NewThing {
  readonly thing: ThingIndex;
  readonly grade: Grade;
  readonly reason: NewReason;
  /** `every 3 strips`. */
  readonly strips: number | undefined;
}

/** An act of a performance, in either half, with the things that its names stand for. */
export interface SaidAct {
  readonly act: Act;
  readonly around: Around;
  readonly things: readonly ThingIndex[];
  readonly half: "strip" | "refit" | "finish";
}

/** Every act that somebody wrote and that is performed, in the order of doing. */
export function saidActs(performance: Performance): readonly SaidAct[] {
  const { strip, refit, written, finish } = performance;
  return [
    ...strip.map(({ act, around, things }): SaidAct => ({ act, around, things, half: "strip" })),
    ...refit.flatMap(({ op }): SaidAct[] =>
      op.act ? [{ act: op.act, around: op.around, things: op.things, half: "refit" }] : [],
    ),
    ...written.map(({ act, around, things }): SaidAct => ({ act, around, things, half: "refit" })),
    ...finish.map(({ act, around, things }): SaidAct => ({ act, around, things, half: "finish" })),
  ];
}

/** What must be new, by thing; of two reasons the more certain one. */
export function newThings(performance: Performance): ReadonlyMap<ThingIndex, NewThing> {
  const { model } = performance,
    found = new Map<ThingIndex, NewThing>(),
    reused = new Set<ThingIndex>();
  const put = (thing: ThingIndex, grade: Grade, reason: NewReason, strips?: number): void => {
    const had = found.get(thing);
    if (!had || (had.grade === "worn" && grade === "certain")) found.set(thing, { thing, grade, reason, strips });
  };
  const acts = saidActs(performance);
  for (const { act, things } of acts) if (act.verb === "reuse") for (const thing of things) reused.add(thing);
  for (const item of [...model.parts, ...model.ties]) {
    const rule = ruleOf(item);
    // What only says what goes with it gives no reason of its own: a reading or an act may.
    if (rule && (rule.reason === "as-a-set" || rule.reason === "by-pairs")) continue;
    if (rule && !(reused.has(item.index) && rule.reason === "kind-not-said"))
      put(item.index, rule.grade, rule.reason, rule.strips);
  }
  for (const { act, around, things } of acts) {
    if (act.verb === "renew")
      for (const thing of things) if (!isInPart(model, act, thing)) put(thing, "certain", "act");
    if (act.verb === "scrap") for (const thing of things) put(thing, "certain", "scrap");
    for (const consequence of act.consequences) {
      // In a build where this reading fails there is no doubt.
      const grade = act.id !== undefined && model.chosen.has(`${act.id.text} fails`) ? "certain" : "worn";
      if (consequence.is === "renew" || consequence.is === "scrap")
        for (const thing of namedThings(model, consequence.names, around)) put(thing, grade, "reading");
      if (consequence.is === "choose")
        for (const thing of namedThings(model, consequence.names, around)) put(thing, "worn", "chosen");
    }
  }
  for (const item of [...model.parts, ...model.ties]) {
    const rule = ruleOf(item);
    if (rule?.reason === "as-a-set" || rule?.reason === "by-pairs") put(item.index, rule.grade, rule.reason);
  }
  // What is renewed as a set, or as a pair of two, is new with the first of them that is.
  for (const group of new Set(renewedTogether(model).values())) {
    if (group.when === "by-pairs" && group.things.length !== 2) continue;
    if (group.things.some(({ index }) => found.get(index)?.grade === "certain"))
      for (const { index } of group.things) put(index, "certain", group.when);
    // Of a matched set only one may say the rule: it holds for all of them.
    else if (group.when === "as-a-set") for (const { index } of group.things) put(index, "worn", group.when);
  }
  return found;
}

/** `renew 2 of X`: the rest of them stays. */
export function isInPart(model: Model, act: Act, thing: ThingIndex): boolean {
  const item = model.things[thing];
  return act.count !== undefined && (item?.is === "part" || item?.is === "tie") && act.count < item.count;
}

function ruleOf(item: Part | Tie): Omit<NewThing, "thing"> | undefined {
  const of = (grade: Grade, reason: NewReason, strips?: number): Omit<NewThing, "thing"> => ({
    grade,
    reason,
    strips,
  });
  if (isDestroyed(item)) return of("certain", "destroyed");
  if (isAlwaysNew(item)) return of("certain", item.renew?.said === false ? "standing-rule" : "rule");
  const rule = item.renew;
  switch (rule?.when) {
    case "always":
      return of("certain", "rule");
    case "worn":
    case "damaged":
      return of("worn", rule.when);
    case "every":
      return of("worn", "every", rule.strips);
    case undefined:
      if (rule?.together !== undefined && !isOneTimeKind(item)) return of("worn", rule.together);
  }
  if (item.is === "tie" && item.reuseTimes !== undefined) return of("worn", "every", item.reuseTimes);
  // A joint that is made again only with something new says what it uses up; it is bought as that, not as a joint.
  if (item.is === "tie" && !item.fastener && kindIn(jointKinds, item.kind)?.remade === "with new") return undefined;
  return isOneTimeKind(item) ? of("worn", "kind-not-said") : undefined;
}

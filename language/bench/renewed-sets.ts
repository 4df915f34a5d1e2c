// What is renewed by pairs or as a set is never renewed in part: an old one beside a new one wears it, or does not match it.

import type { Act, Name } from "../model/act.ts";
import { kept } from "../model/kept.ts";
import type { Entry, Model, Part, Procedure, ThingIndex, Tie } from "../model/model.ts";
import { matchedSets } from "./matched.ts";
import { reasonOf, report, resolve, type Bench } from "./bench.ts";
import type { Around, Performance } from "./trace.ts";

/** Things of one declaration, or matched with each other, that are renewed together. */
export interface RenewedTogether {
  readonly when: "as-a-set" | "by-pairs";
  readonly things: readonly (Part | Tie)[];
  /** Pieces of all of them; undefined where nobody knows. */
  readonly pieces: number | undefined;
}

/** By thing: the pair or set that it belongs to. */
export const renewedTogether = (model: Model): ReadonlyMap<ThingIndex, RenewedTogether> =>
  groups(model, () => groupsOf(model));
const groups = kept<Model, ReadonlyMap<ThingIndex, RenewedTogether>>();

function groupsOf(model: Model): ReadonlyMap<ThingIndex, RenewedTogether> {
  const found = new Map<ThingIndex, RenewedTogether>();
  const ruled = [...model.parts, ...model.ties].filter(({ renew }) => renew?.together !== undefined);
  const matched = matchedSets(model),
    setOf = (one: Part | Tie): readonly (Part | Tie)[] | undefined =>
      one.renew!.together === "as-a-set" ? matched.get(one.index) : undefined;
  const declared = Map.groupBy(
    ruled.filter((one) => !setOf(one)),
    ({ prefix, declared: id }) => prefix + id,
  );
  for (const things of [
    ...new Set(ruled.flatMap((one) => [setOf(one) ?? []].filter((set) => set.length > 0))),
    ...declared.values(),
  ]) {
    const group: RenewedTogether = {
      when: things.some(({ renew }) => renew?.together === "as-a-set") ? "as-a-set" : "by-pairs",
      things,
      pieces: things.some(({ countUnknown }) => countUnknown)
        ? undefined
        : things.reduce((sum, { count }) => sum + count, 0),
    };
    for (const { index } of things) found.set(index, group);
  }
  return found;
}

/**
 * So many new ones of each thing leave no old one beside a new one: all of them, or whole pairs. Of things that are several themselves
 * (four springs a head) the pairs are within each; of single ones they are among them.
 */
function isWhole({ when, things, pieces }: RenewedTogether, renewed: readonly number[]): boolean {
  const sum = renewed.reduce((a, b) => a + b, 0);
  if (sum === 0 || pieces === undefined || sum >= pieces) return true;
  if (when === "as-a-set") return false;
  return things.some(({ count }) => count > 1)
    ? renewed.every((count, i) => count % 2 === 0 || count >= things[i]!.count)
    : sum % 2 === 0;
}

/** An act, in whatever half, that says that something is new or is not used again. */
type Said = Pick<Performance["strip"][number], "act" | "around">;

export function judgeSets(bench: Bench, acts: readonly Said[]): void {
  const together = renewedTogether(bench.model);
  if (together.size === 0) return;
  const certain = new Map<ThingIndex, number>();
  const add = (into: Map<ThingIndex, number>, act: Act, things: readonly ThingIndex[]): void => {
    for (const thing of things) {
      const all = piecesOf(bench.model, thing),
        had = into.get(thing) ?? 0;
      into.set(thing, Math.min(all, act.rest ? all : had + (act.count ?? all)));
    }
  };
  for (const { act, around } of acts)
    if (isRenewing(act.verb)) add(certain, act, resolve(bench, act.names, around));
    else if (act.id && bench.model.chosen.has(`${act.id.text} fails`))
      for (const then of renewals(act)) add(certain, { ...act, count: undefined }, resolve(bench, then.names, around));
  for (const { act, around } of acts) {
    if (isRenewing(act.verb)) one(bench, act, around, resolve(bench, act.names, around), certain, together);
    // Where something else is said for the case that it fails, the build in which it does is the one to judge by.
    if (act.id && !bench.model.chosen.has(`${act.id.text} fails`) && asksFor(around.procedure, act.id.text)) continue;
    for (const then of renewals(act)) {
      const things = resolve(bench, then.names, around),
        renewed = new Map(certain);
      for (const thing of things) renewed.set(thing, piecesOf(bench.model, thing));
      one(bench, act, around, things, renewed, together);
    }
  }
}

const renewals = (act: Act): readonly { readonly names: readonly Name[] }[] =>
  act.consequences.flatMap((then) => (then.is === "renew" || then.is === "scrap" ? [then] : []));

/** `if READING fails` stands somewhere in it. */
function asksFor({ body, refit, finish }: Procedure, reading: string): boolean {
  const inside = (entries: readonly Entry[]): boolean =>
    entries.some(
      (entry) =>
        entry.is === "block" &&
        (entry.condition?.states.some(({ name, state }) => state === "fails" && name.text === reading) === true ||
          inside(entry.body)),
    );
  return [body, refit, finish].some(inside);
}

const isRenewing = (verb: string): boolean => verb === "renew" || verb === "scrap";

const piecesOf = (model: Model, thing: ThingIndex): number => {
  const of = model.things[thing];
  return of?.is === "part" || of?.is === "tie" ? of.count : 1;
};

/** Each pair or set that is broken is said once, at the first line that breaks it. */
function one(
  bench: Bench,
  act: Act,
  around: Around,
  things: readonly ThingIndex[],
  renewed: ReadonlyMap<ThingIndex, number>,
  together: ReadonlyMap<ThingIndex, RenewedTogether>,
): void {
  for (const group of new Set(things.flatMap((thing) => together.get(thing) ?? []))) {
    const counts = group.things.map(({ index }) => renewed.get(index) ?? 0),
      sum = counts.reduce((a, b) => a + b, 0);
    if (isWhole(group, counts)) continue;
    const thing = group.things.find((_, i) => counts[i]! > 0)!;
    const isSaid = bench.problems.some(
      ({ rule, about, at }) => rule === "refit/set-broken" && (about[0] === thing.index || at.start === act.at.start),
    );
    if (isSaid) continue;
    report(
      bench,
      act.at,
      [thing.index],
      [
        reasonOf("refit/set-broken", {
          thing: thing.index,
          by: group.things.filter((_, i) => counts[i] === 0).map(({ index }) => index),
          words: [group.when],
          numbers: [sum, group.pieces!],
          at: group.things.find(({ renew }) => renew?.together === group.when)!.renew!.at,
        }),
      ],
      act,
      around,
    );
  }
}

// What the bench asks of a model again and again, worked out once for each model: who is tied to whom, which ties clamp what,
// which hazards ask for something when a thing is touched. Facts of the declarations only, no state.

import { kindIn, fastenerKinds, fluidKinds, hazardKinds, partKinds } from "../tables/index.ts";
import { kept } from "../model/kept.ts";
import type { Hazard, Model, Part, ThingIndex, Tie } from "../model/model.ts";

/** One way to get from a part to a part beside it. */
export interface Edge {
  readonly to: ThingIndex;
  /** The tie between them; -1 for what fits, lies on, or lies between. */
  readonly tie: ThingIndex;
  /** The tie is undone by an action of its own; else it lets go in passing. */
  readonly undone: boolean;
  /** This one hangs on that one. */
  readonly hangs: boolean;
}

export interface Machine {
  readonly model: Model;
  /** By part. */
  readonly edges: readonly (readonly Edge[])[];
  readonly tiesOf: readonly (readonly Tie[])[];
  /** By part: what it hangs on, fits, lies on, or lies between. */
  readonly hosts: readonly (readonly ThingIndex[])[];
  /** By part that lies between two others: the ties that clamp it. */
  readonly clamps: readonly (readonly Tie[])[];
  /** By thing: the hazards that ask for all their precautions when it is touched. */
  readonly hazardsOn: readonly (readonly Hazard[])[];
  /** By thing that a precaution is behind: that hazard, and how many precautions come before that one. */
  readonly guarded: readonly (readonly { readonly hazard: Hazard; readonly before: number }[])[];
  /** By part: fluids that run through it. */
  readonly fluidsIn: readonly (readonly ThingIndex[])[];
  /** By part: hazards that throw it when its last tie goes. */
  readonly pushedBy: readonly (readonly Hazard[])[];
  /** By thing: a hazard may ask for something when it is touched: it is on it, or guarded by it, or pushes a part that this ties. */
  readonly isHazardous: readonly boolean[];
  /** Parts that must be on under power. */
  readonly guards: readonly Part[];
  readonly isBase: (thing: ThingIndex) => boolean;
}

export function isPart(model: Model, thing: ThingIndex): boolean {
  return thing < model.parts.length;
}
export function isTie(model: Model, thing: ThingIndex): boolean {
  return thing >= model.parts.length && thing < model.parts.length + model.ties.length;
}
export function partOf(model: Model, thing: ThingIndex): Part {
  return model.things[thing] as Part;
}
export function tieOf(model: Model, thing: ThingIndex): Tie {
  return model.things[thing] as Tie;
}

const machines = kept<Model, Machine>();

export function machineOf(model: Model): Machine {
  return machines(model, () => make(model));
}

function lists<T>(length: number): T[][] {
  const all: T[][] = [];
  for (let i = 0; i < length; i++) all.push([]);
  return all;
}

function make(model: Model): Machine {
  const count = model.things.length,
    parts = model.parts.length;
  const edges = lists<Edge>(parts),
    tiesOf = lists<Tie>(parts),
    hosts = lists<ThingIndex>(parts),
    clamps = lists<Tie>(parts);
  const hazardsOn = lists<Hazard>(count),
    guarded = lists<{ hazard: Hazard; before: number }>(count);
  const fluidsIn = lists<ThingIndex>(parts),
    pushedBy = lists<Hazard>(parts),
    isHazardous = new Array<boolean>(count).fill(false);

  const link = (a: ThingIndex, b: ThingIndex, tie: ThingIndex, undone: boolean): void => {
    if (a === b) return;
    edges[a]!.push({ to: b, tie, undone, hangs: true });
    edges[b]!.push({ to: a, tie, undone, hangs: false });
  };
  for (const tie of model.ties) {
    for (const a of tie.lowers) {
      for (const b of tie.uppers) {
        link(a, b, tie.index, !tie.passing);
        // What is said to hang on itself is told by itself, and hangs on nothing by that.
        if (a !== b) hosts[a]!.push(b);
      }
    }
    for (const id of tie.lowers) if (!tiesOf[id]!.includes(tie)) tiesOf[id]!.push(tie);
    for (const id of tie.uppers) if (!tiesOf[id]!.includes(tie)) tiesOf[id]!.push(tie);
  }
  for (const part of model.parts) {
    for (const host of part.hosts) link(part.index, host, -1, false);
    for (const under of part.rests) link(part.index, under, -1, false);
    // It lies on the first of the two and rides along with it.
    if (part.between) for (const a of part.between[0]) link(part.index, a, -1, false);
    hosts[part.index]!.push(
      ...part.hosts,
      ...part.rests,
      ...(part.between ? [...part.between[0], ...part.between[1]] : []),
    );
  }
  for (const part of model.parts) {
    if (!part.between) continue;
    const [a, b] = part.between;
    for (const tie of tiesOf[a[0] ?? -1] ?? []) {
      const onOne = tie.lowers.some((p) => a.includes(p)) || tie.uppers.some((p) => a.includes(p));
      const onOther = tie.lowers.some((p) => b.includes(p)) || tie.uppers.some((p) => b.includes(p));
      if (onOne && onOther) clamps[part.index]!.push(tie);
    }
  }
  for (const hazard of model.hazards) {
    for (const thing of hazard.on) {
      hazardsOn[thing]!.push(hazard);
      isHazardous[thing] = true;
    }
    hazard.precautions.forEach((precaution, before) => {
      for (const thing of precaution.behind) {
        if (!guarded[thing]!.some((g) => g.hazard === hazard)) guarded[thing]!.push({ hazard, before });
        isHazardous[thing] = true;
      }
    });
    for (const thing of hazard.pushes) {
      if (!isPart(model, thing)) continue;
      pushedBy[thing]!.push(hazard);
      for (const tie of tiesOf[thing]!) isHazardous[tie.index] = true;
    }
  }
  for (const fluid of model.fluids)
    for (const thing of fluid.path) if (isPart(model, thing)) fluidsIn[thing]!.push(fluid.index);
  const base = new Set(model.base);
  return {
    model,
    edges,
    tiesOf,
    hosts,
    clamps,
    hazardsOn,
    guarded,
    fluidsIn,
    pushedBy,
    isHazardous,
    guards: model.parts.filter((part) => kindIn(partKinds, part.kind)?.guard === true),
    isBase: (thing) => base.has(thing),
  };
}

/** What a part hangs by and is undone by an act of its own. */
export const hangsBy = ({ tiesOf }: Machine, part: ThingIndex): Tie[] =>
  tiesOf[part]!.filter((tie) => !tie.passing && tie.lowers.includes(part));

/** A hazard that acts under power: electricity and what turns. */
export function actsUnderPower(hazard: Hazard): boolean {
  const proof = kindIn(hazardKinds, hazard.kind)?.proofBy ?? [];
  return proof.includes("prove-dead") || proof.includes("try-start");
}

export const isFlexible = (part: Part): boolean => kindIn(partKinds, part.kind)?.flexible === true;
export const isCaptive = (tie: Tie): boolean => tie.fastener && kindIn(fastenerKinds, tie.kind)?.captive === true;
export const needsEvacuation = (kind: string): boolean => kindIn(fluidKinds, kind)?.evacuate === true;

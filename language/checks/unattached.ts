// Parts that nothing leads to from the base: the bench lets them come off at any time.

import { kept } from "../model/kept.ts";
import type { Model, Part, ThingIndex } from "../model/model.ts";
import type { Project } from "../names/project.ts";
import { lostThing } from "./lost-thing.ts";
import { saysWord } from "./read-whole.ts";
import { surveyOf } from "./survey-of-names.ts";
import { tiesOfNothing } from "./ties-of-nothing.ts";

/** One part, or a few that hold on to each other alone, in the order of the text. */
export type Loose = readonly [Part, ...Part[]];

/** Words that say how a part is held, even where what they name is not found. */
const held: ReadonlySet<string> = new Set(["fits", "rests", "between", "into", "is", "like"]);
const known = kept<Project, Map<Model, readonly Loose[]>>();

/** Worked out once a project: a name that another file speaks of and nothing declares may be what holds one. */
export function unattached(project: Project, model: Model): readonly Loose[] {
  const all = known(project, () => new Map());
  let loose = all.get(model);
  if (!loose) all.set(model, (loose = find(project, model)));
  return loose;
}

function find(project: Project, model: Model): readonly Loose[] {
  // A group of fasteners that joins nothing, or that nothing declares, may be what holds it: that is said there.
  if (tiesOfNothing(project, model).length > 0 || lostThing(project, model)) return [];
  return offBase(model).filter(([first, ...others]) => {
    const source = project.files.get(first.at.file);
    // A misspelt name elsewhere may be what holds it: that is said there.
    return (
      first.prefix === "" &&
      source !== undefined &&
      surveyOf(project, source).unknown.length === 0 &&
      source.tree.errors.length === 0 &&
      (others.length > 0 || !saysWord(source, first.whole, held))
    );
  });
}

/** By what no tie, fit or clamp leads to. Without a base, which is told by itself, only those that hold nothing either. */
function offBase(model: Model): Loose[] {
  const near = beside(model),
    reached = new Set<ThingIndex>(model.base);
  const from = (start: readonly ThingIndex[]): ThingIndex[] => {
    const group = [...start];
    for (const one of group)
      for (const next of near[one]!)
        if (!reached.has(next)) {
          reached.add(next);
          group.push(next);
        }
    return group;
  };
  from(model.base);
  const found: Loose[] = [];
  for (const part of model.parts) {
    if (reached.has(part.index)) continue;
    reached.add(part.index);
    const others = from([part.index])
      .slice(1)
      .sort((a, b) => a - b);
    if (others.length === 0 || model.base.length > 0) found.push([part, ...others.map((index) => model.parts[index]!)]);
  }
  return found;
}

/** By part, those that it is tied to, fits, lies on or is clamped by, whichever of the two says so. */
function beside(model: Model): readonly (readonly ThingIndex[])[] {
  const near = model.parts.map((): ThingIndex[] => []);
  const join = (things: readonly (ThingIndex | undefined)[]): void => {
    const [first, ...others] = things.filter((thing): thing is ThingIndex => thing !== undefined && !!near[thing]);
    for (const other of others) {
      near[first!]!.push(other);
      near[other]!.push(first!);
    }
  };
  for (const { index, hosts, rests, between, into } of model.parts)
    join([index, ...hosts, ...rests, ...(between ?? []).flat(), into]);
  for (const { lowers, uppers, washers, into } of model.ties)
    join([...lowers, ...uppers, ...washers.map(({ part }) => part), into]);
  return near;
}

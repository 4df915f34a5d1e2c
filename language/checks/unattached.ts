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
  const loose = offBase(model);
  // A group of fasteners that joins nothing, or that nothing declares, may be what holds it: that is said there.
  if (loose.length === 0 || tiesOfNothing(project, model).length > 0 || lostThing(project, model)) return [];
  return loose.filter(([first, ...others]) => {
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
  const groupOf = groups(model),
    based = new Set(model.base.map(groupOf)),
    found = new Map<ThingIndex, [Part, ...Part[]]>();
  for (const part of model.parts) {
    const group = groupOf(part.index);
    if (based.has(group)) continue;
    const parts = found.get(group);
    if (parts) parts.push(part);
    else found.set(group, [part]);
  }
  return [...found.values()].filter(({ length }) => length === 1 || model.base.length > 0);
}

/** By part, one of those that it hangs together with: tied to it, fitted, laid on or clamped, whichever of the two says so. */
function groups({ parts, ties }: Model): (part: ThingIndex) => ThingIndex {
  const above = parts.map(({ index }) => index);
  const groupOf = (part: ThingIndex): ThingIndex => {
    let at = part;
    while (above[at] !== at) at = above[at] = above[above[at]!]!;
    return at;
  };
  /** With the part that stands first in the row, -1 where none does yet. Things that are no parts hang on nothing by themselves. */
  const join = (first: ThingIndex, things: readonly ThingIndex[]): ThingIndex => {
    let one = first;
    for (let i = 0; i < things.length; i++) one = joinOne(one, things[i]!);
    return one;
  };
  const joinOne = (one: ThingIndex, other: ThingIndex | undefined): ThingIndex => {
    if (other === undefined || other >= parts.length) return one;
    if (one >= 0) above[groupOf(other)] = groupOf(one);
    return one < 0 ? other : one;
  };
  for (const { index, hosts, rests, between, into } of parts) {
    join(index, hosts);
    join(index, rests);
    for (const side of between ?? []) join(index, side);
    joinOne(index, into);
  }
  for (const { lowers, uppers, washers, into } of ties) {
    let one = join(join(-1, lowers), uppers);
    for (const { part } of washers) one = joinOne(one, part);
    joinOne(one, into);
  }
  return groupOf;
}

// A part that nothing holds, carries or clamps, or a few that hold on to each other alone.

import type { Model, Part, ThingIndex } from "../../model/model.ts";
import { check } from "../check.ts";
import { tiesOfNothing } from "../ties-of-nothing.ts";
import { saysWord } from "../read-whole.ts";
import { surveyOf } from "../survey-of-names.ts";

/** Words that say how a part is held, even where what they name is not found. */
const held: ReadonlySet<string> = new Set(["fits", "rests", "between", "into", "is", "like"]);

export default check({
  code: "names/part-unattached",
  title: "A part that nothing holds",
  severity: "hint",
  why: "Its fasteners are missing from the text, or one of them names another part: the bench lets it come off at any time.",
  source: "common practice",
  fails: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid"
    #      ^^^ Lid is tied to nothing, rests on nothing and lies between nothing: say what holds it
    }
  `,
  mended: `
    unit box "Box" {
      base foot
      part foot "Foot"
      part lid "Lid"
      fastener lid-screws screw "Lid screws" { count 4  joins lid to foot }
    }
  `,
  *model(model, { project }) {
    // A group of fasteners that joins nothing may be what holds it: that is said there.
    if (tiesOfNothing(project, model).length > 0) return;
    for (const parts of groupsOffBase(model)) {
      const [first, ...others] = parts as [Part, ...Part[]],
        source = project.files.get(first.at.file);
      if (first.prefix !== "" || !source) continue;
      // A misspelt name elsewhere may be what holds it: that is said there.
      if (surveyOf(project, source).unknown.length > 0 || source.tree.errors.length > 0) continue;
      if (others.length === 0 && saysWord(source, first.whole, held)) continue;
      const names = others.map((part) => part.name);
      yield {
        at: first.at,
        says:
          others.length === 0
            ? `${first.name} is tied to nothing, rests on nothing and lies between nothing: say what holds it`
            : `${first.name} is tied to ${names.join(", ")} alone, and nothing holds ${others.length === 1 ? "the two" : "them"} to the rest: say what does`,
      };
    }
  },
});

/**
 * Parts that no tie, fit or clamp leads to from the base: those that hold together as one group, in the order of the text. Without a
 * base, which is told by itself, only those alone.
 */
function groupsOffBase(model: Model): Part[][] {
  const near = new Map<ThingIndex, Set<ThingIndex>>(),
    join = (things: readonly ThingIndex[]): void => {
      for (const a of things) {
        const of = near.get(a) ?? new Set();
        for (const b of things) of.add(b);
        near.set(a, of);
      }
    };
  for (const part of model.parts) {
    join([part.index, ...part.hosts, ...part.rests, ...(part.between ?? []).flat()]);
    if (part.into !== undefined) join([part.index, part.into]);
  }
  for (const tie of model.ties)
    join([
      ...tie.lowers,
      ...tie.uppers,
      ...tie.washers.map((washer) => washer.part),
      ...(tie.into === undefined ? [] : [tie.into]),
    ]);
  const reached = new Set<ThingIndex>(),
    from = (start: readonly ThingIndex[]): ThingIndex[] => {
      const group = start.filter((one) => !reached.has(one));
      for (const one of group) reached.add(one);
      for (let i = 0; i < group.length; i++)
        for (const next of near.get(group[i]!) ?? [])
          if (!reached.has(next)) {
            reached.add(next);
            group.push(next);
          }
      return group;
    };
  from(model.base);
  return model.parts
    .map((part) => from([part.index]))
    .filter((group) => group.length === 1 || (group.length > 1 && model.base.length > 0))
    .map((group) => model.parts.filter((part) => group.includes(part.index)));
}

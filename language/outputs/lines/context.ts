// What every line needs to know, and how things are named in it.

import { fittings } from "../../bill/fittings.ts";
import { newThings, type NewThing } from "../../bill/new-things.ts";
import { namedThings } from "../../bill/named-things.ts";
import type { Around, Performance, Performed, StepRun } from "../../bench/trace.ts";
import type { Name } from "../../model/act.ts";
import type { Hazard, Model, Thing, ThingIndex, Tie } from "../../model/model.ts";
import type { Units } from "./figures.ts";
import type { HazardText } from "./line.ts";

export interface LineContext extends Units {
  readonly performance: Performance;
  readonly model: Model;
  readonly fresh: ReadonlyMap<ThingIndex, NewThing>;
  /** Things that have a line of their own on the way back: a washer among them is not told again with its screw. */
  readonly fitted: ReadonlySet<ThingIndex>;
  /** Joints that let go when their parts do. */
  readonly passing: readonly Tie[];
  /** Acts of the strip that tie a tag to something. */
  readonly tagging: readonly Performed[];
  /** Labels of the marks that the author lines up himself on the way back. */
  readonly aligned: ReadonlySet<string>;
  /** What is told of each hazard, once it was asked for. */
  readonly hazardTexts: Map<Hazard, HazardText>;
}

export function lineContext(performance: Performance, units: Units): LineContext {
  return {
    ...units,
    performance,
    model: performance.model,
    fresh: newThings(performance),
    fitted: new Set(fittings(performance).map(({ thing }) => thing)),
    passing: performance.model.ties.filter(({ passing }) => passing),
    tagging: performance.strip.filter(({ act }) => act.verb === "tag"),
    aligned: alignedByAuthor(performance),
    hazardTexts: new Map(),
  };
}

const alignedByAuthor = ({ refit, written }: Performance): ReadonlySet<string> =>
  new Set(
    [
      ...refit.flatMap(({ op }) => (op.act?.verb === "align" ? op.act.names : [])),
      ...written.flatMap(({ act }) => (act.verb === "align" ? act.names : [])),
    ].map((name) => name.text),
  );

export const thingOf = ({ model }: LineContext, thing: ThingIndex): Thing => model.things[thing]!;

/** Several things in one phrase; pieces of one declaration together: "bearing cap 1, 2 and 3". `fresh`: new ones. */
export function phrase(context: LineContext, things: readonly ThingIndex[], fresh = false): string {
  const { acts } = context.wording,
    groups = new Map<string, Thing[]>();
  for (const index of things) {
    const thing = thingOf(context, index),
      key = `${thing.is} ${thing.prefix}${thing.declared}`,
      had = groups.get(key);
    if (had) had.push(thing);
    else groups.set(key, [thing]);
  }
  return acts.list(
    [...groups.values()].map((group) => {
      const first = group[0]!;
      const count = first.is === "part" ? first.count : 1;
      if (fresh)
        return acts.aNew(
          group.length === 1
            ? first.name
            : acts.piecesNamed(
                baseName(first),
                group.map((each) => each.piece),
              ),
          group.length > 1 ? group.length : count,
        );
      return group.length === 1
        ? acts.the(first.name, first.piece !== "")
        : acts.piecesNamed(
            baseName(first),
            group.map((each) => each.piece),
          );
    }),
  );
}

/** The name without its piece. */
export const baseName = (thing: Thing): string =>
  thing.piece !== "" && thing.name.endsWith(thing.piece)
    ? thing.name.slice(0, -thing.piece.length).trimEnd() || thing.name
    : thing.name;

/** The title of a step, with the part that its procedure is done on and the pieces at hand: `Close the ends (Gearbox left)`; `unnamed` for one without title and name. */
export function stepText(
  { model, wording }: Pick<LineContext, "model" | "wording">,
  step: StepRun,
  unnamed = wording.lines.step(step.number),
): string {
  const name = step.title || step.name.replaceAll("-", " ") || unnamed,
    part = step.on === undefined ? undefined : model.things[step.on];
  const pieces = step.pieces.filter((piece) => piece !== part?.piece),
    where = part ? [part.name, ...pieces] : pieces;
  if (name === "") return where.join(", ");
  return where.length > 0 ? wording.lines.pieces(name, where) : name;
}

/** A name of the text in words: a thing, a tool, a consumable, a procedure; else the word itself. */
export function nameText(context: LineContext, name: Name, around: Around): string {
  const things = namedThings(context.model, [name], around);
  if (things.length > 0) return phrase(context, things);
  return toolName(context, name.text);
}

export const namesText = (context: LineContext, names: readonly Name[], around: Around): string =>
  context.wording.acts.list(names.map((name) => nameText(context, name, around)));

/** A tool, a consumable or a temporary thing by its declared name. */
export function toolName({ model }: LineContext, id: string): string {
  const { tools, consumables, roles } = model.library;
  return (
    tools.get(id)?.name ||
    consumables.get(id)?.name ||
    model.temporaries.get(id)?.name ||
    roles.get(id)?.name ||
    id.replaceAll("-", " ")
  );
}

/** What something is done with, as a phrase behind "with"; undefined for nothing. */
export function toolsText(context: LineContext, tools: readonly Name[]): string | undefined {
  const { list, the } = context.wording.acts,
    [first, ...others] = tools.map(({ text }) => toolName(context, text));
  // A sentence puts its own article to the first.
  return first === undefined ? undefined : list([first, ...others.map((name) => the(name))]);
}

/** What is worn: as the author declares it, else the usual name in the language of the page, else the word itself. */
export const wearName = (context: LineContext, id: string): string => {
  const { tools, consumables } = context.model.library;
  return tools.has(id) || consumables.has(id)
    ? toolName(context, id)
    : (context.wording.kinds.wear(id) ?? toolName(context, id));
};

/** The printed verb of a tie, from its kind. */
export const tieVerb = ({ wording }: LineContext, tie: Tie, half: "strip" | "refit"): string =>
  tie.fastener ? wording.kinds.fastenerVerb(tie.kind, half) : wording.kinds.jointVerb(tie.kind, half);

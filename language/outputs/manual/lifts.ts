// Every lift and support of a procedure, of the strip, of the way back and of what comes last, with the mass as it hangs at that moment.

import { gearOf, massOf } from "../../bench/load.ts";
import { lumpOf } from "../../bench/ties.ts";
import { ON_BASE, type State } from "../../bench/state.ts";
import { kept } from "../../model/kept.ts";
import type { Performance, Performed } from "../../bench/trace.ts";
import type { Act } from "../../model/act.ts";
import type { Model, Part, ThingIndex, Tool } from "../../model/model.ts";
import { toolName, type LineContext } from "../lines/context.ts";
import { figureText, massText, type Units } from "../lines/figures.ts";
import type { Lines } from "../lines/groups.ts";
import { hangingOn } from "../lines/hanging.ts";
import type { ActionLine, LineGroup } from "../lines/line.ts";
import type { LiftRow } from "./tool-tables.ts";

/** What hangs in one line. */
interface Load {
  readonly act: Act | undefined;
  readonly things: readonly ThingIndex[];
  /** With all that hangs on them. */
  readonly moved: readonly ThingIndex[];
  readonly line: string;
}

/** A manual asks for its table of lifts and for its sheet. */
const reckoned = kept<Lines, readonly LiftRow[]>();

export const liftsOf = (lines: Lines): readonly LiftRow[] => reckoned(lines, () => reckon(lines));

function reckon({ context, strip, refit, finish }: Lines): LiftRow[] {
  const { performance } = context,
    { events } = performance;
  return [
    ...acts(performance.strip, strip, context, ({ act, things, from, to, before }) => {
      if (act.verb !== "support" && !isLift(context.model, act, things)) return undefined;
      const off = events.slice(from, to).flatMap((event) => event.moved);
      return off.length > 0 ? [...things, ...off] : hangingOn(context.model, things, before);
    }),
    ...(performance.refit.length > 0
      ? computed(performance, refit, context)
      : acts(performance.written, refit, context, (performed) => hungInto(context, performed))),
    ...acts(performance.finish, finish, context, (performed) => hungInto(context, performed)),
  ].map((load) => rowOf(load, context));
}

/** @param hangs what hangs in an act; undefined where nothing is lifted. */
function acts(
  list: readonly Performed[],
  groups: readonly LineGroup[],
  { model }: LineContext,
  hangs: (performed: Performed) => readonly ThingIndex[] | undefined,
): Load[] {
  const lines = linesByAct(groups);
  return list.flatMap((performed, i) => {
    const moved = hangs(performed);
    return moved === undefined
      ? []
      : [
          {
            act: performed.act,
            things: performed.things,
            moved: moved.filter((thing) => model.things[thing]?.is === "part"),
            line: lines.get(i)?.id ?? "",
          },
        ];
  });
}

/** Said to be a lift, or a part that goes with gear or with several people, as its act or the part itself says. */
function isLift({ things: all, library }: Model, act: Act, things: readonly ThingIndex[]): boolean {
  if (act.verb === "lift") return true;
  if (act.verb !== "remove" && act.verb !== "fit") return false;
  return (
    act.people !== undefined ||
    act.tools.some(({ text }) => library.tools.get(text)?.capacity !== undefined) ||
    things.some((thing) => {
      const part = all[thing];
      return part?.is === "part" && (part.liftWith.length > 0 || part.liftPeople !== undefined);
    })
  );
}

/** Of an act that somebody wrote on the way back: what is held, and what is brought in. */
function hungInto({ model }: LineContext, { act, things, before }: Performed): readonly ThingIndex[] | undefined {
  if (act.verb === "support") return hangingOn(model, things, before);
  return isLift(model, act, things)
    ? [...things, ...things.flatMap((thing) => together(model.parts, before, thing))]
    : undefined;
}

/** What is put together with a part that is off. */
const together = (parts: readonly Part[], s: State | undefined, thing: ThingIndex): ThingIndex[] =>
  s === undefined || lumpOf(s, thing) === ON_BASE
    ? []
    : parts.flatMap(({ index }) => (lumpOf(s, index) === lumpOf(s, thing) ? [index] : []));

/** A line of a computed way back may stand for several of its acts: one load, lowered in as it was lifted off. */
function computed(performance: Performance, groups: readonly LineGroup[], { model }: LineContext): Load[] {
  const byNumber = new Map(performance.refit.map((each) => [each.op.number, each])),
    told = new Set<number>();
  return actionsOf(groups).flatMap((line): Load[] => {
    const done = line.of.flatMap((number) => (told.has(number) ? [] : (byNumber.get(number) ?? [])));
    const lowered = done.filter(
        ({ op }) => op.verb === "fit" && op.event !== undefined && isLift(model, op.event.act, op.things),
      ),
      held = done.filter(({ op }) => op.verb === "support" || (op.verb === "written" && op.act?.verb === "support"));
    for (const { op } of [...lowered, ...held]) told.add(op.number);
    const load = (of: typeof done, moved: readonly ThingIndex[]): Load[] =>
      of.length === 0
        ? []
        : [
            {
              act: of[0]!.op.event?.act ?? of[0]!.op.act,
              things: of.flatMap(({ op }) => op.things),
              moved: moved.filter((thing) => model.things[thing]?.is === "part"),
              line: line.id,
            },
          ];
    return [
      ...load(
        lowered,
        lowered.flatMap(({ op }) => [...op.things, ...(op.event?.moved ?? [])]),
      ),
      ...load(
        held,
        held.flatMap(({ op, before }) => hangingOn(model, op.things, before)),
      ),
    ];
  });
}

function rowOf({ act, things, moved, line }: Load, context: LineContext): LiftRow {
  const { model, wording } = context,
    { acts, manual: words } = wording;
  const parts = model.parts.filter(({ index }) => things.includes(index)),
    mass = massOf(model, [...new Set(moved)]),
    notGiven = mass.unknown > 0 ? words.partsWithout(mass.unknown) : "",
    gear = gearOf(model, act ?? { tools: [], people: undefined }, things),
    people = act?.people ?? parts.map(({ liftPeople }) => liftPeople).find((count) => count !== undefined);
  return {
    load: [...new Set(things)].map((thing) => model.things[thing]!.name).join(", "),
    mass: mass.kg > 0 ? [massText(mass.kg, context), notGiven].filter(Boolean).join(", ") : acts.massNotGiven,
    // Carried by so many people: no gear is lacking.
    gear:
      gear.length > 0
        ? acts.list(gear.map(({ text }) => toolName(context, text)))
        : people !== undefined && act?.verb !== "lift"
          ? ""
          : words.notGiven,
    capacity: wording.document.parts(gear.map(({ text }) => capacityOf(model.library.tools.get(text), context))),
    people: people === undefined ? "" : String(people),
    line,
  };
}

const capacityOf = (tool: Tool | undefined, context: LineContext): string =>
  tool?.capacity
    ? [figureText(tool.capacity, context, "down"), legsText(tool, context)].filter(Boolean).join(", ")
    : context.wording.manual.notGiven;

/** The legs of a sling and their angle: its capacity is that of one leg, straight. */
function legsText({ legs, angle }: Tool, units: Units): string {
  return legs === undefined && angle === undefined
    ? ""
    : units.wording.manual.slingLegs(legs, angle && figureText(angle, units));
}

const actionsOf = (groups: readonly LineGroup[]): ActionLine[] =>
  groups.flatMap(({ lines }) => lines.filter((line): line is ActionLine => line.is === "action"));

/** The first line that says an act, by the number of the act. */
export function linesByAct(groups: readonly LineGroup[]): ReadonlyMap<number, ActionLine> {
  const found = new Map<number, ActionLine>();
  for (const line of actionsOf(groups)) for (const of of line.of) if (!found.has(of)) found.set(of, line);
  return found;
}

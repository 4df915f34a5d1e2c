// Lines of the acts that take apart: undo, loosen, remove, lift and what holds or moves aside. One action a line: a list whose things
// ask another verb or spanner becomes several lines.

import { gearOf, massOf } from "../../bench/load.ts";
import { at } from "../../bench/vector.ts";
import type { Event, Performed } from "../../bench/trace.ts";
import type { Part, ThingIndex, Tie } from "../../model/model.ts";
import { type LineContext, phrase, thingOf, tieVerb, toolName, toolsText } from "./context.ts";
import { action, type ActionDraft, type Doing } from "./draft.ts";
import { threadText } from "../../bill/uses.ts";
import { figureText, massText } from "./figures.ts";
import { hangingOn } from "./hanging.ts";
import { itemsOf } from "./items.ts";
import type { Detail } from "./line.ts";
import { setsOf } from "./matched.ts";
import { spannerOf } from "./spanner.ts";

/** Lines of `undo`, `loosen`, `back-out`. */
export function undoLines(
  context: LineContext,
  doing: Doing,
  performed: Performed,
  events: readonly Event[],
): ActionDraft[] {
  const { acts } = context.wording,
    { act } = doing,
    ties: Tie[] = [],
    parts: ThingIndex[] = [];
  for (const index of performed.things) {
    const thing = thingOf(context, index);
    if (thing.is === "tie") ties.push(thing);
    else if (thing.is === "part") parts.push(index);
  }
  const lines = grouped(
    ties,
    (tie) =>
      `${tieVerb(context, tie, "strip")}|${spannerOf(tie, context)?.says ?? ""}|${tie.size?.leftHand === true}|${tie.count === 1 && !tie.countUnknown ? "" : pieceKey(tie, events, act)}`,
  ).map((group): ActionDraft => {
    const first = group[0]!,
      event = events.find((each) => each.thing === first.index);
    const count = group.length === 1 ? (event?.count ?? act.count ?? first.count) : undefined;
    const what = tiePhrase(context, group, count, act.rest),
      tool = toolsText(context, act.tools);
    const amount = act.amount ? figureText(act.amount, context) : undefined;
    const says =
      act.verb === "loosen"
        ? acts.loosen(what, amount, tool)
        : act.verb === "back-out"
          ? acts.backOut(what, amount, tool)
          : acts.undo(tieVerb(context, first, "strip"), what, tool);
    const details: Detail[] = fastenerDetails(context, first);
    if (first.how) details.push({ sort: "how", says: first.how });
    if (act.passes !== undefined && act.passes > 1)
      details.push({ sort: "passes", says: acts.undoInPasses(act.passes) });
    const washers = first.washers.map(({ part }) => part).filter((part) => !context.fitted.has(part));
    if (act.verb === "undo" && washers.length > 0)
      details.push({ sort: "comes-away", says: acts.withWashers(phrase(context, washers)) });
    details.push(
      ...discards(context, [...group.map((tie) => tie.index), ...(act.verb === "undo" ? washers : [])]),
      ...goesTo(context, doing),
    );
    return action(doing, act.verb, says, {
      items: itemsOf(
        context,
        group.map((tie) => tie.index),
        count,
      ),
      details,
    });
  });
  return [...lines, ...parts.flatMap((part) => removeLines(context, doing, { ...performed, things: [part] }, events))];
}

/** Pieces of one declaration are one line where the act takes all of each; anything else of several stands alone. */
function pieceKey(tie: Tie, events: readonly Event[], { count, rest }: Doing["act"]): string {
  const taken = events.find((each) => each.thing === tie.index)?.count ?? tie.count;
  return tie.piece !== "" && count === undefined && !rest && taken === tie.count && !tie.countUnknown
    ? `${tie.prefix}${tie.declared}`
    : tie.id;
}

/** "the 8 casing nuts"; several groups of one piece in one phrase. */
export function tiePhrase(
  context: LineContext,
  group: readonly Tie[],
  count: number | undefined,
  rest: boolean,
): string {
  const first = group[0]!;
  if (group.length > 1) {
    const what = phrase(
      context,
      group.map((tie) => tie.index),
    );
    return first.count > 1 ? context.wording.acts.each(what, first.count) : what;
  }
  return context.wording.acts.some(first.name, first.piece !== "", count, first.count, rest, first.countUnknown);
}

/** Thread and spanner under a fastener. */
export function fastenerDetails(context: LineContext, tie: Tie): Detail[] {
  const { acts } = context.wording,
    details: Detail[] = [],
    spanner = spannerOf(tie, context),
    tool: string[] = [];
  const size = threadText(tie);
  if (size !== undefined) tool.push(context.wording.figures.number(size));
  if (spanner) tool.push(spanner.says);
  if (tool.length > 0) details.push({ sort: "tool", says: tool.join(", ") });
  if (tie.size?.leftHand) details.push({ sort: "thread", says: acts.leftHand });
  return details;
}

/** Lines of `remove` and `lift`. */
export function removeLines(
  context: LineContext,
  doing: Doing,
  performed: Performed,
  events: readonly Event[],
): ActionDraft[] {
  const { act } = doing,
    parts = performed.things
      .map((index) => thingOf(context, index))
      .filter((thing): thing is Part => thing.is === "part");
  const ties = performed.things.filter((index) => thingOf(context, index).is === "tie");
  if (act.together || act.verb === "lift") return parts.length > 0 ? [removeLine(context, doing, parts, events)] : [];
  const lines = grouped(
    parts,
    (part) =>
      `${context.wording.kinds.partVerb(part.kind, "strip")}|${howOff(context, part, events) ?? ""}|${context.fresh.get(part.index)?.grade === "certain"}`,
  ).flatMap((group) =>
    (group.some((part) => comesAlong(part, events).length > 0) ? group.map((part) => [part]) : [group]).map((each) =>
      removeLine(context, doing, each, events),
    ),
  );
  return ties.length > 0 ? [...undoLines(context, doing, { ...performed, things: ties }, events), ...lines] : lines;
}

function removeLine(context: LineContext, doing: Doing, parts: readonly Part[], events: readonly Event[]): ActionDraft {
  const { acts } = context.wording,
    { act } = doing,
    first = parts[0]!,
    indexes = parts.map((part) => part.index);
  const tool = toolsText(context, gearOf(context.model, act, indexes)),
    people = act.people ?? first.liftPeople;
  const still = act.rest && doing.before ? first.count - at(doing.before.out, first.index) : first.count;
  const what =
    parts.length === 1
      ? acts.some(first.name, first.piece !== "", act.count ?? still, first.count, act.rest, first.countUnknown)
      : phrase(context, indexes);
  const lifts = act.verb === "lift",
    how = howOff(context, first, events);
  const says = lifts
    ? acts.lift(what, tool, people)
    : act.together && parts.length > 1
      ? acts.removeTogether(what, tool, people)
      : acts.remove(context.wording.kinds.partVerb(first.kind, "strip"), what, how, tool, people);
  const details: Detail[] = [];
  const along = [...new Set(parts.flatMap((part) => comesAlong(part, events)))].filter(
    (index) => !indexes.includes(index),
  );
  const told = along.filter((index) => !isInside(context, index, indexes));
  if (told.length > 0) details.push({ sort: "comes-away", says: acts.comesAway(phrase(context, told)) });
  if (parts.some((part) => part.ownPlace && context.fresh.get(part.index)?.grade !== "certain"))
    details.push({ sort: "goes-to", says: acts.ownPlace });
  const kept = setsOf(
    context,
    parts.filter((part) => context.fresh.get(part.index)?.grade !== "certain"),
  );
  if (kept.length > 0) details.push({ sort: "goes-to", says: acts.keepTogether(kept) });
  const moved = [...new Set([...indexes, ...parts.flatMap((part) => eventOf(part, events)?.moved ?? [])])],
    mass = massOf(context.model, moved);
  if (lifts || mass.kg >= sayMassFrom)
    details.push({ sort: "mass", says: acts.massHere(mass.kg > 0 ? massText(mass.kg, context) : "", mass.unknown) });
  details.push(...discards(context, indexes), ...goesTo(context, doing));
  return action(doing, act.verb, says, {
    items: itemsOf(context, indexes, parts.length === 1 ? act.count : undefined),
    details,
  });
}

/** From this mass in kg a removal says it: common practice, what one hand still takes without thought. */
const sayMassFrom = 3;

const eventOf = (part: Part, events: readonly Event[]): Event | undefined =>
  events.find((event) => event.kind === "off" && event.things.includes(part.index));

/** What moved with it and was not named. */
function comesAlong(part: Part, events: readonly Event[]): ThingIndex[] {
  const event = eventOf(part, events);
  return event ? event.moved.filter((index) => !event.things.includes(index)) : [];
}

/** Parts inside a unit part that is named already are not told one by one. */
function isInside(context: LineContext, index: ThingIndex, named: readonly ThingIndex[]): boolean {
  const { prefix } = thingOf(context, index);
  return (
    prefix !== "" &&
    [...named, ...context.model.parts.filter((part) => part.unit !== undefined).map((part) => part.index)].some(
      (other) => prefix.startsWith(`${thingOf(context, other).id}/`),
    )
  );
}

/** How a part lets go that is held by its kind of fit, or by a declared joint that parts in passing. */
function howOff(context: LineContext, part: Part, events: readonly Event[]): string | undefined {
  const hows: string[] = [],
    event = eventOf(part, events),
    moved = event?.moved ?? [part.index];
  if (part.fitsBy) hows.push(context.wording.kinds.jointVerb(part.fitsBy, "strip"));
  for (const tie of context.passing) {
    const joins = [...tie.lowers, ...tie.uppers],
      isMoved = (each: ThingIndex): boolean => moved.includes(each);
    if (!joins.some(isMoved) || joins.every(isMoved)) continue;
    if (event && !joins.every((each) => lumpBefore(event, each) === event.from)) continue;
    hows.push(tieVerb(context, tie, "strip"));
  }
  return context.wording.acts.hows([...new Set(hows)]);
}

const lumpBefore = (event: Event, part: ThingIndex): number => at(event.before.lump, part);

/** Things that go back in new are not kept. `named`: say which, where the line is about something else. */
export function discards(context: LineContext, things: readonly ThingIndex[], named = false): Detail[] {
  const { acts } = context.wording,
    fresh = things.filter((index) => context.fresh.get(index)?.grade === "certain");
  if (fresh.length === 0) return [];
  return [
    {
      sort: "discard",
      says: fresh.length === things.length && !named ? acts.discard : acts.discardOf(phrase(context, fresh)),
    },
  ];
}

export function goesTo(context: LineContext, { act }: Doing): Detail[] {
  if (!act.into) return [];
  const { kind, label } = act.into;
  return [
    { sort: "goes-to", says: context.wording.acts.into(kind, kind === "container" ? toolName(context, label) : label) },
  ];
}

/** Lines of `support`, `hold`, `release`, `slide`, `swing`, `open`. */
export function holdLines(context: LineContext, doing: Doing, things: readonly ThingIndex[]): ActionDraft[] {
  const { acts } = context.wording,
    { act } = doing,
    tool = toolsText(context, act.tools);
  if (things.length === 0) return [];
  const what = phrase(context, things),
    items = itemsOf(context, things, act.count),
    amount = act.amount ? figureText(act.amount, context) : undefined;
  const details: Detail[] = [];
  if (act.verb === "support") {
    const mass = massOf(context.model, hangingOn(context.model, things, doing.before));
    details.push({ sort: "mass", says: acts.massHere(mass.kg > 0 ? massText(mass.kg, context) : "", mass.unknown) });
  }
  switch (act.verb) {
    case "support":
      return [action(doing, act.verb, acts.support(what, tool), { items, details })];
    case "hold":
      return [action(doing, act.verb, acts.hold(what, tool), { items })];
    case "release":
      return [action(doing, act.verb, acts.release(what, tool), { items })];
    case "slide":
    case "swing":
    case "open":
      return [
        action(doing, act.verb, act.back ? acts.back(act.verb, what) : acts.aside(act.verb, what, amount), { items }),
      ];
    default:
      return [];
  }
}

/** In runs of one key, in the order given; equal keys are put together. */
function grouped<T>(items: readonly T[], key: (item: T) => string): T[][] {
  return [...Map.groupBy(items, key).values()];
}

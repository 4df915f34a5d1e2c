// Lines of the acts that read alike in both halves: precautions, readings, fluids, marks, work in words, pictures, messages.

import { renewedTogether } from "../../bench/renewed-sets.ts";
import { openedInPassing } from "../../bench/filler.ts";
import { frameOf } from "../../bench/turned-inside.ts";
import { DRAINED } from "../../bench/state.ts";
import { at } from "../../bench/vector.ts";
import type { Doing, LineDraft } from "./draft.ts";
import { action } from "./draft.ts";
import { namedThings } from "../../bill/named-things.ts";
import type { Name } from "../../model/act.ts";
import type { Around } from "../../bench/trace.ts";
import type { Fluid, Hazard, Photo, Precaution, ThingIndex, Tie } from "../../model/model.ts";
import { isKindOf, precautions, signals } from "../../tables/index.ts";
import { type LineContext, namesText, nameText, phrase, thingOf, toolName, toolsText } from "./context.ts";
import { clock, figureText, seconds, timeText, toldSeconds } from "./figures.ts";
import { itemsOf } from "./items.ts";
import type { Detail, LineTorque, Shot } from "./line.ts";
import { limitsText, readingOf, stepTitle } from "./reading.ts";
import { makeLine } from "./say-refit.ts";
import { discards, fastenerDetails, holdLines } from "./say-strip.ts";
import { waitOf } from "../../bench/placement.ts";

/** The part that is turned by itself: a unit of its own, in a procedure that is done on it. */
function turnedPart(context: LineContext, { prefix }: Around): string | undefined {
  const frame = frameOf(context, prefix);
  return frame && phrase(context, [frame.host]);
}

/** Undefined for a verb that is said elsewhere; no lines for one that prints nothing. */
export function plainLines(
  context: LineContext,
  doing: Doing,
  things: readonly ThingIndex[],
): readonly LineDraft[] | undefined {
  const { act, around, half } = doing,
    { acts, kinds } = context.wording,
    { verb } = act;
  const common = { half, at: act.at, given: around.given };
  const tool = toolsText(context, act.tools),
    what = phrase(context, things),
    items = itemsOf(context, things, act.count ?? undefined);
  const amount = act.amount ? figureText(act.amount, context) : undefined,
    on = act.on.length > 0 ? namesText(context, act.on, around) : undefined;
  const one = (says: string, more: Parameters<typeof action>[3] = {}): readonly LineDraft[] => [
    action(doing, verb, says, { items, ...more }),
  ];
  const own = { text: "" };
  if (isKindOf(signals, verb)) return [{ ...common, is: "message", signal: verb, text: act.text, on: "" }];
  if (isKindOf(precautions, verb))
    return things
      .map((thing) => thingOf(context, thing))
      .filter((thing): thing is Hazard => thing.is === "hazard")
      .map((hazard) => precautionLine(context, doing, hazard));
  switch (verb) {
    case "note":
      return [{ ...common, is: "note", says: act.text }];
    case "time":
      return amount ? [{ ...common, is: "note", says: acts.time(amount) }] : [];
    case "people":
      return (act.count ?? act.people)
        ? [{ ...common, is: "note", says: acts.people(act.count ?? act.people ?? 1) }]
        : [];
    case "photo":
      return [{ ...common, is: "photo", ...shotOf(context, { ...act, file: act.text, alt: act.text2 }, around) }];
    case "video":
      return [
        {
          ...common,
          is: "video",
          file: act.text || around.procedure.video,
          says: acts.video(clock(act.from ?? 0), clock(act.to ?? 0), act.text || around.procedure.video),
          from: act.from,
          to: act.to,
        },
      ];
    // The steps of a called procedure stand where they are done.
    case "do":
      if (act.names.length === 0) return one(acts.doProcedure(act.text), own);
      return context.model.procedures.has(act.names[0]?.text ?? "")
        ? []
        : [{ ...common, is: "note", says: acts.doProcedure(toolName(context, act.names[0]?.text ?? "")) }];
    case "repeat":
      return [{ ...common, is: "note", says: acts.repeatFrom(stepTitle(context, act.names[0]?.text ?? "")) }];
    case "support":
    case "hold":
    case "release":
    case "slide":
    case "swing":
    case "open":
      return holdLines(context, doing, things);
    case "turn":
      return one(acts.turn(kinds.position(act.on[0]?.text ?? act.names[0]?.text ?? ""), turnedPart(context, around)));
    case "rotate":
      return one(acts.rotate(what, amount));
    case "drain":
    case "recover":
      return things
        .map((thing) => thingOf(context, thing))
        .filter((thing): thing is Fluid => thing.is === "fluid")
        .map((fluid) => drainLine(context, doing, fluid, tool));
    case "fill":
    case "bleed":
      return fluidsOf(context, things).map((fluid) => fillLine(context, doing, fluid, amount));
    case "evacuate":
      return one(acts.evacuate(what, tool));
    case "purge":
      return one(acts.purge(what, tool));
    case "cap":
      return one(acts.cap(what));
    case "uncap":
      return one(acts.uncap(what));
    case "restore":
      return things.map((thing) =>
        action(doing, verb, acts.restore(thingOf(context, thing).name), {
          items: itemsOf(context, [thing], undefined),
          details: backsOf(context, thing, doing.before),
        }),
      );
    case "mark":
      return one(acts.mark(what, act.labels.join(", ")));
    case "tag":
      return one(acts.tag(what, act.labels.join(", ")));
    case "align":
      // A mark is called as it was made.
      return one(
        acts.align(
          acts.list(
            act.names.map((name) =>
              context.performance.stripEnd.marks.has(name.text) ? name.text : nameText(context, name, around),
            ),
          ),
        ),
      );
    case "measure":
      return readingLine(context, doing, things, acts.measure(act.text, on ?? (what || undefined), tool));
    case "inspect":
      return readingLine(context, doing, things, acts.inspect(act.text, on ?? (what || undefined)));
    case "test":
      return readingLine(context, doing, things, acts.test(act.text, tool));
    case "set":
      return readingLine(context, doing, things, acts.set(what || (on ?? ""), act.text, tool));
    case "clean":
      return one(acts.clean(what, tool));
    case "apply":
      return [
        action(doing, verb, acts.apply(namesText(context, act.names, around), on ?? "", amount), {
          items: itemsOf(context, namedThings(context.model, act.on, around), undefined),
        }),
      ];
    case "heat":
      return one(acts.heat(what, amount, tool));
    case "wait":
      return one(acts.wait(amount ?? ""), act.amount ? { wait: toldSeconds(seconds(act.amount)) } : {});
    case "renew":
      return one(acts.renew(someOf(context, doing, things) ?? what), { details: togetherDetails(context, things) });
    case "scrap":
      return one(acts.scrap(what));
    case "reuse":
      return one(acts.reuse(what));
    case "work":
      return things.length > 0 ? one(acts.work(what)) : one(act.text, own);
    case "put":
      return one(acts.put(toolName(context, act.names[0]?.text ?? ""), on ?? ""), { items: [] });
    case "take":
      return one(acts.take(toolName(context, act.names[0]?.text ?? "")), { items: [] });
    case "second-check":
      return one(acts.secondCheck, { sign: true });
    case "hold-point":
      return one(acts.holdPoint, { sign: true });
    case "order":
    case "reverse":
      return [];
    default:
      return undefined;
  }
}

/** "2 of the 4 springs"; undefined where all of several are meant. */
function someOf(context: LineContext, { act }: Doing, things: readonly ThingIndex[]): string | undefined {
  const thing = act.count !== undefined && things.length === 1 ? thingOf(context, things[0]!) : undefined;
  return thing?.is === "part" || thing?.is === "tie"
    ? context.wording.acts.some(thing.name, thing.piece !== "", act.count, thing.count, act.rest, thing.countUnknown)
    : undefined;
}

/** What is renewed by pairs or as a set says so where it is renewed. */
function togetherDetails(context: LineContext, things: readonly ThingIndex[]): Detail[] {
  const together = renewedTogether(context.model);
  return [...new Set(things.flatMap((thing) => together.get(thing)?.when ?? []))].map((when) => ({
    sort: "new",
    says: context.wording.acts.newIf[when],
  }));
}

function readingLine(
  context: LineContext,
  doing: Doing,
  things: readonly ThingIndex[],
  says: string,
): readonly LineDraft[] {
  const { act, around } = doing,
    on = act.on.length > 0 ? namedThings(context.model, act.on, around) : things;
  const reading = readingOf(context, act, around, act.id?.text ?? "", act.text),
    details: Detail[] = [];
  if (reading.limits !== "") details.push({ sort: "limits", says: context.wording.acts.limitsLine(reading.limits) });
  for (const otherwise of reading.otherwise) details.push({ sort: "otherwise", says: otherwise });
  return [
    action(doing, act.verb, says, { text: "", items: itemsOf(context, on, undefined), details, readings: [reading] }),
  ];
}

/** A precaution in the author's words, with its wait and its reading. */
function precautionLine(context: LineContext, doing: Doing, hazard: Hazard): LineDraft {
  const { acts, kinds } = context.wording,
    { act } = doing,
    precaution = hazard.precautions.find((each) => each.kind === act.verb);
  const title = kinds.precautionShort(act.verb);
  if (!precaution)
    return action(doing, act.verb, acts.precaution(title, hazard.name), {
      items: itemsOf(context, [hazard.index], undefined),
    });
  const details: Detail[] = [
    { sort: "hazard", says: acts.against(hazard.name) },
    ...precautionDetails(context, hazard, precaution),
  ];
  const wait = waitOf(hazard, precaution)?.seconds;
  const texts = [precaution.text, act.text].filter((text) => text !== "");
  const limits = precaution.limits ? limitsText(precaution.limits, context) : "";
  const value = precaution.limits?.value ?? precaution.limits?.atLeast ?? precaution.limits?.atMost;
  return action(doing, act.verb, texts.length > 0 ? acts.precautionTitle(title) : acts.precaution(title, hazard.name), {
    text: texts.join(" "),
    items: itemsOf(context, [hazard.index], undefined),
    details,
    wait: wait === undefined ? undefined : toldSeconds(wait),
    readings:
      limits === ""
        ? []
        : [
            {
              id: `${hazard.id}-${precaution.kind}`,
              what: title,
              limits,
              unit: value?.unit ?? "",
              otherwise: [],
              isFigure: true,
              low: precaution.limits?.value?.low ?? precaution.limits?.atLeast?.low,
              high: precaution.limits?.value?.high ?? precaution.limits?.atMost?.high,
              chooses: [],
            },
          ],
  });
}

/** Tool, wait and limits of a precaution. */
export function precautionDetails(context: LineContext, hazard: Hazard, precaution: Precaution): Detail[] {
  const { acts } = context.wording,
    details: Detail[] = [],
    wait = waitOf(hazard, precaution);
  for (const tool of precaution.tools)
    details.push({ sort: "with", says: context.wording.lines.withTool(toolName(context, tool.text)) });
  if (wait?.seconds !== undefined)
    details.push({
      sort: "wait",
      says: acts.waitLeast(
        timeText(wait.seconds, context.wording),
        wait.decidedBy ? acts.waitWhy[wait.decidedBy.of] : "",
      ),
    });
  if (precaution.limits)
    details.push({ sort: "limits", says: acts.limitsLine(limitsText(precaution.limits, context)) });
  return details;
}

/** What is done to take the standing precautions of a hazard back, the last first. */
function backsOf(context: LineContext, thing: ThingIndex, before: Doing["before"]): Detail[] {
  const hazard = thingOf(context, thing);
  if (hazard.is !== "hazard") return [];
  return [...hazard.precautions].reverse().flatMap((precaution): Detail[] => {
    if (before && at(before.standing, precaution.number) === 0) return [];
    const back = precaution.back || context.wording.kinds.precautionBack(precaution.kind);
    return back ? [{ sort: "how", says: back }] : [];
  });
}

const fluidsOf = (context: LineContext, things: readonly ThingIndex[]): Fluid[] =>
  things.map((thing) => thingOf(context, thing)).filter((thing): thing is Fluid => thing.is === "fluid");

export function volumeText(context: LineContext, fluid: Fluid): string {
  const amount = fluid.volume ?? fluid.amount;
  return amount ? figureText(amount, context) : context.wording.acts.volumeNotGiven;
}

function drainLine(context: LineContext, doing: Doing, fluid: Fluid, tool: string | undefined): LineDraft {
  const { acts, kinds } = context.wording,
    { act } = doing,
    into = act.into ? toolName(context, act.into.label) : undefined;
  const what = acts.the(fluid.name),
    volume = volumeText(context, fluid),
    opened: ThingIndex[] = [],
    details: Detail[] = [];
  if (act.verb === "drain") {
    for (const index of fluid.drainsAt) {
      const thing = thingOf(context, index);
      if (thing.is !== "tie") continue;
      opened.push(index);
      details.push(
        { sort: "how", says: acts.opens(acts.the(thing.name)) },
        ...fastenerDetails(context, thing),
        ...discards(
          context,
          thing.washers.map(({ part }) => part),
          true,
        ),
      );
    }
  }
  if (!act.into) {
    const container = kinds.fluidContainer(fluid.kind);
    if (container) details.push({ sort: "goes-to", says: context.wording.lines.intoContainer(container) });
  }
  const says = act.verb === "drain" ? acts.drain(what, volume, into) : acts.recover(what, volume, into, tool);
  return action(doing, act.verb, says, { items: itemsOf(context, [fluid.index, ...opened], undefined), details });
}

const isAboard = ({ before }: Doing, fluid: Fluid): boolean =>
  before !== undefined && (at(before.flags, fluid.index) & DRAINED) === 0;

export function fillLine(context: LineContext, doing: Doing, fluid: Fluid, amount: string | undefined): LineDraft {
  const { acts } = context.wording,
    places = doing.act.verb === "bleed" ? fluid.bleedsAt : fluid.fillsAt,
    at = places.length > 0 ? phrase(context, places) : undefined,
    what = acts.the(fluid.name);
  if (doing.act.verb === "bleed")
    return action(doing, "bleed", acts.bleed(what, at), { items: itemsOf(context, [fluid.index], undefined) });
  const details: Detail[] = [];
  if (fluid.uses)
    details.push({ sort: "with", says: context.wording.lines.withConsumable(toolName(context, fluid.uses.text)) });
  const opened = doing.before ? openedInPassing(context.model, doing.before, fluid) : [];
  const closings: { readonly tie: Tie; readonly torque: LineTorque }[] = [];
  for (const tie of opened) {
    const closed = makeLine(context, doing, [tie], { how: "fit", count: tie.count, stage: undefined });
    if (closed.torque) closings.push({ tie, torque: closed.torque });
    details.push(
      { sort: "how", says: acts.opens(acts.the(tie.name)) },
      ...fastenerDetails(context, tie),
      { sort: "how", says: acts.closesAfter(acts.the(tie.name)) },
      ...closed.details.filter(({ sort }) => !["tool", "thread"].includes(sort)),
    );
  }
  // Aboard already it is topped up, to what the words say: its whole volume would be too much.
  const says =
    amount === undefined && doing.act.text !== "" && isAboard(doing, fluid)
      ? acts.topUp(what, at)
      : acts.fill(what, amount ?? volumeText(context, fluid), at);
  return action(doing, "fill", says, {
    items: itemsOf(context, [fluid.index, ...opened.map((tie) => tie.index)], undefined),
    details,
    torque: torqueOfAll(context, closings),
  });
}

/** Several that are closed again in one line, each by its name with its own torque. */
function torqueOfAll(
  context: LineContext,
  closings: readonly { readonly tie: Tie; readonly torque: LineTorque }[],
): LineTorque | undefined {
  const [first] = closings,
    whole = ({ text, passes }: LineTorque): string => [text, passes].filter(Boolean).join(", ");
  if (!first || closings.length === 1) return first?.torque;
  const each = closings.map(({ tie, torque }) => context.wording.document.titled(tie.name, whole(torque)));
  return { text: context.wording.document.parts(each), passes: "", sequence: "", order: [], rounds: 1 };
}

/** Of the last of these names: the number of the parts list, or the next letter for what is no part. */
/** A picture as its author wrote it, with its points named and numbered. */
export function shotOf(context: LineContext, { at, file, alt, points }: Photo, around: Around): Shot {
  return {
    at,
    file,
    alt,
    points: points.map((point, i) => ({
      id: point.name.text,
      mark: markOf(
        context,
        around,
        points.slice(0, i + 1).map(({ name }) => name),
      ),
      name: nameText(context, point.name, around),
      across: point.across,
      down: point.down,
    })),
  };
}

function markOf(context: LineContext, around: Doing["around"], names: readonly Name[]): string {
  const numberOf = (name: Name): number => {
    const [thing] = namedThings(context.model, [name], around);
    return context.model.parts.findIndex(({ index }) => index === thing) + 1;
  };
  const numbers = names.map(numberOf),
    own = numbers.at(-1) ?? 0,
    letters = numbers.filter((number) => number === 0).length;
  return own > 0 ? String(own) : String.fromCharCode(96 + ((letters - 1) % 26) + 1);
}

// Lines of the acts that put together: from the ops of a computed refit, and from fit, tighten and press where an author wrote them.

import { gearOf, massOf } from "../../bench/load.ts";
import type { State } from "../../bench/state.ts";
import { at } from "../../bench/vector.ts";
import { onThread } from "../../bill/on-thread.ts";
import { namedThings } from "../../bill/named-things.ts";
import type { Act } from "../../model/act.ts";
import type { Part, ThingIndex, Tie } from "../../model/model.ts";
import { jointKinds, kindIn } from "../../tables/index.ts";
import { type LineContext, namesText, phrase, thingOf, tieVerb, toolName, toolsText } from "./context.ts";
import { action, type ActionDraft, type Doing } from "./draft.ts";
import { figureText, massText } from "./figures.ts";
import { itemsOf } from "./items.ts";
import type { Detail, LineTorque } from "./line.ts";
import { setsOf } from "./matched.ts";
import { fastenerDetails, tiePhrase } from "./say-strip.ts";
import { isTurned, torqueOf } from "./torque.ts";

/** How a tie is made in this line. */
export interface Making {
  readonly how: "fit" | "finger-tight" | "tighten";
  readonly count: number;
  readonly stage: number | undefined;
}

export function makeLine(context: LineContext, doing: Doing, ties: readonly Tie[], making: Making): ActionDraft {
  const { acts } = context.wording,
    first = ties[0]!,
    fresh = ties.every((tie) => context.fresh.get(tie.index)?.grade === "certain");
  const what =
    fresh && ties.length > 1
      ? phrase(
          context,
          ties.map((tie) => tie.index),
          true,
        )
      : tiePhrase(context, ties, ties.length === 1 ? making.count : undefined, false);
  const says =
    making.how === "finger-tight"
      ? acts.fingerTight(what)
      : making.how === "tighten"
        ? acts.tighten(what, making.stage)
        : acts.fit(tieVerb(context, first, "refit"), what, { fresh: fresh && ties.length === 1 });
  const details: Detail[] = fastenerDetails(context, first),
    torque = making.how === "finger-tight" ? undefined : sameTorque(context, ties, making.count, making.stage);
  if (first.how && !first.fastener) details.push({ sort: "how", says: first.how });
  if (torque)
    details.push(...torqueDetails(context, torque, first.pattern?.is !== "rectangle" && first.pattern?.is !== "at"));
  else if (making.how === "finger-tight" && isTurned(first)) details.push({ sort: "torque", says: acts.tightenLater });
  if (making.how !== "tighten") {
    const washers = first.washers.map(({ part }) => part).filter((part) => !context.fitted.has(part)),
      freshWashers = washers.filter((part) => context.fresh.get(part)?.grade === "certain"),
      old = washers.filter((part) => !freshWashers.includes(part));
    if (freshWashers.length > 0) details.push({ sort: "new", says: acts.newWasher(phrase(context, freshWashers)) });
    if (old.length > 0) details.push({ sort: "with", says: acts.withWashers(phrase(context, old)) });
    const { locker, lubricant } = onThread(first);
    if (locker) details.push({ sort: "with", says: acts.threadLocker(toolName(context, locker.text)) });
    if (lubricant) details.push({ sort: "with", says: acts.lubricant(toolName(context, lubricant.text)) });
    if (!first.fastener) details.push(...usesDetails(context, first));
    if (!fresh)
      details.push(
        ...newDetails(
          context,
          ties.map((tie) => tie.index),
        ),
      );
    const indexes = ties.map((tie) => tie.index);
    details.push(...tagDetails(context, indexes), ...marksOn(context, indexes));
  }
  return action(doing, making.how, says, {
    items: itemsOf(
      context,
      ties.map((tie) => tie.index),
      ties.length === 1 ? making.count : undefined,
    ),
    details,
    torque,
  });
}

const torqueDetails = (context: LineContext, torque: LineTorque, isRound: boolean): Detail[] => [
  { sort: "torque", says: context.wording.acts.torqueLine([torque.text, torque.passes].filter(Boolean).join(", ")) },
  ...(torque.sequence ? [{ sort: "passes" as const, says: context.wording.lines.sequence(torque.sequence) }] : []),
  ...(torque.order.length > 0
    ? [{ sort: "order" as const, says: context.wording.acts.order(torque.order.join(", "), isRound) }]
    : []),
];

/** Of several groups in one line the torque is that of the first: a line holds only groups of one torque. */
const sameTorque = (
  context: LineContext,
  ties: readonly Tie[],
  count: number,
  stage: number | undefined,
): LineTorque | undefined => torqueOf(ties[0]!, ties.length === 1 ? count : ties[0]!.count, context, stage);

/** How a part is fitted in this line. */
export interface Fitting {
  readonly before: State;
  readonly after: State;
  /** All that moves: the part with what is on it. */
  readonly moved: readonly ThingIndex[];
  /** It was lifted off: it is lowered in. */
  readonly lifted: Act | undefined;
  /** What it is fitted to, where the reader would expect it the other way round. */
  readonly onto?: readonly ThingIndex[];
}

export function fitLine(context: LineContext, doing: Doing, parts: readonly Part[], fitting: Fitting): ActionDraft {
  const { acts, kinds } = context.wording,
    { act, around } = doing,
    first = parts[0]!,
    indexes = parts.map((part) => part.index);
  const fresh = parts.every((part) => context.fresh.get(part.index)?.grade === "certain");
  const what =
    parts.length === 1
      ? acts.some(first.name, first.piece !== "", act.count ?? first.count, first.count, act.rest, first.countUnknown)
      : phrase(context, indexes, fresh);
  // What carried it off carries it on, and as many people; else what the part asks for.
  const written = act.verb === "fit" || act.verb === "press",
    people = (fitting.lifted ?? act).people ?? first.liftPeople,
    // What drew it off is no tool to fit it with.
    by = fitting.lifted ?? (written ? act : { ...act, tools: [] }),
    named = toolsText(context, written ? act.tools : []),
    tool = named ?? toolsText(context, gearOf(context.model, by, indexes)),
    joints = jointsMet(context, fitting),
    details: Detail[] = [];
  const hows = [
    ...(first.fitsBy ? [kinds.jointVerb(first.fitsBy, "refit")] : []),
    ...joints.map((tie) => tieVerb(context, tie, "refit")),
  ];
  const onto = fitting.onto
    ? phrase(context, fitting.onto)
    : written && act.on.length > 0
      ? namesText(context, act.on, around)
      : undefined;
  const says =
    act.verb === "press"
      ? acts.press(what, onto, tool)
      : fitting.lifted && named === undefined
        ? acts.lowerIn(what, tool, people)
        : acts.fit(kinds.partVerb(first.kind, "refit"), what, {
            fresh: fresh && parts.length === 1,
            facing: act.facing === undefined ? undefined : kinds.facing(act.facing),
            how: acts.hows([...new Set(hows)]),
            tool,
            onto,
            people,
          });
  for (const tie of joints) details.push(...usesDetails(context, tie));
  const mass = massOf(context.model, fitting.moved.length > 0 ? fitting.moved : indexes);
  if (fitting.lifted)
    details.push({ sort: "mass", says: acts.massHere(mass.kg > 0 ? massText(mass.kg, context) : "", mass.unknown) });
  for (const by of new Set(parts.flatMap((part) => part.alignBy ?? [])))
    details.push({ sort: "mark", says: acts.alignBy(by) });
  details.push(...tagDetails(context, indexes));
  if (!fresh && parts.some((part) => part.ownPlace)) details.push({ sort: "mark", says: acts.ownPlaceBack });
  const sets = fresh ? [] : setsOf(context, parts);
  if (sets.length > 0) details.push({ sort: "mark", says: acts.togetherAgain(sets) });
  if (parts.some((part) => part.dry)) details.push({ sort: "how", says: acts.goesOnDry });
  details.push(...marksMet(context, fitting));
  if (!fresh) details.push(...newDetails(context, indexes));
  return action(doing, "fit", says, { items: itemsOf(context, indexes, undefined), details });
}

/** Joints that let go in passing and meet in this line. */
function jointsMet(context: LineContext, { before, after }: Fitting): Tie[] {
  if (before.lump === after.lump) return [];
  const met = (state: State, tie: Tie): boolean =>
    tie.lowers.every((low) => tie.uppers.some((up) => at(state.lump, low) === at(state.lump, up)));
  return context.passing.filter(
    (tie) => tie.lowers.length > 0 && tie.uppers.length > 0 && !met(before, tie) && met(after, tie),
  );
}

/** What a joint uses up: laid on before the parts meet where its kind says so. */
function usesDetails(context: LineContext, tie: Tie): Detail[] {
  const { acts, kinds } = context.wording,
    uses = tie.uses.map((name) => toolName(context, name.text));
  const general = usesOfKind(tie).map((use) => kinds.jointUse(use)),
    all = uses.length > 0 ? uses : general;
  if (all.length === 0) return [];
  if (tie.bead)
    return [
      {
        sort: "with",
        says: acts.seal(
          tie.name,
          acts.list(all),
          acts.bead(
            figureText(tie.bead.width, context),
            tie.bead.length ? figureText(tie.bead.length, context) : undefined,
          ),
        ),
      },
    ];
  return [{ sort: "with", says: acts.usesUp(acts.list(all)) }];
}

function usesOfKind(tie: Tie): readonly string[] {
  return tie.fastener ? [] : (kindIn(jointKinds, tie.kind)?.uses ?? []);
}

/** Match marks whose parts meet in this line, with the words of the mark; not where the author lines them up himself. */
function marksMet(context: LineContext, { before, after }: Fitting): Detail[] {
  if (before.lump === after.lump) return [];
  const { aligned } = context,
    { stripEnd } = context.performance;
  const met = (state: State, things: readonly ThingIndex[]): boolean =>
    things.every((thing) => at(state.lump, thing) === at(state.lump, things[0]!));
  const details: Detail[] = [];
  for (const [label, { things }] of stripEnd.marks) {
    const parts = things.filter((thing) => thingOf(context, thing).is === "part");
    if (aligned.has(label) || parts.length < 2 || met(before, parts) || !met(after, parts)) continue;
    details.push(lineUpDetail(context, label));
  }
  return details;
}

/** Match marks on what is screwed or joined in this line: a nut goes back to its mark on the shaft. */
function marksOn(context: LineContext, ties: readonly ThingIndex[]): Detail[] {
  const { aligned } = context;
  return [...context.performance.stripEnd.marks].flatMap(([label, { things }]) =>
    !aligned.has(label) && things.some((thing) => ties.includes(thing)) ? [lineUpDetail(context, label)] : [],
  );
}

function lineUpDetail({ wording, performance }: LineContext, label: string): Detail {
  const made = performance.strip.find(({ act }) => act.verb === "mark" && act.labels.includes(label));
  return { sort: "mark", says: wording.acts.lineUp(label, made?.act.text ?? "") };
}

/** The tags of each of these; of several things with which one it is. */
function tagDetails(context: LineContext, things: readonly ThingIndex[]): Detail[] {
  const { acts } = context.wording;
  return things.flatMap((thing) => {
    const tags = tagsOf(context, thing);
    if (!tags) return [];
    const says = acts.tagged(tags);
    return [{ sort: "mark" as const, says: things.length === 1 ? says : saidOf(context, says, [thing]) }];
  });
}

/** Labels that were tied to a thing in the strip. */
function tagsOf(context: LineContext, thing: ThingIndex): string {
  return context.tagging
    .filter(({ things }) => things.includes(thing))
    .flatMap(({ act, around }) => {
      // As many tags as names: each has its own.
      if (act.names.length < 2 || act.names.length !== act.labels.length) return act.labels;
      return act.labels.filter((_, i) => namedThings(context.model, [act.names[i]!], around).includes(thing));
    })
    .join(", ");
}

/** What is said of things that go back in new, or perhaps new. */
function newDetails(context: LineContext, things: readonly ThingIndex[]): Detail[] {
  const { acts } = context.wording,
    said = new Map<string, ThingIndex[]>();
  for (const thing of things) {
    const fresh = context.fresh.get(thing);
    if (!fresh) continue;
    const item = thingOf(context, thing),
      times = item.is === "tie" && item.renew === undefined ? item.reuseTimes : undefined;
    const text =
      fresh.grade === "certain"
        ? acts.isNew
        : fresh.reason === "every"
          ? times === undefined
            ? acts.newEvery(fresh.strips ?? 1)
            : acts.reuseTimes(times)
          : acts.newIf[isNewIf(fresh.reason) ? fresh.reason : "worn"];
    const together =
      fresh.grade === "worn" && (item.is === "part" || item.is === "tie") ? item.renew?.together : undefined;
    for (const each of new Set([text, ...(together ? [acts.newIf[together]] : [])]))
      said.set(each, [...(said.get(each) ?? []), thing]);
  }
  return [...said].map(([text, of]) => ({
    sort: "new",
    says: of.length === things.length ? text : saidOf(context, text, of),
  }));
}

/** What holds for some of the things of a line, with which: one sentence, with its full stop behind them. */
function saidOf(context: LineContext, says: string, things: readonly ThingIndex[]): string {
  const stop = says.endsWith(".") ? "." : "";
  return `${context.wording.lines.only(says.slice(0, says.length - stop.length), phrase(context, things))}${stop}`;
}

const isNewIf = (
  reason: string,
): reason is "worn" | "damaged" | "as-a-set" | "by-pairs" | "reading" | "chosen" | "kind-not-said" =>
  ["worn", "damaged", "as-a-set", "by-pairs", "reading", "chosen", "kind-not-said"].includes(reason);

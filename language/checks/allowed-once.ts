// `# allow` speaks of one act, of the strip, of a way back or of `finish`. What was touched there without its precautions is taken as
// guarded from then on, so that one lack is said once: where that one is allowed, the next act that rests on it is found by itself.

import { reasonOf } from "../bench/bench.ts";
import { openedBy } from "../bench/handling.ts";
import { machineOf } from "../bench/machine.ts";
import type { State } from "../bench/state.ts";
import type { Around, Event, Performance, Performed, Problem, Reason } from "../bench/trace.ts";
import { at } from "../bench/vector.ts";
import type { Act } from "../model/act.ts";
import { actKind, hazardKinds, isKindOf, kindIn, precautions } from "../tables/index.ts";
import type { Hazard, Model, ThingIndex } from "../model/model.ts";
import type { IsAllowed } from "./allow.ts";
import { gravestFirst } from "./gravest-first.ts";

const lacks = /^hazard\/(?:not-yet|lapsed)$/;

/**
 * For each allowed act that lacks precautions what else it was refused for, and the first other one that an author wrote, of the strip,
 * of the way back or of `finish`, that lacks them as well and is not allowed itself. What a way back mirrors by itself is the other half
 * of an act that was allowed or found.
 */
export function hiddenByAllow(performance: Performance, isAllowed: IsAllowed): Problem[] {
  const { problems, model } = performance,
    found: Problem[] = [];
  for (const problem of problems) {
    if (problem.phase === "declared" || !problem.act || !problem.reasons.some(({ rule }) => lacks.test(rule))) continue;
    const led = gravestFirst(problem, model);
    if (!lacks.test(led.rule) || !isAllowed({ code: led.rule, at: led.at })) continue;
    // What else the act was refused for is another code, and stands for itself.
    const others = led.reasons.filter(({ rule }) => !lacks.test(rule));
    if (others.length > 0) found.push({ ...led, rule: others[0]!.rule, reasons: others, about: aboutOf(others) });
    for (const { act, around, phase, reasons } of restingOn(performance, problem, led.reasons)) {
      if (isAllowed({ code: "hazard/not-yet", at: act.at })) continue;
      found.push({ ...led, phase, act, around, at: act.at, rule: "hazard/not-yet", reasons, about: aboutOf(reasons) });
      break;
    }
  }
  return found;
}

const aboutOf = (reasons: readonly Reason[]): readonly ThingIndex[] => [
  ...new Set(reasons.flatMap(({ thing, by }) => (thing === undefined ? by : [thing, ...by]))),
];

/** An act that rests on precautions that nobody took. */
interface Resting {
  readonly act: Act;
  readonly around: Around;
  readonly phase: "strip" | "refit";
  readonly reasons: readonly Reason[];
}

/** Later acts in their order, of those that are no problem themselves. */
function* restingOn(
  performance: Performance,
  { act: first, phase }: Problem,
  said: readonly Reason[],
): Generator<Resting> {
  const { model, problems, strip, events } = performance,
    lacking = said.filter(({ rule }) => lacks.test(rule)),
    hazards = new Set(lacking.flatMap(({ by }) => by));
  if (phase === "strip")
    for (const one of strip.slice(strip.findIndex(({ act }) => act === first) + 1)) {
      if (answers(one.act.verb) || problems.some(({ act }) => act === one.act)) continue;
      const reasons = inStrip(model, one, events, hazards);
      if (reasons.length > 0) yield { act: one.act, around: one.around, phase: "strip", reasons };
    }
  // On the way back nothing tells a precaution that was taken from one that was only supposed: those that were missing are, until taken.
  const open = new Set(phase === "strip" ? [] : lacking.flatMap(({ numbers }) => numbers)),
    isSame = (one: Act | undefined, other: Act | undefined): boolean =>
      one?.at.file === other?.at.file && one?.at.start === other?.at.start;
  let isLater = phase === "strip";
  for (const one of wayBack(performance)) {
    const { act, around, before, taken } = one;
    if (!isLater || isSame(act, first)) {
      isLater ||= isSame(act, first);
      continue;
    }
    for (const number of taken) open.delete(number);
    if (!act || answers(act.verb) || problems.some((problem) => isSame(problem.act, act))) continue;
    const isMissing = (number: number): boolean => {
      const by = at(before.standing, number);
      return by > 0 ? events[by - 1]?.assumed === true : by !== 0 && open.has(number);
    };
    const reasons = model.hazards.flatMap((hazard) => {
      const thing = hazards.has(hazard.index) ? touchedOf(model, one, hazard) : undefined,
        numbers = hazard.precautions.map(({ number }) => number).filter(isMissing);
      return thing === undefined || numbers.length === 0 ? [] : [reasonFor(model, hazard, thing, numbers)];
    });
    if (reasons.length > 0) yield { act, around, phase: "refit", reasons };
  }
}

/** What takes a precaution, or gives the power back, answers the lack. */
const answers = (verb: string): boolean => isKindOf(precautions, verb) || verb === "restore";

/** Things that an act has hands on: those that it moves or frees apart from those that it only handles. */
interface Touching {
  readonly moved: readonly ThingIndex[];
  readonly handled: readonly ThingIndex[];
}

interface BackAct extends Touching {
  /** Undefined for what is mirrored by itself. */
  readonly act: Act | undefined;
  readonly around: Around;
  readonly before: State;
  /** Precautions that it takes, or takes away. */
  readonly taken: readonly number[];
}

function wayBack({ model, refit, written, finish }: Performance): BackAct[] {
  const ofAct = ({
    act,
    around,
    things,
    handled,
    before,
  }: Omit<Performed, "from" | "to" | "after" | "refused">): BackAct => ({
    act,
    around,
    before,
    moved: [...(actKind(act.verb).handles ? things : []), ...openedBy(model, act.verb, things)],
    handled,
    taken: model.hazards.flatMap(({ index, precautions: all }) =>
      things.includes(index) ? all.flatMap(({ kind, number }) => (kind === act.verb ? [number] : [])) : [],
    ),
  });
  return [
    ...refit.map(({ op, handled, before }) => {
      const { act, around, things, verb, event } = op;
      if (verb === "written" && act) return ofAct({ act, around, things, handled, before });
      const isTaking = verb === "lift" || verb === "stand";
      return {
        act,
        around,
        before,
        moved: isTaking ? [] : [...things, ...openedBy(model, verb, things)],
        handled,
        taken: isTaking ? (event?.precautions ?? []) : [],
      };
    }),
    ...written.map(ofAct),
    ...finish.map(ofAct),
  ];
}

/** The first thing of it that the hazard is on; what guards against a weight is asked for by what moves or frees a thing alone. */
function touchedOf(model: Model, { moved, handled }: Touching, hazard: Hazard): ThingIndex | undefined {
  const { hazardsOn } = machineOf(model),
    isOn = (one: ThingIndex): boolean => hazardsOn[one]?.includes(hazard) === true;
  return moved.find(isOn) ?? (kindIn(hazardKinds, hazard.kind)?.isWeight === true ? undefined : handled.find(isOn));
}

const reasonFor = (model: Model, hazard: Hazard, thing: ThingIndex | undefined, numbers: readonly number[]): Reason =>
  reasonOf("hazard/not-yet", {
    thing,
    by: [hazard.index],
    words: numbers.map((number) => model.precautions[number]!.kind),
    numbers,
    at: hazard.at,
  });

/** Precautions of these hazards that the act was taken to have, and that no line took. */
function inStrip(
  model: Model,
  { things, handled, before, from, to }: Performed,
  events: readonly Event[],
  hazards: ReadonlySet<ThingIndex>,
): Reason[] {
  const own = events.slice(from, to),
    moved = [...(own.length > 0 ? things : []), ...own.flatMap((event) => event.things)],
    asked = new Set(own.flatMap((event) => event.needs));
  return model.hazards.flatMap((hazard) => {
    if (!hazards.has(hazard.index)) return [];
    const thing = touchedOf(model, { moved, handled }, hazard),
      missing = hazard.precautions.filter(({ number }) => {
        const by = at(before.standing, number) - 1;
        return events[by]?.assumed === true && (thing !== undefined || asked.has(by));
      }),
      // What this act itself was refused for, said with the allowed one.
      joined = own.filter((event) => event.kind === "stands" && event.assumed && event.thing === hazard.index),
      numbers = [...missing.map(({ number }) => number), ...joined.flatMap((event) => event.precautions)];
    return numbers.length === 0 ? [] : [reasonFor(model, hazard, thing ?? things[0], numbers)];
  });
}

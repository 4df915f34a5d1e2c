// Where a hazard and a message stand among the acts: before the act, never after it. A hazard stands once in the strip, once on the way
// back and once in the final tests, before the first of its precautions and of the acts that it asks something of (a heavy load is no
// hazard of a mark or a cloth), and again before what ends its precautions; a message on a thing stands before the first act of each step
// that moves or undoes that very thing, in both halves. Every output that prints acts asks here.

import { requiredWait, type RequiredWait, type WaitQuestion } from "../figures/required-wait.ts";
import type { Hazard, Message, Model, Precaution, ThingIndex } from "../model/model.ts";
import { si } from "../quantities/index.ts";
import { actKind, hazardKinds, kindIn } from "../tables/index.ts";
import { openedInPassing } from "./filler.ts";
import { machineOf } from "./machine.ts";
import type { State } from "./state.ts";
import type { Event, Performance, Performed, RefitPerformed, StepRun } from "./trace.ts";

/** What stands before one act. */
export interface Before {
  readonly hazards: readonly ThingIndex[];
  /** A message that several things share is one, with all of them. */
  readonly messages: readonly { readonly things: readonly ThingIndex[]; readonly message: Message }[];
}

/**
 * By the index of the act in `performance.strip`, `.refit`, `.written` and `.finish`. The final tests come when the way back has taken the
 * precautions away, and may come on another day: what was told before is told again there.
 */
export interface Placement {
  readonly strip: readonly Before[];
  readonly refit: readonly Before[];
  readonly written: readonly Before[];
  readonly finish: readonly Before[];
}

/** What an act does, as far as warnings ask. */
interface Touch {
  /** Things that it names, moves or handles, with hazards that it is a precaution of. */
  readonly things: readonly ThingIndex[];
  /** Hazards that the bench asked about. */
  readonly hazards: readonly ThingIndex[];
  /** Things whose own messages are due. */
  readonly handled: readonly ThingIndex[];
  /** It may move or free what it names, or take its weight (tables/act-kinds.ts): a heavy load is a hazard of these acts alone. */
  readonly moves: boolean;
  /** Hazards whose precautions end here: told again, however often they were. */
  readonly freed: readonly ThingIndex[];
  readonly step: StepRun | undefined;
}

export function placementOf(performance: Performance): Placement {
  const { model, events } = performance;
  const strip = place(model, [performance.strip.map((each) => ofPerformed(model, each, events))]);
  const wayBack = place(model, [
    performance.refit.map((each) => ofRefit(model, each)),
    performance.written.map((each) => ofPerformed(model, each, [])),
  ]);
  const finish = place(model, [performance.finish.map((each) => ofPerformed(model, each, []))]);
  return { strip: strip[0]!, refit: wayBack[0]!, written: wayBack[1]!, finish: finish[0]! };
}

function ofPerformed(
  model: Model,
  { act, things, handled, around, from, to, before }: Performed,
  events: readonly Event[],
): Touch {
  const own = events.slice(from, to).filter((event) => !event.assumed),
    kind = actKind(act.verb),
    handles = kind.handles || own.length > 0;
  const opened =
    act.verb === "fill" ? fillersOf(model, things, before) : act.verb === "bleed" ? bleedersOf(model, things) : [];
  const all = [...new Set([...things, ...own.flatMap((event) => event.things), ...opened])];
  return {
    things: kind.isTold ? handled : [...all, ...handled],
    hazards: own.flatMap((event) => event.hazards),
    handled: handles ? all : opened,
    moves: kind.moves,
    freed: act.verb === "restore" ? things : [],
    step: around.step,
  };
}

/** What a fluid is bled at: it is opened, mostly under pressure, whatever is asked to stand there. */
const bleedersOf = (model: Model, things: readonly ThingIndex[]): ThingIndex[] =>
  things.flatMap((thing) => {
    const fluid = model.things[thing];
    return fluid?.is === "fluid" ? fluid.bleedsAt : [];
  });

/** What a fill opens in passing. */
const fillersOf = (model: Model, things: readonly ThingIndex[], before: State): ThingIndex[] =>
  things.flatMap((thing) => {
    const fluid = model.things[thing];
    return fluid?.is === "fluid" ? openedInPassing(model, before, fluid).map((tie) => tie.index) : [];
  });

function ofRefit(model: Model, { op, handled, before }: RefitPerformed): Touch {
  const isAct = op.verb !== "written",
    verb = op.act?.verb ?? "",
    kind = actKind(isAct ? op.verb : verb);
  const opened =
    op.verb === "fill" || (!isAct && verb === "fill")
      ? fillersOf(model, op.things, before)
      : !isAct && verb === "bleed"
        ? bleedersOf(model, op.things)
        : [];
  return {
    things: !isAct && kind.isTold ? handled : [...op.things, ...opened, ...handled],
    hazards: op.event?.hazards ?? [],
    handled: isAct || kind.handles ? [...op.things, ...opened] : opened,
    moves: kind.moves,
    freed: !isAct && verb === "restore" ? op.things : [],
    step: op.around.step,
  };
}

function place(model: Model, sequences: readonly (readonly Touch[])[]): Before[][] {
  const machine = machineOf(model),
    told = new Set<ThingIndex>();
  let step: StepRun | undefined,
    toldHere = new Set<ThingIndex>(),
    toldOf = new Map<Message, ThingIndex[]>();
  return sequences.map((touches) =>
    touches.map((touch) => {
      if (touch.step !== step) {
        step = touch.step;
        toldHere = new Set();
        toldOf = new Map();
      }
      const hazards: ThingIndex[] = [];
      const due = (hazard: ThingIndex): void => {
        if (!told.has(hazard)) {
          told.add(hazard);
          hazards.push(hazard);
        }
      };
      for (const thing of touch.things) {
        if (model.things[thing]?.is === "hazard") due(thing);
        for (const hazard of machine.hazardsOn[thing] ?? [])
          if (touch.moves || kindIn(hazardKinds, hazard.kind)?.isOfMoving !== true) due(hazard.index);
      }
      for (const hazard of touch.hazards) due(hazard);
      for (const thing of touch.freed)
        if (model.things[thing]?.is === "hazard" && !hazards.includes(thing)) hazards.push(thing);
      const messages: { things: ThingIndex[]; message: Message }[] = [];
      for (const thing of touch.handled) {
        const found = model.things[thing];
        if (!found || found.is === "hazard" || found.messages.length === 0 || toldHere.has(thing)) continue;
        toldHere.add(thing);
        for (const message of found.messages) {
          // What several things share, pieces or all of a kind, stands once in a step: before the first of them, with all of them.
          const same =
              toldOf.get(message) ??
              messages.find((each) => each.message.signal === message.signal && each.message.text === message.text)
                ?.things,
            of = same ?? [];
          of.push(thing);
          toldOf.set(message, of);
          if (!same) messages.push({ things: of, message });
        }
      }
      return { hazards, messages };
    }),
  );
}

/**
 * The place in `performance.refit` before which the unit is turned back to where it stood at the start: before the precautions that are
 * taken away last, so that nobody turns it when they no longer stand.
 */
export function endTurnBefore({ refit }: Performance): number {
  let place = refit.length;
  while (place > 0 && refit[place - 1]!.op.verb === "lift") place--;
  return place;
}

// --- the wait of a stored charge -----------------------------------------------------------------------------------------------

/**
 * The wait that is told with a precaution, longest of the author's and the computed ones; undefined where none is due. The computed one
 * is told where the charge is let go: at `discharge`, else at the first precaution that states a wait, else at the proof. No wait stands
 * for a proof, and a senseless figure gives no computed one. A wait of nothing is not told: "0 s" would read as leave to begin.
 */
export function waitOf(hazard: Hazard, precaution: Precaution): RequiredWait | undefined {
  const charge = isWhereItWaits(hazard, precaution) ? chargeOf(hazard) : undefined,
    makerWait = precaution.wait ? si(precaution.wait).high : undefined;
  if (!charge && (makerWait === undefined || makerWait < 0)) return undefined;
  const wait = requiredWait({ ...charge, ...(makerWait === undefined || makerWait < 0 ? {} : { makerWait }) });
  return wait.seconds === 0 ? undefined : wait;
}

/** The charge as the figures ask for it. An alternating voltage charges to its crest: so it says, or its source does. */
export function chargeOf(hazard: Hazard): WaitQuestion | undefined {
  const voltage = hazard.figures.get("voltage"),
    capacitance = hazard.figures.get("capacitance"),
    bleeder = hazard.figures.get("bleeder");
  if (
    !voltage ||
    !capacitance ||
    !bleeder ||
    si(voltage).high < 0 ||
    si(capacitance).high <= 0 ||
    si(bleeder).high <= 0
  )
    return undefined;
  const alternating =
    voltage.unit === "V ac" ||
    (voltage.unit !== "V dc" && (hazard.source === "mains" || hazard.source === "generator"));
  const kind = alternating ? ({ kind: "ac" } as const) : voltage.unit === "V dc" ? ({ kind: "dc" } as const) : {};
  return { voltage: si(voltage).high, ...kind, capacitance: si(capacitance).high, bleeder: si(bleeder).high };
}

function isWhereItWaits({ precautions }: Hazard, precaution: Precaution): boolean {
  const place =
    precautions.find((each) => each.kind === "discharge") ??
    precautions.find((each) => each.wait) ??
    precautions.find((each) => each.kind === "prove-dead");
  return place === precaution;
}

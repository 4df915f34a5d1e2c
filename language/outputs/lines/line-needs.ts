// What a printed line asks of the lines before it: precautions that have to stand first, as the bench asks them, and a point where the
// work stops until it is released. One walk over all lines in their order, strip, way back and final tests, so that a precaution of the
// strip is still known on the way back, and one that has lapsed or was taken back no longer counts.

import { machineOf } from "../../bench/machine.ts";
import { actKind } from "../../tables/index.ts";
import type { Event, Performed } from "../../bench/trace.ts";
import type { ThingIndex } from "../../model/model.ts";
import { isKindOf, kindIn, precautions as precautionKinds } from "../../tables/index.ts";
import type { Lines } from "./groups.ts";
import type { ActionLine } from "./line.ts";

export interface LineNeeds {
  /** Lines by which the precautions that this one needs are taken, in their order. */
  readonly precautions: readonly string[];
  /** Lines that have to be done before a precaution is taken back. */
  readonly before: readonly string[];
  /** The last point before it where the work stops until it is released. */
  readonly hold: string | undefined;
  /** It takes a precaution; `proof`: one that is void after a break in the work. */
  readonly takes: "precaution" | "proof" | undefined;
}

interface Asked {
  readonly hazards: ReadonlySet<ThingIndex>;
  /** Numbers of precautions that stand from here on, and of those that no longer do. */
  readonly stand: readonly number[];
  readonly end: readonly number[];
  /** Numbers of the ops that the order puts before it: of what takes a precaution back alone. */
  readonly earlier: readonly number[];
}

/** By the printed number of each action. */
export function lineNeeds({ context, strip, refit, finish }: Lines): ReadonlyMap<string, LineNeeds> {
  const { performance, model } = context,
    found = new Map<string, LineNeeds>(),
    takenBy = new Map<number, string>(),
    usedBy = new Map<number, string[]>(),
    lineOfOp = new Map<number, string>();
  const halves = [
    [strip, (line: ActionLine) => ofActs(line, performance.strip, performance.events)],
    [refit, (line: ActionLine) => (performance.refit.length > 0 ? ofOps(line) : ofActs(line, performance.written, []))],
    [finish, (line: ActionLine) => ofActs(line, performance.finish, [])],
  ] as const;
  const machine = machineOf(model),
    handledByOp = new Map(performance.refit.map(({ op, handled }) => [op.number, handled]));
  const hazardsOn = (things: readonly ThingIndex[]): ThingIndex[] =>
    things.flatMap((thing) => [
      ...(machine.hazardsOn[thing] ?? []).map(({ index }) => index),
      ...(model.things[thing]?.is === "hazard" ? [thing] : []),
    ]);

  /** A line of several things prints one of them: a precaution line is about the hazard that it names. */
  function ofActs(line: ActionLine, acts: readonly Performed[], events: readonly Event[]): Asked {
    const hazards = new Set<ThingIndex>(),
      stand: number[] = [],
      end: number[] = [];
    for (const number of line.of) {
      const performed = acts[number];
      if (!performed) continue;
      const { act, things, handled, from, to } = performed,
        own = events.slice(from, to).filter((event) => !event.assumed);
      if (isKindOf(precautionKinds, act.verb)) {
        for (const hazard of model.hazards.filter(({ id }) => line.items.some((item) => item.id === id))) {
          hazards.add(hazard.index);
          stand.push(...hazard.precautions.filter(({ kind }) => kind === act.verb).map((each) => each.number));
        }
        continue;
      }
      if (act.verb === "restore")
        for (const hazard of model.hazards.filter(({ index }) => things.includes(index)))
          end.push(...hazard.precautions.map((each) => each.number));
      for (const event of own) {
        for (const hazard of event.hazards) hazards.add(hazard);
        if (event.kind === "lapses") end.push(...event.precautions);
      }
      for (const hazard of hazardsOn(actKind(act.verb).isTold ? handled : [...things, ...handled])) hazards.add(hazard);
    }
    return { hazards, stand, end, earlier: [] };
  }

  function ofOps(line: ActionLine): Asked {
    const hazards = new Set<ThingIndex>(),
      stand: number[] = [],
      end: number[] = [],
      earlier: number[] = [];
    for (const number of line.of) {
      const op = performance.order?.ops[number];
      if (!op) continue;
      for (const hazard of [
        ...(op.event?.hazards ?? []),
        ...(op.verb === "written" && actKind(op.act?.verb ?? "").isTold ? [] : hazardsOn(op.things)),
        ...hazardsOn(handledByOp.get(number) ?? []),
      ])
        hazards.add(hazard);
      if (op.verb === "stand") stand.push(...(op.event?.precautions ?? []));
      if (op.verb === "lift") {
        end.push(...(op.event?.precautions ?? []));
        performance.order?.later.forEach((later, i) => {
          if (later.includes(number)) earlier.push(i);
        });
      }
    }
    return { hazards, stand, end, earlier };
  }

  let hold: string | undefined;
  for (const [groups, askedOf] of halves) {
    const isBack = groups !== strip;
    for (const line of groups.flatMap((group) => group.lines)) {
      if (line.is !== "action") continue;
      const { hazards, stand, end, earlier } = askedOf(line),
        needed =
          hazards.size === 0 || takenBy.size === 0
            ? []
            : model.hazards
                .filter(({ index }) => hazards.has(index))
                .flatMap((hazard) => hazard.precautions.map(({ number }) => number))
                .filter((number) => takenBy.has(number) && !stand.includes(number));
      const lifts = isBack && end.length > 0;
      // What ends a precaution does not need it: it comes after all that does.
      const first = lifts
        ? [...end.flatMap((number) => usedBy.get(number) ?? []), ...earlier.flatMap((op) => lineOfOp.get(op) ?? [])]
        : [];
      const takes = stand.some((number) => kindIn(precautionKinds, model.precautions[number]!.kind)?.isProof)
        ? "proof"
        : stand.length > 0
          ? "precaution"
          : undefined;
      found.set(line.id, {
        precautions: lifts ? [] : [...new Set(needed.map((number) => takenBy.get(number)!))],
        before: [...new Set(first)].filter((id) => id !== line.id),
        hold,
        takes,
      });
      for (const number of end) {
        takenBy.delete(number);
        usedBy.delete(number);
      }
      for (const number of stand) takenBy.set(number, line.id);
      if (isBack && !lifts) for (const number of needed) usedBy.set(number, [...(usedBy.get(number) ?? []), line.id]);
      if (groups === refit && performance.refit.length > 0) for (const op of line.of) lineOfOp.set(op, line.id);
      if (line.verb === "hold-point") hold = line.id;
    }
  }
  return found;
}

// The bench at an offset of a procedure: which act has just been done, and what then lies where. Facts of the performance only.

import { at } from "../bench/vector.ts";
import { isOut, left, lumpOf } from "../bench/ties.ts";
import { ASIDE, BACKED_OUT, DRAINED, FINGER_TIGHT, HELD, LAPSED, LOOSE, ON_BASE, type State } from "../bench/state.ts";
import type { Performance, Performed } from "../bench/trace.ts";
import type { Span } from "../findings/finding.ts";
import type { Model, ThingIndex } from "../model/model.ts";
import { hazardKinds, precautions } from "../tables/index.ts";
import type { Acted } from "../workspace/check-project.ts";

export interface Moment {
  readonly performance: Performance;
  /** The last act done before the offset; undefined before the first. */
  readonly done: Performed | undefined;
  readonly state: State;
  /** Undefined in the strip; else the offset stands in what is done when it goes back together. */
  readonly half: "strip" | "written" | "finish";
}

/** The plain build of the procedure around the offset; of a line that several procedures do, the one that it stands in. */
export function performanceAt(checked: Acted, file: string, offset: number): Performance | undefined {
  return checked.performances.find(
    ({ procedure }) =>
      procedure.whole.file === file && procedure.whole.start <= offset && offset <= procedure.whole.end,
  );
}

/** With `before`, the bench just before the act that the offset stands in or behind on its line. */
export function momentAt(checked: Acted, file: string, offset: number, before = false): Moment | undefined {
  const performance = performanceAt(checked, file, offset);
  if (!performance) return undefined;
  const own = (list: readonly Performed[]): Performed | undefined =>
    list.findLast(
      ({ act, around }) =>
        act.at.file === file &&
        around.procedure.id === performance.procedure.id &&
        (before ? act.at.end < offset : act.at.start <= offset),
    );
  const finish = own(performance.finish);
  if (finish && finish.act.at.start <= offset)
    return { performance, done: finish, state: finish.after, half: "finish" };
  const buildsUp = performance.strip.length === 0 && performance.written.length > 0,
    done = own(buildsUp ? performance.written : performance.strip);
  return { performance, done, state: done?.after ?? performance.start, half: buildsUp ? "written" : "strip" };
}

export interface OnBench {
  readonly id: string;
  readonly name: string;
  readonly at: Span;
}
export interface TieOnBench extends OnBench {
  readonly in: number;
  readonly of: number;
  /** "loose", "finger-tight", "backed out", "" for tight. */
  readonly slack: string;
}
export interface AwayFromBench extends OnBench {
  readonly by: Span | undefined;
  readonly tray: string;
}
export interface PrecautionOnBench {
  readonly hazard: string;
  readonly kind: string;
  readonly text: string;
  readonly at: Span;
  readonly by: Span | undefined;
}

/** What lies where at a moment. No word of it says that a danger is gone. */
export interface BenchView {
  readonly unit: string;
  readonly procedure: string;
  readonly build: string;
  readonly step: string;
  readonly at: Span | undefined;
  readonly half: "strip" | "written" | "finish";
  readonly position: string;
  readonly on: readonly OnBench[];
  readonly aside: readonly OnBench[];
  readonly held: readonly OnBench[];
  readonly away: readonly AwayFromBench[];
  readonly ties: readonly TieOnBench[];
  readonly tiesOut: readonly AwayFromBench[];
  readonly fluids: readonly (OnBench & { readonly is: "aboard" | "drained" })[];
  readonly temporaries: readonly OnBench[];
  readonly precautions: readonly PrecautionOnBench[];
  /** Hazards whose precautions were taken and have ended since. */
  readonly lapsed: readonly OnBench[];
  readonly notConsidered: readonly string[];
  /** Something was taken as done after a refusal: what follows rests on it. */
  readonly assumes: boolean;
}

export function benchView({ performance, done, state: s, half }: Moment): BenchView {
  const { model, procedure, events } = performance;
  const show = (thing: ThingIndex): OnBench => {
    const of = model.things[thing]!;
    return { id: of.id, name: of.name, at: of.at };
  };
  const by = (event: number): Span | undefined => events[event]?.act.at;
  const has = (thing: ThingIndex, flag: number): boolean => (at(s.flags, thing) & flag) !== 0;
  const trays = traysOf(performance, done),
    on = model.parts.filter((part) => lumpOf(s, part.index) === ON_BASE);
  const away = (thing: ThingIndex, event: number): AwayFromBench => ({
    ...show(thing),
    by: by(event),
    tray: trays.get(thing) ?? "",
  });
  return {
    unit: model.title || model.unit,
    procedure: procedure.title || procedure.id,
    build: model.build,
    step: done?.around.step?.title || done?.around.step?.name || "",
    at: done?.act.at,
    half,
    position: s.position === "?" ? "" : s.position,
    on: on.map((part) => show(part.index)),
    aside: on.filter((part) => has(part.index, ASIDE)).map((part) => show(part.index)),
    held: model.parts.filter((part) => has(part.index, HELD)).map((part) => show(part.index)),
    away: model.parts
      .filter((part) => lumpOf(s, part.index) !== ON_BASE)
      .map((part) => away(part.index, at(s.lumpBy, part.index))),
    ties: model.ties
      .filter(
        (tie) => !isOut(model, s, tie.index) && !(tie.passing && tie.lowers.some((p) => lumpOf(s, p) !== ON_BASE)),
      )
      .map((tie) => ({
        ...show(tie.index),
        in: left(model, s, tie.index),
        of: tie.count,
        slack: slackOf(at(s.slack, tie.index)),
      })),
    tiesOut: model.ties
      .filter((tie) => isOut(model, s, tie.index))
      .map((tie) => away(tie.index, at(s.outBy, tie.index))),
    fluids: model.fluids.map((fluid) => ({
      ...show(fluid.index),
      is: has(fluid.index, DRAINED) ? ("drained" as const) : ("aboard" as const),
    })),
    temporaries: [...s.temporaries.keys()].map((id) => {
      const of = model.temporaries.get(id);
      return { id, name: of?.name ?? id, at: of?.at ?? model.at };
    }),
    precautions: model.precautions
      .filter((precaution) => at(s.standing, precaution.number) !== 0)
      .map((precaution) => ({
        hazard: model.things[precaution.hazard]!.name,
        kind: precautionTitle(precaution.kind),
        text: precaution.text,
        at: precaution.at,
        by: by(at(s.standing, precaution.number) - 1),
      })),
    lapsed: model.hazards.filter((hazard) => has(hazard.index, LAPSED)).map((hazard) => show(hazard.index)),
    notConsidered: notConsidered(model),
    assumes: s.assumptions > 0,
  };
}

/** Titles of the hazard kinds that nobody declared or dismissed. */
export function notConsidered(model: Model): string[] {
  const declared = new Set(model.hazards.map((hazard) => hazard.kind));
  return Object.entries(hazardKinds)
    .filter(([kind]) => !declared.has(kind) && !model.dismissed.has(kind))
    .map(([, { title }]) => title);
}

export const precautionTitle = (kind: string): string =>
  Object.hasOwn(precautions, kind) ? precautions[kind as keyof typeof precautions].title : kind;

const slackOf = (slack: number): string =>
  slack === LOOSE ? "loose" : slack === FINGER_TIGHT ? "finger-tight" : slack === BACKED_OUT ? "backed out" : "";

/** Where things were laid, as the author says it: `into tray A`. */
function traysOf({ strip }: Performance, done: Performed | undefined): Map<ThingIndex, string> {
  const trays = new Map<ThingIndex, string>();
  for (const performed of strip) {
    const { act, things } = performed;
    if (act.into && act.into.kind !== "container")
      for (const thing of things) trays.set(thing, `${act.into.kind} ${act.into.label}`);
    if (performed === done) break;
  }
  return trays;
}

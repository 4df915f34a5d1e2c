// What the page on a tablet has to know of a manual beside its text: which lines there are, what each asks for, and what has to come
// before it. Plain values, decided once here, written into the page, and read by its script.

import type { Performance } from "../../../bench/trace.ts";
import { lineNeeds, type LineNeeds } from "../../lines/line-needs.ts";
import type { Lines } from "../../lines/groups.ts";
import type { ActionLine, LineGroup, LineItem } from "../../lines/line.ts";
import { askedOf, type Asked } from "../../record/asked.ts";
import { acceptedTorques, type AcceptedTorque } from "../../record/judge-torque.ts";

export interface Plan {
  /** Names of the procedures: with `content` the name under which the entries are kept. */
  readonly id: string;
  /** The manual's content hash. */
  readonly content: string;
  readonly procedures: readonly { readonly procedure: string; readonly unit: string; readonly build: string }[];
  /** Actions in their printed order. */
  readonly lines: readonly PlanLine[];
  /** The parts, fasteners and joints that each step works on, by id and name: what an entry "not as written" can be about. */
  readonly steps: readonly (readonly { readonly id: string; readonly name: string }[])[];
}

/** Lines are named here by their ids in the page. */
export interface PlanLine {
  readonly id: string;
  /** Printed number, as in the record. */
  readonly line: string;
  /** Index in `procedures`. */
  readonly procedure: number;
  /** Index in `steps`. */
  readonly step: number;
  /** Those of its step that the line itself works on. */
  readonly things?: readonly string[];
  /** Lines that take the precautions it needs. */
  readonly needs?: readonly string[];
  /** Lines that come before a precaution is taken back. */
  readonly before?: readonly string[];
  /** The point before it where the work stops until it is released. */
  readonly hold?: string;
  readonly takes?: "precaution" | "proof";
  /** s. */
  readonly wait?: number;
  readonly counts?: readonly { readonly item: string; readonly due?: number }[];
  readonly torques?: readonly { readonly item: string; readonly given: readonly AcceptedTorque[] }[];
  readonly readings?: readonly PlanReading[];
  readonly sign?: true;
  /** Numbers of the fasteners in the order of tightening, and how many times round. */
  readonly order?: readonly number[];
  readonly passes?: number;
}

export interface PlanReading {
  readonly unit: string;
  readonly isFigure: boolean;
  /** A size is chosen by it. */
  readonly chooses?: true;
  readonly low?: number;
  readonly high?: number;
}

export const lineElement = (prefix: string, line: string): string => `${prefix}line-${line.toLowerCase()}`;

export function planOf(
  all: readonly { readonly performance: Performance; readonly lines: Lines; readonly prefix: string }[],
  content: string,
): Plan {
  const steps: Plan["steps"][number][] = [],
    lines = all.flatMap((each, procedure) => linesPlan(each.lines, each.prefix, procedure, steps));
  return {
    id: all.map(({ performance: { procedure, model } }) => `${model.unit} ${procedure.id} ${model.build}`).join("; "),
    content,
    procedures: all.map(({ performance: { procedure, model } }) => ({
      procedure: procedure.id,
      unit: model.unit,
      build: model.build,
    })),
    lines,
    steps,
  };
}

/** @param steps is added to. */
function linesPlan(lines: Lines, prefix: string, procedure: number, steps: Plan["steps"][number][]): PlanLine[] {
  const needs = lineNeeds(lines),
    { model } = lines.context,
    plan: PlanLine[] = [];
  const idOf = (line: string): string => lineElement(prefix, line);
  for (const group of [...lines.strip, ...lines.refit, ...lines.finish]) {
    const step = steps.push(thingsOf(group)) - 1;
    for (const line of group.lines)
      if (line.is === "action")
        plan.push(linePlan(line, askedOf(line, model), needs.get(line.id)!, { idOf, procedure, step }));
  }
  return plan;
}

interface Stands extends Pick<PlanLine, "procedure" | "step"> {
  readonly idOf: (line: string) => string;
}

/** What a line does not ask for is left out of the page. Written field by field: a spread for each of them costs more than all the rest. */
function linePlan(line: ActionLine, asked: Asked, need: LineNeeds, { idOf, procedure, step }: Stands): PlanLine {
  const plan: { -readonly [field in keyof PlanLine]: PlanLine[field] } = {
      id: idOf(line.id),
      line: line.id,
      procedure,
      step,
    },
    things = line.items.filter(isThing);
  if (things.length > 0) plan.things = things.map(({ id }) => id);
  if (need.precautions.length > 0) plan.needs = need.precautions.map(idOf);
  if (need.before.length > 0) plan.before = need.before.map(idOf);
  if (need.hold !== undefined) plan.hold = idOf(need.hold);
  if (need.takes !== undefined) plan.takes = need.takes;
  if (line.wait !== undefined) plan.wait = line.wait;
  if (asked.counts.length > 0)
    plan.counts = asked.counts.map(({ item, count }) => (count === undefined ? { item } : { item, due: count }));
  if (asked.torques.length > 0)
    plan.torques = asked.torques.map(({ item, tie }) => ({ item, given: acceptedTorques(tie) }));
  if (asked.readings.length > 0) plan.readings = asked.readings.map(readingPlan);
  if (asked.signature) plan.sign = true;
  // One group alone is counted off: two in a line have no common order.
  const order = line.torque?.order ?? [];
  if (asked.torques.length === 1 && order.length > 0) {
    plan.order = order;
    plan.passes = line.torque?.rounds ?? 1;
  }
  return plan;
}

const readingPlan = ({ unit, isFigure, low, high, chooses }: Asked["readings"][number]): PlanReading => ({
  unit,
  isFigure,
  ...(chooses.length > 0 ? { chooses: true as const } : {}),
  ...(low === undefined ? {} : { low }),
  ...(high === undefined ? {} : { high }),
});

/** What can be sheared, missing or the wrong one. */
const isThing = ({ is }: LineItem): boolean => is === "part" || is === "fastener" || is === "joint";

const thingsOf = ({ lines }: LineGroup): Plan["steps"][number] => [
  ...new Map(
    lines.flatMap((line) =>
      line.is === "action" ? line.items.filter(isThing).map(({ id, name }) => [id, { id, name }] as const) : [],
    ),
  ).values(),
];

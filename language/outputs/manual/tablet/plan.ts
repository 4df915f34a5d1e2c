// What the page on a tablet has to know of a manual beside its text: which lines there are, what each asks for, and what has to come
// before it. Plain values, decided once here, written into the page, and read by its script.

import type { Performance } from "../../../bench/trace.ts";
import { lineNeeds } from "../../lines/line-needs.ts";
import type { Lines } from "../../lines/groups.ts";
import { askedOf } from "../../record/asked.ts";
import { acceptedTorques, type AcceptedTorque } from "../../record/judge-torque.ts";

export interface Plan {
  /** Names of the procedures: with `content` the name under which the entries are kept. */
  readonly id: string;
  /** The manual's content hash. */
  readonly content: string;
  readonly procedures: readonly { readonly procedure: string; readonly unit: string; readonly build: string }[];
  /** Actions in their printed order. */
  readonly lines: readonly PlanLine[];
}

/** Lines are named here by their ids in the page. */
export interface PlanLine {
  readonly id: string;
  /** Printed number, as in the record. */
  readonly line: string;
  /** Index in `procedures`. */
  readonly procedure: number;
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
  readonly low?: number;
  readonly high?: number;
}

export const lineElement = (prefix: string, line: string): string => `${prefix}line-${line.toLowerCase()}`;

export function planOf(
  all: readonly { readonly performance: Performance; readonly lines: Lines; readonly prefix: string }[],
  content: string,
): Plan {
  return {
    id: all.map(({ performance: { procedure, model } }) => `${model.unit} ${procedure.id} ${model.build}`).join("; "),
    content,
    procedures: all.map(({ performance: { procedure, model } }) => ({
      procedure: procedure.id,
      unit: model.unit,
      build: model.build,
    })),
    lines: all.flatMap(({ lines, prefix }, procedure) => linesPlan(lines, prefix, procedure)),
  };
}

function linesPlan(lines: Lines, prefix: string, procedure: number): PlanLine[] {
  const needs = lineNeeds(lines),
    { model } = lines.context,
    idOf = (line: string): string => lineElement(prefix, line);
  return [...lines.strip, ...lines.refit, ...lines.finish].flatMap((group) =>
    group.lines.flatMap((line): PlanLine[] => {
      if (line.is !== "action") return [];
      const asked = askedOf(line, model),
        need = needs.get(line.id)!;
      const order = line.torque?.order ?? [];
      return [
        {
          id: idOf(line.id),
          line: line.id,
          procedure,
          ...some("needs", need.precautions.map(idOf)),
          ...some("before", need.before.map(idOf)),
          ...(need.hold === undefined ? {} : { hold: idOf(need.hold) }),
          ...(need.takes === undefined ? {} : { takes: need.takes }),
          ...(line.wait === undefined ? {} : { wait: line.wait }),
          ...some(
            "counts",
            asked.counts.map(({ item, count }) => ({ item, ...(count === undefined ? {} : { due: count }) })),
          ),
          ...some(
            "torques",
            asked.torques.map(({ item, tie }) => ({ item, given: acceptedTorques(tie) })),
          ),
          ...some(
            "readings",
            asked.readings.map(({ unit, isFigure, low, high }) => ({
              unit,
              isFigure,
              ...(low === undefined ? {} : { low }),
              ...(high === undefined ? {} : { high }),
            })),
          ),
          ...(asked.signature ? { sign: true as const } : {}),
          // One group alone is counted off: two in a line have no common order.
          ...(asked.torques.length === 1 && order.length > 0 ? { order, passes: line.torque?.rounds ?? 1 } : {}),
        },
      ];
    }),
  );
}

const some = <Name extends string, T>(name: Name, values: readonly T[]): { readonly [key in Name]?: readonly T[] } =>
  values.length === 0 ? {} : ({ [name]: values } as { readonly [key in Name]: readonly T[] });

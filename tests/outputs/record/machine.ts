// A small machine whose lines ask for everything that a record can hold, and records of it as a careful fitter would fill them in.

import { provenanceOf } from "../../../language/outputs/draft.ts";
import type { ActionLine } from "../../../language/outputs/lines/line.ts";
import { askedOf } from "../../../language/outputs/record/asked.ts";
import { checkedRecord, type Remark } from "../../../language/outputs/record/check.ts";
import { madeOf } from "../../../language/outputs/record/check-output.ts";
import type { LineRecord, WorkRecord } from "../../../language/outputs/record/record.ts";
import { compiledText, options } from "../outputs-of.ts";

export const text = `
unit u "Unit" { base a  part a "A"  part b "B"  part p "Pads" { count 3 }  fastener f bolt "Bolts" { count 4  size M8  torque 20..24 N·m  joins b to a }
  fastener g screw "Plate screw" { torque 30 N·m  joins p to b } }
procedure job "Job" for u { aim b off
  step "S" { undo g  remove p  undo f  remove b  measure bore on b "Bore" at least 0.5 in else scrap b  inspect face on b "Face clean" else "Dress it."  second-check "All there" } }
`;

export const input = compiledText(text);
export const made = madeOf(input, options);
export const hash = provenanceOf(input).hash;

const actions = made[0]!.lines;
const lines = [...actions.strip, ...actions.refit, ...actions.finish]
  .flatMap((group) => group.lines)
  .filter((line): line is ActionLine => line.is === "action");
export const lineWhere = (is: (line: ActionLine) => boolean): ActionLine => {
  const line = lines.find(is);
  if (!line) throw new Error("there is no such line");
  return line;
};

export const full = (): WorkRecord => ({
  format: "stripdown-record",
  version: 1,
  content: hash,
  serial: "7",
  procedures: [
    {
      procedure: "job",
      unit: "u",
      build: made[0]!.build,
      lines: lines.map((line): LineRecord => {
        const asked = askedOf(line, made[0]!.lines.context.model);
        return {
          line: line.id,
          done: true,
          counts: asked.counts.map(({ item, count }) => ({ item, count: count ?? 2 })),
          torques: asked.torques.map(({ item, tie }) => ({ item, value: tie.torques[0]!.value!.high, unit: "N·m" })),
          readings: asked.readings.map((reading, i) => ({
            reading: i + 1,
            tries: [reading.isFigure ? { value: 13, unit: "mm" } : { asItShouldBe: true }],
          })),
          ...(asked.signature ? { signed: "N. N." } : {}),
        };
      }),
    },
  ],
});

/** The record with one line changed. */
export const withLine = (id: string, change: Partial<LineRecord>): WorkRecord => {
  const record = full(),
    [procedure] = record.procedures;
  return {
    ...record,
    procedures: [
      { ...procedure!, lines: procedure!.lines.map((line) => (line.line === id ? { ...line, ...change } : line)) },
    ],
  };
};

export const remarks = (record: WorkRecord): readonly Remark[] => checkedRecord(record, made, hash, options.wording);

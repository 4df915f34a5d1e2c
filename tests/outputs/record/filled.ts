// Records as a careful fitter would fill them in, for any procedure.

import { provenanceOf } from "../../../language/outputs/draft.ts";
import type { OutputInput, OutputOptions } from "../../../language/outputs/output.ts";
import { askedOf } from "../../../language/outputs/record/asked.ts";
import { madeOf } from "../../../language/outputs/record/check-output.ts";
import type { LineRecord, WorkRecord } from "../../../language/outputs/record/record.ts";
import { actionsIn, allActions } from "../../../language/outputs/sheet/actions.ts";

/** Every line filled in, or those of the strip alone; a reading lies at its limit, or is 1 where it has none. */
export function filledRecord(
  input: OutputInput,
  options: OutputOptions,
  halves: "all" | "strip" = "all",
  change: Readonly<Record<string, Partial<LineRecord>>> = {},
): WorkRecord {
  return {
    format: "stripdown-record",
    version: 1,
    content: provenanceOf(input).hash,
    serial: "7",
    procedures: madeOf(input, options).map(({ id, unit, build, lines }) => ({
      procedure: id,
      unit,
      build,
      lines: (halves === "all" ? allActions(lines) : actionsIn(lines.strip)).map((line): LineRecord => {
        const asked = askedOf(line, lines.context.model);
        return {
          line: line.id,
          done: true,
          counts: asked.counts.map(({ item, count }) => ({ item, count: count ?? 2 })),
          torques: asked.torques.flatMap(({ item, tie }) => {
            const value = tie.torques[0]?.value ?? tie.stages[0];
            return value ? [{ item, value: value.high, unit: value.unit }] : [];
          }),
          readings: asked.readings.map((reading, i) => ({
            reading: i + 1,
            tries: [
              reading.isFigure
                ? { value: reading.low ?? reading.high ?? 1, ...(reading.unit === "" ? {} : { unit: reading.unit }) }
                : { asItShouldBe: true },
            ],
          })),
          ...(asked.signature ? { signed: "N. N." } : {}),
          ...change[line.id],
        };
      }),
    })),
  };
}

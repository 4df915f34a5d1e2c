// The record file that a manual saves and `stripdown record` reads.

import * as z from "zod";
import { troubles } from "../../outputs/record/record.ts";

const text = z.string(),
  asTyped = z.string().describe("As typed; nothing reads a clock for it."),
  // Empty counts as left out.
  dayOfYear = String.raw`\d{4}-(?:(?:0[13578]|1[02])-(?:0[1-9]|[12]\d|3[01])|(?:0[469]|11)-(?:0[1-9]|[12]\d|30)|02-(?:0[1-9]|1\d|2\d))`,
  day = z
    .string()
    .regex(new RegExp(`^(?:${dayOfYear})?$`))
    .describe("A date: 2027-03-31."),
  due = z
    .string()
    .regex(new RegExp(String.raw`^(?:${dayOfYear}|\d{4}-(?:0[1-9]|1[0-2]))?$`))
    .describe(
      "When its calibration falls due: a date, or a month at whose end it does. Judged against the date of the reading.",
    );

/** The shapes of a version. */
function shapesOf(version: 1 | 2) {
  /** A field that the first version does not have. */
  const since2 = <Shape extends z.ZodRawShape>(shape: Shape): Shape => (version === 1 ? ({} as Shape) : shape);
  const line = z.strictObject({
    line: text.describe("The printed number of the line: 3.2 in the strip, R1.4 on the way back, F2 at the end."),
    done: z.boolean().optional().describe("The box is ticked."),
    counts: z.array(z.strictObject({ item: text.describe("Id of the thing."), count: z.int().min(0) })).optional(),
    torques: z
      .array(
        z.strictObject({
          item: text.describe("Id of the fastener."),
          value: z.number(),
          unit: text,
          wrench: text.optional().describe("Its number or name among the instruments."),
          initials: text.optional(),
          ...since2({ on: day.optional() }),
        }),
      )
      .optional(),
    readings: z
      .array(
        z.strictObject({
          reading: z.int().min(1).describe("Which reading of the line, from 1."),
          tries: z
            .array(
              z.strictObject({
                value: z.number().optional(),
                unit: text.optional(),
                asItShouldBe: z.boolean().optional(),
                note: text.optional(),
                instrument: text.optional().describe("Its number or name among the instruments."),
                ...since2({ on: day.optional() }),
              }),
            )
            .describe("Every try in the order of taking. The last one counts."),
          ...since2({ chosen: text.optional().describe("The size that was chosen by it.") }),
        }),
      )
      .optional(),
    signed: text.optional().describe("Who signed."),
    notAsWritten: z
      .array(
        z.strictObject({
          what: z.enum(troubles),
          item: text.optional().describe("Id of the thing; left out where it is about the line."),
          note: text.optional(),
          done: text.optional().describe("What was done about it."),
          agreedBy: text.optional(),
          wanted: text.optional().describe("A part to order."),
          ...since2({ wantedCount: z.int().min(1).optional().describe("How many of it.") }),
        }),
      )
      .optional(),
  });
  return z.strictObject({
    format: z.literal("stripdown-record"),
    version: z.literal(version),
    content: z
      .string()
      .regex(/^[0-9a-f]{64}$/)
      .describe("Content hash of the manual that the work was done by."),
    serial: text.optional().describe("Serial number of the unit."),
    begun: asTyped.optional(),
    ended: asTyped.optional(),
    doneBy: text.optional(),
    checkedBy: text.optional(),
    instruments: z
      .array(
        z.strictObject({
          name: text,
          number: text.optional(),
          due: (version === 1 ? asTyped : due).optional(),
          ...since2({ note: text.optional() }),
        }),
      )
      .optional(),
    procedures: z.array(
      z.strictObject({
        procedure: text,
        unit: text,
        build: text.describe("Empty where the unit has one build only."),
        lines: z.array(line),
      }),
    ),
  });
}

export const recordShape = z.discriminatedUnion("version", [shapesOf(1), shapesOf(2)]).meta({
  title: "Record of a strip and refit",
  description:
    "What the manual saves (version 2) and `stripdown record` reads (version 1 too, which had fewer fields and a calibration date as typed).",
});

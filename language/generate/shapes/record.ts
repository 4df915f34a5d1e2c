// The record file that a manual saves and `stripdown record` reads.

import { z } from "zod";
import { troubles } from "../../outputs/record/record.ts";

const text = z.string(),
  asTyped = z.string().describe("As typed; nothing reads a clock for it.");

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
        wrench: text.optional(),
        initials: text.optional(),
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
              instrument: text.optional(),
            }),
          )
          .describe("Every try in the order of taking. The last one counts."),
      }),
    )
    .optional(),
  signed: text.optional().describe("Who signed."),
  notAsWritten: z
    .array(
      z.strictObject({
        what: z.enum(troubles),
        item: text.optional(),
        note: text.optional(),
        done: text.optional().describe("What was done about it."),
        agreedBy: text.optional(),
        wanted: text.optional().describe("A part to order."),
      }),
    )
    .optional(),
});

export const recordShape = z
  .strictObject({
    format: z.literal("stripdown-record"),
    version: z.literal(1),
    content: z
      .string()
      .regex(/^[0-9a-f]{64}$/)
      .describe("Content hash of the manual that the work was done by."),
    serial: text.optional().describe("Serial number of the unit."),
    begun: asTyped.optional(),
    ended: asTyped.optional(),
    doneBy: text.optional(),
    checkedBy: text.optional(),
    instruments: z.array(z.strictObject({ name: text, number: text.optional(), due: asTyped.optional() })).optional(),
    procedures: z.array(
      z.strictObject({
        procedure: text,
        unit: text,
        build: text.describe("Empty where the unit has one build only."),
        lines: z.array(line),
      }),
    ),
  })
  .meta({ title: "Record of a strip and refit", description: "What the manual saves and `stripdown record` reads." });

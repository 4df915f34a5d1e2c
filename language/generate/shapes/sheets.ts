// What `stripdown labels`, `sheet torque`, `sheet layout` and `record` print with --as json.

import * as z from "zod";
import { provenance } from "./common.ts";

const text = z.string(),
  texts = z.array(z.string()),
  count = z.int().min(0).optional().describe("Left out where the author gives no number.");
const procedure = { id: text, title: text, unit: text, build: text, buildText: text.describe("The build as printed.") };

export const labelsShape = z
  .strictObject({
    format: z.literal("stripdown-labels"),
    version: z.literal(1),
    provenance,
    places: z.array(
      z.strictObject({
        kind: z.enum(["tray", "bag"]),
        label: text,
        unit: text,
        procedure: text,
        items: z.array(
          z.strictObject({
            id: text,
            name: text,
            count,
            of: count,
            size: text,
            discard: z.boolean().describe("It does not go back: a new one is fitted."),
            line: text,
            step: z.strictObject({ number: z.int(), title: text }).optional(),
          }),
        ),
      }),
    ),
  })
  .meta({ title: "What lies in bags and trays", description: "What `stripdown labels --json` prints." });

export const torqueSheetShape = z
  .strictObject({
    format: z.literal("stripdown-torque-sheet"),
    version: z.literal(1),
    provenance,
    procedures: z.array(
      z.strictObject({
        ...procedure,
        rows: z.array(
          z.strictObject({
            line: text,
            step: text,
            id: text,
            name: text,
            count,
            thread: text,
            class: text,
            metric: texts,
            us: texts,
            passes: texts,
            sequence: text,
            order: z.array(z.int()),
            tool: text,
            wrenches: texts,
            notes: texts,
          }),
        ),
      }),
    ),
  })
  .meta({ title: "Torque sheet", description: "What `stripdown sheet torque --json` prints." });

export const layoutSheetShape = z
  .strictObject({
    format: z.literal("stripdown-layout-sheet"),
    version: z.literal(1),
    provenance,
    procedures: z.array(
      z.strictObject({
        ...procedure,
        rows: z.array(
          z.strictObject({
            place: z.int().min(1),
            line: text,
            step: text,
            id: text,
            name: text,
            count,
            along: texts,
            mass: text,
            goesTo: text,
            discard: z.boolean(),
          }),
        ),
      }),
    ),
  })
  .meta({ title: "Layout sheet", description: "What `stripdown sheet layout --json` prints." });

export const recordCheckShape = z
  .strictObject({
    format: z.literal("stripdown-record-check"),
    version: z.literal(1),
    provenance,
    records: z.array(
      z.strictObject({
        file: text,
        serial: text,
        remarks: z.array(
          z.strictObject({
            is: text,
            procedure: text,
            line: text.describe("Empty for the whole record."),
            says: text,
            consequences: texts,
            open: z.boolean().describe("Somebody has to do something about it."),
            thing: z
              .strictObject({ id: text.describe("Empty where it is about the line."), name: text })
              .optional()
              .describe("Of an entry not as written: what it is about."),
          }),
        ),
        wanted: z
          .array(
            z.strictObject({
              part: text.describe("As typed."),
              count: z.int().min(1).optional(),
              procedure: text,
              line: text,
              thing: z
                .strictObject({ id: text, name: text, size: text, partNo: text, standard: text })
                .optional()
                .describe("What it is for, where the entry names it; empty texts where the author gives none."),
            }),
          )
          .describe("The order list."),
      }),
    ),
  })
  .meta({ title: "Remarks on records", description: "What `stripdown record --json` prints." });

export const recordSummaryShape = z
  .strictObject({
    format: z.literal("stripdown-record-summary"),
    version: z.literal(1),
    provenance,
    records: z.int().min(0),
    leftOut: texts.describe("Records that were made from another revision."),
    readings: z.array(
      z.strictObject({
        procedure: text,
        line: text,
        reading: z.int().min(1),
        what: text,
        limits: text,
        unit: text,
        low: z.number().optional(),
        high: z.number().optional(),
        values: z.array(
          z.strictObject({
            file: text,
            serial: text,
            value: z.number().describe("In `unit`; the last try."),
            outside: z.boolean(),
            tries: z.int().min(1),
          }),
        ),
        spread: z
          .strictObject({
            count: z.int().min(1),
            lowest: z.number(),
            highest: z.number(),
            median: z.number(),
            mean: z.number(),
            deviation: z.number().optional().describe("Of the sample, with n - 1; left out for one figure."),
          })
          .optional(),
        outside: z.int().min(0),
        answers: z.strictObject({ yes: z.int().min(0), no: z.int().min(0) }).optional(),
        missing: z.int().min(0),
      }),
    ),
  })
  .meta({
    title: "Spread of the readings over many units",
    description: "What `stripdown record --summary --json` prints.",
  });

export const sheetShape = z
  .strictObject({
    format: z.literal("stripdown-sheet"),
    version: z.literal(1),
    of: z.enum(["preparation", "isolation", "lifting", "handover", "waiting", "waste", "batch"]),
    title: text,
    note: text,
    provenance,
    procedures: z.array(
      z.strictObject({
        procedure: text,
        title: text,
        unit: text,
        build: text,
        buildText: text.describe("The build as printed."),
        notes: texts,
        tables: z.array(
          z.strictObject({
            title: text,
            columns: texts.describe("Heads of the cells of a row."),
            rows: z.array(texts),
            blank: texts.describe("Heads of further columns, left for a pen."),
            empty: text.describe("What is said in place of a table without rows."),
          }),
        ),
      }),
    ),
  })
  .meta({
    title: "A sheet for the bench",
    description: "What `stripdown sheet preparation|isolation|lifting|handover|waiting|waste|batch --json` prints.",
  });
